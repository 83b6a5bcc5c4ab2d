namespace Closeout.Restock;

/// <summary>Tomorrow's restock: what goes into each van, what that leaves at the depot, and what to buy.</summary>
/// <param name="Date">Tomorrow.</param>
/// <param name="Lines">
/// Lines with a need, and those whose need a lead or the van's payload took away, in bay order, then item order.
/// </param>
/// <param name="Shelf">Every item, in item order.</param>
/// <param name="Weights">Every van's stock against its payload, in bay order.</param>
/// <param name="Moves">Proposals to move stock between vans, or back to the depot, in item order; the plan is without them.</param>
/// <param name="Unknown">
/// Items that a booked visit could need and of which nobody knows how many: no planning rate, no visit that used them.
/// </param>
/// <param name="Learned">What the plan rests on beside bookings and stock.</param>
public sealed record RestockPlan(
    DateOnly Date, IReadOnlyList<RestockLine> Lines, IReadOnlyList<ShelfLine> Shelf, IReadOnlyList<VanWeight> Weights,
    IReadOnlyList<MoveProposal> Moves, IReadOnlyList<Item> Unknown, PlanSources Learned)
{
    /// <summary>What it was made with, for the next plan.</summary>
    private WeighedPlan? Made { get; init; }

    /// <summary>The plan for the next day with a booking.</summary>
    /// <param name="before">
    /// A plan of the same evening: of items of which nothing changed since it is taken over, with the same numbers. Null: none.
    /// </param>
    public static RestockPlan For(Depot depot, RestockPlan? before = null)
    {
        var date = Tomorrow(depot);
        var plan = new WeighedPlan(depot, date, before?.Made);
        return new(date, [.. plan.Lines], [.. plan.Shelf], [.. plan.Weights], [.. plan.Moves], plan.Unknown, plan.Sources) { Made = plan };
    }

    /// <summary>The van's stock against its payload.</summary>
    public VanWeight Weight(Code<Van> van) => Weights.First(w => w.Van.Code == van);

    /// <summary>
    /// What the plan promises the vans that are booked on a date: the targets of all items that they are expected to use, as cut to the
    /// vans' payloads.
    /// </summary>
    public static IEnumerable<Promise> Promises(Depot depot, DateOnly date)
    {
        var plan = new WeighedPlan(depot, date);
        return from item in depot.Setup.ItemsByCode
               from want in plan.Wants(item)
               where want.Demand.Spread != Spread.None && !want.IsExcluded
               orderby want.Van.Bay
               select new Promise(want.Van.Code, item.Code, want.Target.Units);
    }

    /// <summary>The first date after the business date with a visit booked for any van; without bookings, the day after.</summary>
    public static DateOnly Tomorrow(Depot depot) => depot.Planning.Bookings
        .Where(b => b.Date > depot.Date && b.Visits > 0)
        .Select(b => b.Date)
        .DefaultIfEmpty(depot.Date.AddDays(1))
        .Min();
}
