using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>The depot's stock on a business date: where it is, what is on order, what was loaded and counted blind.</summary>
/// <param name="Loaded">What was loaded tonight, by van and item.</param>
/// <param name="OpenedBack">
/// Cartons opened at the depot for loads that were taken back, or to move stock out of a van: their boxes are there all the same.
/// </param>
/// <param name="MayGoBack">Tonight's loads and deliveries on which nothing was built yet, by the number of their entry.</param>
/// <param name="SpotCounts">The last blind count of each item in each van.</param>
/// <param name="Receipts">First deliveries of orders, the oldest first.</param>
/// <param name="Gifts">Stock handed from van to van that nobody answered for yet, by the number of the entry.</param>
/// <param name="Moved">What was moved between vans, or out of them, at the depot tonight.</param>
public sealed record StockState(
    Ledger Ledger,
    ImmutableList<Order> Orders,
    ImmutableDictionary<(Code<Van> Van, Code<Item> Item), LoadedLine> Loaded,
    ImmutableDictionary<(Code<Van> Van, Code<Item> Item), SpotCounted> SpotCounts,
    ImmutableDictionary<int, GoingBack> MayGoBack,
    ImmutableDictionary<Code<Item>, int> OpenedBack,
    ImmutableList<Receipt> Receipts,
    ImmutableDictionary<int, StockGiven> Gifts,
    ImmutableList<StockMoved> Moved)
{
    private static readonly ImmutableDictionary<int, StockGiven> NoGifts = ImmutableDictionary<int, StockGiven>.Empty;

    public static StockState Open(Carried carried) => new(
        Ledger.Carried(carried.Balances),
        [.. carried.Orders],
        ImmutableDictionary<(Code<Van>, Code<Item>), LoadedLine>.Empty,
        carried.SpotCounts.ToImmutableDictionary(s => (s.Van, s.Item)),
        ImmutableDictionary<int, GoingBack>.Empty,
        ImmutableDictionary<Code<Item>, int>.Empty,
        [.. carried.Learned?.Receipts ?? []],
        carried.Learned?.Given.ToImmutableDictionary(g => g.Number, g => g.Gift) ?? NoGifts,
        []);

    /// <summary>What an entry of the stock does beside its moves.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    /// <param name="today">The business date.</param>
    public StockState Evolve(StockEntry entry, int number, DateOnly today, Setup setup) => entry switch
    {
        VanLoaded e => this with
        {
            Loaded = Loaded.SetItems(e.Lines.Select(l => KeyValuePair.Create((e.Van, l.Item), l))),
            MayGoBack = MayGoBack.Add(number, new(e, [], [])),
        },
        DeliveryReceived e => Received(e, number, today, setup),
        CountCorrected e =>
            this with { MayGoBack = MayGoBack.RemoveRange(MayGoBack.Where(m => Touches(e, m.Value.Entry)).Select(m => m.Key)) },
        StockTakenBack e => MayGoBack.GetValueOrDefault(e.Entry) switch
        {
            { Entry: VanLoaded load } when load.Lines.FirstOrDefault(l => l.Item == e.Item) is { } line => Without(e.Entry, load, line),
            { Entry: DeliveryReceived } delivery =>
                this with
                {
                    Orders = Reordered(delivery.Filled), MayGoBack = MayGoBack.Remove(e.Entry),
                    Receipts = Receipts.RemoveRange(delivery.Receipts),
                },
            _ => throw new InvalidOperationException($"entry {e.Entry} cannot be taken back"),
        },
        StockMoved e => this with { Moved = Moved.Add(e), OpenedBack = Opened(e.Item, e.Opened) },
        StockGiven e => this with { Gifts = Gifts.Add(number, e) },
        GiftAnswered e when Gifts.ContainsKey(e.Entry) => this with { Gifts = Gifts.Remove(e.Entry) },
        _ => throw new InvalidOperationException("it cannot stand in the stock"),
    };

    /// <summary>After other orders were loaded: what a delivery filled is no longer known, but that a part of a line came is.</summary>
    public StockState Ordered(IReadOnlyList<Order> orders) => this with
    {
        Orders = [.. orders.Select(o =>
            o with { Arrived = Orders.Find(old => (old.Item, old.Due, old.OrderedOn) == (o.Item, o.Due, o.OrderedOn))?.Arrived ?? 0 })],
        MayGoBack = MayGoBack.RemoveRange(MayGoBack.Where(m => m.Value.Entry is DeliveryReceived).Select(m => m.Key)),
    };

    /// <summary>After a count: where the item was counted blind, that it was, and what the gap was.</summary>
    public StockState Counted(LeftoverCounted count, bool isBlind, DateOnly today) => isBlind
        ? this with { SpotCounts = SpotCounts.SetItem((count.Van, count.Item), new(count.Van, count.Item, today, count.Gap)) }
        : this;

    /// <summary>A delivery fills the orders due first. What it leaves of the last of them may be said not to come any more.</summary>
    private StockState Received(DeliveryReceived delivery, int number, DateOnly today, Setup setup)
    {
        var (left, gone, orders, filled, receipts) =
            (delivery.Ordered, delivery.NotComing, Orders.ToBuilder(), new List<Order>(), new List<Receipt>());
        foreach (var order in Orders.Where(o => o.Item == delivery.Item).OrderBy(o => o.Due).TakeWhile(_ => left > 0))
        {
            var cartons = Math.Min(left, order.Cartons);
            var notComing = Math.Min(gone, order.Cartons - cartons);
            (left, gone) = (left - cartons, gone - notComing);
            orders[orders.IndexOf(order)] = order with
            {
                Cartons = order.Cartons - cartons - notComing, Arrived = order.Arrived + cartons,
            };
            filled.Add(order with { Cartons = cartons + notComing });
            if (order.Arrived == 0 && order.Cartons > 0)
                receipts.Add(new(today, order.Supplier ?? setup.Item(order.Item).Supplier, order.Item, order.Cartons, cartons, order.Due));
        }

        orders.RemoveAll(o => o.Cartons == 0);
        return left == 0 && gone == 0
            ? this with
            {
                Orders = orders.ToImmutable(), Receipts = Receipts.AddRange(receipts),
                MayGoBack = MayGoBack.Add(number, new(delivery, filled, receipts)),
            }
            : throw new InvalidOperationException(
                $"{delivery.Ordered} cartons of {delivery.Item}, and {delivery.NotComing} more of the same order, were not on order");
    }

    /// <summary>Without one line of a load: it can be loaded anew. A carton that was opened for it stays open.</summary>
    private StockState Without(int number, VanLoaded load, LoadedLine line)
    {
        var left = load with { Lines = [.. load.Lines.Where(l => l != line)] };
        return this with
        {
            Loaded = Loaded.Remove((load.Van, line.Item)),
            OpenedBack = Opened(line.Item, line.Opened),
            MayGoBack = left.Lines.Count == 0 ? MayGoBack.Remove(number) : MayGoBack.SetItem(number, new(left, [], [])),
        };
    }

    /// <summary>The orders with what a delivery had filled on order again.</summary>
    private ImmutableList<Order> Reordered(IReadOnlyList<Order> filled) => filled.Where(f => f.Cartons > 0).Aggregate(
        Orders, (orders, f) => orders.Find(o => o.Item == f.Item && o.Due == f.Due) is { } open
            ? orders.Replace(open, open with { Cartons = open.Cartons + f.Cartons, Arrived = f.Arrived })
            : orders.Add(f));

    private ImmutableDictionary<Code<Item>, int> Opened(Code<Item> item, int cartons) =>
        cartons == 0 ? OpenedBack : OpenedBack.SetItem(item, OpenedBack.GetValueOrDefault(item) + cartons);

    /// <summary>Whether a corrected count built on an entry: it counted what the entry had moved.</summary>
    private static bool Touches(CountCorrected count, StockEntry entry) => entry switch
    {
        VanLoaded load => count.Place.Van == load.Van && load.Lines.Any(l => l.Item == count.Item),
        DeliveryReceived delivery => count.Place.Kind == PlaceKind.Shelf && count.Item == delivery.Item,
        _ => throw new InvalidOperationException($"no such entry to take back: {entry}"),
    };
}

/// <summary>A load or a delivery that may be taken back.</summary>
/// <param name="Entry">Of a load: with the lines that were not taken back yet.</param>
/// <param name="Filled">What a delivery filled of the orders, or said not to come.</param>
/// <param name="Receipts">What a delivery was on record as.</param>
public sealed record GoingBack(StockEntry Entry, IReadOnlyList<Order> Filled, IReadOnlyList<Receipt> Receipts);
