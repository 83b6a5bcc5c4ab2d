using System.Globalization;
using Closeout.Cardboard;
using Closeout.Files;

namespace Closeout.Html;

/// <summary>The boxes of the whole book as charts, by week, month and van, with all numbers as tables; and by item as a table.</summary>
public static class RecyclingPage
{
    private static string Heads =>
        HtmlPage.NumberHeads(T("days"), T("boxes"), T("flattened"), T("missing"), T("weight"), T("volume"));

    private static ChartPart[] Boxes => [new(T("flattened"), Tone.Good), new(T("missing"), Tone.Stop)];

    public static string Html(Depot depot, IReadOnlyList<DatedBoxes> boxes)
    {
        var name = depot.Setup.Depot.Name;
        var page = new HtmlPage(T($"{name}, recycling"), $"{Tones.Style}\n{Chart.Style}", $"\n{Tones.Head}");
        page.Add($"<h1>{HtmlPage.Safe(T($"{name}: recycling"))}{Tones.Rehearsal(depot)}</h1>");
        page.Paragraph(T($"Cardboard boxes up to {Spell.Day(depot.Date)}. Volumes rest on one density, "
            + $"{depot.Setup.Depot.CardboardLbPerCuYd:0.##} lb a cubic yard, and are good to a factor of about two."));
        if (boxes.Count == 0)
            page.Paragraph(T("No boxes yet: they are counted when a van is closed out."));

        Section(page, depot, boxes, Period.Week, t => BoxChart(Period.Week, t));
        Section(page, depot, boxes, Period.Month, totals => Weights(depot, totals));
        Section(page, depot, boxes, Period.Van, t => BoxChart(Period.Van, t));
        Section(page, depot, boxes, Period.Item, _ => "");
        var sum = CardboardTotals.Sum(depot.Setup.Depot, boxes.Select(b => b.Row));
        if (GreenhouseGas.Words(depot.Setup.Depot, sum.WeightLb) is { } gas)
            page.Paragraph(gas);

        return page.End();
    }

    private static void Section(
        HtmlPage page, Depot depot, IReadOnlyList<DatedBoxes> boxes, Period period, Func<IReadOnlyList<PeriodTotal>, string> chart)
    {
        var totals = RecyclingTotals.By(period, depot.Setup.Depot, boxes);
        if (totals.Count == 0)
            return;

        page.Heading(T($"By {RecyclingTotals.Words(period)}"));
        page.Add(chart(totals));
        page.Add("<div class=\"wide\">");
        var all = CardboardTotals.Sum(depot.Setup.Depot, boxes.Select(b => b.Row));
        page.Table($"<th>{RecyclingTotals.Words(period)}</th>{Heads}",
            totals.Select(t => Row(depot, Name(period, t), t.Days, t.Sum))
                .Append(Row(depot, "all", boxes.Select(b => b.Date).Distinct().Count(), all)));
        page.Add("</div>");
    }

    private static string BoxChart(Period period, IReadOnlyList<PeriodTotal> totals) => Chart.Svg("boxes", Boxes,
        [
            // What has no van of its own would dwarf the others: it stands in the table.
            .. totals.Where(t => t.Name.Length > 0).Select(t => new ChartBar(
                period == Period.Week ? t.Name[t.Name.IndexOf('W')..] : t.Name,
                [t.Sum.Flattened, Math.Max(0, t.Sum.Missing)])),
        ],
        n => n.ToString("0.#", CultureInfo.InvariantCulture));

    private static string Weights(Depot depot, IReadOnlyList<PeriodTotal> totals)
    {
        var units = depot.Setup.Units;
        return Chart.Svg("weight", [new(T($"{units.WeightUnit} of cardboard"), Tone.Mine)],
            [.. totals.Select(t => new ChartBar(t.Name, [units.Metric ? t.Sum.WeightLb * UnitSystem.KgPerPound : t.Sum.WeightLb]))],
            n => n.ToString("0.##", CultureInfo.InvariantCulture));
    }

    private static string Name(Period period, PeriodTotal total) => total.Name.Length > 0 ? total.Name
        : period == Period.Van ? T("depot, or earlier") : T("earlier records");

    private static string Row(Depot depot, string name, int days, BoxSum sum)
    {
        var units = depot.Setup.Units;
        string[] numbers =
        [
            .. new[] { days, sum.Expected, sum.Flattened, sum.Missing }.Select(n => n.ToString(CultureInfo.InvariantCulture)),
            units.Weight(sum.WeightLb), units.Volume(sum.VolumeCuYd),
        ];
        return $"<td>{HtmlPage.Safe(name)}</td>" + string.Concat(numbers.Select(n => $"<td class=\"n\">{n}</td>"));
    }
}
