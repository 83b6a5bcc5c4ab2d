using System.Globalization;

namespace Closeout.Bench;

/// <summary>Result lines, the same in every culture.</summary>
public static class Told
{
    public static void Line(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));

    /// <summary>A table row in Markdown.</summary>
    public static void Row(params FormattableString[] cells) =>
        Console.WriteLine("| " + string.Join(" | ", cells.Select(c => c.ToString(CultureInfo.InvariantCulture))) + " |");
}
