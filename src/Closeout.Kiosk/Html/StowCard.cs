using System.Globalization;
using Closeout.Files;

namespace Closeout.Html;

/// <summary>A card to hang in a van: what lies where, the least and the most of it, and where the places are.</summary>
public static class StowCard
{
    private const string Style =
        """
        h1 { font-size: 16pt; margin: 0 0 .2em; }
        h1 b { font-size: 44pt; line-height: 1; margin-right: .2em; }
        td.p { font-weight: bold; }
        @page { margin: 12mm; }
        @media print { body { margin: 0; font-size: 10pt; } th, td { padding-top: .05em; padding-bottom: .05em; } }
        """;

    public static string Html(Depot depot, Van van)
    {
        var (name, setup) = (depot.Setup.Depot.Name, depot.Setup);
        var style = $"{Tones.Style}\n{Style}\n{StowPicture.Style}";
        var page = new HtmlPage(T($"{name}, stow card of {van.Code}"), style, $"\n{Tones.Head}");
        page.Add($"<section>\n<h1><b>{HtmlPage.Safe(van.Code.Text)}</b> {HtmlPage.Safe(T($"{van.Name}, bay {van.Bay}"))}"
            + $"{Tones.Rehearsal(depot)}</h1>");
        page.Paragraph(
            T($"{name}: what lies where, as of {Spell.Day(depot.Date)}. Low: bring more below it. High: the most that goes in."));
        var places = Places(setup, van);
        if (places.Count == 0)
            page.Paragraph(T("This van carries nothing: no item has a high above 0 here."));
        else
            page.Add(StowPicture.Svg([.. places.Select(p => p.Place)]));

        page.Add("<div class=\"wide\">");
        page.Table(
            HtmlPage.Heads("", T("Place"), T("Item"), "") + HtmlPage.NumberHeads(T("Low"), T("High"), T("Carton")),
            places.SelectMany((p, at) => p.Items.Select((item, i) => i == 0
                ? Row(setup, van, $"{at + 1}", p.Place, item)
                : Row(setup, van, "", "", item))));
        page.Add("</div>");
        page.Paragraph(T("This card does not say that the van is safe. Ladder and load are tied; heavy things lie low."));
        page.Add("</section>");
        return page.End();
    }

    /// <summary>
    /// The van's places in stow order, each with what lies there in the order of the items; what it never carries is left out.
    /// </summary>
    public static IReadOnlyList<(string Place, IReadOnlyList<Item> Items)> Places(Setup setup, Van van) =>
    [
        .. setup.Items.Where(i => setup.Limit(van.Code, i).High > 0).GroupBy(i => i.Stow).OrderBy(g => setup.Stows[g.Key])
            .Select(g => (g.Key.Length == 0 ? T("no place said") : g.Key, (IReadOnlyList<Item>)[.. g])),
    ];

    private static string Row(Setup setup, Van van, string number, string place, Item item)
    {
        var (low, high) = setup.Limit(van.Code, item);
        var numbers = new[] { low, high, item.UnitsPerCarton }
            .Select(n => $"<td class=\"n\">{n.ToString(CultureInfo.InvariantCulture)}</td>");
        return $"<td class=\"p\">{number}</td><td>{HtmlPage.Safe(place)}</td><td><b>{HtmlPage.Safe(item.Code.Text)}</b></td>"
            + $"<td>{HtmlPage.Safe(item.Description)}</td>{string.Concat(numbers)}";
    }
}
