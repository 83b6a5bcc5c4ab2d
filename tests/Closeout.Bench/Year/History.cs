using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>What visits used in the last 60 calendar days: units really installed, so that a visit that found the van empty counts too low, as in life.</summary>
public sealed class History(World world)
{
    private sealed record Day(DateOnly Date, int[] Visits, long[,] Sum, long[,] Squares);

    private readonly Queue<Day> days = [];
    private readonly int[] visits = new int[world.Kinds.Count];
    private readonly long[,] sums = new long[world.Kinds.Count, world.Items.Count];
    private readonly long[,] squares = new long[world.Kinds.Count, world.Items.Count];

    /// <summary>Takes in a day and forgets what has left the window.</summary>
    public void Add(DateOnly date, IEnumerable<(int Kind, int[] Used)> made)
    {
        var day = new Day(date, new int[visits.Length], new long[visits.Length, world.Items.Count], new long[visits.Length, world.Items.Count]);
        foreach (var (kind, used) in made)
        {
            day.Visits[kind]++;
            for (var i = 0; i < used.Length; i++)
            {
                day.Sum[kind, i] += used[i];
                day.Squares[kind, i] += (long)used[i] * used[i];
            }
        }

        days.Enqueue(day);
        Count(day, 1);
        while (days.Peek().Date <= date.AddDays(-PlanningWindow.Days))
        {
            Count(days.Dequeue(), -1);
        }
    }

    /// <summary>The product's own estimate of what a visit uses.</summary>
    public VisitUse UseOf(int kind, int item) =>
        VisitUse.Of(world.Rate[kind, item], world.Weight[kind, item], visits[kind], sums[kind, item], squares[kind, item]);

    /// <summary>The depot's use on a working day: mean and sample variance.</summary>
    public WorkingDays.Use Depot(int item)
    {
        var units = days.Select(d => (double)Enumerable.Range(0, visits.Length).Sum(k => d.Sum[k, item])).ToList();
        var mean = units.Average();
        return new(mean, units.Count < 2 ? 0 : units.Sum(u => (u - mean) * (u - mean)) / (units.Count - 1));
    }

    private void Count(Day day, int sign)
    {
        for (var k = 0; k < visits.Length; k++)
        {
            visits[k] += sign * day.Visits[k];
            for (var i = 0; i < world.Items.Count; i++)
            {
                sums[k, i] += sign * day.Sum[k, i];
                squares[k, i] += sign * day.Squares[k, i];
            }
        }
    }
}
