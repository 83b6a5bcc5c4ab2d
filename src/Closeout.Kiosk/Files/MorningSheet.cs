using System.Text;
using Closeout.Cardboard;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>
/// What whoever comes first in the morning must know: ready or not and why, what to load, what to watch, what is due. A page for the depot,
/// a page for each van.
/// </summary>
public static class MorningSheet
{
    private const int Columns = SheetParts.Columns;
    private const int Word = 11;

    private const string Style = SheetParts.Style + "\ntd.w { min-width: 7em; font-weight: bold; }";

    private static string Caution =>
        T("This sheet repeats what people confirmed. It does not say that a van is safe: look at it before you drive. Local rules and "
            + "the maker's instructions come first.");

    /// <summary>The depot's page.</summary>
    public static IEnumerable<SheetLine> OfDepot(Tonight t)
    {
        var (depot, plan) = (t.Depot, t.Plan);
        yield return new("", T($"{depot.Setup.Depot.Name}: MORNING SHEET for {Spell.Day(plan.Date)}{Rehearsed(depot)}"), IsHeading: true);
        yield return new("", T($"as of the evening of {Spell.Day(depot.Date)}; {WallWords.Closed(t.Vans)}"));
        foreach (var state in t.Vans.Where(v => v.Holds.Count > 0))
            yield return new("", $"{state.Van.Code} {state.Van.Name}: {string.Join("; ", state.Holds)}", Part: SheetPart.Held);

        foreach (var state in t.Vans)
            yield return new($"{state.Van.Bay} {state.Van.Code} {state.Van.Name}", WallWords.Morning(state));

        yield return new("", T("The depot"), IsHeading: true);
        foreach (var (word, sentence) in t.Totals)
            yield return new(word, sentence);

        foreach (var order in ToOrder(plan))
            yield return new(T("Order"), order, Tick: true);

        foreach (var (van, piece) in depot.Setup.Vans.SelectMany(v => VanWords.ToBuy(depot, v).Select(p => (v, p))))
            yield return new(T("Buy"), T($"{piece} for {van.Code} {van.Name}"), Tick: true);

        foreach (var note in Collecting.Notes(depot))
            yield return new(T("Ship"), note, Tick: true);

        yield return new("", Caution);
    }

    /// <summary>What to order, and what is short and not ordered.</summary>
    private static IEnumerable<string> ToOrder(RestockPlan plan) => plan.Shelf.Where(s => s.Order.Cartons > 0)
        .Select(s => T($"{Spell.Count(s.Order.Cartons, T("carton"), T("cartons"))} of {s.Item.Code} {s.Item.Description}"))
        .Concat(plan.Shelf.Select(WhyLearned.WhyNot).OfType<string>());

    /// <summary>A van's page.</summary>
    public static IEnumerable<SheetLine> OfVan(Tonight t, Van van)
    {
        var (depot, plan) = (t.Depot, t.Plan);
        yield return new(van.Code.Text, T($"{van.Name}, bay {van.Bay}"), Part: SheetPart.Van);
        yield return new("", T($"MORNING SHEET for {Spell.Day(plan.Date)}{Rehearsed(depot)}"), IsHeading: true);
        foreach (var hold in Readiness.Standing(depot, van.Code))
            yield return new("", T($"{hold.Said}, since {hold.Since:yyyy-MM-dd}"), Part: SheetPart.Held);

        foreach (var (word, sentence) in VanWords.Of(t, van).Where(w => w.Word != "HELD"))
            yield return new(word, sentence);

        var take = StowOrder.ToTake(depot, plan, van.Code);
        yield return new("", take.Count == 0 ? T("Nothing to load") : T("To load, deepest first; write what was taken"), IsHeading: true);
        foreach (var line in take)
        {
            var parts =
                new[] { (line.Sealed, T("sealed")), (line.FromBin, T("from the bin")), (line.FromOpened, T("of an opened carton")) };
            var amounts = string.Join(", ", parts.Where(p => p.Item1 > 0).Select(p => $"{p.Item1} {p.Item2}"));
            yield return new(line.Item.Stow, $"{line.Item.Code} {line.Item.Description}: {amounts}", Tick: true, Part: SheetPart.Take);
        }

        yield return new("", T("Before it goes out"), IsHeading: true);
        foreach (var held in Readiness.Standing(depot, van.Code))
            yield return new(T("HELD"), T($"{held.Said}: a lead lifts it, or it stays"), Tick: true);

        yield return new("", T("walked around, lights and tires checked, load tied"), Tick: true);
        yield return new("", "", Part: SheetPart.Sign);
        yield return new("", Caution);
    }

