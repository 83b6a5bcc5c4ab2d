using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>The depot's stock on a business date: where it is, what is on order, what was loaded and counted blind.</summary>
/// <param name="Loaded">What was loaded tonight, by van and item.</param>
/// <param name="SpotCounts">The last blind count of each item in each van.</param>
public sealed record StockState(
    Ledger Ledger,
    ImmutableList<Order> Orders,
    ImmutableDictionary<(Code<Van> Van, Code<Item> Item), LoadedLine> Loaded,
    ImmutableDictionary<(Code<Van> Van, Code<Item> Item), SpotCounted> SpotCounts)
{
    public static StockState Open(Carried carried) => new(
        Ledger.Carried(carried.Balances),
        [.. carried.Orders],
        ImmutableDictionary<(Code<Van>, Code<Item>), LoadedLine>.Empty,
        carried.SpotCounts.ToImmutableDictionary(s => (s.Van, s.Item)));

    /// <summary>What an entry of the stock does beside its moves.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    public StockState Evolve(StockEntry entry) => entry switch
    {
        VanLoaded e => this with { Loaded = Loaded.SetItems(e.Lines.Select(l => KeyValuePair.Create((e.Van, l.Item), l))) },
        DeliveryReceived e => this with { Orders = Received(e) },
        CountCorrected => this,
        _ => throw new InvalidOperationException("it cannot stand in the stock"),
    };

    /// <summary>After a count: where the item was counted blind, that it was, and what the gap was.</summary>
    public StockState Counted(LeftoverCounted count, bool isBlind, DateOnly today) => isBlind
        ? this with { SpotCounts = SpotCounts.SetItem((count.Van, count.Item), new(count.Van, count.Item, today, count.Gap)) }
        : this;

    /// <summary>What is still on order: a delivery fills the orders due first.</summary>
    private ImmutableList<Order> Received(DeliveryReceived delivery)
    {
        var (left, orders) = (delivery.Ordered, Orders.ToBuilder());
        foreach (var order in Orders.Where(o => o.Item == delivery.Item).OrderBy(o => o.Due))
        {
            var filled = Math.Min(left, order.Cartons);
            left -= filled;
            orders[orders.IndexOf(order)] = order with { Cartons = order.Cartons - filled };
        }

        orders.RemoveAll(o => o.Cartons == 0);
        return left == 0
            ? orders.ToImmutable()
            : throw new InvalidOperationException($"{delivery.Ordered} cartons of {delivery.Item} were not on order");
    }
}
