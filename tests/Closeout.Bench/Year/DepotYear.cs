using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>A year of one depot under one policy: load, drive, count, deliver, move, plan, order.</summary>
public sealed class DepotYear
{
    private readonly World world;
    private readonly Policy policy;
    private readonly Rules rules;
    private readonly History history;
    private readonly OrderBook orders;
    private readonly Handled handled;
    private readonly int[] shelf;
    private readonly int[] bin;
    private readonly Holding[,] vans;
    private readonly List<(long Asked, long Missed)> byDay = [];
    private long aboard;
    private long atDepot;

    private DepotYear(World world, Policy policy, Rules rules)
    {
        (this.world, this.policy, this.rules) = (world, policy, rules);
        (history, orders, handled) = (new(world, rules), new(world, rules), new(world.Items.Count));
        (shelf, bin) = (new int[world.Items.Count], new int[world.Items.Count]);
        vans = new Holding[World.Vans, world.Items.Count];
        for (var i = 0; i < shelf.Length; i++)
        {
            // Enough to fill the vans and wait for the first delivery; the warm-up forgets it.
            shelf[i] = world.VanDays(i).Sum() / (World.Days - World.WarmUp) * 30 / world.Items[i].UnitsPerCarton + 2;
        }
    }

    /// <param name="days">How many of the year's; misses and stock are those of the counted ones among them.</param>
    public static Outcome Run(World world, Policy policy, Rules rules, int days = World.Days)
    {
        var year = new DepotYear(world, policy, rules);
        for (var item = 0; item < world.Items.Count; item++)
            year.Load(item, policy.Of(year.history, 0, item));

        for (var day = 0; day < days; day++)
        {
            year.Drive(day);
            foreach (var (item, cartons) in year.orders.Receive(day))
                year.shelf[item] += cartons;

            year.handled.Begin(day);
            for (var item = 0; item < world.Items.Count && day + 1 < days; item++)
                year.Evening(day, item);
        }

        return year.Result(days - World.WarmUp);
    }

    private Outcome Result(int counted)
    {
        var (asked, missed) = (byDay.Skip(World.WarmUp).Sum(d => d.Asked), byDay.Skip(World.WarmUp).Sum(d => d.Missed));
        double PerVan(long units) => (double)units / counted / World.Vans;
        return new(1000.0 * missed / asked, PerVan(aboard), PerVan(aboard + atDepot), handled, history.Alarms, byDay);
    }

    private int Aboard(int v, int i) => vans[v, i].Units(world.Items[i].UnitsPerCarton);

    private long AtDepot(int i) => (long)shelf[i] * world.Items[i].UnitsPerCarton + bin[i];

    private void Drive(int day)
    {
        for (var i = 0; i < shelf.Length && day >= World.WarmUp; i++)
        {
            atDepot += AtDepot(i);
            for (var v = 0; v < World.Vans; v++)
                aboard += Aboard(v, i);
        }

        var (asked, missed) = (0L, 0L);
        var made = new List<(int, int[])>();
        for (var v = 0; v < World.Vans; v++)
        {
            foreach (var visit in world.Visits[day, v])
            {
                var used = new int[shelf.Length];
                for (var i = 0; i < used.Length; i++)
                {
                    used[i] = Math.Min(visit.Asked[i], Aboard(v, i));
                    vans[v, i] = Less(vans[v, i], used[i], world.Items[i].UnitsPerCarton);
                    (asked, missed) = (asked + visit.Asked[i], missed + visit.Asked[i] - used[i]);
                }

                made.Add((visit.Kind, used));
            }
        }

        byDay.Add((asked, missed));
        history.Add(day, made);
    }

    /// <summary>Loose units first, then out of cartons.</summary>
    private static Holding Less(Holding has, int units, int c)
    {
        var open = Math.Max(0, (units - has.Loose + c - 1) / c);
        return new(has.Sealed - open, has.Loose + open * c - units);
    }

    private void Evening(int day, int i)
    {
        var (c, wants) = (world.Items[i].UnitsPerCarton, policy.Of(history, day + 1, i));
        if (rules.Unlimited)
            shelf[i] = wants.Sum(w => w.Target) / c + World.Vans + 1;

        for (var v = 0; v < wants.Length; v++)
            Return(v, i, wants[v]);

        if (rules.Moves)
            Move(i, wants);

        Load(i, wants);
        orders.Order(day, i, history.Depot(i), AtDepot(i));
    }

    private void Return(int v, int i, Want want)
    {
        var (units, loose) = (Aboard(v, i), vans[v, i].Loose);
        var off = rules.Leftovers switch
        {
            Leftovers.Stay => 0,
            Leftovers.SurplusToBin => units > want.Target + rules.Band * want.Deviation ? Math.Min(units - want.Target, loose) : 0,
            Leftovers.AllToBin => loose,
            _ => throw new InvalidOperationException($"no such rule: {rules.Leftovers}"),
        };
        vans[v, i] = vans[v, i] with { Loose = loose - off };
        bin[i] += off;
        handled.Return(v, i, off);
    }

    private void Move(int i, Want[] wants)
    {
        var (c, supply) = (world.Items[i].UnitsPerCarton, AtDepot(i));
        var isShort = wants.Select((w, v) => (long)Math.Max(0, w.Target - Aboard(v, i))).Sum() - supply;
        if (isShort <= 0)
            return;

        foreach (var (from, to, m) in Moving.Of(world.Items[i], wants, [.. wants.Select((_, v) => vans[v, i])], supply, (int)isShort))
        {
            vans[from, i] = new(vans[from, i].Sealed - m.Cartons - m.Opened, vans[from, i].Loose + m.Opened * c - m.Loose);
            if (to is { } v)
                vans[v, i] = new(vans[v, i].Sealed + m.Cartons, vans[v, i].Loose + m.Loose);
            else
                shelf[i] += m.Cartons;

            handled.Move(from, to, i, m.Cartons, m.Loose);
        }
    }

    private void Load(int i, Want[] wants)
    {
        var c = world.Items[i].UnitsPerCarton;
        var busiest = rules.RoundsUp ? world.VanDays(i)[^1] : 0;
        var claims = wants.Select((w, v) => new Claim(Math.Max(0, w.Target - Aboard(v, i)), Aboard(v, i), w.Above));
        var given = Sharing.ByChance([.. claims], AtDepot(i));
        var portions = wants.Select((w, v) => new Portion(given[v], Aboard(v, i), Math.Max(busiest, w.Target)));
        var plan = Packing.Pack([.. portions], c, bin[i], shelf[i]);
        foreach (var (v, packed) in plan.Vans.Index())
        {
            vans[v, i] = new(vans[v, i].Sealed + packed.Sealed, vans[v, i].Loose + packed.Loose);
            handled.Load(v, i, packed.Sealed, packed.Loose, c);
        }

        handled.Open(plan.Opened);
        shelf[i] -= plan.Opened + plan.Vans.Sum(p => p.Sealed);
        bin[i] += plan.Opened * c - plan.Vans.Sum(p => p.Loose);
    }
}
