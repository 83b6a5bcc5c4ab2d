using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Tests.Restock;

/// <summary>Depots drawn by lot, with history, bookings, orders and stock that is often short. The same number gives the same depot.</summary>
internal static class SomeDepot
{
    private static readonly Code<VisitKind>[] Kinds = [new("INSTALL"), new("CHECK"), new("UNKNOWN")];

    public static Depot Number(int seed, int vans = 0, int items = 0, int unitsPerCarton = 0)
    {
        var lots = new Random(seed);
        vans = vans > 0 ? vans : lots.Next(1, 9);
        items = items > 0 ? items : lots.Next(1, 5);
        var setup = Tiny.Setup with
        {
            Vans = [.. Enumerable.Range(1, vans).Select(b => Tiny.Van($"V{b}", b, $"van {b}", 1000))],
            Items = [.. Enumerable.Range(1, items).Select(i => Item(lots, i, unitsPerCarton))],
        };
        setup = setup with
        {
            Rates = [.. setup.Items.SelectMany(i => Kinds[..2].Select(k => new PlanningRate(k, i.Code, lots.Next(0, 40) / 4.0, lots.Next(0, 30))))],
            Limits = [.. setup.Items.Where(_ => lots.Next(3) == 0).Select(i => new VanLimit(setup.Vans[0].Code, i.Code, i.Low / 2, i.Low))],
        };

        return Tiny.Opened(Stock(lots, setup), setup: setup)
            .Planned(p => p with
            {
                Bookings = [.. from van in setup.Vans from kind in Kinds where lots.Next(3) > 0 select new Booking(Tiny.Friday, van.Code, kind, lots.Next(0, 5))],
                Use = [.. Enumerable.Range(-70, 71).Where(_ => lots.Next(2) == 0).SelectMany(day => Kinds[..2].Select(kind => Use(lots, setup, day, kind)))],
            })
            .Stocked(s => s with { Orders = [.. setup.Items.Where(_ => lots.Next(2) == 0).Select(i => new Order(i.Code, lots.Next(1, 9), Tiny.Friday))] });
    }

    /// <summary>The plan in one line for each of its lines: what any reader of it would see.</summary>
    public static IEnumerable<string> Text(RestockPlan plan) =>
    [
        .. plan.Lines.Select(l => $"{l.Van.Code} {l.Item.Code}: {l.Aboard} of {l.Low}..{l.High}, q {l.Q}, {l.Target}, {l.Need} = {l.Sealed} + {l.FromBin} + {l.FromOpened}, {l.Short} short, {l.MissChance:F4} {l.Provisional}"),
        .. plan.Shelf.Select(s => $"{s.Item.Code}: {s.ShelfBefore} {s.BinBefore}, {s.SealedOut} {s.Opened} {s.LooseOut}, {s.ShelfAfter} {s.BinAfter}, {s.Short} short, {s.OnOrder} {s.Order}"),
    ];

    private static Item Item(Random lots, int i, int unitsPerCarton)
    {
        var low = lots.Next(0, 20);
        return Tiny.Lamp with
        {
            Code = new($"I{i}"), Priority = lots.Next(1, 4), UnitsPerCarton = unitsPerCarton > 0 ? unitsPerCarton : lots.Next(1, 13),
            Low = low, High = low + lots.Next(0, 40), LeadDays = lots.Next(0, 10), ReviewDays = lots.Next(0, 8), MinOrderCartons = lots.Next(0, 3),
        };
    }

    private static string Stock(Random lots, Setup setup) => string.Join("; ", setup.Items.SelectMany(i => new[]
    {
        $"shelf: {lots.Next(0, 3 + setup.Vans.Count * 20 / i.UnitsPerCarton)} {i.Code}", $"bin: {lots.Next(0, 15)} {i.Code}",
    }.Concat(setup.Vans.Select(v => $"{v.Code}: {lots.Next(0, 2)}+{lots.Next(0, 20)} {i.Code}"))));

    private static DailyUse Use(Random lots, Setup setup, int day, Code<VisitKind> kind)
    {
        var visits = Enumerable.Range(0, lots.Next(1, 5)).Select(_ => setup.Items.Select(i => lots.Next(3) == 0 ? 0 : lots.Next(0, 9)).ToList()).ToList();
        return new(Tiny.Wednesday.AddDays(day), kind, visits.Count, [.. setup.Items.Index()
            .Select(i => new ItemUse(i.Item.Code, visits.Sum(v => v[i.Index]), visits.Sum(v => v[i.Index] * v[i.Index])))
            .Where(u => u.Sum > 0)]);
    }
}
