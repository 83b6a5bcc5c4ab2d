using System.Text.RegularExpressions;
using Closeout.Turning;

namespace Closeout.Store;

/// <summary>
/// A book made anew from the lines that were saved: folded one by one, numbered without holes, with the losses written down where
/// they were.
/// </summary>
/// <param name="isThere">Whether the attachment of that SHA-256 is there and whole.</param>
internal sealed partial class SalvagedBook(DateTimeOffset now, Func<string, bool> isThere)
{
    private readonly List<List<Recorded>> pages = [];
    private readonly List<string> said = [];
    private readonly Dictionary<int, int> renumbered = [];
    private readonly Dictionary<int, int> incidents = [];
    private readonly SalvagedStock stock = new();
    private Depot? depot;
    private int next = 1;
    private int lostHere;
    private bool broken;

    public IReadOnlyList<IReadOnlyList<Recorded>> Pages => pages;

    /// <summary>What could not be kept although its line is whole, and what was made up for.</summary>
    public IReadOnlyList<string> Said => said;

    /// <summary>Entries of the old book in this one.</summary>
    public int Kept { get; private set; }

    public static SalvagedBook Of(SalvagedChain chain, DateTimeOffset now, Func<string, bool> isThere)
    {
        var book = new SalvagedBook(now, isThere);
        var number = 0;
        foreach (var line in chain.Lines)
        {
            book.Lose(line.Number - number - 1);
            book.Take(line);
            number = line.Number;
        }

        book.Lose(Math.Max(0, chain.Entries - number));
        if (book.depot is not null)
            book.EndPage(null);

        return book;
    }

    private void Lose(int entries)
    {
        lostHere += entries;
        broken |= entries > 0;
    }

    private void Take(GoodLine line)
    {
        if ((line.Read.Recorded.Entry is PageOpened page ? Opened(page, line) : Entered(line)) is { } reason)
        {
            said.Add(T($"{line.At}: entry {line.Number} ({EntryKind.Of(line.Read.Recorded.Entry).Name}) can no longer stand: {reason}"));
            Lose(1);
        }
    }

    /// <returns>Why not; null: it stands.</returns>
    private string? Opened(PageOpened page, GoodLine line)
    {
        if (depot is not null && page.Date <= depot.Date)
            return T($"it opens {page.Date:O} after {depot.Date:O}");

        try
        {
            var ledger = Depot.Open(line.Read.Recorded).Stock.Ledger;
            if (ledger.Unbalanced.Any() || ledger.BelowZero.Any())
                return T("the balances that it carries forward cannot be");

            if (depot is not null)
                EndPage(page.Carried.Balances);
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            return e.Message;
        }

        incidents.Clear();
        var changes = page.Carried.Overrides.Select(o => o with { Number = Renumbered(o.Number) });
        Begin(page with { Carried = page.Carried with { Overrides = [.. changes] } }, line.Read.Recorded.At);
        renumbered[line.Number] = next - 1;
        Kept++;
        return null;
    }

    private string? Entered(GoodLine line)
    {
        try
        {
            if (depot is null)
                return T("the opening of its page is lost, and there is no page before it");

            if (broken && line.Date is { } date && date > depot.Date)
            {
                EndPage(null);
                Begin(NextPage.After(depot, date), now);
                said.Add(
                    T(
                        $"{line.File}: the opening of {date:O} is lost, and was made from the page before: what the day folder of that "
                            + $"day said is not in it"));
            }

            if (Missing(line.Read.Recorded.Entry) is { } missing)
                return missing;

            var recorded = new Recorded(next, line.Read.Recorded.At, Following(line.Read.Recorded.Entry));
            Add(recorded);
            renumbered[line.Number] = recorded.Number;
            Kept++;
            if (line.Read.Recorded.Entry is DamageFound found)
                incidents[found.Number] = depot.Vans.Incidents;

            if (lostHere > 0)
                stock.Counted(recorded.Entry, depot);

            return null;
        }
        catch (Exception e) when (e is InvalidOperationException or ArgumentException or OverflowException or KeyNotFoundException)
        {
            // The fold names the entry by its new number, which nobody knows yet.
            return NewNumber().Replace(e.Message, "");
        }
    }

    /// <summary>What the entry needs beside the page and the book no longer has; null: nothing is missing.</summary>
    private string? Missing(Entry entry) => entry switch
    {
        PhotoAttached p when !isThere(p.Sha256) => T($"its picture {p.Sha256} is gone or damaged"),
        IncidentClosed { Number: var n } when !incidents.ContainsKey(n) && n > depot!.Vans.Incidents - incidents.Count =>
            T($"incident {n} is lost"),
        _ => null,
    };

    /// <summary>The entry, with the numbers of others that it names as they are here. Incidents have their own without holes.</summary>
    private Entry Following(Entry entry) => entry switch
    {
        OverrideWithdrawn w => w with { Number = Renumbered(w.Number) },
        DamageFound d => d with { Number = depot!.Vans.Incidents + 1 },
        IncidentClosed c => c with { Number = incidents.GetValueOrDefault(c.Number, c.Number) },
        _ => entry,
    };

    /// <summary>An entry's number in this book; below 0, and of no entry: it is lost, though what it said still stands.</summary>
    private int Renumbered(int number) => number <= 0 ? number : renumbered.GetValueOrDefault(number, -number);

    private void Add(Recorded recorded)
    {
        depot = depot!.Apply(recorded);
        pages[^1].Add(recorded);
        next++;
    }

    private void Begin(PageOpened page, DateTimeOffset at)
    {
        var first = new Recorded(next++, at, page);
        depot = Depot.Open(first);
        pages.Add([first]);
        stock.Clear();
        broken = false;
    }

    /// <summary>Writes down what was lost, and brings the balances to those that the next page carried forward.</summary>
    /// <param name="carried">Null: no page tells them.</param>
    private void EndPage(IReadOnlyList<Balance>? carried)
    {
        var moves = carried is null ? stock.ByCounts(depot!.Stock.Ledger) : SalvagedStock.ByCarried(depot!.Stock.Ledger, carried);
        if (lostHere > 0 || moves.Count > 0)
        {
            Add(new(next, now, new BookSalvaged(lostHere, moves)));
            lostHere = 0;
        }
    }

    [GeneratedRegex("^entry [0-9]+, [A-Za-z]+[:,] ")]
    private static partial Regex NewNumber();
}
