namespace Closeout.Restock;

/// <summary>Which of tonight's close-outs count as days without visit reports.</summary>
public static class CountedDays
{
    /// <summary>Tonight's close-outs that are signed and that no visit report tells of.</summary>
    public static IEnumerable<CountedDay> Tonight(Depot depot) => depot.Shifts.Values
        .Where(s => s.IsClosed && !depot.Planning.ByVan.ContainsKey((depot.Date, s.Van)))
        .OrderBy(s => s.Van)
        .Select(s => new CountedDay(depot.Date, s.Van, Used(s)));

    /// <summary>
    /// Items, in item order, that no van had this morning: aboard when it came in, or on record while it is out. Only of a day on which
    /// anything was planned or counted.
    /// </summary>
    public static IReadOnlyList<Code<Item>> NotAboard(Depot depot)
    {
        var there = depot.Stock.Ledger.Balances.Where(b => b.Place.Van != default && b.Units > 0 && depot.Shift(b.Place.Van) is null)
            .Select(b => b.Item)
            .Concat(depot.Shifts.Values.SelectMany(s => s.Before.Keys))
            .ToHashSet();
        return depot.Shifts.Count == 0 ? [] : [.. depot.Setup.ItemsByCode.Select(i => i.Code).Where(i => !there.Contains(i))];
    }

    private static IReadOnlyList<ItemUnits> Used(Shift shift) =>
        [.. shift.Counts.Values.Where(c => c.Used > 0).OrderBy(c => c.Item).Select(c => new ItemUnits(c.Item, c.Used))];
}
