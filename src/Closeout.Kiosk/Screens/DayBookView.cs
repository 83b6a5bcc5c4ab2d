using System.Globalization;
using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>Who did what when, on the open business date, the newest first; below the list the chosen entry whole.</summary>
public static class DayBookView
{
    /// <summary>Lines kept for the chosen entry, so that the list seldom changes its height.</summary>
    private const int Least = 2;

    public static void Draw(Sheet sheet, Depot depot, DayBookScreen s)
    {
        var lines = Filtered(s);
        View.Head(sheet, depot, "DAY BOOK", View.Count(lines.Count, "entry", "entries"));
        sheet.Write(1, 1, "entry  at     van   who   item             what", Look.Faint);
        var at = Math.Clamp(s.Selected, 0, Math.Max(0, lines.Count - 1));
        var whole = lines.Count == 0 ? [] : Sheet.Wrap(lines[at].Line.What, sheet.Width - 3);
        var below = Math.Max(Least, whole.Count);
        var room = Math.Max(1, sheet.Height - 5 - below);
        var top = Math.Clamp(at - room + 1, 0, Math.Max(0, lines.Count - room));
        foreach (var (row, (recorded, line)) in lines.Skip(top).Take(room).Index())
        {
            var look = top + row == at ? Look.Field : Look.Plain;
            sheet.Write(2 + row, 0, top + row == at ? ">" : " ", look);
            sheet.Write(2 + row, 1, recorded.Number.ToString(CultureInfo.InvariantCulture).PadLeft(5), look);
            sheet.Write(2 + row, 8, View.Clock(recorded.At), look);
            sheet.Write(2 + row, 15, line.Van ?? "-", look, 5);
            sheet.Write(2 + row, 21, line.Person ?? "-", look, 5);
            sheet.Write(2 + row, 27, line.Item ?? "-", look, 16);
            sheet.Write(2 + row, 44, Sheet.Cut(line.What, sheet.Width - 45), look);
        }

        foreach (var (row, text) in whole.Index())
        {
            sheet.Write(sheet.Height - 2 - below + row, 1, text);
        }

        var column = sheet.Write(sheet.Height - 2, 1, "Only: ");
        sheet.Write(sheet.Height - 2, column, $"[{s.Filter.PadRight(24)}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 28, "a van, a person, an item, or a word", Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + s.Filter.Length);
        View.Keys(sheet, "type to filter   Up/Down choose   F5 end the day (lead)   F1 help   Esc back");
    }

    /// <summary>The lines that the filter leaves: a code that is just that, or a word in the sentence.</summary>
    public static IReadOnlyList<(Recorded Recorded, DayBookLine Line)> Filtered(DayBookScreen s) => s.Filter.Length == 0
        ? s.Lines
        : [.. s.Lines.Where(l => new[] { l.Line.Van, l.Line.Person, l.Line.Item }.Any(c => string.Equals(c, s.Filter, StringComparison.OrdinalIgnoreCase))
            || l.Line.What.Contains(s.Filter, StringComparison.OrdinalIgnoreCase)
            || (l.Line.Item?.Contains(s.Filter, StringComparison.OrdinalIgnoreCase) ?? false))];
}
