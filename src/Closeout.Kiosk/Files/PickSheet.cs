using System.Globalization;
using System.Text;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>What to bring to a van, in stow order, to be ticked off on paper: 80 columns of text, or one page of HTML.</summary>
public static class PickSheet
{
    private const int Columns = 80;

    private const string Style =
        """
        h1 { font-size: 15pt; margin: 0 0 .2em; }
        table { border-collapse: collapse; width: 100%; }
        th, td { border-bottom: 1px solid #000; padding: .25em .4em; text-align: left; vertical-align: top; }
        th.n, td.n { text-align: right; }
        td.t { width: 1.6em; border: 1px solid #000; }
        @page { margin: 15mm; }
        """;

    private const string Heads =
        "<th></th><th>Where</th><th>Item</th><th class=\"n\">Sealed cartons</th><th class=\"n\">From the bin</th><th class=\"n\">From an "
            + "opened carton</th>";

    /// <summary>One van's sheet as text.</summary>
    public static string Text(Tonight t, Van van)
    {
        var text = new StringBuilder();
        foreach (var line in Lines(t, van))
            text.Append(Harmless.Line(line).TrimEnd()).Append('\n');

        return text.ToString();
    }

    /// <summary>All vans in one self-contained HTML file, a page each when printed.</summary>
    public static string Html(Tonight t)
    {
        var page = new HtmlPage($"{t.Depot.Setup.Depot.Name}, to load for {Spell.Day(t.Plan.Date)}", Style);
        foreach (var van in t.Depot.Setup.Vans)
        {
            page.Add($"<section>\n<h1>{HtmlPage.Safe($"{van.Code} {van.Name}, bay {van.Bay}")}</h1>");
            page.Add($"<p>{HtmlPage.Safe($"{t.Depot.Setup.Depot.Name}: to load for {Spell.Day(t.Plan.Date)}")}</p>");
            page.Table(Heads, StowOrder.ToTake(t.Depot, t.Plan, van.Code).Select(Row));
            foreach (var line in Below(t, van).Where(b => b.Length > 0))
                page.Add($"<p>{HtmlPage.Safe(line)}</p>");

            page.Add("</section>");
        }

        return page.End();
    }

    private static IEnumerable<string> Lines(Tonight t, Van van)
    {
        yield return $"{Fit(t.Depot.Setup.Depot.Name, 50).TrimEnd()}: TO LOAD for {Spell.Day(t.Plan.Date)}";
        yield return Fit($"Bay {van.Bay}  {van.Code} {van.Name}", Columns);
        yield return "";
        var stow = "";
        foreach (var l in StowOrder.ToTake(t.Depot, t.Plan, van.Code))
        {
            if (l.Item.Stow != stow)
            {
                stow = l.Item.Stow;
                yield return Fit(stow, Columns);
            }

            var begin = $"  [ ] {l.Item.Code.Text.PadRight(24)} {Fit(l.Item.Description, 26)} ";
            foreach (var amount in Amounts(l))
            {
                yield return begin + amount;
                begin = new string(' ', begin.Length);
            }
        }

        foreach (var line in Below(t, van).SelectMany(b => Cells.Wrap(b, 76).Select((w, i) => i == 0 ? w : "  " + w)))
            yield return line;
    }

    private static IEnumerable<string> Below(Tonight t, Van van)
    {
        var (depot, plan) = (t.Depot, t.Plan);
        var weight = plan.Weight(van.Code);
        return
        [
            .. StowOrder.ToTake(depot, plan, van.Code).Count == 0 ? new[] { "Nothing to load." } : [],
            "",
            .. plan.Lines.Where(l => l.Van.Code == van.Code && l.Short > 0)
            .Select(l => $"SHORT {l.Short} {l.Item.Description}: the depot has no more."),
            .. weight.Cut.Select(c => $"CUT {c.Units} {c.Item.Description}: too heavy for this van."),
            $"Weight: {WeightWords.Of(depot.Setup.Units, weight)}.",
            .. KitCheck.MissingOf(depot, van.Code).Select(m => $"KIT bring {m.Missing} {m.Piece.Description}."),
            $"Van: {WallWords.Morning(t.Van(van.Code))}.",
            "Lift heavy cartons with two; ladder tied. This sheet does not say that the van is safe.",
        ];
    }

    private static IEnumerable<string> Amounts(RestockLine l) =>
        new[] { (l.Sealed, "sealed"), (l.FromBin, "from the bin"), (l.FromOpened, "of an opened one") }.Where(a => a.Item1 > 0)
            .Select(a => $"{a.Item1} {a.Item2}");

    private static string Row(RestockLine l) =>
        $"<td class=\"t\"></td><td>{HtmlPage.Safe(l.Item.Stow)}</td><td>{HtmlPage.Safe($"{l.Item.Code} {l.Item.Description}")}</td>"
        + string.Concat(new[] { l.Sealed, l.FromBin, l.FromOpened }.Select(n => $"<td class=\"n\">{Blank(n)}</td>"));

    private static string Blank(int number) => number == 0 ? "" : number.ToString(CultureInfo.InvariantCulture);

    private static string Fit(string text, int columns) => (text.Length > columns ? text[..columns] : text).PadRight(columns);
}
