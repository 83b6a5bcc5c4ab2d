namespace Closeout.Restock;

/// <summary>What all visits of a kind used of an item on one date.</summary>
/// <param name="Visits">n, above 0.</param>
/// <param name="Units">x, their sum.</param>
/// <param name="Squares">The sum of their squares.</param>
/// <param name="WasNowhere">Whether no van had the item: then that none was used says nothing.</param>
public readonly record struct DayOfUse(DateOnly Date, int Visits, long Units, long Squares, bool WasNowhere = false);

/// <summary>A day from which on a use is another one.</summary>
/// <param name="From">The first day of the new use: about then it changed.</param>
/// <param name="SeenOn">The date on which it was noticed.</param>
/// <param name="Before">Units per visit before, as they were thought when it was noticed.</param>
public sealed record ChangedUse(DateOnly From, DateOnly SeenOn, double Before);

/// <summary>The use of an item by a kind of visit over the planning window, and where it changed.</summary>
/// <param name="Use">What a visit uses now: since the last change, or over the whole window.</param>
/// <param name="Changes">In the order in which they were noticed; none: the use did not change.</param>
public sealed record UseHistory(VisitUse Use, IReadOnlyList<ChangedUse> Changes)
{
    /// <summary>k of the sums: half of the shift, in standard deviations, that is to be noticed soonest.</summary>
    private const double Slack = 0.5;

    /// <summary>Visits that what was thought before counts as, while the new use rests on fewer.</summary>
    private const int Few = 8;

    /// <summary>Follows the use date by date with two cumulative sums (Page, Continuous Inspection Schemes, Biometrika 41, 1954).</summary>
    /// <param name="days">Dates of the window with visits of the kind, ascending.</param>
    /// <param name="rate">r, planned units per visit; <paramref name="weight"/>: the visits that it is worth.</param>
    /// <param name="limit">A sum above it is a change, in standard deviations; 0: none is looked for.</param>
    /// <param name="begin">The window's first day.</param>
    public static UseHistory Of(IReadOnlyList<DayOfUse> days, double rate, double weight, double limit, DateOnly begin)
    {
        var since = new Since(rate, weight);
        List<ChangedUse> changes = [];
        var (up, down) = (new Sum(begin), new Sum(begin));
        foreach (var (t, day) in days.Index())
        {
            var use = since.Use;
            var spread = Math.Max(use.Variance, use.Mean);
            if (use.Weight == 0 || spread == 0 || (day.WasNowhere && day.Units == 0))
            {
                (up, down) = (up.Passed(day.Date), down.Passed(day.Date));
            }
            else
            {
                var z = (day.Units - day.Visits * use.Mean) / Math.Sqrt(day.Visits * spread);
                (up, down) = (up.Add(z - Slack, day.Date), down.Add(-z - Slack, day.Date));
            }

            since = since.With(day);
            if (limit == 0 || (up.Value <= limit && down.Value <= limit))
                continue;

            var from = up.Value > limit ? up.Begun : down.Begun;
            changes.Add(new(from, day.Date, use.Mean));
            since = days.Take(t + 1).Where(d => d.Date >= from).Aggregate(new Since(use.Mean, null), (s, d) => s.With(d));
            (up, down) = (new(day.Date.AddDays(1)), new(day.Date.AddDays(1)));
        }

        return new(since.Use, changes);
    }

    /// <summary>What was thought before a history began, and what its dates so far add up to.</summary>
    /// <param name="Weight">The visits that <paramref name="Rate"/> is worth; null: <see cref="Few"/>, until so many were seen.</param>
    private readonly record struct Since(double Rate, double? Weight, int Visits = 0, long Units = 0, long Squares = 0)
    {
        public VisitUse Use => VisitUse.Of(Rate, Weight ?? (Visits < Few ? Few : 0), Visits, Units, Squares);

        public Since With(DayOfUse day) =>
            this with { Visits = Visits + day.Visits, Units = Units + day.Units, Squares = Squares + day.Squares };
    }

    /// <summary>A cumulative sum, never below 0, and the day after it was last 0.</summary>
    private readonly record struct Sum(DateOnly Begun, double Value = 0)
    {
        public Sum Add(double step, DateOnly date) => Value + step > 0 ? this with { Value = Value + step } : new(date.AddDays(1));

        public Sum Passed(DateOnly date) => Value > 0 ? this : new(date.AddDays(1));
    }
}
