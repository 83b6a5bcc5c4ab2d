namespace Closeout.Restock;

/// <summary>The work that a restock is: lines touched, cartons and units carried, and units that were carried for nothing.</summary>
public static class Handling
{
    /// <summary>
    /// Units given back count as shuffled when the same van gets them again on one of so many evenings, tonight the first.
    /// </summary>
    public const int Evenings = 3;

    /// <summary>Tonight's work so far; none where nothing was loaded or moved.</summary>
    public static IEnumerable<Handled> Tonight(Depot depot)
    {
        var (loads, moves) = (depot.Stock.Loaded.Values.Where(l => l.Sealed + l.Loose > 0).ToList(), depot.Stock.Moved);
        return loads.Count + moves.Count == 0 ? [] :
        [
            new(depot.Date, loads.Count + moves.Count, loads.Sum(l => l.Sealed + l.Opened) + moves.Sum(m => m.Sealed + m.Opened),
                loads.Sum(l => (long)l.Loose) + moves.Sum(m => (long)m.Loose), Pairs(depot).Sum(p => (long)p.Again)),
        ];
    }

    /// <summary>All evenings of the planning window and tonight, the oldest first.</summary>
    public static IReadOnlyList<Handled> Of(Depot depot) => [.. depot.Planning.Handled, .. Tonight(depot)];

    /// <summary>What vans gave back and did not get again, for the evenings on which it would still be for nothing.</summary>
    public static IEnumerable<ReturnedUnits> StillReturned(Depot depot)
    {
        foreach (var (returned, again) in Pairs(depot))
        {
            // What was given back first is taken for what came again.
            var left = again;
            foreach (var old in returned)
            {
                var taken = Math.Min(left, old.Units);
                left -= taken;
                if (old.Units > taken && old.Evenings < Evenings - 1)
                    yield return old with { Units = old.Units - taken, Evenings = old.Evenings + 1 };
            }
        }
    }

    /// <summary>What a van gave back of an item, the oldest first, and how many units of it it got again tonight.</summary>
    private static IEnumerable<(IReadOnlyList<ReturnedUnits> Returned, int Again)> Pairs(Depot depot) => depot.Planning.Returned
        .Concat(depot.Shifts.Values.SelectMany(s => s.Counts.Values.Where(c => c.Count.Bin > 0)
            .Select(c => new ReturnedUnits(s.Van, c.Item, c.Count.Bin, 0))))
        .Where(r => depot.Setup.Find(r.Van) is not null && depot.Setup.Find(r.Item) is not null)
        .GroupBy(r => (r.Van, r.Item))
        .OrderBy(g => g.Key.Van).ThenBy(g => g.Key.Item)
        .Select(g => (
            (IReadOnlyList<ReturnedUnits>)[.. g.OrderByDescending(r => r.Evenings)],
            Math.Min(g.Sum(r => r.Units), depot.Stock.Loaded.GetValueOrDefault(g.Key)?.Loose ?? 0)));
}
