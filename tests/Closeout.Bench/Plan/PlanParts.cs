using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Plan;

/// <summary>Where the plan's time goes: its own parts, each run again for all vans and items or for all lines.</summary>
public static class PlanParts
{
    public static void Tell(Depot depot, RestockPlan plan, int rounds)
    {
        var history = VisitHistory.Of(depot);
        var booked = depot.Planning.Bookings.Where(b => b.Date == plan.Date).ToLookup(b => b.Van);
        var uses = new List<BookedDemand>();
        var portions = new List<Portion[]>();
        var items = plan.Lines.GroupBy(l => l.Item).Select(g => (Lines: g.ToArray(), Shelf: plan.Shelf.First(s => s.Item == g.Key))).ToList();
        var times = Timed.InTurns(
            rounds,
            () => RestockPlan.For(depot),
            () => VisitHistory.Of(depot),
            () => WorkingDays.Of(depot),
            () => EachPair(depot, (van, item) =>
            {
                depot.Stock.Ledger.Aboard(van.Code, item);
                depot.Setup.Limit(van.Code, item);
                depot.Shift(van.Code);
            }),
            () =>
            {
                uses.Clear();
                EachPair(depot, (van, item) => uses.Add(BookedDemand.Of([.. booked[van.Code].Select(b => new BookedVisits(b.Kind, b.Visits, history.UseOf(b.Kind, item.Code)))])));
            },
            () => uses.ForEach(u => new Demand(u.Mean, u.Variance).Quantile(0.98)),
            () =>
            {
                portions.Clear();
                portions.AddRange(items.Select(i => Share(i.Lines, i.Shelf)));
            },
            () =>
            {
                foreach (var (portion, item) in portions.Zip(items))
                {
                    Packing.Pack(portion, item.Shelf.Item.UnitsPerCarton, item.Shelf.BinBefore, item.Shelf.ShelfBefore);
                }
            },
            () => plan.Lines.OrderBy(l => l.Item.Code).ThenBy(l => l.Van.Bay).ToList());
        string[] names = ["history", "working days", "aboard, limits, shifts", "visits' use of each pair", "demands and quantiles", "sharing", "packing", "sorting lines"];
        Told.Line($"of the plan: {string.Join(", ", names.Zip(times.Skip(1), (n, t) => FormattableString.Invariant($"{n} {t / times[0]:0.00}")))}");
    }

    private static void EachPair(Depot depot, Action<Van, Item> of)
    {
        foreach (var item in depot.Setup.Items)
        {
            foreach (var van in depot.Setup.Vans)
            {
                of(van, item);
            }
        }
    }

    private static Portion[] Share(RestockLine[] lines, ShelfLine shelf)
    {
        var units = Sharing.ByChance([.. lines.Select(l => new Claim(l.Need, l.Aboard, l.Demand.Above))], shelf.BinBefore + (long)shelf.ShelfBefore * shelf.Item.UnitsPerCarton);
        return [.. lines.Select((l, v) => new Portion(units[v], l.Aboard, l.High))];
    }
}
