using Closeout.Files;
using Closeout.Screens.Steps;

namespace Closeout.Tests.Files;

/// <summary>Reads the small day with some files replaced, and gives what was said of them.</summary>
internal static class ReadDay
{
    public static DayFolder With(params (string File, string? Text)[] instead)
    {
        using var temp = new TempFolder();
        return DayFolder.Read(SmallDay.Write(temp["day"], instead), StepPages.Evening);
    }

    public static DayFolder With(string file, byte[] bytes)
    {
        using var temp = new TempFolder();
        var folder = SmallDay.Write(temp["day"]);
        File.WriteAllBytes(Path.Combine(folder, file), bytes);
        return DayFolder.Read(folder, StepPages.Evening);
    }

    /// <summary>The faults of the small day with rows added to one file, or written over words of it.</summary>
    public static IEnumerable<string> FaultsWith(string file, string added) => Faults(With((file, SmallDay.Text(file) + added)));

    public static IEnumerable<string> FaultsWith(string file, string was, string now)
    {
        var text = SmallDay.Text(file);
        return text.Contains(was, StringComparison.Ordinal)
            ? Faults(With((file, text.Replace(was, now, StringComparison.Ordinal))))
            : throw new ArgumentException($"{file} has no {was}", nameof(was));
    }

    public static IEnumerable<string> Faults(DayFolder read) => read.Findings.Problems.Select(p => p.ToString());
}
