using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>What a van should have tomorrow, and the chance that so many units do not suffice, by which scarce units are shared.</summary>
public readonly record struct Want(int Target, Func<int, double> Above);

/// <summary>A way to set tomorrow's targets.</summary>
public abstract class Policy
{
    public abstract Want Of(History history, int day, int van, int item);
}

/// <summary>Ours: the product's demand of the visits booked and its quantile; low 0, high out of the way.</summary>
public sealed class ByBookings(World world, double service) : Policy
{
    public override Want Of(History history, int day, int van, int item)
    {
        var visits = new List<BookedVisits>();
        var booked = world.Booked[day, van];
        for (var k = 0; k < booked.Length; k++)
        {
            if (booked[k] > 0)
            {
                visits.Add(new(world.Kinds[k], booked[k], history.UseOf(k, item)));
            }
        }

        var of = BookedDemand.Of(visits);
        var demand = of.Mean > 0 ? new Demand(of.Mean, of.Variance) : Demand.Nothing;
        return new(Target.Of(0, int.MaxValue, demand.Quantile(service)).Units, demand.Above);
    }
}

/// <summary>
/// One level per item for all vans and days, at its best: the exact quantile of what the item's van-days of this very
/// year will have asked. Equal quantiles miss the fewest units of all fixed levels with so many units aboard. Scarce units go to
/// the van with the largest chance by those same van-days, that is to the emptiest.
/// </summary>
public sealed class FixedLevels : Policy
{
    private readonly Want[] wants;

    public FixedLevels(World world, double service) =>
        wants = [.. Enumerable.Range(0, world.Items.Count).Select(i => Level(world.VanDays(i), service))];

    public override Want Of(History history, int day, int van, int item) => wants[item];

    private static Want Level(int[] vanDays, double service)
    {
        var above = new double[vanDays[^1] + 1];
        foreach (var asked in vanDays)
        {
            for (var x = 0; x < asked; x++)
            {
                above[x] += 1.0 / vanDays.Length;
            }
        }

        return new(vanDays[(int)Math.Ceiling(service * vanDays.Length) - 1], x => x < above.Length ? above[x] : 0);
    }
}
