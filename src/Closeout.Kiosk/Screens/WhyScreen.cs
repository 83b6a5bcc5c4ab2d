using Closeout.Restock;
using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>Why a line of the plan says what it says: the sentences, and the demand as bars.</summary>
public sealed record WhyScreen(Screen Back, Code<Van> Van, Code<Item> Item) : Screen
{
    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.F(5), Line(scene) is null ? null : T("change (lead)"), _ => FormScreen.Of(PlanForms.Change, scene, Back, Van, Item)),
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
        var row = 3;
        foreach (var (heading, sentence) in Why.Of(scene.Depot.Setup, line, plan.Weight(line.Van.Code)))
        {
            sheet.Write(row, 1, heading, Look.Faint);
            foreach (var text in Cells.Wrap(sentence, sheet.Width - 12))
                sheet.Write(row++, 10, text);
        }

        if (line.Demand.Spread != Spread.None)
            Bars(sheet, row + 1, line);
    }

    private RestockLine? Line(Scene scene) => scene.Tonight.Plan.Lines.FirstOrDefault(l => l.Van.Code == Van && l.Item.Code == Item);

    /// <summary>A bar is as long as its chance is great; the marks say where low, target, high and aboard lie.</summary>
    private static void Bars(Sheet sheet, int row, RestockLine line)
    {
        var bars = Why.Bars(line, Math.Max(2, Math.Min(14, sheet.Height - 2 - row)));
        var longest = Math.Max(1e-9, bars.Max(b => b.Chance));
        var room = Math.Max(8, sheet.Width - 53);
        foreach (var (from, to, chance, marks) in bars)
        {
            sheet.Write(row, 1, from == to ? $"{from,7}" : $"{from,3}-{to,3}", Look.Faint);
            sheet.Write(row, 10, Shapes.Bar(chance / longest, room));
            sheet.Write(row, 12 + room, $"{Why.Percent(chance),11}", Look.Faint);
            sheet.Write(row++, 25 + room, marks.Length > 0 ? "< " + marks : "", Look.Strong);
        }
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
            "F4 loads the van, F5 changes the line: a lead's, with a reason. Type a piece of a name to see only that. closeout restock "
                + "--out FILE writes all of it; closeout picks --out DIR makes sheets to print."),
    ];
}
