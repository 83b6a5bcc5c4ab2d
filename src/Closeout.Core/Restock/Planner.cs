namespace Closeout.Restock;

/// <summary>Plans item by item: demand, target and need of each van, then who gets what, in which cartons, and what to buy.</summary>
/// <remarks>
/// What does not depend on the item is looked up once, and vans with the same bookings share one demand: two hundred vans have a few dozen.
/// </remarks>
internal sealed class Planner
{
    private readonly Depot depot;
    private readonly PlanBasis basis;
    private readonly Dictionary<Code<Item>, UnitsAboard> aboard = [];
    private readonly Dictionary<(Code<Van>, Code<Item>), PayloadCut> cuts = [];

    /// <param name="before">The planner of an earlier plan, whose basis is taken over where nothing of it changed; null: none.</param>
    public Planner(Depot depot, DateOnly date, Planner? before = null)
    {
        (this.depot, Date, basis) = (depot, date, PlanBasis.Of(depot, date, before?.basis));
        var bays = depot.Setup.Vans.Index().ToDictionary(v => v.Item.Code, v => v.Index);
        foreach (var balance in depot.Stock.Ledger.Balances.Where(b => b.Place.Van != default && bays.ContainsKey(b.Place.Van)))
        {
            if (!aboard.TryGetValue(balance.Item, out var there))
                aboard[balance.Item] = there = new(new int[basis.Vans.Length], new int[basis.Vans.Length]);

            var van = bays[balance.Place.Van];
            there.Units[van] += balance.Units;
            there.Sealed[van] += balance.Place.IsSealed ? balance.Units : 0;
        }
    }

    /// <summary>Units of an item in each van, by its number in bay order: all of them, and those in sealed cartons.</summary>
    internal sealed record UnitsAboard(int[] Units, int[] Sealed);

    public DateOnly Date { get; }

    public PlanSources Sources => basis.Sources;

    public IReadOnlyList<Item> Unknown => Sources.History.Unknown(depot);

    /// <summary>Whether an item's plan is what it was in an earlier one: nothing of what it rests on changed, nor of its stock.</summary>
    public bool IsAsBefore(Planner before, Item item)
    {
        if (basis != before.basis || new[] { Place.Shelf, Place.Bin }.Any(p =>
            depot.Stock.Ledger.Units(p, item.Code) != before.depot.Stock.Ledger.Units(p, item.Code)))
        {
            return false;
        }

        var (now, then) = (Aboard(item.Code), before.Aboard(item.Code));
        return now is null || then is null
            ? now == then
            : now.Units.AsSpan().SequenceEqual(then.Units) && now.Sealed.AsSpan().SequenceEqual(then.Sealed);
    }

    /// <summary>Proposals to move stock of an item that is short. What was loaded tonight stays where it is.</summary>
    public IEnumerable<MoveProposal> Moves(ShelfLine shelf)
    {
        var (item, c) = (shelf.Item, shelf.Item.UnitsPerCarton);
        if (shelf.Short == 0)
            return [];

        var there = aboard.GetValueOrDefault(item.Code);
        var wants = Wants(item).Select((want, v) => (Want: want, Aboard: there is null
                ? default
                : new Holding(there.Sealed[v] / c, there.Units[v] - there.Sealed[v] / c * c)))
            .Where(w => !depot.Stock.Loaded.ContainsKey((w.Want.Van.Code, item.Code)));
        return MoveProposals.Of(item, [.. wants], shelf.BinBefore + (long)shelf.ShelfBefore * c, shelf.Short);
    }

    /// <summary>What lies in the vans of the item; null: nothing, in none of them.</summary>
    public UnitsAboard? Aboard(Code<Item> item) => aboard.GetValueOrDefault(item);

    /// <summary>From now on the line is planned within what the van's payload leaves for it.</summary>
    public void Cut(RestockLine line, PayloadCut cut) => cuts[(line.Van.Code, line.Item.Code)] = cut;

    public (IReadOnlyList<RestockLine> Lines, ShelfLine Shelf) Plan(Item item)
    {
        var c = item.UnitsPerCarton;
        var (cartons, bin) = (depot.Stock.Ledger.Units(Place.Shelf, item.Code) / c, depot.Stock.Ledger.Units(Place.Bin, item.Code));
        var wants = Wants(item).Where(w => w.Need > 0 || w.Cut is not null || IsChanged(w)).ToList();

        // What was loaded is done, even when it was less than planned: what is left is for the others.
        var claims =
            wants.Select(w => new Claim(depot.Stock.Loaded.ContainsKey((w.Van.Code, item.Code)) ? 0 : w.Need, w.Aboard, w.ChanceAbove));
        var given = Sharing.ByChance([.. claims], bin + (long)cartons * c);
        var packing = Packing.Pack([.. wants.Select((w, v) => new Portion(given[v], w.Aboard, w.Most))], c, bin, cartons);

        var binLeft = bin;
        var lines = new List<RestockLine>(wants.Count);
        foreach (var (v, want) in wants.Index())
        {
            var packed = packing.Vans[v];
            var fromBin = Math.Min(packed.Loose, binLeft);
            binLeft -= fromBin;
            lines.Add(
                want with { Sealed = packed.Sealed, FromBin = fromBin, FromOpened = packed.Loose - fromBin, Short = want.Need - given[v] });
        }

        return (lines, Shelf(item, cartons, bin, packing.Opened, lines));
    }

