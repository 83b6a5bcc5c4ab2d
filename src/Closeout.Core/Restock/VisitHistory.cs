namespace Closeout.Restock;

/// <summary>What one visit of a kind uses of an item.</summary>
/// <param name="Weight">W: planned and observed visits together; 0: nothing is known.</param>
/// <param name="Mean">m, units per visit.</param>
/// <param name="Variance">s2, units squared, per visit.</param>
public readonly record struct VisitUse(double Weight, double Mean, double Variance)
{
    /// <param name="rate">r, planned units per visit.</param>
    /// <param name="weight">w, the visits that the planning rate is worth; it counts as so many Poisson visits.</param>
    /// <param name="visits">N, observed visits of the kind.</param>
    /// <param name="sum">S1 of the units used in each.</param>
    /// <param name="squares">S2, their squares.</param>
    public static VisitUse Of(double rate, double weight, int visits, long sum, long squares)
    {
        var all = weight + visits;
        if (all == 0)
            return default;

        var mean = (weight * rate + sum) / all;
        return new(all, mean, (weight * rate + squares - 2 * mean * sum + visits * mean * mean) / all);
    }
}

/// <summary>What visits used in the last 60 calendar days, and the planning rates beside it.</summary>
public sealed class VisitHistory
{
    private readonly Dictionary<Code<VisitKind>, SortedDictionary<DateOnly, int>> visits = [];
    private readonly Dictionary<(Code<VisitKind>, Code<Item>), Dictionary<DateOnly, (long Units, long Squares)>> used = [];
    private readonly HashSet<Code<Item>> everUsed = [];
    private readonly HashSet<(Code<Item>, DateOnly)> nowhere = [];
    private readonly Dictionary<(Code<VisitKind>, Code<Item>), PlanningRate> rates;
    private readonly ILookup<Code<Item>, Code<VisitKind>> rated;
    private readonly Setup setup;
    private readonly DateOnly begin;

    private VisitHistory(Depot depot)
    {
        (setup, begin) = (depot.Setup, depot.Date.AddDays(1 - PlanningWindow.Days));
        rates = setup.Rates.ToDictionary(r => (r.Kind, r.Item));
        rated = setup.Rates.Where(r => r.WeightVisits > 0).ToLookup(r => r.Item, r => r.Kind);
    }

    /// <summary>Dates after the business date less 60 days, up to the business date.</summary>
    public static VisitHistory Of(Depot depot)
    {
        var history = new VisitHistory(depot);
        foreach (var day in depot.Planning.Use.Where(u => u.Date >= history.begin && u.Date <= depot.Date))
        {
            history.Count(day.Kind, day.Date, day.Visits);
            foreach (var item in day.Items)
                history.Add(day.Kind, item.Item, day.Date, item.Sum, item.SumOfSquares);
        }

        foreach (var day in depot.Planning.Counted.Where(d => d.Date >= history.begin && d.Date <= depot.Date)
            .Concat(CountedDays.Tonight(depot)))
        {
            history.Count(CountedDay.Kind, day.Date, 1);

            // What replaced an item and what is left of it are one use: added up before it is squared.
            foreach (var item in day.Used.GroupBy(u => depot.Setup.Now(u.Item), u => (long)u.Units))
                history.Add(CountedDay.Kind, item.Key, day.Date, item.Sum(), item.Sum() * item.Sum());
        }

        var days = depot.Planning.NotAboard.Append(new(depot.Date, CountedDays.NotAboard(depot)));
        history.nowhere.UnionWith(days.SelectMany(d => d.Items.Select(i => (i, d.Date))));
        return history;
    }

    /// <summary>What a visit of the kind uses of the item now.</summary>
    public VisitUse UseOf(Code<VisitKind> kind, Code<Item> item) => HistoryOf(kind, item).Use;

    /// <summary>The same, with the days on which the use changed.</summary>
    public UseHistory HistoryOf(Code<VisitKind> kind, Code<Item> item)
    {
        var rate = rates.GetValueOrDefault((kind, item));
        return UseHistory.Of(
            DaysOf(kind, item), rate?.UnitsPerVisit ?? 0, rate?.WeightVisits ?? 0, setup.Depot.ChangeLimit, begin);
    }

    /// <summary>The dates with visits of the kind, ascending, and what they used of the item.</summary>
    public IReadOnlyList<DayOfUse> DaysOf(Code<VisitKind> kind, Code<Item> item)
    {
        if (!visits.TryGetValue(kind, out var dates))
            return [];

        var own = used.GetValueOrDefault((kind, item));
        return [.. dates.Select(d => own is not null && own.TryGetValue(d.Key, out var u)
            ? new DayOfUse(d.Key, d.Value, u.Units, u.Squares)
            : new DayOfUse(d.Key, d.Value, 0, 0, nowhere.Contains((item, d.Key))))];
    }

    /// <summary>
    /// Items, in item order, that a booked visit could need and of which nobody can say how many: no planning rate of any kind, and no
    /// visit
    /// used one. Of an item that another replaced nobody asks.
    /// </summary>
    public IReadOnlyList<Item> Unknown(Depot depot) => !depot.Planning.Bookings.Exists(b => b.Date > depot.Date && b.Visits > 0) ? []
        : [.. setup.ItemsByCode.Where(i => !rated.Contains(i.Code) && !everUsed.Contains(i.Code) && setup.Now(i.Code) == i.Code)];

    private void Count(Code<VisitKind> kind, DateOnly date, int more)
    {
        if (!visits.TryGetValue(kind, out var dates))
            visits[kind] = dates = [];

        dates[date] = dates.GetValueOrDefault(date) + more;
    }

    private void Add(Code<VisitKind> kind, Code<Item> code, DateOnly date, long units, long squares)
    {
        var item = setup.Now(code);
        if (!used.TryGetValue((kind, item), out var days))
            used[(kind, item)] = days = [];

        var (s1, s2) = days.GetValueOrDefault(date);
        days[date] = (s1 + units, s2 + squares);
        if (units > 0)
            everUsed.Add(item);
    }
}
