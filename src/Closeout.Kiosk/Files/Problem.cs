using System.Globalization;

namespace Closeout.Files;

/// <summary>One fault in a file, where it stands. Lines and columns count from 1; the column is the character at which the field begins.</summary>
/// <param name="Text">What is wrong, what was found, what is allowed.</param>
public sealed record Problem(string File, int Line, int Column, string Text)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{File}:{Line}:{Column}: {Text}");
}

/// <summary>What reading gathers: faults, which forbid loading, and notes, which do not.</summary>
public sealed class Findings
{
    private readonly List<Problem> problems = [];
    private readonly List<Problem> notes = [];

    /// <summary>Faults in the order of files as read, then of lines.</summary>
    public IReadOnlyList<Problem> Problems
    {
        get
        {
            var files = problems.Select(p => p.File).Distinct().Index().ToDictionary(f => f.Item, f => f.Index);
            return [.. problems.OrderBy(p => files[p.File]).ThenBy(p => p.Line).ThenBy(p => p.Column)];
        }
    }

    public IReadOnlyList<Problem> Notes => notes;

    /// <summary>Whether there is any fault.</summary>
    public bool AreFaults => problems.Count > 0;

    public void Fault(string file, int line, int column, string text) => problems.Add(new(file, line, column, text));

    public void Note(string file, int line, int column, string text) => notes.Add(new(file, line, column, text));

    /// <summary>Text from a file as a sentence can quote it: short, and without anything that steers a terminal.</summary>
    public static string Quote(string found) => found.Length == 0 ? "nothing" : $"\"{Harmless.Line(found.Length > 40 ? found[..40] + "..." : found)}\"";
}