    /// <summary>What each van lacks of the item, in bay order, before anything is shared out.</summary>
    public IEnumerable<RestockLine> Wants(Item item)
    {
        var uses = basis.Kinds.Select(k => Sources.History.UseOf(k, item.Code)).ToArray();
        var service = depot.Setup.Depot.Service(item.Priority);
        var demands = basis.Groups.Select(g => DemandOf(g, uses, service)).ToArray();
        var there = aboard.GetValueOrDefault(item.Code);
        for (var v = 0; v < basis.Vans.Length; v++)
            yield return Want(basis.Vans[v], item, demands[basis.Vans[v].Group], there?.Units[v] ?? 0);
    }

    private (BookedDemand Booked, Demand Demand, int Q) DemandOf((int Kind, int Visits)[] group, VisitUse[] uses, double service)
    {
        var booked = BookedDemand.Of(
            [.. group.Select(b => new BookedVisits(basis.Kinds[b.Kind], b.Visits, uses[b.Kind], Sources.Kept.Of(basis.Kinds[b.Kind])))]);
        var demand = booked.Mean > 0 ? new Demand(booked.Mean, booked.Variance) : Demand.Nothing;
        return (booked, demand, demand.Quantile(service));
    }

    private RestockLine Want(PlanBasis.VanInPlan van, Item item, (BookedDemand Booked, Demand Demand, int Q) demand, int aboardNow)
    {
        var (low, high) = basis.Limits.Count > 0 && basis.Limits.TryGetValue((van.Van.Code, item.Code), out var own)
            ? (own.Low, own.High)
            : (item.Low, item.High);
        IReadOnlyList<Standing> changes = van.Changes.Count == 0
            ? []
            : [.. van.Changes.Where(o => o.Change.Item is null || o.Change.Item == item.Code)];
        var cut = cuts.Count > 0 ? cuts.GetValueOrDefault((van.Van.Code, item.Code)) : null;
        var target = Changed(Target.Of(low, high, demand.Q), high, changes).Within(cut);
        var need = changes.Any(o => o.Change.Kind == OverrideKind.Exclude) ? 0 : target.Need(aboardNow);
        return new(van.Van, item, aboardNow, low, high, demand.Booked, demand.Demand, demand.Q, target, need, 0, 0, 0, 0, van.Provisional,
            changes) { Cut = cut };
    }

    private ShelfLine Shelf(Item item, int cartons, int bin, int opened, List<RestockLine> lines)
    {
        var c = item.UnitsPerCarton;
        var (sealedOut, looseOut) = (lines.Sum(l => l.Sealed), lines.Sum(l => l.FromBin + l.FromOpened));
        var (cartonsLeft, binLeft) = (cartons - sealedOut - opened, bin + opened * c - looseOut);
        var onOrder = depot.Stock.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons) * c;
        var (use, supplier, service) =
            (Sources.Working.UseOf(item.Code), Sources.Suppliers.Of(item.Supplier), depot.Setup.Depot.OrderingService(item.Priority));
        var order = Reorder.Of(item, use, service, (long)cartonsLeft * c + binLeft, onOrder, supplier);
        return new(item, cartons, bin, sealedOut, opened, looseOut, cartonsLeft, binLeft, lines.Sum(l => l.Short), onOrder, order);
    }

    /// <summary>Whether a lead's change took the need away: it stays in sight, to be understood and withdrawn.</summary>
    private static bool IsChanged(RestockLine want) =>
        want.Overrides.Any(o => o.Change.Item is not null) || (want.Overrides.Count > 0 && want.Target.Need(want.Aboard) > 0);

    /// <summary>A target as a lead changed it: set first, then more; never above the most that the van carries.</summary>
    private static Target Changed(Target planned, int high, IReadOnlyList<Standing> changes)
    {
        var units = planned.Units;
        foreach (var change in changes.Where(o => o.Change.Kind != OverrideKind.Exclude).OrderBy(o => o.Change.Kind))
            units = change.Change.Kind == OverrideKind.Target ? change.Change.Units : units + change.Change.Units;

        return changes.Count == 0 ? planned : new(Math.Clamp(units, 0, Math.Max(high, 0)), Basis.Lead);
    }
}
