using System.Globalization;
using Closeout.Restock;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>How well the plan did.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record AccuracyScreen(Screen Back, int Top = 0) : Screen
{
    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.Arrows, T("scroll"), key => this with { Top = Scrolling.To(Top, key.Press) }),
        HelpKey(),
        new(Keys.Escape, T("back to the wall"), _ => Back),
    ];

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) =>
        [T(
            "For each priority: how often demand stayed within the plan's target, against what was promised. emptied: nothing was left, "
                + "so demand may have been more. Judged by the close-outs of the day that was planned for.")];

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var depot = scene.Depot;
        Frame.Head(sheet, depot, T("PLAN ACCURACY"), T($"{PlanningWindow.Days} days"));
        sheet.Write(2, 1, T("priority  promised     met  lines  within  ran out     used  missed aboard/used"), Look.Faint);
        var row = 3;
        foreach (var sum in Accuracy.Sums(depot))
            Line(sheet, row++, $"{sum.Priority}", depot, sum);

        if (row == 3)
            sheet.Write(row++, 1, T("Nothing yet: the plan of one evening is judged by the close-outs of the next."));

        foreach (var (word, text) in Frame.Hanging(AccuracyWords.Of(scene.Tonight), sheet.Width - 13).Take(sheet.Height / 2 - 4))
        {
            sheet.Write(row, 1, word, Look.Faint, 10);
            sheet.Write(row++, 12, text);
        }

        sheet.Write(++row, 1, T("day by day"), Look.Faint);
        var days = Accuracy.Of(depot).Reverse().ToList();
        var room = Math.Max(1, sheet.Height - 5 - row);
        foreach (var day in days.Skip(Math.Min(Top, Math.Max(0, days.Count - room))).Take(room))
            Line(sheet, ++row, string.Create(CultureInfo.InvariantCulture, $"{day.Date:MM-dd} {day.Priority}"), depot, day);

        sheet.Write(sheet.Height - 3, 1, T("emptied: nothing was left, so demand may have been more than anybody saw."), Look.Faint);
        sheet.Write(sheet.Height - 2, 1, T("missed: units demanded beyond what was aboard that morning, as visits report."), Look.Faint);
    }

    private static void Line(Sheet sheet, int row, string name, Depot depot, KeptPromises kept)
    {
        var share = kept.Lines == 0 ? 0 : kept.Within / (double)kept.Lines;
        var perUsed = kept.Used == 0 ? "-" : (kept.Aboard / (double)kept.Used).ToString("0.00", CultureInfo.InvariantCulture);
        sheet.Write(row, 1, name, Look.Plain, 9);
        sheet.Write(row, 11,
            $"{Why.Percent(depot.Setup.Depot.Service(kept.Priority)),8} {Why.Percent(share),7} {kept.Lines,6} {kept.Within,7} "
                + $"{kept.Emptied,8} {kept.Used,8} {kept.Missed,7} {perUsed,9}");
    }
}
