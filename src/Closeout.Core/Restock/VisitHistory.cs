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
    private readonly Dictionary<Code<VisitKind>, int> visits = [];
    private readonly Dictionary<(Code<VisitKind>, Code<Item>), (long Sum, long Squares)> used = [];
    private readonly Dictionary<(Code<VisitKind>, Code<Item>), PlanningRate> rates;

    private VisitHistory(Depot depot) => rates = depot.Setup.Rates.ToDictionary(r => (r.Kind, r.Item));

    /// <summary>Dates after the business date less 60 days, up to the business date.</summary>
    public static VisitHistory Of(Depot depot)
    {
        var history = new VisitHistory(depot);
        var from = depot.Date.AddDays(-PlanningWindow.Days);
        foreach (var day in depot.Planning.Use.Where(u => u.Date > from && u.Date <= depot.Date))
        {
            history.visits[day.Kind] = history.visits.GetValueOrDefault(day.Kind) + day.Visits;
            foreach (var item in day.Items)
                history.Add((day.Kind, item.Item), item.Sum, item.SumOfSquares);
        }

        foreach (var day in depot.Planning.Counted.Where(d => d.Date > from && d.Date <= depot.Date).Concat(CountedDays.Tonight(depot)))
        {
            history.visits[CountedDay.Kind] = history.visits.GetValueOrDefault(CountedDay.Kind) + 1;
            foreach (var item in day.Used)
                history.Add((CountedDay.Kind, item.Item), item.Units, (long)item.Units * item.Units);
        }

        return history;
    }

    /// <summary>What a visit of the kind uses of the item.</summary>
    public VisitUse UseOf(Code<VisitKind> kind, Code<Item> item)
    {
        var (sum, squares) = used.GetValueOrDefault((kind, item));
        var rate = rates.GetValueOrDefault((kind, item));
        return VisitUse.Of(rate?.UnitsPerVisit ?? 0, rate?.WeightVisits ?? 0, visits.GetValueOrDefault(kind), sum, squares);
    }

    private void Add((Code<VisitKind>, Code<Item>) key, long sum, long squares)
    {
        var (s1, s2) = used.GetValueOrDefault(key);
        used[key] = (s1 + sum, s2 + squares);
    }
}
