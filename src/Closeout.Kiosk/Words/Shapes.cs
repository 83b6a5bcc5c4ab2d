namespace Closeout.Words;

/// <summary>Shapes that stand for numbers: bars, a line of columns. The number stands beside each.</summary>
public static class Shapes
{
    /// <summary>Shares of a cell, an eighth each: the blocks U+258F to U+2588.</summary>
    private const string Eighths = "▏▎▍▌▋▊▉█";

    /// <summary>Columns of a sparkline, an eighth of a line each: the blocks U+2581 to U+2588.</summary>
    private const string Heights = "▁▂▃▄▅▆▇█";

    /// <summary>A bar of so many columns, filled to an eighth of one.</summary>
    /// <param name="part">0 to 1; less or more is taken for the nearer end.</param>
    public static string Bar(double part, int columns)
    {
        var eighths = (int)Math.Round(Math.Clamp(double.IsNaN(part) ? 0 : part, 0, 1) * columns * Eighths.Length);
        var rest = eighths % Eighths.Length;
        return (new string('█', eighths / Eighths.Length) + (rest > 0 ? Eighths[rest - 1] : "")).PadRight(columns);
    }

    /// <summary>A column for each number, the highest full; a number of 0 stands as the lowest.</summary>
    public static string Sparkline(IReadOnlyList<double> numbers)
    {
        var most = numbers.DefaultIfEmpty(0).Max();
        return string.Concat(
            numbers.Select(n => Heights[most <= 0 ? 0 : (int)Math.Round(Math.Clamp(n / most, 0, 1) * (Heights.Length - 1))]));
    }

    /// <summary>The same for a terminal without UTF-8: one ASCII character for each shape.</summary>
    public static string Plain(string text) => text.All(char.IsAscii) ? text : string.Concat(text.Select(c => c switch
    {
        '●' => '*',
        '◐' => '~',
        '○' => '.',
        '▲' => '!',
        '■' => '#',
        '…' => '~',
        '─' => '-',
        '│' => '|',
        '┌' or '┐' or '└' or '┘' => '+',
        >= '▁' and <= '▏' => '#',
        _ when char.IsAscii(c) => c,
        _ => '?',
    }));

    /// <summary>
    /// Whether a terminal shows UTF-8, by the locale of POSIX: of LC_ALL, LC_CTYPE and LANG the first that is set counts.
    /// </summary>
    /// <returns>True also where none is set: most terminals do.</returns>
    public static bool AreShown(params string?[] locale) =>
        locale.FirstOrDefault(l => !string.IsNullOrEmpty(l)) is not { } name
        || name.Replace("-", "", StringComparison.Ordinal).Contains("utf8", StringComparison.OrdinalIgnoreCase);
}
