using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>What happens in the evening to loose units that came back.</summary>
public enum Leftovers
{
    /// <summary>They stay aboard, also above tomorrow's target.</summary>
    Stay,

    /// <summary>What tomorrow does not need goes to the bin.</summary>
    SurplusToBin,

    /// <summary>All go to the bin.</summary>
    AllToBin,
}

/// <param name="Leftovers">What becomes of loose units.</param>
/// <param name="RoundsUp">Whether a van may be rounded up to a whole carton, up to the item's busiest van-day of the year.</param>
/// <param name="Scarce">Whether there are weeks in which deliveries come late and short.</param>
public sealed record Rules(Leftovers Leftovers, bool RoundsUp, bool Scarce = true);

/// <param name="MissedPerThousand">Units missed per thousand units asked.</param>
/// <param name="Aboard">Average units aboard a van in the morning, all items.</param>
public readonly record struct Outcome(double MissedPerThousand, double Aboard);

/// <summary>A year of one depot under one policy: load, drive, count, deliver, plan, order.</summary>
public sealed class DepotYear
{
    private const double OrderService = 0.98;

    private readonly World world;
    private readonly Policy policy;
    private readonly Rules rules;
    private readonly History history;
    private readonly int[] busiest;
    private readonly int[] shelf;
    private readonly int[] bin;
    private readonly int[,] cartons;
    private readonly int[,] loose;
    private readonly List<(int Day, int Item, int Cartons)> due = [];
    private long asked;
    private long missed;
    private long aboard;

    private DepotYear(World world, Policy policy, Rules rules)
    {
        (this.world, this.policy, this.rules, history) = (world, policy, rules, new(world));
        busiest = [.. Enumerable.Range(0, world.Items.Count).Select(i => rules.RoundsUp ? world.VanDays(i)[^1] : 0)];
        (shelf, bin) = (new int[world.Items.Count], new int[world.Items.Count]);
        (cartons, loose) = (new int[World.Vans, world.Items.Count], new int[World.Vans, world.Items.Count]);
        for (var i = 0; i < shelf.Length; i++)
        {
            // Enough to fill the vans and wait for the first delivery; the warm-up forgets it.
            shelf[i] = world.VanDays(i).Sum() / (World.Days - World.WarmUp) * 30 / world.Items[i].UnitsPerCarton + 2;
        }
    }

    public static Outcome Run(World world, Policy policy, Rules rules)
    {
        var year = new DepotYear(world, policy, rules);
        for (var day = 0; day < World.Days; day++)
        {
            year.Drive(day);
            year.Deliver(day);
            for (var item = 0; item < world.Items.Count && day + 1 < World.Days; item++)
            {
                year.Restock(day, item);
                year.Order(day, item);
            }
        }

        return new(1000.0 * year.missed / year.asked, (double)year.aboard / (World.Days - World.WarmUp) / World.Vans);
    }

    private int Aboard(int v, int i) => cartons[v, i] * world.Items[i].UnitsPerCarton + loose[v, i];

    private void Drive(int day)
    {
        var counted = day >= World.WarmUp;
        var made = new List<(int, int[])>();
        for (var v = 0; v < World.Vans; v++)
        {
            for (var i = 0; i < shelf.Length && counted; i++)
            {
                aboard += Aboard(v, i);
            }

            foreach (var visit in world.Visits[day, v])
            {
                var used = visit.Asked.Select((units, i) => Install(v, i, units)).ToArray();
                made.Add((visit.Kind, used));
                asked += counted ? visit.Asked.Sum() : 0;
                missed += counted ? visit.Asked.Sum() - used.Sum() : 0;
            }
        }

        history.Add(World.Date(day), made);
    }

    private int Install(int v, int i, int units)
    {
        var used = Math.Min(units, Aboard(v, i));
        var c = world.Items[i].UnitsPerCarton;
        var open = Math.Max(0, (used - loose[v, i] + c - 1) / c);
        cartons[v, i] -= open;
        loose[v, i] += open * c - used;
        return used;
    }

    private void Deliver(int day)
    {
        foreach (var (_, i, count) in due.Where(d => d.Day == day))
        {
            shelf[i] += count;
        }

        due.RemoveAll(d => d.Day == day);
    }

    private void Restock(int day, int i)
    {
        var c = world.Items[i].UnitsPerCarton;
        var wants = new Want[World.Vans];
        for (var v = 0; v < wants.Length; v++)
        {
            wants[v] = policy.Of(history, day + 1, v, i);
            var off = rules.Leftovers switch
            {
                Leftovers.Stay => 0,
                Leftovers.SurplusToBin => Math.Clamp(Aboard(v, i) - wants[v].Target, 0, loose[v, i]),
                _ => loose[v, i],
            };
            loose[v, i] -= off;
            bin[i] += off;
        }

        var given = Sharing.ByChance([.. wants.Select((w, v) => new Claim(Math.Max(0, w.Target - Aboard(v, i)), Aboard(v, i), w.Above))], bin[i] + (long)shelf[i] * c);
        var plan = Packing.Pack([.. wants.Select((w, v) => new Portion(given[v], Aboard(v, i), Math.Max(busiest[i], w.Target)))], c, bin[i], shelf[i]);
        for (var v = 0; v < wants.Length; v++)
        {
            cartons[v, i] += plan.Vans[v].Sealed;
            loose[v, i] += plan.Vans[v].Loose;
        }

        shelf[i] -= plan.Opened + plan.Vans.Sum(p => p.Sealed);
        bin[i] += plan.Opened * c - plan.Vans.Sum(p => p.Loose);
    }

    /// <summary>By the reorder rule, every evening. In a scarce week what is due comes a week late, and half of it.</summary>
    private void Order(int day, int i)
    {
        var item = world.Items[i];
        var onOrder = due.Where(d => d.Item == i).Sum(d => d.Cartons);
        var order = Reorder.Of(item, history.Depot(i), OrderService, (long)shelf[i] * item.UnitsPerCarton + bin[i], (long)onOrder * item.UnitsPerCarton).Cartons;
        if (order > 0)
        {
            var arrives = day + Math.Max(1, item.LeadDays);
            due.Add(rules.Scarce && world.ScarceWeeks.Contains(arrives / 5) ? (arrives + 5, i, (order + 1) / 2) : (arrives, i, order));
        }
    }
}
