using System.Globalization;
using System.Text;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>What to bring to a van, in stow order, to be ticked off on paper: 80 columns of text, or one page of HTML.</summary>
public static class PickSheet
{
    private const int Columns = SheetParts.Columns;

    /// <summary>The longest amount, "9999 of an opened one".</summary>
    private const int AmountColumns = 21;

    private static string Heads =>
        HtmlPage.Heads(
            "", T("Where"), T("Item")) + HtmlPage.NumberHeads(T("Sealed"), T("From bin"), T("Opened")) + HtmlPage.Heads(T("Taken"));

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
        var page = new HtmlPage(T($"{t.Depot.Setup.Depot.Name}, to load for {Spell.Day(t.Plan.Date)}"), SheetParts.Style);
        foreach (var van in t.Depot.Setup.Vans)
        {
            page.Add($"<section>\n{SheetParts.HeadHtml(van.Code.Text, T($"{van.Name}, bay {van.Bay}"))}");
            page.Add($"<h2>{HtmlPage.Safe(T($"{t.Depot.Setup.Depot.Name}: to load for {Spell.Day(t.Plan.Date)}{Rehearsed(t)}"))}</h2>");
            SheetParts.Held(page, t.Van(van.Code).Holds);
            page.Table(Heads, StowOrder.ToTake(t.Depot, t.Plan, van.Code).Select(Row));
            foreach (var line in Below(t, van).Where(b => b.Length > 0))
                page.Add($"<p>{HtmlPage.Safe(line)}</p>");

            page.Add(SheetParts.SignHtml());

            page.Add("</section>");
        }

        return page.End();
    }

    private static IEnumerable<string> Lines(Tonight t, Van van)
    {
        foreach (var head in SheetParts.Head(van.Code.Text, T($"{van.Name}, bay {van.Bay}")))
            yield return head;

        yield return T($"{Cells.Cut(t.Depot.Setup.Depot.Name, 42)}: TO LOAD for {Spell.Day(t.Plan.Date)}{Rehearsed(t)}");
        foreach (var held in SheetParts.Held(t.Van(van.Code).Holds))
            yield return held;

        yield return "";
        var take = StowOrder.ToTake(t.Depot, t.Plan, van.Code);
        var code = take.Select(l => l.Item.Code.Text.Length).DefaultIfEmpty().Max();
        var room = Math.Min(Columns - AmountColumns - 14 - code, take.Select(l => Cells.Count(l.Item.Description)).DefaultIfEmpty().Max());
        if (take.Count > 0)
            yield return T($"{new string(' ', 8 + code + room)}taken  to load");

        var stow = "";
        foreach (var l in take)
        {
            if (l.Item.Stow != stow)
            {
                stow = l.Item.Stow;
                yield return Cells.Cut(stow, Columns);
            }

            var begin = $"  [ ] {l.Item.Code.Text.PadRight(code)} {Fit(l.Item.Description, room)} ";
            foreach (var amount in Amounts(l))
            {
                yield return $"{begin}____   {amount}";
                begin = new string(' ', 8 + code + room);
            }
        }

        foreach (var line in Below(t, van).SelectMany(b => Cells.Wrap(b, 76).Select((w, i) => i == 0 ? w : "  " + w)))
            yield return line;

        yield return "";
        yield return SheetParts.Sign();
    }

    private static IEnumerable<string> Below(Tonight t, Van van)
    {
        var (depot, plan) = (t.Depot, t.Plan);
        var weight = plan.Weight(van.Code);
        return
        [
            .. StowOrder.ToTake(depot, plan, van.Code).Count == 0 ? new[] { T("Nothing to load.") } : [],
            "",
            .. plan.Lines.Where(l => l.Van.Code == van.Code && l.Short > 0)
            .Select(l => T($"SHORT {l.Short} {l.Item.Description}: the depot has no more.")),
            .. depot.Stock.Moved.Where(m => m.From == van.Code || m.To == van.Code).Select(m => Moved(depot, m, van)),
            .. weight.Cut.Select(c => T($"CUT {c.Units} {c.Item.Description}: too heavy for this van.")),
            T($"Weight: {WeightWords.Of(depot.Setup.Units, weight)}."),
            .. KitCheck.MissingOf(depot, van.Code).Select(m => T($"KIT bring {m.Missing} {m.Piece.Description}.")),
            T($"Van: {WallWords.Morning(t.Van(van.Code))}."),
            T("Lift heavy cartons with two; ladder tied. This sheet does not say that the van is safe."),
        ];
    }

    private static string Moved(Depot depot, StockMoved move, Van van)
    {
        var what = T($"{move.Sealed} sealed and {move.Loose} loose of {depot.Setup.Item(move.Item).Description}");
        return move.From == van.Code
            ? T($"MOVED OUT to {move.To?.Text ?? T("shelf and bin")}: {what}.")
            : T($"MOVED IN from {move.From}: {what}.");
    }

    private static IEnumerable<string> Amounts(RestockLine l) =>
        new[] { (l.Sealed, T("sealed")), (l.FromBin, T("from the bin")), (l.FromOpened, T("of an opened one")) }.Where(a => a.Item1 > 0)
            .Select(a => $"{a.Item1} {a.Item2}");

    private static string Row(RestockLine l) =>
        $"<td class=\"t\"><span></span></td><td>{HtmlPage.Safe(l.Item.Stow)}</td>"
        + $"<td>{HtmlPage.Safe($"{l.Item.Code} {l.Item.Description}")}</td>"
        + string.Concat(new[] { l.Sealed, l.FromBin, l.FromOpened }.Select(n => $"<td class=\"n\">{Blank(n)}</td>"))
        + "<td class=\"k\"></td>";

    private static string Blank(int number) => number == 0 ? "" : number.ToString(CultureInfo.InvariantCulture);

    private static string Fit(string text, int columns)
    {
        var cut = Cells.Cut(text, columns);
        return cut + new string(' ', Math.Max(0, columns - Cells.Count(cut)));
    }

    private static string Rehearsed(Tonight t) => t.Depot.Rehearsal ? T(", REHEARSAL") : "";
}
