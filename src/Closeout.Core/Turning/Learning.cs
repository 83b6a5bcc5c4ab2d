using Closeout.Restock;

namespace Closeout.Turning;

/// <summary>What the next page takes over of what plan and orders learned; and what a new book takes of older records.</summary>
public static class Learning
{
    /// <returns>Null: nothing was learned yet.</returns>
    public static Learned? After(Depot depot) => OrNothing(new(
        [.. BookingsKept.LastDates([.. depot.Planning.Booked, .. Tonight(depot)])],
        [.. depot.Stock.Receipts.Where(r => new WorkingWeek(depot.Setup).Between(r.On, depot.Date) < Suppliers.WorkingDays)],
        [.. Handling.StillReturned(depot)],
        [.. depot.Planning.Handled.Where(h => h.Date > depot.Date.AddDays(-PlanningWindow.Days)), .. Handling.Tonight(depot)],
        [.. depot.Stock.Gifts.Where(g => IsKnown(depot, g.Value)).OrderBy(g => g.Key).Select(g => new OpenGift(g.Key, g.Value))],
        NotAboard(depot)));

    private static IReadOnlyList<NotAboard>? NotAboard(Depot depot)
    {
        var items = CountedDays.NotAboard(depot);
        List<NotAboard> all =
        [
            .. depot.Planning.NotAboard.Where(n => n.Date > depot.Date.AddDays(-PlanningWindow.Days)),
            .. items.Count > 0 ? [new(depot.Date, items)] : Array.Empty<NotAboard>(),
        ];
        return all.Count > 0 ? all : null;
    }

    /// <returns>Null: the records say nothing of it.</returns>
    public static Learned? Of(DayGiven given) => OrNothing(Learned.Nothing with
    {
        Booked = [.. Earlier(given)],
        Receipts = [.. given.Past.Where(p => p.Kind == PastKind.Received && p.Ordered > 0).OrderBy(p => p.Date).Select(p => new Receipt(
            p.Date, p.Supplier ?? given.Setup.Find(new Code<Item>(p.Code))?.Supplier, new(p.Code), p.Ordered, (int)p.Amount, p.On!.Value))],
    });

    private static Learned? OrNothing(Learned learned) => learned.IsNothing ? null : learned;

    /// <summary>The business date's vans; none where nothing was booked for any of them.</summary>
    private static IEnumerable<BookedVan> Tonight(Depot depot)
    {
        var booked = depot.Planning.AsBooked.ToLookup(b => b.Van, b => new KindVisits(b.Kind, b.Visits));
        return booked.Count == 0 ? [] : depot.Setup.Vans
            .Select(v => new BookedVan(
                depot.Date, v.Code, depot.Shift(v.Code) is { IsClosed: true }, [.. booked[v.Code]],
                depot.Planning.ByVan.GetValueOrDefault((depot.Date, v.Code))?.Visits))
            .Where(b => b.Closed || b.Booked.Count > 0);
    }

    /// <summary>The dates of which older records say what was booked: every van with a booking or with visit reports.</summary>
    private static IEnumerable<BookedVan> Earlier(DayGiven given)
    {
        var booked = given.Past.Where(p => p.Kind == PastKind.Booked && p.Amount > 0)
            .ToLookup(p => (p.Date, Van: p.Van!.Value), p => new KindVisits(new(p.Code), (int)p.Amount));
        var dates = booked.Select(b => b.Key.Date).ToHashSet();
        var made = given.Used.Made.Where(m => dates.Contains(m.Date)).ToDictionary(m => (m.Date, Van: m.Van), m => m.Visits);
        return BookingsKept.LastDates([.. booked.Select(b => b.Key).Union(made.Keys).OrderBy(d => d.Date).ThenBy(d => d.Van)
            .Select(d => new BookedVan(
                d.Date, d.Van, true,
                [.. booked[d].GroupBy(k => k.Kind, k => k.Visits).OrderBy(k => k.Key).Select(k => new KindVisits(k.Key, k.Sum()))],
                made.GetValueOrDefault(d)))]);
    }

    /// <summary>A gift of a van or item that is gone cannot be answered for.</summary>
    private static bool IsKnown(Depot depot, StockGiven gift) => depot.Setup.Find(gift.Item) is not null
        && depot.Setup.Find(gift.From) is not null && depot.Setup.Find(gift.To) is not null && depot.Setup.Find(gift.By) is not null;
}
