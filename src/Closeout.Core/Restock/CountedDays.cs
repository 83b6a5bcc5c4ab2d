namespace Closeout.Restock;

/// <summary>Which of tonight's close-outs count as days without visit reports.</summary>
public static class CountedDays
{
    /// <summary>Tonight's close-outs that are signed and that no visit report tells of.</summary>
    public static IEnumerable<CountedDay> Tonight(Depot depot) => depot.Shifts.Values
        .Where(s => s.IsClosed && !depot.Planning.ByVan.ContainsKey((depot.Date, s.Van)))
        .OrderBy(s => s.Van)
        .Select(s => new CountedDay(depot.Date, s.Van, Used(s)));

    private static IReadOnlyList<ItemUnits> Used(Shift shift) =>
        [.. shift.Counts.Values.Where(c => c.Used > 0).OrderBy(c => c.Item).Select(c => new ItemUnits(c.Item, c.Used))];
}
