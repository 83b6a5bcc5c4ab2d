using System.Globalization;
using Closeout.DayBook;

namespace Closeout.Screens;

/// <summary>Who did what when, on the open business date, the newest first.</summary>
public static class DayBookView
{
    public static void Draw(Sheet sheet, Depot depot, DayBookScreen s)
    {
        var lines = Filtered(s);
        View.Head(sheet, depot, "DAY BOOK", View.Count(lines.Count, "entry", "entries"));
        sheet.Write(1, 1, "entry  at     van   who   item             what", Look.Faint);
        var room = Math.Max(1, sheet.Height - 5);
        foreach (var (row, (recorded, line)) in lines.Skip(Math.Min(s.Top, Math.Max(0, lines.Count - room))).Take(room).Index())
        {
            sheet.Write(2 + row, 1, recorded.Number.ToString(CultureInfo.InvariantCulture).PadLeft(5));
            sheet.Write(2 + row, 8, View.Clock(recorded.At));
            sheet.Write(2 + row, 15, line.Van ?? "-", Look.Plain, 5);
            sheet.Write(2 + row, 21, line.Person ?? "-", Look.Plain, 5);
            sheet.Write(2 + row, 27, line.Item ?? "-", Look.Plain, 16);
            sheet.Write(2 + row, 44, line.What, Look.Plain, sheet.Width - 45);
        }

        var column = sheet.Write(sheet.Height - 2, 1, "Only: ");
        sheet.Write(sheet.Height - 2, column, $"[{s.Filter.PadRight(24)}]", Look.Field);
        sheet.Write(sheet.Height - 2, column + 28, "a van, a person, an item, or a word", Look.Faint);
        sheet.Caret = (sheet.Height - 2, column + 1 + s.Filter.Length);
        View.Keys(sheet, "type to filter   Up/Down scroll   F5 end the day (lead)   F1 help   Esc back");
    }

    /// <summary>The lines that the filter leaves: a code that is just that, or a word in the sentence.</summary>
    public static IReadOnlyList<(Recorded Recorded, DayBookLine Line)> Filtered(DayBookScreen s) => s.Filter.Length == 0
        ? s.Lines
        : [.. s.Lines.Where(l => new[] { l.Line.Van, l.Line.Person, l.Line.Item }.Any(c => string.Equals(c, s.Filter, StringComparison.OrdinalIgnoreCase))
            || l.Line.What.Contains(s.Filter, StringComparison.OrdinalIgnoreCase)
            || (l.Line.Item?.Contains(s.Filter, StringComparison.OrdinalIgnoreCase) ?? false))];
}
