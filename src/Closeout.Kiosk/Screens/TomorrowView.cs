using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>Tomorrow's gaps: what each van lacks, what it gets and from where, who goes short.</summary>
public static class TomorrowView
{
    public static void Draw(Sheet sheet, Depot depot, RestockPlan plan, TomorrowScreen s)
    {
        View.Head(sheet, depot, "TOMORROW'S GAPS", View.Day(plan.Date));
        var lines = PlanKeys.Lines(plan, s);
        sheet.Write(1, 1, $"{Words(s.Order)}: {View.Count(lines.Count, "line", "lines")}, {View.Count(lines.Sum(l => l.Units), "unit", "units")} to load, {lines.Sum(l => l.Short)} short"
            + (s.Filter.Length > 0 ? $"; only with \"{s.Filter}\"" : ""), Look.Plain, sheet.Width - 2);
        sheet.Write(2, 1, "van         item            aboard target basis  need sealed  bin open  short", Look.Faint);

        var below = Below(depot, plan, sheet.Width - 16).ToList();
        var room = Math.Max(1, sheet.Height - 6 - below.Count);
        var at = Math.Clamp(s.Selected, 0, Math.Max(0, lines.Count - 1));
        var top = Math.Clamp(at - room / 2, 0, Math.Max(0, lines.Count - room));
        for (var i = 0; i < room && top + i < lines.Count; i++)
        {
            Line(sheet, 3 + i, lines[top + i], top + i == at);
        }

        var row = sheet.Height - 3 - below.Count;
        foreach (var line in below)
        {
            sheet.Write(row++, 1, line);
        }

        var more = lines.Count - top - room;
        sheet.Write(sheet.Height - 3, 1, more > 0 ? $"{View.Count(more, "line", "lines")} below" : "end of the list", Look.Faint);
        sheet.Write(sheet.Height - 2, 1, "Enter why   Tab by van, by item, short   F4 load the van   F5 change (lead)", Look.Strong);
        View.Keys(sheet, "type to filter   Up/Down PgUp/PgDn choose   F1 help   Esc back to the wall");
    }

    private static string Changed(PlanOverridden c) => c.Kind switch
    {
        OverrideKind.Exclude => $"{c.Van} excluded",
        OverrideKind.Extra => $"{c.Van} {c.Item} {c.Units} more",
        OverrideKind.Target => $"{c.Van} {c.Item} target {c.Units}",
        _ => throw new InvalidOperationException($"no such change: {c.Kind}"),
    };

    private static string Words(PlanOrder order) => order switch
    {
        PlanOrder.ByVan => "By van",
        PlanOrder.ByItem => "By item",
        PlanOrder.Short => "What is short",
        _ => throw new InvalidOperationException($"no such order: {order}"),
    };

    private static void Line(Sheet sheet, int row, RestockLine l, bool here)
    {
        var look = here ? Look.Field : Look.Plain;
        sheet.Write(row, 0, here ? ">" : " ", look);
        sheet.Write(row, 1, $"{l.Van.Code} {l.Van.Name}".PadRight(12), look, 12);
        sheet.Write(row, 13, l.Item.Code.Text.PadRight(16), look, 16);
        sheet.Write(row, 29, $"{l.Aboard,6} {l.Target.Units,6} {Target.Words(l.Target.Basis),-7}{l.Need,4} {l.Sealed,6} {l.FromBin,4} {l.FromOpened,4} {(l.Short > 0 ? $"{l.Short,6}" : "      ")}{(l.Provisional ? " ?" : "  ")}", look);
        if (sheet.Width >= 110)
        {
            sheet.Write(row, 82, l.Item.Description, Look.Faint);
        }
    }

    /// <summary>What somebody must see to: provisional vans, kit to bring, what to buy.</summary>
    private static IEnumerable<string> Below(Depot depot, RestockPlan plan, int columns)
    {
        var open = plan.Lines.Where(l => l.Provisional).Select(l => l.Van.Code).Distinct().ToList();
        var kit = depot.Setup.Vans
            .SelectMany(v => KitCheck.MissingOf(depot, v.Code).Select(m => $"{v.Code}: {m.Missing} {m.Piece.Description}{(m.Piece.Critical ? " (van held)" : "")}"))
            .ToList();
        var buy = plan.Shelf.Where(b => b.Order.Cartons > 0).Select(b => $"{b.Item.Code} {b.Order.Cartons}").ToList();
        var lines = new[]
        {
            ("? provisional", open.Count == 0 ? "" : $"{string.Join(", ", open)} not closed: by the book, nobody counted"),
            ("Changed", string.Join(", ", depot.Overrides.Where(o => o.Change.Date == plan.Date).Select(o => Changed(o.Change)))),
            ("Cut, weight", string.Join("; ", plan.Weights.Where(w => w.Cut.Count > 0).Select(w => $"{w.Van.Code} {WeightWords.Cut(w)}"))),
            ("Too heavy", string.Join(", ", plan.Weights.Where(w => w.AboveLb > 0).Select(w => $"{w.Van.Code} by {depot.Setup.Units.Weight(w.AboveLb)} with what is aboard: take stock off"))),
            ("Kit to bring", string.Join(", ", kit)),
            ("To order", buy.Count == 0 ? "" : string.Join(", ", buy) + " cartons"),
        };
        foreach (var (word, sentence) in lines.Where(l => l.Item2.Length > 0))
        {
            var begin = word.PadRight(14);
            foreach (var line in Sheet.Wrap(sentence, columns).Take(2))
            {
                yield return begin + line;
                begin = new string(' ', 14);
            }
        }
    }
}
