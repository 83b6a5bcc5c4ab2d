using System.Net;
using System.Text;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Vans;
using Closeout.Words;

namespace Closeout.Files;

/// <summary>One line of the morning sheet: a heading, a word with a sentence, or a line to tick off.</summary>
/// <param name="Word">What the sentence is of; empty: the same as above.</param>
/// <param name="Tick">Whether it is ticked off on paper.</param>
public sealed record SheetLine(string Word, string Sentence, bool IsHeading = false, bool Tick = false);

/// <summary>What whoever comes first in the morning must know: ready or not and why, what to load, what to watch, what is due. A page for the depot, a page for each van.</summary>
public static class MorningSheet
{
    private const int Columns = 80;
    private const int Word = 11;

    private const string Caution = "This sheet repeats what people confirmed. It does not say that a van is safe: look at it before you drive. Local rules and the maker's instructions come first.";

    /// <summary>The depot's page.</summary>
    public static IEnumerable<SheetLine> OfDepot(Depot depot, RestockPlan plan)
    {
        yield return new("", $"{depot.Setup.Depot.Name}: MORNING SHEET for {View.Day(plan.Date)}{Rehearsed(depot)}", IsHeading: true);
        yield return new("", $"as of the evening of {View.Day(depot.Date)}; {WallWords.Closed(Readiness.Of(depot))}");
        foreach (var state in Readiness.Of(depot))
        {
            yield return new($"{state.Van.Bay} {state.Van.Code} {state.Van.Name}", WallWords.Morning(state));
        }

        yield return new("", "The depot", IsHeading: true);
        foreach (var (word, sentence) in WallWords.Totals(depot, plan))
        {
            yield return new(word, sentence);
        }

        foreach (var order in plan.Shelf.Where(s => s.Order.Cartons > 0))
        {
            yield return new("Order", $"{View.Count(order.Order.Cartons, "carton", "cartons")} of {order.Item.Code} {order.Item.Description}", Tick: true);
        }

        foreach (var van in depot.Setup.Vans)
        {
            foreach (var piece in VanPage.ToBuy(depot, van))
            {
                yield return new("Buy", $"{piece} for {van.Code} {van.Name}", Tick: true);
            }
        }

        foreach (var note in Collecting.Notes(depot))
        {
            yield return new("Ship", note, Tick: true);
        }

        yield return new("", Caution);
    }

    /// <summary>A van's page.</summary>
    public static IEnumerable<SheetLine> OfVan(Depot depot, RestockPlan plan, Van van)
    {
        yield return new("", $"Bay {van.Bay}  {van.Code} {van.Name}: MORNING SHEET for {View.Day(plan.Date)}{Rehearsed(depot)}", IsHeading: true);
        foreach (var (word, sentence) in VanPage.Of(depot, plan, van))
        {
            yield return new(word, sentence);
        }

        var take = PickSheet.ToTake(depot, plan, van);
        yield return new("", take.Count == 0 ? "Nothing to load" : "To load, deepest first", IsHeading: true);
        foreach (var line in take)
        {
            var parts = new[] { (line.Sealed, "sealed"), (line.FromBin, "from the bin"), (line.FromOpened, "of an opened carton") };
            yield return new(line.Item.Stow, $"{line.Item.Code} {line.Item.Description}: {string.Join(", ", parts.Where(p => p.Item1 > 0).Select(p => $"{p.Item1} {p.Item2}"))}", Tick: true);
        }

        yield return new("", "Before it goes out", IsHeading: true);
        foreach (var held in Readiness.Standing(depot, van.Code))
        {
            yield return new("HELD", $"{held.Reason}: a lead lifts it, or it stays", Tick: true);
        }

        yield return new("", "walked round, lights and tyres looked at, load tied", Tick: true);
        yield return new("", Caution);
    }

    /// <summary>A page as text of 80 columns.</summary>
    public static string Text(IEnumerable<SheetLine> lines)
    {
        var text = new StringBuilder();
        foreach (var line in lines)
        {
            if (line.IsHeading)
            {
                text.Append(text.Length > 0 ? "\n" : "").Append(Harmless.Line(Fit(line.Sentence))).Append('\n');
                continue;
            }

            // A word too long for its column stands on a line of its own.
            var (begin, indent) = (line.Word.Length > Word ? "" : line.Word.PadRight(Word), line.Word.Length == 0 ? 0 : Word + 1);
            if (line.Word.Length > Word)
            {
                text.Append(Harmless.Line(Fit(line.Word))).Append('\n');
                begin = new string(' ', Word);
            }

            begin = (indent == 0 ? "" : begin + " ") + (line.Tick ? "[ ] " : "");
            foreach (var wrapped in Sheet.Wrap(line.Sentence, Columns - begin.Length))
            {
                text.Append(Harmless.Line(begin + wrapped).TrimEnd()).Append('\n');
                begin = new string(' ', begin.Length);
            }
        }

        return text.ToString();
    }

    /// <summary>All pages in one self-contained HTML file, a sheet of paper each.</summary>
    public static string Html(Depot depot, RestockPlan plan)
    {
        var html = new StringBuilder();
        html.Append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.Append($"<title>{Safe($"{depot.Setup.Depot.Name}, morning sheet for {View.Day(plan.Date)}")}</title>\n");
        html.Append("<style>\nbody { font: 11pt/1.35 sans-serif; color: #000; background: #fff; margin: 1.5em; }\nsection { break-after: page; margin-bottom: 2em; }\nsection:last-child { break-after: auto; }\n");
        html.Append("h1 { font-size: 14pt; margin: .8em 0 .2em; }\ntable { border-collapse: collapse; width: 100%; }\ntd { border-bottom: 1px solid #000; padding: .2em .4em; text-align: left; vertical-align: top; }\ntd.w { width: 9em; font-weight: bold; }\ntd.t { width: 1.2em; }\ntd.t span { display: block; width: .9em; height: .9em; border: 1px solid #000; }\n</style>\n</head>\n<body>\n");
        Section(html, OfDepot(depot, plan));
        foreach (var van in depot.Setup.Vans)
        {
            Section(html, OfVan(depot, plan, van));
        }

        return html.Append("</body>\n</html>\n").ToString();
    }

    private static void Section(StringBuilder html, IEnumerable<SheetLine> lines)
    {
        html.Append("<section>\n");
        var inTable = false;
        foreach (var line in lines)
        {
            var row = !line.IsHeading && (line.Word.Length > 0 || line.Tick);
            html.Append(row == inTable ? "" : row ? "<table>\n" : "</table>\n");
            inTable = row;
            html.Append(line.IsHeading
                ? $"<h1>{Safe(line.Sentence)}</h1>\n"
                : row
                    ? $"<tr><td class=\"w\">{Safe(line.Word)}</td><td class=\"t\">{(line.Tick ? "<span></span>" : "")}</td><td>{Safe(line.Sentence)}</td></tr>\n"
                    : $"<p>{Safe(line.Sentence)}</p>\n");
        }

        html.Append(inTable ? "</table>\n" : "").Append("</section>\n");
    }

    private static string Rehearsed(Depot depot) => depot.Rehearsal ? ", REHEARSAL" : "";

    private static string Safe(string text) => WebUtility.HtmlEncode(Harmless.Line(text));

    private static string Fit(string text) => text.Length > Columns ? text[..Columns] : text;
}
