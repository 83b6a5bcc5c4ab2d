using Closeout.Tests;

namespace Closeout.Faults.Fuzz;

/// <summary>The sample day with a few visits and items only, so that many inputs take little time.</summary>
internal static class ShortDay
{
    private const int Rows = 40;
    private const int Items = 8;

    private static readonly HashSet<string> Kept = [.. Lines("items.csv").Take(Items + 1).Select(l => l.Split(',')[0])];

    public static readonly IReadOnlyDictionary<string, string> Files = Directory.EnumerateFiles(Repository.SampleDay, "*.csv")
        .Select(f => Path.GetFileName(f))
        .ToDictionary(f => f, f => string.Concat(Short(f).Select(l => l + "\n")));

    public static void Write(string folder)
    {
        Directory.CreateDirectory(folder);
        foreach (var (file, text) in Files)
        {
            File.WriteAllText(Path.Combine(folder, file), text);
        }
    }

    private static IEnumerable<string> Short(string file)
    {
        var item = Array.IndexOf(Lines(file).First().Split(','), "item");
        return Lines(file).Where(l => file == "evening.csv" || item < 0 || Kept.Contains(l.Split(',')[item])).Where(l => file != "evening.csv" || Known(l)).Take(Rows);
    }

    /// <summary>An answer of no item, of a kept one, or of a piece of kit.</summary>
    private static bool Known(string answer) => answer.Split(',') is var fields && (fields[2] is not ("leftovers" or "cardboard") || fields[4].Length == 0 || Kept.Contains(fields[4]));

    private static IEnumerable<string> Lines(string file) => File.ReadLines(Path.Combine(Repository.SampleDay, file));
}
