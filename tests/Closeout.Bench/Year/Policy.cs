using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>What a van should have tomorrow, and the chance that so many units do not suffice, by which scarce units are shared.</summary>
/// <param name="Deviation">Standard deviation of tomorrow's demand; 0: the target is the same on all days.</param>
/// <param name="By">What it rests on; null: not on bookings.</param>
public sealed record Want(int Target, double Deviation, Func<int, double> Above, (BookedDemand Booked, Demand Demand)? By = null);

/// <summary>A way to set tomorrow's targets.</summary>
public abstract class Policy
{
    /// <summary>Of every van, in bay order.</summary>
    public abstract Want[] Of(History history, int day, int item);
}

/// <summary>Ours: the product's demand of the visits booked and its quantile; low 0, high out of the way.</summary>
/// <param name="knows">Whether it knows what visits truly use, and so need not learn it.</param>
public sealed class ByBookings(World world, double service, bool knows = false) : Policy
{
    /// <summary>Vans with the same bookings have the same demand.</summary>
    public override Want[] Of(History history, int day, int item)
    {
        var wants = new Want[World.Vans];
        for (var v = 0; v < wants.Length; v++)
        {
            var same = 0;
            while (!world.Booked[day, same].AsSpan().SequenceEqual(world.Booked[day, v]))
                same++;

            wants[v] = same < v ? wants[same] : Of(history, world.Booked[day, v], item);
        }

        return wants;
    }

    private Want Of(History history, int[] booked, int item)
    {
        var visits = new List<BookedVisits>();
        for (var k = 0; k < booked.Length; k++)
        {
            var kept = history.Kept(k);
            if (booked[k] > 0 || kept.Added > 0)
                visits.Add(new(world.Kinds[k], booked[k], knows ? True(k, item) : history.UseOf(k, item), kept));
        }

        var of = BookedDemand.Of(visits);
        var demand = of.Mean > 0 ? new Demand(of.Mean, of.Variance) : Demand.Nothing;
        var target = Target.Of(0, int.MaxValue, demand.Quantile(service)).Units;
        return new(target, Math.Sqrt(of.Variance), demand.Above, (of, demand));
    }

    /// <summary>Known as if from visits without number.</summary>
    private VisitUse True(int kind, int item) =>
        new(double.PositiveInfinity, world.Truth[kind, item], world.TrueVariance(kind, item));
}

/// <summary>
/// One level per item for all vans and days, at its best: the exact quantile of what the item's van-days of this very
/// year will have asked. Equal quantiles miss the fewest units of all fixed levels with so many units aboard. Scarce units go to
/// the van with the largest chance by those same van-days, that is to the emptiest.
/// </summary>
public sealed class FixedLevels : Policy
{
    private readonly Want[][] wants;

    public FixedLevels(World world, double service) =>
        wants = [.. world.Items.Select((_, i) => Enumerable.Repeat(Level(world.VanDays(i), service), World.Vans).ToArray())];

    public override Want[] Of(History history, int day, int item) => wants[item];

    private static Want Level(int[] vanDays, double service)
    {
        var above = new double[vanDays[^1] + 1];
        foreach (var asked in vanDays)
        {
            for (var x = 0; x < asked; x++)
                above[x] += 1.0 / vanDays.Length;
        }

        return new(vanDays[(int)Math.Ceiling(service * vanDays.Length) - 1], 0, x => x < above.Length ? above[x] : 0);
    }
}
