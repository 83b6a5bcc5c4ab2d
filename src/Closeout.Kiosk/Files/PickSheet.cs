using System.Net;
using System.Text;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Vans;
using Closeout.Words;

namespace Closeout.Files;

/// <summary>What to bring to a van, in stow order, to be ticked off on paper: 80 columns of text, or one page of HTML.</summary>
public static class PickSheet
{
    private const int Columns = 80;

    /// <summary>One van's sheet as text.</summary>
    public static string Text(Depot depot, RestockPlan plan, Van van)
    {
        var text = new StringBuilder();
        foreach (var line in Lines(depot, plan, van))
        {
            text.Append(Harmless.Line(line).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>All vans in one self-contained HTML file, a page each when printed.</summary>
    public static string Html(Depot depot, RestockPlan plan)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.Append($"<title>{Safe($"{depot.Setup.Depot.Name}, to load for {View.Day(plan.Date)}")}</title>\n");
        html.Append("<style>\nbody { font: 11pt/1.35 sans-serif; color: #000; background: #fff; margin: 1.5em; }\nsection { break-after: page; margin-bottom: 2em; }\nsection:last-child { break-after: auto; }\n");
        html.Append("h1 { font-size: 15pt; margin: 0 0 .2em; }\ntable { border-collapse: collapse; width: 100%; }\nth, td { border-bottom: 1px solid #000; padding: .25em .4em; text-align: left; vertical-align: top; }\nth.n, td.n { text-align: right; }\ntd.t { width: 1.6em; border: 1px solid #000; }\n@page { margin: 15mm; }\n</style>\n</head>\n<body>\n");
        foreach (var van in depot.Setup.Vans)
        {
            Section(html, depot, plan, van);
        }

        return html.Append("</body>\n</html>\n").ToString();
    }

    /// <summary>The van's lines with anything to take, in stow order: what lies deepest is named first in the items file, and loaded first.</summary>
    public static IReadOnlyList<RestockLine> ToTake(Depot depot, RestockPlan plan, Van van)
    {
        var order = depot.Setup.Items.OrderBy(i => depot.Setup.Stows[i.Stow]).Select((i, n) => (i.Code, n)).ToDictionary(i => i.Code, i => i.n);
        return [.. plan.Lines.Where(l => l.Van.Code == van.Code && l.Units > 0).OrderBy(l => order[l.Item.Code])];
    }

    private static IEnumerable<string> Lines(Depot depot, RestockPlan plan, Van van)
    {
        yield return $"{Fit(depot.Setup.Depot.Name, 50).TrimEnd()}: TO LOAD for {View.Day(plan.Date)}";
        yield return Fit($"Bay {van.Bay}  {van.Code} {van.Name}", Columns);
        yield return "";
        var stow = "";
        foreach (var l in ToTake(depot, plan, van))
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

        foreach (var line in Below(depot, plan, van).SelectMany(b => Sheet.Wrap(b, 76).Select((w, i) => i == 0 ? w : "  " + w)))
        {
            yield return line;
        }
    }

    private static IEnumerable<string> Below(Depot depot, RestockPlan plan, Van van)
    {
        if (ToTake(depot, plan, van).Count == 0)
        {
            yield return "Nothing to load.";
        }

        yield return "";
        foreach (var l in plan.Lines.Where(l => l.Van.Code == van.Code && l.Short > 0))
        {
            yield return $"SHORT {l.Short} {l.Item.Description}: the depot has no more.";
        }

        var weight = plan.Weight(van.Code);
        foreach (var cut in weight.Cut)
        {
            yield return $"CUT {cut.Units} {cut.Item.Description}: too heavy for this van.";
        }

        yield return $"Weight: {WeightWords.Of(depot.Setup.Units, weight)}.";
        foreach (var lack in KitCheck.MissingOf(depot, van.Code))
        {
            yield return $"KIT bring {lack.Missing} {lack.Piece.Description}.";
        }

        var state = Readiness.Of(depot, van);
        yield return $"Van: {WallWords.Morning(state)}.";
        yield return "Lift heavy cartons with two; ladder tied. This sheet does not say that the van is safe.";
    }

    private static IEnumerable<string> Amounts(RestockLine l)
    {
        if (l.Sealed > 0)
        {
            yield return $"{l.Sealed} sealed";
        }

        if (l.FromBin > 0)
        {
            yield return $"{l.FromBin} from the bin";
        }

        if (l.FromOpened > 0)
        {
            yield return $"{l.FromOpened} of an opened one";
        }
    }

    private static void Section(StringBuilder html, Depot depot, RestockPlan plan, Van van)
    {
        html.Append($"<section>\n<h1>{Safe($"{van.Code} {van.Name}, bay {van.Bay}")}</h1>\n<p>{Safe($"{depot.Setup.Depot.Name}: to load for {View.Day(plan.Date)}")}</p>\n");
        html.Append("<table>\n<thead><tr><th></th><th>Where</th><th>Item</th><th class=\"n\">Sealed cartons</th><th class=\"n\">From the bin</th><th class=\"n\">From an opened carton</th></tr></thead>\n<tbody>\n");
        foreach (var l in ToTake(depot, plan, van))
        {
            html.Append($"<tr><td class=\"t\"></td><td>{Safe(l.Item.Stow)}</td><td>{Safe($"{l.Item.Code} {l.Item.Description}")}</td><td class=\"n\">{Blank(l.Sealed)}</td><td class=\"n\">{Blank(l.FromBin)}</td><td class=\"n\">{Blank(l.FromOpened)}</td></tr>\n");
        }

        html.Append("</tbody>\n</table>\n");
        foreach (var line in Below(depot, plan, van).Where(b => b.Length > 0))
        {
            html.Append($"<p>{Safe(line)}</p>\n");
        }

        html.Append("</section>\n");
    }

    private static string Blank(int number) => number == 0 ? "" : number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Safe(string text) => WebUtility.HtmlEncode(Harmless.Line(text));

    private static string Fit(string text, int columns) => (text.Length > columns ? text[..columns] : text).PadRight(columns);
}
