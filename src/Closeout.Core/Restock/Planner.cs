using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Restock;

/// <summary>Plans item by item: demand, target and need of each van, then who gets what, in which cartons, and what to buy.</summary>
internal sealed class Planner
{
    private readonly Depot depot;
    private readonly VisitHistory history;
    private readonly WorkingDays working;
    private readonly Dictionary<Code<Van>, List<(Code<VisitKind> Kind, int Visits)>> booked;
    private readonly List<Standing> changes;

    public Planner(Depot depot, DateOnly date)
    {
        (this.depot, Date) = (depot, date);
        history = VisitHistory.Of(depot);
        working = WorkingDays.Of(depot);
        changes = [.. depot.Overrides.Where(o => o.Change.Date == date)];
        booked = depot.Bookings
            .Where(b => b.Date == date && b.Visits > 0)
            .GroupBy(b => b.Van)
            .ToDictionary(g => g.Key, g => g.GroupBy(b => b.Kind, b => b.Visits).OrderBy(k => k.Key).Select(k => (k.Key, k.Sum())).ToList());
    }

    public DateOnly Date { get; }

    public (IReadOnlyList<RestockLine> Lines, ShelfLine Shelf) Plan(Item item)
    {
        var c = item.UnitsPerCarton;
        var (cartons, bin) = (depot.Ledger.Units(Place.Shelf, item.Code) / c, depot.Ledger.Units(Place.Bin, item.Code));
        var wants = depot.Setup.Vans.Select(van => Want(van, item)).Where(w => w.Need > 0 || IsChanged(w)).ToList();

        // What was loaded is done, even when it was less than planned: what is left is for the others.
        var claims = wants.Select(w => new Claim(depot.Loaded.ContainsKey((w.Van.Code, item.Code)) ? 0 : w.Need, w.Aboard, Known(w)));
        var given = Sharing.ByChance([.. claims], bin + (long)cartons * c);
        var packing = Packing.Pack([.. wants.Select((w, v) => new Portion(given[v], w.Aboard, w.High))], c, bin, cartons);

        var binLeft = bin;
        var lines = new List<RestockLine>(wants.Count);
        foreach (var (v, want) in wants.Index())
        {
            var packed = packing.Vans[v];
            var fromBin = Math.Min(packed.Loose, binLeft);
            binLeft -= fromBin;
            lines.Add(want with { Sealed = packed.Sealed, FromBin = fromBin, FromOpened = packed.Loose - fromBin, Short = want.Need - given[v] });
        }

        return (lines, Shelf(item, cartons, bin, packing.Opened, lines));
    }

    private ShelfLine Shelf(Item item, int cartons, int bin, int opened, List<RestockLine> lines)
    {
        var c = item.UnitsPerCarton;
        var (sealedOut, looseOut) = (lines.Sum(l => l.Sealed), lines.Sum(l => l.FromBin + l.FromOpened));
        var (cartonsLeft, binLeft) = (cartons - sealedOut - opened, bin + opened * c - looseOut);
        var onOrder = depot.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons) * c;
        var position = (long)cartonsLeft * c + binLeft + onOrder;
        var order = Reorder.Of(item, working.UseOf(item.Code), depot.Setup.Depot.Service(item.Priority), position);
        return new(item, cartons, bin, sealedOut, opened, looseOut, cartonsLeft, binLeft, lines.Sum(l => l.Short), onOrder, order);
    }

    public RestockLine Want(Van van, Item item)
    {
        var aboard = depot.Ledger.Aboard(van.Code, item).Units(item.UnitsPerCarton);
        var (low, high) = depot.Setup.Limit(van.Code, item);
        var visits = booked.TryGetValue(van.Code, out var kinds)
            ? BookedDemand.Of([.. kinds.Select(k => new BookedVisits(k.Kind, k.Visits, history.UseOf(k.Kind, item.Code)))])
            : BookedDemand.Of([]);
        var demand = visits.Mean > 0 ? new Demand(visits.Mean, visits.Variance) : Demand.Nothing;
        var q = demand.Quantile(depot.Setup.Depot.Service(item.Priority));
        var changes = ChangesOf(van.Code, item.Code);
        var target = Changed(Target.Of(low, high, q), high, changes);
        var provisional = depot.Shift(van.Code) is not { Step: Step.Closed };
        var need = changes.Any(o => o.Change.Kind == OverrideKind.Exclude) ? 0 : target.Need(aboard);
        return new(van, item, aboard, low, high, visits, demand, q, target, need, 0, 0, 0, 0, provisional, changes);
    }

    private List<Standing> ChangesOf(Code<Van> van, Code<Item> item) => changes.Count == 0
        ? []
        : [.. changes.Where(o => o.Change.Van == van && (o.Change.Item is null || o.Change.Item == item))];

    /// <summary>Whether a lead's change took the need away: it stays in sight, to be understood and withdrawn.</summary>
    private static bool IsChanged(RestockLine want) => want.Overrides.Any(o => o.Change.Item is not null) || (want.Overrides.Count > 0 && want.Target.Need(want.Aboard) > 0);

    /// <summary>A target as a lead changed it: set first, then more; never above the most that the van carries.</summary>
    private static Target Changed(Target planned, int high, List<Standing> changes)
    {
        var units = planned.Units;
        foreach (var change in changes.Where(o => o.Change.Kind != OverrideKind.Exclude).OrderBy(o => o.Change.Kind))
        {
            units = change.Change.Kind == OverrideKind.Target ? change.Change.Units : units + change.Change.Units;
        }

        return changes.All(o => o.Change.Kind == OverrideKind.Exclude) ? planned : new(Math.Clamp(units, 0, Math.Max(high, 0)), Basis.Lead);
    }

    /// <summary>The chance that so many units aboard do not suffice; a one-off need is needed for certain, whatever else is.</summary>
    private static Func<int, double> Known(RestockLine want)
    {
        var extra = want.Overrides.Where(o => o.Change.Kind == OverrideKind.Extra).Sum(o => o.Change.Units);
        return extra == 0 ? want.Demand.Above : x => x < extra ? 1 : want.Demand.Above(x - extra);
    }
}