    /// <summary>A page as text of 80 columns.</summary>
    public static string Text(IEnumerable<SheetLine> lines)
    {
        var text = new StringBuilder();
        var left = new Queue<SheetLine>(lines);
        while (left.TryDequeue(out var line))
        {
            if (line.Part is SheetPart.Van or SheetPart.Held or SheetPart.Sign)
            {
                foreach (var set in Apart(line, left))
                    text.Append(Harmless.Line(set).TrimEnd()).Append('\n');

                continue;
            }

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

            begin = (indent == 0 ? "" : begin + " ") + (line.Tick ? "[ ] " : "") + (line.Part == SheetPart.Take ? "____ " : "");
            foreach (var wrapped in Cells.Wrap(line.Sentence, Columns - begin.Length))
            {
                text.Append(Harmless.Line(begin + wrapped).TrimEnd()).Append('\n');
                begin = new string(' ', begin.Length);
            }
        }

        return text.ToString();
    }

    /// <summary>The lines of a part that is set apart; what is framed together is taken out of the lines left.</summary>
    private static IEnumerable<string> Apart(SheetLine line, Queue<SheetLine> left)
    {
        var together = new List<string> { line.Sentence };
        while (line.Part == SheetPart.Held && left.TryPeek(out var next) && next.Part == SheetPart.Held)
            together.Add(left.Dequeue().Sentence);

        return line.Part switch
        {
            SheetPart.Van => SheetParts.Head(line.Word, line.Sentence),
            SheetPart.Held => SheetParts.Held(together),
            SheetPart.Sign => ["", SheetParts.Sign(), ""],
            _ => throw new InvalidOperationException($"not set apart: {line.Part}"),
        };
    }

    /// <summary>All pages in one self-contained HTML file, a sheet of paper each.</summary>
    public static string Html(Tonight t)
    {
        var page = new HtmlPage(T($"{t.Depot.Setup.Depot.Name}, morning sheet for {Spell.Day(t.Plan.Date)}"), Style);
        foreach (var lines in t.Depot.Setup.Vans.Select(v => OfVan(t, v)).Prepend(OfDepot(t)))
            Section(page, [.. lines]);

        return page.End();
    }

    private static void Section(HtmlPage page, IReadOnlyList<SheetLine> lines)
    {
        page.Add("<section>");
        for (var at = 0; at < lines.Count;)
        {
            var rows = lines.Skip(at).TakeWhile(IsRow).ToList();
            if (rows.Count > 0)
            {
                page.Table(rows[0].Part == SheetPart.Take ? TakeHeads : "", rows.Select(Row));
                at += rows.Count;
                continue;
            }

            var held = lines.Skip(at).TakeWhile(l => l.Part == SheetPart.Held).Select(l => l.Sentence).ToList();
            SheetParts.Held(page, held);
            at += held.Count;
            if (held.Count == 0)
                page.Add(Alone(lines[at], first: at++ == 0));
        }

        page.Add("</section>");
    }

    private static string Alone(SheetLine line, bool first) => line switch
    {
        { Part: SheetPart.Van } => SheetParts.HeadHtml(line.Word, line.Sentence),
        { Part: SheetPart.Sign } => SheetParts.SignHtml(),
        { IsHeading: true } when first => $"<h1>{HtmlPage.Safe(line.Sentence)}</h1>",
        { IsHeading: true } => $"<h2>{HtmlPage.Safe(line.Sentence)}</h2>",
        _ => $"<p>{HtmlPage.Safe(line.Sentence)}</p>",
    };

    private static bool IsRow(SheetLine line) => !line.IsHeading && line.Part is (SheetPart.Plain or SheetPart.Take)
        && (line.Word.Length > 0 || line.Tick);

    private static string Row(SheetLine line) =>
        $"<td class=\"w\">{HtmlPage.Safe(line.Word)}</td><td "
            + $"class=\"t\">{(line.Tick ? "<span></span>" : "")}</td><td>{HtmlPage.Safe(line.Sentence)}</td>"
            + (line.Part == SheetPart.Take ? "<td class=\"k\"></td>" : "");

    private static string TakeHeads => HtmlPage.Heads(T("Where"), "", T("Item"), T("Taken"));

    private static string Rehearsed(Depot depot) => depot.Rehearsal ? T(", REHEARSAL") : "";

    private static string Fit(string text) => text.Length > Columns ? text[..Columns] : text;
}
