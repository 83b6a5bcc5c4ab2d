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
    private readonly IReadOnlyList<MoveProposal>?[] moves;

    /// <summary>By van: what it weighed with all that was planned, when it was first too heavy; null: it never was.</summary>
    private readonly double?[] uncutLb;

    /// <summary>By van: the most important priority of which it gave up units; 0: it gave up none.</summary>
    private readonly int[] gaveUp;

    /// <summary>By item, before anything was cut.</summary>
    private readonly (IReadOnlyList<RestockLine> Lines, ShelfLine Shelf)[] uncut;

    /// <param name="before">An earlier plan: of items of which nothing changed since it is taken over. Null: none.</param>
    public WeighedPlan(Depot depot, DateOnly date, WeighedPlan? before = null)
    {
        (this.depot, planner) = (depot, new(depot, date, before?.planner));
        items = [.. depot.Setup.ItemsByCode];
        uncut =
        [
            .. items.Select((item, i) =>
                before is not null && planner.IsAsBefore(before.planner, item) ? before.uncut[i] : planner.Plan(item)),
        ];
        planned = [.. uncut];
        scales = new(depot, items, planner);
        (uncutLb, gaveUp) = (new double?[depot.Setup.Vans.Count], new int[depot.Setup.Vans.Count]);
        Weigh();
        Replan(KeepWhatWasCut());
        do
        {
            Weigh();
        }
        while (Replan(CutBack()));

        // Where neither plan cut anything, what was proposed then is proposed now.
        moves =
        [
            .. planned.Select((p, i) => i < before?.planned.Length && ReferenceEquals(p.Shelf, before.planned[i].Shelf)
                ? before.moves[i]
                : null),
        ];
    }

    /// <summary>What each van lacks of the item within its payload, in bay order, before anything is shared out.</summary>
    public IEnumerable<RestockLine> Wants(Item item) => planner.Wants(item);

    /// <summary>In bay order, then item order.</summary>
    public IEnumerable<RestockLine> Lines => AllLines.OrderBy(l => l.Van.Bay).ThenBy(l => l.Item.Code);

    /// <summary>In item order.</summary>
    public IEnumerable<ShelfLine> Shelf => planned.Select(p => p.Shelf);

    /// <summary>In item order.</summary>
    public IEnumerable<MoveProposal> Moves => planned.SelectMany((p, i) => moves[i] ??= [.. planner.Moves(p.Shelf)]);

    public IReadOnlyList<Item> Unknown => planner.Unknown;

    public PlanSources Sources => planner.Sources;

    /// <summary>In bay order.</summary>
    public IEnumerable<VanWeight> Weights
    {
        get
        {
            var cut = AllLines.Where(l => l.CutUnits > 0).ToLookup(l => l.Van.Code, l => new CutUnits(l.Item, l.CutUnits));
            return depot.Setup.Vans.Select((van, v) =>
                new VanWeight(van, depot.Setup.Depot.CrewAndKitLb, scales.AboardLb[v], uncutLb[v] ?? scales.LoadedLb[v], scales.LoadedLb[v],
                    [.. cut[van.Code]]));
        }
    }

    private IEnumerable<RestockLine> AllLines => planned.SelectMany(p => p.Lines);

    private void Weigh() => scales.Weigh(planned.Select(p => p.Lines));

    /// <summary>Whether any item was concerned.</summary>
    private bool Replan(IReadOnlyCollection<Code<Item>> concerned)
    {
        foreach (var (i, item) in items.Index().Where(i => concerned.Contains(i.Item.Code)))
            planned[i] = planner.Plan(item);

        return concerned.Count > 0;
    }

    /// <summary>Takes units off every van that is too heavy.</summary>
    /// <returns>The items of which something was taken; none: no van is too heavy, or nothing can be taken.</returns>
    private HashSet<Code<Item>> CutBack()
    {
        var concerned = new HashSet<Code<Item>>();
        var heavy = Enumerable.Range(0, gaveUp.Length).Where(v => gaveUp[v] > 0 || scales.Above(v) > 0).ToList();
        if (heavy.Count == 0)
            return concerned;

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
                    break;

                planner.Cut(line, new(line.Aboard + line.Units - units, line.Cut?.Units ?? line.Units, line.Cut?.Target ?? line.Target));
                above -= units * line.Item.UnitWeightLb;
                uncutLb[v] ??= scales.LoadedLb[v];
                gaveUp[v] = gaveUp[v] == 0 ? line.Item.Priority : Math.Min(gaveUp[v], line.Item.Priority);
                concerned.Add(line.Item.Code);
            }
        }

        return concerned;
    }

    /// <summary>
    /// Priority 3 before 2 before 1; then the line whose last unit is least likely to be missed for each pound that it weighs; then in item
    /// order.
    /// </summary>
    private static IEnumerable<RestockLine> LeastNeededFirst(IEnumerable<RestockLine> lines)
    {
        foreach (var priority in lines.GroupBy(l => l.Item.Priority).OrderByDescending(g => g.Key))
        {
            var left = priority.Select(l => (Line: l, Chance: l.ChanceAbove(l.Aboard + l.Units - 1) / l.Item.UnitWeightLb))
                .ToList();
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
    /// What was loaded tonight is final, and a plan made after it no longer sees why. So the plan is asked that there would be
    /// had nothing been loaded: what it cuts of a line that was loaded stays cut, and is not short. As long as all was taken
    /// as planned, so do the van's other lines: what rounding left is not offered at the end.
    /// </summary>
    /// <returns>The items of which something stays cut.</returns>
    private HashSet<Code<Item>> KeepWhatWasCut()
    {
        var concerned = new HashSet<Code<Item>>();
        var loaded = depot.Stock.Loaded.ToLookup(l => l.Key.Item1, l => l.Value);
        var may = loaded.Count == 0 ? [] : scales.MayHaveBeenCut(planned.Select(p => p.Lines), loaded);
        var vans = depot.Setup.Vans.Index().Where(v => loaded.Contains(v.Item.Code) && may[v.Index]).ToList();
        if (vans.Count == 0)
            return concerned;

        var before = new WeighedPlan(BeforeLoading.Of(depot), planner.Date);
        var cut = before.AllLines.Where(l => l.Cut is not null).ToLookup(l => l.Van.Code);
        foreach (var (v, van) in vans)
        {
            var beyond = loaded[van.Code].ToDictionary(l => l.Item, Beyond);
            var asPlanned = beyond.Values.All(units => units >= 0);
            foreach (var line in cut[van.Code])
            {
                var left = line.CutUnits - Math.Max(0, beyond.GetValueOrDefault(line.Item.Code));
                if (beyond.ContainsKey(line.Item.Code) ? left > 0 : asPlanned)
                {
                    planner.Cut(line, beyond.ContainsKey(line.Item.Code) ? line.Cut! with { Units = left } : line.Cut!);
                    concerned.Add(line.Item.Code);
                }
            }

            (uncutLb[v], gaveUp[v]) = (before.uncutLb[v], asPlanned ? before.gaveUp[v] : 0);
        }

        return concerned;
    }

    /// <summary>Units taken beyond what was planned; below 0: a short pick. Of an item that is gone nothing is known.</summary>
    private int Beyond(LoadedLine line) => depot.Setup.Find(line.Item) is { } item
        ? line.Sealed * item.UnitsPerCarton + line.Loose - line.Planned
        : 0;
}
