using Closeout.Restock;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>How the lines of the plan are ordered.</summary>
public enum PlanOrder
{
    ByVan,
    ByItem,
    Short,
}

/// <summary>Tomorrow's gaps: what each van lacks, what it gets and from where, who goes short.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="Selected">The line that Enter explains.</param>
/// <param name="Filter">Lines that do not contain it are left out.</param>
public sealed record PlanScreen(Screen Back, int Selected = 0, string Filter = "", PlanOrder Order = PlanOrder.ByVan) : Screen
{
    private const int LongestFilter = 24;
    private const int Wide = 110;
    private const int GaugeAt = 82;
    private const int GaugeCells = 8;

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var lines = Lines(scene.Tonight.Plan);
        var line = lines.Count > 0 ? lines[Math.Clamp(Selected, 0, lines.Count - 1)] : null;
        return
        [
            new(Keys.Enter, T("why"), _ => line is null ? this : new WhyScreen(this, line.Van.Code, line.Item.Code)) { Row = 1 },
            new(Keys.Tab, T("by van, by item, short"),
                _ => this with { Selected = 0, Order = (PlanOrder)(((int)Order + 1) % 3) }) { Row = 1 },
            new(Keys.F(4), T("load"), _ => line is null ? this : LoadScreen.Of(scene.Tonight, line.Van.Code, Back)) { Row = 1 },
            new(Keys.F(5), T("change (lead)"),
                _ => FormScreen.Of(PlanForms.Change, scene, this, line?.Van.Code, line?.Item.Code)) { Row = 1 },
            new(Keys.F(6), T("move it"), _ => FormScreen.Of(MoveForms.Move, scene, this, line?.Van.Code, line?.Item.Code))
                { Row = 1, Help = T("moves stock between vans") },
            new(Keys.Typing, T("to filter"),
                key => Filter.Length < LongestFilter ? this with { Selected = 0, Filter = Filter + key.Character } : this),
            new(Keys.Arrows.As(T("Up/Down PgUp/PgDn")), T("choose"),
                key => this with { Selected = Scrolling.Within(Selected, key.Press, lines.Count) }),
            HelpKey(),
            new(Keys.Escape, T("back to the wall"), _ => Filter.Length > 0 ? this with { Filter = "", Selected = 0 } : Back),
            new(Keys.Backspace, null, _ => this with { Selected = 0, Filter = TextLine.WithoutLast(Filter) }),
        ];
    }

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) => PlanHelp.Lines;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (depot, plan) = (scene.Depot, scene.Tonight.Plan);
        var lines = Lines(plan);
        Frame.Head(sheet, depot, T("TOMORROW'S PLAN"), Spell.Day(plan.Date));
        sheet.Write(1, 1,
            T($"{Words(Order)}: {Spell.Count(lines.Count, T("line"), T("lines"))}, "
                    + $"{Spell.Count(lines.Sum(l => l.Units), T("unit"), T("units"))} to "
                + $"load, {lines.Sum(l => l.Short)} short")
            + (Filter.Length > 0 ? T($"; only with \"{Filter}\"") : ""), Look.Plain, sheet.Width - 2);
        sheet.Write(2, 1, T("van         item            aboard target basis  need sealed  bin open  short"), Look.Faint);

        var below = Order == PlanOrder.Short
            ? [.. PlanWords.Short(plan).SelectMany(m => Hung(m, sheet.Width - 16)).Take(sheet.Height / 2)]
            : Below(depot, plan, sheet.Width - 16).ToList();
        var room = Math.Max(1, sheet.Height - 6 - below.Count);
        var at = Math.Clamp(Selected, 0, Math.Max(0, lines.Count - 1));
        var top = Math.Clamp(at - room / 2, 0, Math.Max(0, lines.Count - room));
        for (var i = 0; i < room && top + i < lines.Count; i++)
            Line(sheet, 3 + i, lines[top + i], top + i == at);

        foreach (var (i, line) in below.Index())
            sheet.Write(sheet.Height - 3 - below.Count + i, 1, line);

        var more = lines.Count - top - room;
        sheet.Write(
            sheet.Height - 3, 1, more > 0 ? T($"{Spell.Count(more, T("line"), T("lines"))} below") : T("end of the list"), Look.Faint);
    }

    /// <summary>The lines as they are ordered and filtered.</summary>
    private IReadOnlyList<RestockLine> Lines(RestockPlan plan)
    {
        var lines = plan.Lines.Where(l => Fits(l) && (Order != PlanOrder.Short || l.Short > 0));
        return Order == PlanOrder.ByVan ? [.. lines] : [.. lines.OrderBy(l => l.Item.Code).ThenBy(l => l.Van.Bay)];
    }

    private bool Fits(RestockLine line) => new[] { line.Van.Code.Text, line.Van.Name, line.Item.Code.Text, line.Item.Description }
        .Any(t => t.Contains(Filter, StringComparison.OrdinalIgnoreCase));

    private static void Line(Sheet sheet, int row, RestockLine l, bool here)
    {
        var look = here ? Look.Field : Look.Plain;
        sheet.Write(row, 0, here ? ">" : " ", look);
        sheet.Write(row, 1, $"{l.Van.Code} {l.Van.Name}".PadRight(12), look, 12);
        sheet.Write(row, 13, l.Item.Code.Text.PadRight(16), look, 16);
        var from =
            $"{l.Sealed,6} {l.FromBin,4} {l.FromOpened,4} {(l.Short > 0 ? $"{l.Short,6}" : "      ")}{(l.Provisional ? " ?" : "  ")}";
        sheet.Write(row, 29, $"{l.Aboard,6} {l.Target.Units,6} {Target.Words(l.Target.Basis),-7}{l.Need,4} {from}", look);
        if (sheet.Width < Wide)
            return;

        // What is aboard against what is to be: the numbers stand at the left.
        sheet.Write(row, GaugeAt, Shapes.Bar(l.Target.Units == 0 ? 1 : l.Aboard / (double)l.Target.Units, GaugeCells), Look.Strong);
        sheet.Write(row, GaugeAt + GaugeCells + 1, Cells.Middle(l.Item.Description, sheet.Width - GaugeAt - GaugeCells - 2), Look.Faint);
    }

    /// <summary>Whether the piece holds the van still: a lead may have lifted it.</summary>
    private static bool IsHeld(Depot depot, Code<Van> van, KitMissing lack) =>
        Readiness.Standing(depot, van).Any(h => h.Said == Readiness.KitWords(lack));

    /// <summary>What somebody must see to: provisional vans, kit to bring, what to buy.</summary>
    private static IEnumerable<string> Below(Depot depot, RestockPlan plan, int columns)
    {
        var open = plan.Lines.Where(l => l.Provisional).Select(l => l.Van.Code).Distinct().ToList();
        var kit = depot.Setup.Vans
            .SelectMany(v =>
                KitCheck.MissingOf(depot, v.Code)
                    .Select(m => $"{v.Code}: {m.Missing} {m.Piece.Description}{(IsHeld(depot, v.Code, m) ? T(" (van held)") : "")}"))
            .ToList();
        var buy = plan.Shelf.Where(b => b.Order.Cartons > 0).Select(b => $"{b.Item.Code} {b.Order.Cartons}").ToList();
        var heavy = plan.Weights.Where(w => w.AboveLb > 0)
            .Select(w => T($"{w.Van.Code} by {depot.Setup.Units.Weight(w.AboveLb)} with what is aboard: take stock off"));
        var lines = new[]
        {
            (T("? provisional"), open.Count == 0 ? "" : T($"{string.Join(", ", open)} not closed: on record, not counted")),
            (T("Changed"),
                string.Join(", ", depot.Planning.Overrides.Where(o => o.Change.Date == plan.Date).Select(o => Changed(o.Change)))),
            (T("Cut, weight"),
                string.Join("; ", plan.Weights.Where(w => w.Cut.Count > 0).Select(w => $"{w.Van.Code} {WeightWords.Cut(w)}"))),
            (T("Too heavy"), string.Join(", ", heavy)),
            (T("Kit to bring"), string.Join(", ", kit)),
            (T("To order"), buy.Count == 0 ? "" : string.Join(", ", buy) + T(" cartons")),
            (T("Not known"), PlanWords.Unknown(plan.Unknown) ?? ""),
            (T("Could move"), plan.Moves.Count == 0 ? "" : T($"{Spell.Count(plan.Moves.Count, T("move"), T("moves"))} between vans would "
                + $"help where items are short: Tab")),
        };
        return lines.Where(l => l.Item2.Length > 0).SelectMany(l => Hung(l, columns));
    }

    private static IEnumerable<string> Hung((string Word, string Sentence) line, int columns) =>
        Cells.Wrap(line.Sentence, columns).Take(2).Select((text, i) => (i == 0 ? line.Word : "").PadRight(14) + text);

    private static string Changed(PlanOverridden c) => c.Kind switch
    {
        OverrideKind.Exclude => T($"{c.Van} excluded"),
        OverrideKind.Extra => T($"{c.Van} {c.Item} {c.Units} more"),
        OverrideKind.Target => T($"{c.Van} {c.Item} target {c.Units}"),
        _ => throw new InvalidOperationException($"no such change: {c.Kind}"),
    };

    private static string Words(PlanOrder order) => order switch
    {
        PlanOrder.ByVan => T("By van"),
        PlanOrder.ByItem => T("By item"),
        PlanOrder.Short => T("What is short"),
        _ => throw new InvalidOperationException($"no such order: {order}"),
    };
}
