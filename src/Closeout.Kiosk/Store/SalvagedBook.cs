using System.Text.RegularExpressions;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Turning;

namespace Closeout.Store;

/// <summary>A book made anew from the lines that were saved: folded one by one, numbered without holes, with the losses written down where they were.</summary>
/// <param name="isThere">Whether the attachment of that SHA-256 is there and whole.</param>
internal sealed partial class SalvagedBook(DateTimeOffset now, Func<string, bool> isThere)
{
    private readonly List<List<Recorded>> pages = [];
    private readonly List<string> said = [];
    private readonly Dictionary<int, int> renumbered = [];
    private readonly Dictionary<int, int> incidents = [];
    private readonly Dictionary<(Place Place, Code<Item> Item), int> owed = [];
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
        {
            book.EndPage(null);
        }

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
            said.Add($"{line.At}: entry {line.Number} ({EntryCodec.KindOf(line.Read.Recorded.Entry).Name}) can no longer stand: {reason}");
            Lose(1);
        }
    }

    /// <returns>Why not; null: it stands.</returns>
    private string? Opened(PageOpened page, GoodLine line)
    {
        if (depot is not null && page.Date <= depot.Date)
        {
            return $"it opens {page.Date:O} after {depot.Date:O}";
        }

        try
        {
            var ledger = Depot.Open(line.Read.Recorded).Ledger;
            if (ledger.Unbalanced.Any() || ledger.BelowZero.Any())
            {
                return "the balances that it carries forward cannot be";
            }

            if (depot is not null)
            {
                EndPage(page.Carried.Balances);
            }
        }
        catch (Exception e) when (e is ArgumentException or OverflowException)
        {
            return e.Message;
        }

        incidents.Clear();
        Begin(page with { Carried = page.Carried with { Overrides = [.. page.Carried.Overrides.Select(o => o with { Number = Renumbered(o.Number) })] } }, line.Read.Recorded.At);
        renumbered[line.Number] = next - 1;
        Kept++;
        return null;
    }

    private string? Entered(GoodLine line)
    {
        try
        {
            if (depot is null)
            {
                return "the opening of its page is lost, and there is no page before it";
            }

            if (broken && line.Date is { } date && date > depot.Date)
            {
                EndPage(null);
                Begin(NextPage.After(depot, date), now);
                said.Add($"{line.File}: the opening of {date:O} is lost, and was made from the page before: what the day folder of that day said is not in it");
            }

            if (Missing(line.Read.Recorded.Entry) is { } missing)
            {
                return missing;
            }

            var recorded = new Recorded(next, line.Read.Recorded.At, Following(line.Read.Recorded.Entry));
            depot = depot.Apply(recorded);
            pages[^1].Add(recorded);
            renumbered[line.Number] = next++;
            Kept++;
            if (line.Read.Recorded.Entry is DamageFound found)
            {
                incidents[found.Number] = depot.Incidents;
            }

            Counted(recorded.Entry);
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
        PhotoAttached p when !isThere(p.Sha256) => $"its picture {p.Sha256} is gone or damaged",
        IncidentClosed c when !incidents.ContainsKey(c.Number) && c.Number > depot!.Incidents - incidents.Count => $"incident {c.Number} is lost",
        _ => null,
    };

    /// <summary>The entry, with the numbers by which it names others as they are in this book. Incidents have numbers of their own, without holes too.</summary>
    private Entry Following(Entry entry) => entry switch
    {
        OverrideWithdrawn w => w with { Number = Renumbered(w.Number) },
        DamageFound d => d with { Number = depot!.Incidents + 1 },
        IncidentClosed c => c with { Number = incidents.GetValueOrDefault(c.Number, c.Number) },
        _ => entry,
    };

    /// <summary>An entry's number in this book; below 0, and of no entry: the entry itself is lost, though what it said still stands.</summary>
    private int Renumbered(int number) => number <= 0 ? number : renumbered.GetValueOrDefault(number, -number);

    private void Begin(PageOpened page, DateTimeOffset at)
    {
        var first = new Recorded(next++, at, page);
        depot = Depot.Open(first);
        pages.Add([first]);
        owed.Clear();
        broken = false;
    }

    /// <summary>A count is worth what it says, whatever was lost before it on its page: its moves say only the difference to a book that is no more.</summary>
    private void Counted(Entry entry)
    {
        if (lostHere == 0)
        {
            return;
        }

        switch (entry)
        {
            case LeftoverCounted c:
                Owe(Place.Sealed(c.Van), c.Item, c.Count.Sealed * depot!.Setup.Item(c.Item).UnitsPerCarton);
                Owe(Place.Loose(c.Van), c.Item, c.Count.Kept);
                break;
            case CountCorrected c:
                Owe(c.Place, c.Item, c.Counted);
                break;
            default:
                break;
        }
    }

    private void Owe(Place place, Code<Item> item, int counted) => owed[(place, item)] = counted - depot!.Ledger.Units(place, item);

    /// <summary>Writes down what was lost, and brings the balances to those that the next page carried forward.</summary>
    /// <param name="carried">Null: no page tells them.</param>
    private void EndPage(IReadOnlyList<Balance>? carried)
    {
        var moves = carried is null ? ByCounts() : ByCarried(carried);
        if (lostHere == 0 && moves.Count == 0)
        {
            return;
        }

        var recorded = new Recorded(next, now, new BookSalvaged(lostHere, moves));
        depot = depot!.Apply(recorded);
        pages[^1].Add(recorded);
        next++;
        lostHere = 0;
    }

    private List<Move> ByCarried(IReadOnlyList<Balance> carried)
    {
        var target = carried.ToDictionary(b => (b.Place, b.Item), b => b.Units);
        return [.. depot!.Ledger.Balances.Select(b => (b.Place, b.Item)).Union(target.Keys)
            .Where(k => k.Place != Place.Unexplained)
            .OrderBy(k => k.Item).ThenBy(k => k.Place.Kind).ThenBy(k => k.Place.Van)
            .SelectMany(k => Move.Signed(k.Item, target.GetValueOrDefault(k) - depot.Ledger.Units(k.Place, k.Item), Place.Unexplained, k.Place))];
    }

    private List<Move> ByCounts()
    {
        var moves = owed.OrderBy(o => o.Key.Item).ThenBy(o => o.Key.Place.Kind).ThenBy(o => o.Key.Place.Van)
            .SelectMany(o => Move.Signed(o.Key.Item, o.Value, Place.Unexplained, o.Key.Place)).ToList();
        moves.AddRange(depot!.Ledger.Post(moves).BelowZero.OrderBy(b => b.Item).ThenBy(b => b.Place.Kind).ThenBy(b => b.Place.Van)
            .SelectMany(b => Move.Signed(b.Item, -b.Units, Place.Unexplained, b.Place)).ToList());
        return moves;
    }

    [GeneratedRegex("^entry [0-9]+, [A-Za-z]+[:,] ")]
    private static partial Regex NewNumber();
}
