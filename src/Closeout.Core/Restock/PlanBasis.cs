namespace Closeout.Restock;

/// <summary>What a plan rests on beside the stock: history, bookings, promises. Worked out once, as long as it stays as it is.</summary>
internal sealed class PlanBasis
{
    private readonly DateOnly date;
    private readonly Setup setup;
    private readonly PlanningState planning;
    private readonly StockState stock;
    private readonly bool[] done;
    private readonly IReadOnlyList<CountedDay> counted;
    private readonly IReadOnlyList<Code<Item>> notAboard;

    private PlanBasis(Depot depot, DateOnly date)
    {
        (this.date, setup, planning, stock) = (date, depot.Setup, depot.Planning, depot.Stock);
        (done, counted, notAboard) = (Done(depot), [.. CountedDays.Tonight(depot)], CountedDays.NotAboard(depot));
        Sources = new(VisitHistory.Of(depot), BookingsKept.Of(depot), WorkingDays.Of(depot), Suppliers.Of(depot));
        Limits = setup.Limits.ToDictionary(l => (l.Van, l.Item));
        var booked = planning.Bookings.Where(b => b.Date == date && b.Visits > 0).ToLookup(b => b.Van);
        List<Code<VisitKind>> added = booked.Count == 0 ? [] : [.. Sources.Kept.Kinds.Where(k => Sources.Kept.Of(k).Added > 0)];
        Kinds = [.. booked.SelectMany(b => b).Select(b => b.Kind).Concat(added).Distinct().Order()];
        var changes = planning.Overrides.Where(o => o.Change.Date == date).ToLookup(o => o.Change.Van);
        Vans = [.. setup.Vans.Select((v, i) => new VanInPlan(v, Group(booked[v.Code], added), !done[i], [.. changes[v.Code]]))];
    }

    /// <param name="Group">Which of the different bookings it has.</param>
    internal sealed record VanInPlan(Van Van, int Group, bool Provisional, IReadOnlyList<Standing> Changes);

    public PlanSources Sources { get; }

    public Dictionary<(Code<Van>, Code<Item>), VanLimit> Limits { get; }

    public List<Code<VisitKind>> Kinds { get; }

    /// <summary>The different bookings: vans with the same share one demand.</summary>
    public List<(int Kind, int Visits)[]> Groups { get; } = [];

    /// <summary>In bay order.</summary>
    public VanInPlan[] Vans { get; }

    /// <summary>The basis of the plan before where nothing of it changed, else a new one.</summary>
    public static PlanBasis Of(Depot depot, DateOnly date, PlanBasis? before) =>
        before is not null && before.Fits(depot, date) ? before : new(depot, date);

    private bool Fits(Depot depot, DateOnly other) =>
        date == other && setup == depot.Setup && planning == depot.Planning
        && stock.Orders == depot.Stock.Orders && stock.Receipts == depot.Stock.Receipts && stock.Loaded == depot.Stock.Loaded
        && done.AsSpan().SequenceEqual(Done(depot)) && notAboard.SequenceEqual(CountedDays.NotAboard(depot))
        && counted.Select(c => c.Van).SequenceEqual(CountedDays.Tonight(depot).Select(c => c.Van))
        && counted.Zip(CountedDays.Tonight(depot)).All(c => c.First.Used.SequenceEqual(c.Second.Used));

    private static bool[] Done(Depot depot) => [.. depot.Setup.Vans.Select(v => depot.IsDone(v.Code))];

    /// <summary>
    /// The number of a van's bookings among the different ones. A van that has any may also meet visits that nobody booked.
    /// </summary>
    private int Group(IEnumerable<Booking> bookings, List<Code<VisitKind>> added)
    {
        var visits = bookings.ToLookup(b => b.Kind, b => b.Visits);
        var own = visits.Select(g => g.Key).Concat(visits.Count > 0 ? added : []).Distinct()
            .Select(kind => (Kind: Kinds.IndexOf(kind), Visits: visits[kind].Sum())).OrderBy(b => b.Kind).ToArray();
        var at = Groups.FindIndex(g => g.AsSpan().SequenceEqual(own));
        if (at < 0)
            Groups.Add(own);

        return at < 0 ? Groups.Count - 1 : at;
    }
}
