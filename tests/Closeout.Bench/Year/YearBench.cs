using Closeout.Bench.Plan;

namespace Closeout.Bench.Year;

/// <summary>
/// A year of twelve vans under our method and under fixed levels, over the same visits and deliveries, with orders by the same rule.
/// Ours is swept over service levels; between its points it is read off where it has as much stock, or misses as many, as the fixed levels.
/// </summary>
public static class YearBench
{
    /// <param name="part">ratios, bookings, drift or handling; null: all.</param>
    /// <param name="seeds">Of the tables with aims.</param>
    public static void Run(string? part = null, int seeds = 10)
    {
        var sample = BigPlan.Read(TempFolder.InTree("sample-day")).Setup;
        var few = Math.Min(3, seeds);
        Told.Line($"## A year: {World.Vans} vans, {sample.Items.Count} items, {World.Days - World.WarmUp} working days counted");
        if (part is null or "ratios")
            RatioTables.Run(sample, seeds, few);

        if (part is null or "bookings")
            BookingTable.Run(sample, seeds, few);

        if (part is null or "drift")
            DriftTable.Run(sample, seeds);

        if (part is null or "handling")
            HandlingTable.Run(sample, few);
    }
}
