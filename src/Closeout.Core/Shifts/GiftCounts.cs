namespace Closeout.Shifts;

/// <summary>
/// What counts mean once it is known that stock went from van to van: somebody who counted before counted what was left, or what was
/// already there.
/// </summary>
internal static class GiftCounts
{
    /// <summary>The depot as it was before the item was counted in the van tonight.</summary>
    public static Depot Uncounted(Depot depot, Shift shift, Item item) => shift.Counts.TryGetValue(item.Code, out var count)
        ? depot with
        {
            Stock = depot.Stock with { Ledger = depot.Stock.Ledger.Post(Moves(shift, item, count).Reverse().Select(m => m.Back())) },
        }
        : depot;

    /// <summary>What the entry moves, and what it then does to what these vans counted.</summary>
    public static IReadOnlyList<Move> Follow(Depot depot, StockEntry entry, IReadOnlyList<Shift?> shifts, Item item)
    {
        var after = Gifts.After(depot, entry);
        return [.. entry.Moves, .. shifts.OfType<Shift>().Where(s => s.Counts.ContainsKey(item.Code)).SelectMany(s =>
            Counting.Replace(Moves(s, item, s.Counts[item.Code]), Moves(after[s.Van], item, s.Counts[item.Code])))];
    }

    private static IEnumerable<Move> Moves(Shift shift, Item item, LeftoverCounted count) =>
        Counting.Moves(shift.Van, item, shift.Before.GetValueOrDefault(item.Code), count.Count, count.Installed);
}
