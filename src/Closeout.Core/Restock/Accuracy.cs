namespace Closeout.Restock;

/// <summary>How well the plan did: its promises against what was used.</summary>
/// <remarks>
/// A line is one item of one van on one date for which visits were booked. Demand is what visits report, or what the count
/// says was used where nothing is reported. A line that ended with nothing left may have met more demand than anybody saw;
/// such lines are counted beside it, so that a good figure can be doubted where it should be.
/// </remarks>
public static class Accuracy
{
    /// <summary>
    /// The promises for the business date to vans that are closed out, by priority, and what such vans missed of items that nothing was
    /// promised of; none where nothing was promised at all.
    /// </summary>
    public static IEnumerable<KeptPromises> Tonight(Depot depot) => depot.Planning.Promises
        .Where(p => depot.Shift(p.Van) is { IsClosed: true } && depot.Setup.Find(p.Item) is not null)
        .Select(p => Line(depot, p))
        .Concat(depot.Planning.Promises.Count == 0 ? [] : Unpromised(depot))
        .GroupBy(k => k.Priority)
        .OrderBy(g => g.Key)
        .Select(g => g.Aggregate(Add));

    /// <summary>All dates of the planning window and tonight, oldest first.</summary>
    public static IReadOnlyList<KeptPromises> Of(Depot depot) =>
        [.. depot.Planning.Kept.Concat(Tonight(depot)).OrderBy(k => k.Date).ThenBy(k => k.Priority)];

    /// <summary>The same without the dates, by priority.</summary>
    public static IReadOnlyList<KeptPromises> Sums(Depot depot) =>
        [.. Of(depot).GroupBy(k => k.Priority).OrderBy(g => g.Key).Select(g => g.Aggregate(Add))];

    private static IEnumerable<KeptPromises> Unpromised(Depot depot)
    {
        var promised = depot.Planning.Promises.Select(p => (p.Van, p.Item)).ToHashSet();
        return from shift in depot.Shifts.Values
               where shift.IsClosed && depot.Planning.ByVan.ContainsKey((depot.Date, shift.Van))
               from used in depot.Planning.ByVan[(depot.Date, shift.Van)].Items
               where !promised.Contains((shift.Van, used.Item))
               let item = depot.Setup.Find(used.Item)
               where item is not null
               let missed = used.Units - shift.Before.GetValueOrDefault(used.Item).Units(item.UnitsPerCarton)
               where missed > 0
               select new KeptPromises(depot.Date, item.Priority, 0, 0, missed, 0, 0, 0, missed);
    }

    private static KeptPromises Line(Depot depot, Promise promise)
    {
        var (item, shift) = (depot.Setup.Item(promise.Item), depot.Shift(promise.Van)!);
        var aboard = shift.Before.GetValueOrDefault(promise.Item).Units(item.UnitsPerCarton);
        var counted = shift.Counts.TryGetValue(promise.Item, out var count) ? Math.Max(0, count.Used) : 0;
        var demand = depot.Reported(promise.Van, promise.Item) ?? counted;
        return new(
            depot.Date, item.Priority, 1, demand <= promise.Target ? 1 : 0, Math.Max(0, demand - aboard),
            aboard - Math.Max(demand, counted) <= 0 ? 1 : 0, aboard, demand);
    }

    private static KeptPromises Add(KeptPromises a, KeptPromises b) => new(
        a.Date, a.Priority, a.Lines + b.Lines, a.Within + b.Within, a.Missed + b.Missed, a.Emptied + b.Emptied, a.Aboard + b.Aboard,
        a.Used + b.Used, a.Unpromised + b.Unpromised);
}
