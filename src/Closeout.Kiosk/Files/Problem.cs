using System.Globalization;

namespace Closeout.Files;

/// <summary>
/// One fault in a file, where it stands. Lines and columns count from 1; the column is the character at which the field begins.
/// </summary>
/// <param name="Text">What is wrong, what was found, what is allowed.</param>
public sealed record Problem(string File, int Line, int Column, string Text)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}: {Text}");
}

/// <summary>How far reading is.</summary>
/// <param name="Rows">Rows of the file that were read.</param>
/// <param name="Bytes">The bytes that they stand in.</param>
public readonly record struct ReadSoFar(string File, int Rows, long Bytes);

/// <summary>What reading gathers: faults, which forbid loading, and notes, which do not.</summary>
/// <param name="told">Is told now and then how far reading is; null: nobody waits.</param>
public sealed class Findings(Action<ReadSoFar>? told = null)
{
    private readonly List<Problem> problems = [];
    private readonly List<Problem> notes = [];
    private readonly Dictionary<string, int> faults = [];
    private readonly Dictionary<string, int> noted = [];
    private readonly Dictionary<string, Problem> enough = [];

    /// <summary>Faults in the order of files as read, then of lines; last of a file that there were too many.</summary>
    public IReadOnlyList<Problem> Problems
    {
        get
        {
            var files = problems.Select(p => p.File).Distinct().Index().ToDictionary(f => f.Item, f => f.Index);
            return [
                .. problems.Concat(enough.Values).OrderBy(p => files[p.File]).ThenBy(p => enough.ContainsValue(p)).ThenBy(p => p.Line)
                .ThenBy(p => p.Column)];
        }
    }

    public IReadOnlyList<Problem> Notes => notes;

    /// <summary>To be told at the begin of a file and after some thousand rows each.</summary>
    public void Tell(ReadSoFar now) => told?.Invoke(now);

    /// <summary>Whether there is any fault.</summary>
    public bool AreFaults => problems.Count > 0;

    /// <summary>Whether as many faults of the file were told as ever are.</summary>
    public bool IsFull(string file) => problems.Count >= CsvLimits.MostTold && faults.GetValueOrDefault(file) >= CsvLimits.MostTold;

    public void Fault(string file, int line, int column, string text)
    {
        if (IsFull(file))
        {
            Enough(file, line);
            return;
        }

        faults[file] = faults.GetValueOrDefault(file) + 1;
        problems.Add(new(file, line, column, Harmless.Line(text)));
    }

    /// <summary>Tells, once, that no more is told of a file.</summary>
    /// <param name="line">Where telling ended.</param>
    public void Enough(string file, int line) => enough.TryAdd(file, new(
        file, line, 1,
        T($"too many faults: found {CsvLimits.MostTold} before, allowed none; the rest is not told. Repair those, and read it again")));

    /// <summary>Tells what is odd and no fault; of a file with very much of it not everything.</summary>
    public void Note(string file, int line, int column, string text)
    {
        var before = noted[file] = noted.GetValueOrDefault(file) + 1;
        if (before <= CsvLimits.MostTold)
            notes.Add(new(file, line, column, Harmless.Line(text)));
        else if (before == CsvLimits.MostTold + 1)
            notes.Add(new(file, line, 1, T($"{CsvLimits.MostTold} notes were told before; the rest is not told")));
    }

    /// <summary>Text from a file as a sentence can quote it: short, and without anything that steers a terminal.</summary>
    public static string Quote(string found) => found.Length == 0
        ? T("nothing")
        : $"\"{Harmless.Line(found.Length > 40 ? found[..40] + "..." : found)}\"";
}
