using System.Globalization;

namespace Closeout.Cardboard;

/// <summary>Boxes of a van (default: the depot) and item (default: of older records, which name none) on a date.</summary>
public readonly record struct DatedBoxes(DateOnly Date, BoxRow Row);

/// <summary>By what recycling is added up.</summary>
public enum Period
{
    Day,
    Week,
    Month,
    Van,
    Item,
}

/// <summary>Boxes added up over a period, a van or an item.</summary>
/// <param name="Name">The date, <c>2026-W47</c>, <c>2026-11</c>, or the code; empty: the depot itself, or records without items.</param>
/// <param name="From">First date with any row.</param>
/// <param name="To">Last date with any row.</param>
/// <param name="Days">Dates with any row.</param>
public sealed record PeriodTotal(string Name, DateOnly From, DateOnly To, int Days, BoxSum Sum);

/// <summary>Adds boxes up by day, ISO week, month, van and item: always the same rows, so the sums agree.</summary>
public static class RecyclingTotals
{
    /// <summary>The totals in order: of time the oldest first, else by code.</summary>
    public static IReadOnlyList<PeriodTotal> By(Period period, DepotSettings depot, IEnumerable<DatedBoxes> boxes) =>
    [
        .. boxes.GroupBy(b => Name(period, b), StringComparer.Ordinal)
            .OrderBy(g => g.Key, StringComparer.Ordinal)
            .Select(g => new PeriodTotal(
                g.Key, g.Min(b => b.Date), g.Max(b => b.Date), g.Select(b => b.Date).Distinct().Count(),
                CardboardTotals.Sum(depot, g.Select(b => b.Row)))),
    ];

    /// <summary>Tonight's rows of the depot.</summary>
    public static IEnumerable<DatedBoxes> Tonight(Depot depot) => CardboardTotals.Rows(depot).Select(r => new DatedBoxes(depot.Date, r));

    /// <summary>The word for a period.</summary>
    public static string Words(Period period) => period switch
    {
        Period.Day => T("day"),
        Period.Week => T("week"),
        Period.Month => T("month"),
        Period.Van => T("van"),
        Period.Item => T("item"),
        _ => throw new InvalidOperationException($"no such period: {period}"),
    };

    private static string Name(Period period, DatedBoxes b) => period switch
    {
        Period.Day => b.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
        Period.Week => IsoWeek.Name(b.Date),
        Period.Month => b.Date.ToString("yyyy-MM", CultureInfo.InvariantCulture),
        Period.Van => b.Row.Van.ToString(),
        Period.Item => b.Row.Item.ToString(),
        _ => throw new InvalidOperationException($"no such period: {period}"),
    };
}
