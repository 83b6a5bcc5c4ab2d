using Closeout.Stock;

namespace Closeout.DayBook;

/// <summary>What a van used on a date by its close-out's counts, where no visit report tells: one visit of kind <c>day</c>.</summary>
/// <param name="Used">Units above 0; items not listed: none used.</param>
public sealed record CountedDay(DateOnly Date, Code<Van> Van, IReadOnlyList<ItemUnits> Used)
{
    /// <summary>The visit kind that such a day counts as, and that bookings of whole days name.</summary>
    public static readonly Code<VisitKind> Kind = new("day");

    /// <summary>Tonight's close-outs that are signed and that no visit report tells of.</summary>
    public static IEnumerable<CountedDay> Tonight(Depot depot) => depot.Shifts.Values
        .Where(s => s.IsClosed && !depot.ByVan.ContainsKey((depot.Date, s.Van)))
        .OrderBy(s => s.Van)
        .Select(s => new CountedDay(depot.Date, s.Van, [.. s.Counts.Values.Where(c => c.Used > 0).OrderBy(c => c.Item).Select(c => new ItemUnits(c.Item, c.Used))]));
}
