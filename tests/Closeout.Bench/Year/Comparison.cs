namespace Closeout.Bench.Year;

/// <summary>Ours beside fixed levels in one world, the depot run in the same way for both.</summary>
/// <param name="Fixed">Of the levels asked for.</param>
/// <param name="EqualAboard">Units missed, ours / theirs, with as many units aboard.</param>
/// <param name="EqualTotal">The same with as many units in vans and depot together.</param>
/// <param name="Saved">Part of the units aboard that ours does without, missing as many.</param>
public sealed record Comparison(
    IReadOnlyList<Outcome> Fixed, IReadOnlyList<double> EqualAboard, IReadOnlyList<double> EqualTotal, IReadOnlyList<double> Saved)
{
    /// <param name="knows">Whether ours knows what visits truly use.</param>
    public static Comparison Of(World world, Rules rules, IReadOnlyList<double> levels, bool knows = false)
    {
        var ours = new Sweep(p => DepotYear.Run(world, new ByBookings(world, p, knows), rules));
        var theirs = levels.Select(p => DepotYear.Run(world, new FixedLevels(world, p), rules with { Moves = false })).ToList();
        return new(
            theirs,
            [.. theirs.Select(o => ours.MissedWith(o.Aboard, x => x.Aboard) / o.MissedPerThousand)],
            [.. theirs.Select(o => ours.MissedWith(o.Total, x => x.Total) / o.MissedPerThousand)],
            [.. theirs.Select(o => 1 - ours.StockFor(o.MissedPerThousand, x => x.Aboard) / o.Aboard)]);
    }
}
