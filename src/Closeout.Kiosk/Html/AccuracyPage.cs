using System.Globalization;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Html;

/// <summary>How well the plan did, as charts: kept against promised by priority, and day by day; with all numbers as tables.</summary>
public static class AccuracyPage
{
    private const string Heads =
        "<th class=\"n\">promised</th><th class=\"n\">kept</th><th class=\"n\">lines</th><th class=\"n\">within</th>"
            + "<th class=\"n\">emptied</th><th class=\"n\">used</th><th class=\"n\">missed</th><th class=\"n\">aboard</th>";

    public static string Html(Depot depot)
    {
        var name = depot.Setup.Depot.Name;
        var page = new HtmlPage($"{name}, how well the plan did", $"{Tones.Style}\n{Chart.Style}", $"\n{Tones.Head}");
        page.Add($"<h1>{HtmlPage.Safe(name)}: how well the plan did{Tones.Rehearsal(depot)}</h1>");
        var (sums, days) = (Accuracy.Sums(depot), Accuracy.Of(depot));
        page.Add($"<p>The {PlanningWindow.Days} days up to {Spell.Day(depot.Date)}. A line is one item of one van on one date with visits "
            + "booked; within: what was needed stayed within the plan's target. Emptied: nothing was left, so more may have been needed "
            + "than anybody saw. Missed: units needed beyond what was aboard that morning.</p>");
        if (sums.Count == 0)
        {
            page.Add("<p>Nothing yet: the plan of one evening is judged by the close-outs of the next.</p>");
            return page.End();
        }

        page.Add("<h2>By priority</h2>");
        page.Add(Chart.Svg("kept by priority", [new("kept", Tone.Good)],
            [.. sums.Select(s => new ChartBar($"{s.Priority}", [Share(s)], depot.Setup.Depot.Service(s.Priority)))],
            n => Why.Percent(n), "promised", most: 1));
        Table(page, "<th>priority</th>", sums.Select(s => Row(depot, s, $"<td>{s.Priority}</td>")));
        page.Add("<h2>Day by day</h2>");
        page.Add(Chart.Svg("lines by day", [new("within", Tone.Good), new("beyond", Tone.Note)],
            [
                .. days.GroupBy(d => d.Date).Select(d => new ChartBar(
                    d.Key.ToString("d MMM", CultureInfo.InvariantCulture), [d.Sum(k => k.Within), d.Sum(k => k.Lines - k.Within)])),
            ],
            n => n.ToString("0.#", CultureInfo.InvariantCulture)));
        Table(page, "<th>date</th><th>priority</th>", days.Select(d => Row(depot, d, $"<td>{d.Date:O}</td><td>{d.Priority}</td>")));
        return page.End();
    }

    private static void Table(HtmlPage page, string first, IEnumerable<string> rows)
    {
        page.Add("<div class=\"wide\">");
        page.Table(first + Heads, rows);
        page.Add("</div>");
    }

    private static double Share(KeptPromises kept) => kept.Lines == 0 ? 0 : kept.Within / (double)kept.Lines;

    private static string Row(Depot depot, KeptPromises kept, string first)
    {
        string[] numbers =
        [
            Why.Percent(depot.Setup.Depot.Service(kept.Priority)), Why.Percent(Share(kept)),
            .. new[] { kept.Lines, kept.Within, kept.Emptied, kept.Used, kept.Missed, kept.Aboard }
                .Select(n => n.ToString(CultureInfo.InvariantCulture)),
        ];
        return first + string.Concat(numbers.Select(n => $"<td class=\"n\">{n}</td>"));
    }
}
