using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Restock;

/// <summary>The plan of all items, cut back where it would overload a van; see docs/methods.md, "Load".</summary>
/// <remarks>
/// A van that is too heavy gives up units, those least needed first. What it keeps becomes a cap, and the items concerned are
/// planned anew, for others may get what it gave up. Caps only fall, so it ends. Where no van is too heavy the first plan
/// stands, and it costs one weighing.
/// </remarks>
internal sealed class WeighedPlan
{
    private readonly Depot depot;
    private readonly Planner planner;
    private readonly Item[] items;
    private readonly (IReadOnlyList<RestockLine> Lines, ShelfLine Shelf)[] planned;
    private readonly Scales scales;
    private readonly double[] uncutLb;

    /// <summary>By van: the most important priority of which it gave up units; 0: it gave up none.</summary>
    private readonly int[] gaveUp;

    public WeighedPlan(Depot depot, Planner planner)
    {
        (this.depot, this.planner) = (depot, planner);
        items = [.. depot.Setup.Items.OrderBy(i => i.Code)];
        planned = [.. items.Select(planner.Plan)];
        scales = new(depot, items, planner);
        gaveUp = new int[depot.Setup.Vans.Count];
        uncutLb = (double[])Weigh().Clone();
        while (CutBack() is { Count: > 0 } concerned)
        {
            Replan(concerned);
            Weigh();
            foreach (var v in Enumerable.Range(0, gaveUp.Length).Where(v => gaveUp[v] == 0))
            {
                uncutLb[v] = scales.LoadedLb[v];
            }
        }

        Replan(CutWhatIsLoaded());
    }

    /// <summary>What each van lacks of the item within its payload, in bay order, before anything is shared out.</summary>
    public IEnumerable<RestockLine> Wants(Item item) => planner.Wants(item);

    /// <summary>In bay order, then item order.</summary>
    public IEnumerable<RestockLine> Lines => AllLines.OrderBy(l => l.Van.Bay).ThenBy(l => l.Item.Code);

    /// <summary>In item order.</summary>
    public IEnumerable<ShelfLine> Shelf => planned.Select(p => p.Shelf);

    /// <summary>In bay order.</summary>
    public IEnumerable<VanWeight> Weights
    {
        get
        {
            var cut = AllLines.Where(l => l.CutUnits > 0).ToLookup(l => l.Van.Code, l => new CutUnits(l.Item, l.CutUnits));
            return depot.Setup.Vans.Select((van, v) =>
                new VanWeight(van, depot.Setup.Depot.CrewAndKitLb, scales.AboardLb[v], uncutLb[v], scales.LoadedLb[v], [.. cut[van.Code]]));
        }
    }

    private IEnumerable<RestockLine> AllLines => planned.SelectMany(p => p.Lines);

    private double[] Weigh() => scales.Weigh(planned.Select(p => p.Lines));

    private void Replan(IEnumerable<Item> concerned)
    {
        var codes = concerned.Select(i => i.Code).ToHashSet();
        foreach (var (i, item) in items.Index().Where(i => codes.Contains(i.Item.Code)))
        {
            planned[i] = planner.Plan(item);
        }
    }

    /// <summary>Takes units off every van that is too heavy.</summary>
    /// <returns>The items of which something was taken; none: no van is too heavy, or nothing can be taken.</returns>
    private List<Item> CutBack()
    {
        var concerned = new List<Item>();
        var heavy = Enumerable.Range(0, gaveUp.Length).Where(v => gaveUp[v] > 0 || scales.Above(v) > 0).ToList();
        if (heavy.Count == 0)
        {
            return concerned;
        }

        var lines = AllLines.Where(l => l.Units > 0 && l.Item.UnitWeightLb > 0).ToLookup(l => l.Van.Code);
        foreach (var v in heavy)
        {
            var (above, given) = (scales.Above(v), gaveUp[v]);
            foreach (var line in LeastNeededFirst(lines[depot.Setup.Vans[v].Code]))
            {
                // What others gave up must not come to a van that gave up something more important.
                var units = given > 0 && line.Item.Priority > given ? line.Units
                    : above > Payload.SameLb ? Payload.UnitsOff(above, line.Item.UnitWeightLb, line.Units)
                    : 0;
                if (units == 0)
                {
                    break;
                }

                planner.Cut(line, new(line.Aboard + line.Units - units, line.Cut?.Units ?? line.Units, line.Cut?.Target ?? line.Target));
                above -= units * line.Item.UnitWeightLb;
                gaveUp[v] = gaveUp[v] == 0 ? line.Item.Priority : Math.Min(gaveUp[v], line.Item.Priority);
                concerned.Add(line.Item);
            }
        }

        return concerned;
    }

    /// <summary>Priority 3 before 2 before 1; then the line whose last unit is least likely to be missed; then in item order.</summary>
    private static IEnumerable<RestockLine> LeastNeededFirst(IEnumerable<RestockLine> lines)
    {
        foreach (var priority in lines.GroupBy(l => l.Item.Priority).OrderByDescending(g => g.Key))
        {
            var left = priority.Select(l => (Line: l, Chance: l.ChanceAbove(l.Aboard + l.Units - 1))).ToList();
            while (left.Count > 0)
            {
                var least = left.Min(l => l.Chance);
                var next = left.FindIndex(l => l.Chance <= least + Sharing.Tie);
                yield return left[next].Line;
                left.RemoveAt(next);
            }
        }
    }

    /// <summary>
    /// What was loaded tonight is final. Where such a line lacks units beyond what was planned of it, the depot still has some,
    /// and the van has no room for one more, it is weight that keeps them here, and not the depot that is short.
    /// </summary>
    private List<Item> CutWhatIsLoaded()
    {
        var concerned = new List<Item>();
        var bays = depot.Setup.Vans.Index().ToDictionary(v => v.Item.Code, v => v.Index);
        foreach (var (lines, shelf) in depot.Loaded.Count == 0 ? [] : planned)
        {
            foreach (var line in lines.Where(l => l.Need > 0 && l.Item.UnitWeightLb > 0 && shelf.ShelfAfter + shelf.BinAfter > 0 && scales.HasNoRoomFor(bays[l.Van.Code], l.Item)))
            {
                var beyond = depot.Loaded.TryGetValue((line.Van.Code, line.Item.Code), out var done)
                    ? line.Need - Math.Max(0, done.Planned - done.Sealed * line.Item.UnitsPerCarton - done.Loose)
                    : 0;
                if (beyond > 0)
                {
                    planner.Cut(line, new(line.Target.Units - beyond, beyond, line.Target));
                    concerned.Add(line.Item);
                }
            }
        }

        return concerned;
    }
}
