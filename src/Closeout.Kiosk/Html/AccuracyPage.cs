using System.Globalization;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Html;

/// <summary>How well the plan did, as charts: kept against promised by priority, and day by day; with all numbers as tables.</summary>
public static class AccuracyPage
{
    private static string Heads =>
        HtmlPage.NumberHeads(T("promised"), T("kept"), T("lines"), T("within"), T("emptied"), T("used"), T("missed"), T("aboard"));

    public static string Html(Tonight tonight)
    {
        var depot = tonight.Depot;
        var name = depot.Setup.Depot.Name;
        var page = new HtmlPage(T($"{name}, how well the plan did"), $"{Tones.Style}\n{Chart.Style}", $"\n{Tones.Head}");
        page.Add($"<h1>{HtmlPage.Safe(T($"{name}: how well the plan did"))}{Tones.Rehearsal(depot)}</h1>");
        var (sums, days) = (Accuracy.Sums(depot), Accuracy.Of(depot));
        page.Paragraph(
            T(
                $"The {PlanningWindow.Days} days up to {Spell.Day(depot.Date)}. A line is one item of one van on one date with visits "
                    + $"booked; within: what was needed stayed within the plan's target. Emptied: nothing was left, so more may have been "
                    + $"needed than anybody saw. Missed: units needed beyond what was aboard that morning."));
        foreach (var (word, sentence) in AccuracyWords.Of(tonight))
            page.Paragraph($"{word}: {sentence}");

        if (sums.Count == 0)
        {
            page.Paragraph(T("Nothing yet: the plan of one evening is judged by the close-outs of the next."));
            return page.End();
        }

        page.Heading(T("By priority"));
        page.Add(Chart.Svg(T("kept by priority"), [new(T("kept"), Tone.Good)],
            [.. sums.Select(s => new ChartBar($"{s.Priority}", [Share(s)], depot.Setup.Depot.Service(s.Priority)))],
            n => Why.Percent(n), T("promised"), most: 1));
        Table(page, HtmlPage.Heads(T("priority")), sums.Select(s => Row(depot, s, $"<td>{s.Priority}</td>")));
        page.Heading(T("Day by day"));
        page.Add(Chart.Svg(T("lines by day"), [new(T("within"), Tone.Good), new(T("beyond"), Tone.Note)],
            [
                .. days.GroupBy(d => d.Date).Select(d => new ChartBar(
                    Spell.DayOfMonth(d.Key), [d.Sum(k => k.Within), d.Sum(k => k.Lines - k.Within)])),
            ],
            n => n.ToString("0.#", CultureInfo.InvariantCulture)));
        Table(page, HtmlPage.Heads(T("date"), T("priority")), days.Select(d => Row(depot, d, $"<td>{d.Date:O}</td><td>{d.Priority}</td>")));
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
