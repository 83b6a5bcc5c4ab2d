namespace Closeout.Restock;

/// <summary>How well the plan did: its promises against what was used.</summary>
/// <remarks>
/// A line is one item of one van on one date for which visits were booked. Demand is what visits report, or what the count
/// says was used where nothing is reported. A line that ended with nothing left may have met more demand than anybody saw;
/// such lines are counted beside it, so that a good figure can be doubted where it should be.
/// </remarks>
public static class Accuracy
{
    /// <summary>The promises for the business date to vans that are closed out, by priority.</summary>
    public static IEnumerable<KeptPromises> Tonight(Depot depot) => depot.Planning.Promises
        .Where(p => depot.Shift(p.Van) is { IsClosed: true } && depot.Setup.Find(p.Item) is not null)
        .Select(p => Line(depot, p))
        .GroupBy(k => k.Priority)
        .OrderBy(g => g.Key)
        .Select(g => g.Aggregate(Add));

    /// <summary>All dates of the planning window and tonight, oldest first.</summary>
    public static IReadOnlyList<KeptPromises> Of(Depot depot) =>
        [.. depot.Planning.Kept.Concat(Tonight(depot)).OrderBy(k => k.Date).ThenBy(k => k.Priority)];

    /// <summary>The same without the dates, by priority.</summary>
    public static IReadOnlyList<KeptPromises> Sums(Depot depot) =>
        [.. Of(depot).GroupBy(k => k.Priority).OrderBy(g => g.Key).Select(g => g.Aggregate(Add))];

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
        a.Used + b.Used);
}
