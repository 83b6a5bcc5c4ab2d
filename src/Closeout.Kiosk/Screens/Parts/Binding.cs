namespace Closeout.Screens.Parts;

/// <summary>One key of a screen, written once: what it does, and what the key line, the help and the guide say of it.</summary>
/// <param name="Line">What it does in a word or two, for the key line; null: it is not told there.</param>
/// <param name="Do">What it comes to.</param>
public sealed record Binding(Keys Keys, string? Line, Func<Keystroke, Reply> Do)
{
    /// <summary>The row of the key line above the last: 0 is the last.</summary>
    public int Row { get; init; }

    /// <summary>What it does as the help and the guide say it; empty: as the key line says it.</summary>
    public string Help { get; init; } = "";

    /// <summary>The keys in a row as they are told, wide apart where there is room.</summary>
    /// <param name="columns">The most that they may take.</param>
    public static string Told(IEnumerable<Binding> bindings, int row, int columns)
    {
        var told = bindings.Where(b => b.Row == row && b.Line is not null).Select(b => $"{b.Keys.Name} {b.Line}".Trim()).ToList();
        return new[] { "   ", "  ", " " }.Select(gap => string.Join(gap, told))
            .First(line => line.Length <= columns || !line.Contains("  ", StringComparison.Ordinal));
    }

    /// <summary>Writes a row of the key line, and what a tap on each key does.</summary>
    public static void Draw(Sheet sheet, int line, IEnumerable<Binding> bindings, int row, int columns)
    {
        var told = Told(bindings, row, columns);
        sheet.Write(line, 1, told, Look.Strong, sheet.Width - 2);
        var at = 0;
        foreach (var binding in bindings.Where(b => b.Row == row && b.Line is not null))
        {
            var words = $"{binding.Keys.Name} {binding.Line}".Trim();
            at = told.IndexOf(words, at, StringComparison.Ordinal);
            if (binding.Keys.Stroke is { } stroke)
                sheet.Taps.Add(line, 1 + Cells.Count(told[..at]), 1 + Cells.Count(told[..(at + words.Length)]), [stroke]);

            at += words.Length;
        }
    }

    /// <summary>The keys with what they do, for the help.</summary>
    public static IEnumerable<string> Explained(IEnumerable<Binding> bindings) =>
        bindings.Where(b => b.Words.Length > 0).Select(b => $"{b.Keys.Name} {b.Words}").Distinct();

    private string Words => Help.Length > 0 ? Help : Line ?? "";
}
