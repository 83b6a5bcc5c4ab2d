using Closeout.Restock;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>Why a line of the plan says what it says: the sentences, and the demand as bars.</summary>
public sealed record WhyScreen(Screen Back, Code<Van> Van, Code<Item> Item, int Top = 0) : Screen
{
    private const int Indent = 10;

    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.F(5), Line(scene) is null ? null : T("change (lead)"), _ => FormScreen.Of(PlanForms.Change, scene, Back, Van, Item)),
        new(Keys.F(6), Line(scene) is null ? null : T("move it"), _ => FormScreen.Of(MoveForms.Move, scene, Back, Van, Item)),
        new(Keys.Arrows, T("scroll"), key => this with { Top = Scrolling.To(Top, key.Press) }),
        HelpKey(Line(scene) is null ? null : T("help")),
        new(Keys.Of("Esc", Press.Escape, Press.Enter), T("back to the plan"), _ => Back),
    ];

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) => PlanHelp.Lines;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        if (Line(scene) is not { } line)
        {
            sheet.Write(2, 1, T("This line is no longer in the plan."));
            return;
        }

        var plan = scene.Tonight.Plan;
        Frame.Head(sheet, scene.Depot, T("WHY"), Spell.Day(plan.Date));
        sheet.Write(
            1, 1, T($"{line.Van.Code} {line.Van.Name}, {line.Item.Description}: {line.Units} to load"), Look.Strong, sheet.Width - 2);
        var setup = scene.Depot.Setup;
        List<(string Word, string Text)> told = [.. Frame.Hanging(
            [
                .. Why.Of(setup, line, plan.Weight(line.Van.Code)), .. WhyLearned.Of(setup, plan, line), .. Pictures(plan, line),
            ],
            sheet.Width - Indent - 2)];
        var bars = line.Demand.Spread == Spread.None ? [] : Why.Bars(line, Math.Clamp(sheet.Height - 6 - told.Count, 8, 14));
        var room = sheet.Height - 6;
        var top = Math.Min(Top, Math.Max(0, told.Count + bars.Count - room));
        for (var row = 0; row < room && top + row < told.Count + bars.Count; row++)
        {
            if (top + row < told.Count)
            {
                sheet.Write(3 + row, 1, told[top + row].Word, Look.Faint, Indent - 1);
                sheet.Write(3 + row, Indent, told[top + row].Text);
            }
            else
            {
                Bar(sheet, 3 + row, bars[top + row - told.Count], Math.Max(1e-9, bars.Max(b => b.Chance)));
            }
        }

        if (told.Count + bars.Count - room - top is > 0 and var more)
            sheet.Write(sheet.Height - 3, 1, T($"{Spell.Count(more, T("line"), T("lines"))} below"), Look.Faint);
    }

    private RestockLine? Line(Scene scene) => scene.Tonight.Plan.Lines.FirstOrDefault(l => l.Van.Code == Van && l.Item.Code == Item);

    /// <summary>What changed, and a supplier's delays, as a line of columns each.</summary>
    private static IEnumerable<(string, string)> Pictures(RestockPlan plan, RestockLine line)
    {
        foreach (var kind in line.Booked.Visits.Select(v => v.Kind))
        {
            if (plan.Learned.History.HistoryOf(kind, line.Item.Code).Changes is [.., var last])
            {
                var days = plan.Learned.History.DaysOf(kind, line.Item.Code)
                    .ToLookup(d => d.Date < last.From, d => d.Units / (double)d.Visits);
                var all = days[true].Concat(days[false]).ToList();
                var picture = Shapes.Sparkline(all);
                yield return (T("By day"), $"{picture[..days[true].Count()]}|{picture[days[true].Count()..]}  {kind}");
            }
        }

        if (plan.Learned.Suppliers.Of(line.Item.Supplier).Delays is { Count: > 0 } delays)
            yield return (T("Days late"), Shapes.Sparkline([.. delays.TakeLast(60).Select(d => (double)d)]) + T($"  up to {delays.Max()}"));
    }

    /// <summary>A bar is as long as its chance is great; the marks say where low, target, high and aboard lie.</summary>
    private static void Bar(Sheet sheet, int row, (int From, int To, double Chance, string Marks) bar, double longest)
    {
        var room = Math.Max(8, sheet.Width - 53);
        sheet.Write(row, 1, bar.From == bar.To ? $"{bar.From,7}" : $"{bar.From,3}-{bar.To,3}", Look.Faint);
        sheet.Write(row, Indent, Shapes.Bar(bar.Chance / longest, room));
        sheet.Write(row, 12 + room, $"{Why.Percent(bar.Chance),11}", Look.Faint);
        sheet.Write(row, 25 + room, bar.Marks.Length > 0 ? "< " + bar.Marks : "", Look.Strong);
    }
}

/// <summary>The help of the plan and of its why.</summary>
internal static class PlanHelp
{
    public static string[] Lines =>
    [
        T(
            "What each van lacks for tomorrow and where it comes from: sealed cartons from the shelf, loose units from the leftovers "
                + "bin, loose units from cartons opened at the depot."),
        "",
        T(
            "basis: low (the van's least), booked (the visits booked need more), high (they need more than the van may carry), lead (a "
                + "lead changed it), payload (more would be too heavy for the van). short: the depot cannot fill it. ?: the van is not "
                + "closed, so nobody counted."),
        "",
        T(
            "Enter says why: the bookings, the demand that follows from them, the promise, the limits, what is given from where, and the "
                + "chance that it is missed. Bars are the chances of the demand."),
        T(
            "F4 loads the van, F5 changes the line: a lead's, with a reason. F6 records stock moved from van to van; the view of what is "
                + "short proposes some. closeout restock --out FILE writes all of it; closeout picks --out DIR makes sheets to print."),
    ];
}
