using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>Tomorrow's gaps: what each van lacks, what it gets and from where, who goes short.</summary>
public static class TomorrowView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, TomorrowScreen s)
    {
        View.Head(sheet, depot, "TOMORROW'S GAPS", View.Day(plan.Date));
        var lines = plan.Lines.Where(l => Fits(l, s.Filter)).ToList();
        var units = lines.Sum(l => l.Units);
        sheet.Write(1, 1, $"{View.Count(lines.Count, "line", "lines")}, {View.Count(units, "unit", "units")} to load, {lines.Sum(l => l.Short)} short"
            + (s.Filter.Length > 0 ? $"; only with \"{s.Filter}\"" : ""), Look.Plain, sheet.Width - 2);
        sheet.Write(2, 1, "van         item             aboard low  need  cartons  bin  opened  short", Look.Faint);

        var kit = Kit(depot, sheet.Width - 14).ToList();
        var room = Math.Max(1, sheet.Height - 6 - kit.Count);
        var top = Math.Clamp(s.Top, 0, Math.Max(0, lines.Count - room));
        for (var i = 0; i < room && top + i < lines.Count; i++)
        {
            Line(sheet, 3 + i, lines[top + i]);
        }

        var row = sheet.Height - 2 - kit.Count;
        foreach (var line in kit)
        {
            sheet.Write(row++, 1, line);
        }

        var below = lines.Count - top - room;
        sheet.Write(sheet.Height - 2, 1, below > 0 ? $"{View.Count(below, "line", "lines")} below" : "end of the list", Look.Faint);
        View.Keys(sheet, "type to filter   Up/Down PgUp/PgDn scroll   F1 help   Esc back to the wall");
    }

    private static void Line(Sheet sheet, int row, RestockLine l)
    {
        sheet.Write(row, 1, $"{l.Van.Code} {l.Van.Name}", Look.Plain, 11);
        sheet.Write(row, 13, l.Item.Code.Text, Look.Plain, 16);
        sheet.Write(row, 30, $"{l.Aboard,6} {l.Low,3} {l.Need,5} {l.Sealed,8} {l.FromBin,4} {l.FromOpened,7}");
        sheet.Write(row, 69, l.Short > 0 ? $"SHORT {l.Short}" : "", Look.Strong);
        if (l.Provisional)
        {
            sheet.Write(row, l.Short > 0 ? 78 : 69, l.Short > 0 ? "?" : "provisional", Look.Faint);
        }

        if (sheet.Width >= 110)
        {
            sheet.Write(row, 82, l.Item.Description, Look.Faint);
        }
    }

    /// <summary>Kit that must come from the shelf or the shop before the van goes out.</summary>
    private static IEnumerable<string> Kit(Depot depot, int columns)
    {
        var lacking = depot.Setup.Vans
            .SelectMany(v => KitCheck.MissingOf(depot, v.Code).Select(m => $"{v.Code}: {m.Missing} {m.Piece.Description}{(m.Piece.Critical ? " (van held)" : "")}"))
            .ToList();
        var begin = "Kit to bring ";
        foreach (var line in lacking.Count == 0 ? [] : Sheet.Wrap(string.Join(", ", lacking), columns).Take(3))
        {
            yield return begin + line;
            begin = new string(' ', begin.Length);
        }
    }

    private static bool Fits(RestockLine line, string filter) => new[] { line.Van.Code.Text, line.Van.Name, line.Item.Code.Text, line.Item.Description }
        .Any(t => t.Contains(filter, StringComparison.OrdinalIgnoreCase));
}
