using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>
/// What the depot knows by visit reports: units really installed, so that a visit that found the van empty counts too low, as in life; and
/// how bookings were kept.
/// </summary>
public sealed class History(World world, Rules rules)
{
    private readonly List<(DateOnly Date, long[] Units)> depot = [];
    private readonly List<DayOfUse>?[,] days = new List<DayOfUse>?[world.Kinds.Count, world.Items.Count];
    private readonly VisitUse[,] uses = new VisitUse[world.Kinds.Count, world.Items.Count];
    private readonly Queue<KindKept[]> dates = [];
    private readonly KindKept[] kept = new KindKept[world.Kinds.Count];
    private DateOnly today = World.Date(0).AddDays(-1);
    private bool isKnown;

    /// <summary>Changes of use noticed so far, and of them on counted days.</summary>
    public (int All, int Counted) Alarms { get; private set; }

    /// <summary>How bookings of the kind were kept on the last business dates; nothing known where it is not learned.</summary>
    public KindKept Kept(int kind) => rules.Bookings ? kept[kind] : default;

    /// <summary>Takes in a day and forgets what has left the windows.</summary>
    public void Add(int day, IReadOnlyList<(int Kind, int[] Used)> made)
    {
        (today, isKnown) = (World.Date(day), false);
        var units = new long[world.Items.Count];
        foreach (var kind in made.GroupBy(m => m.Kind, m => m.Used))
        {
            foreach (var i in Rated(kind.Key))
                (days[kind.Key, i] ??= []).Add(new(today, kind.Count(), kind.Sum(u => (long)u[i]), kind.Sum(u => (long)u[i] * u[i])));
        }

        foreach (var (_, used) in made)
        {
            for (var i = 0; i < used.Length; i++)
                units[i] += used[i];
        }

        depot.Add((today, units));
        depot.RemoveAll(d => d.Date < Begin);
        foreach (var pair in days)
            pair?.RemoveAll(d => d.Date < Begin);

        KeepBookings(day);
    }

    /// <summary>The product's own estimate of what a visit uses.</summary>
    public VisitUse UseOf(int kind, int item)
    {
        if (!isKnown)
            Learn();

        return uses[kind, item];
    }

    /// <summary>The depot's use on a working day: mean and sample variance.</summary>
    public WorkingDays.Use Depot(int item)
    {
        var (sum, squares) = (0.0, 0.0);
        foreach (var (_, units) in depot)
            sum += units[item];

        var mean = sum / depot.Count;
        foreach (var (_, units) in depot)
            squares += (units[item] - mean) * (units[item] - mean);

        return new(mean, depot.Count < 2 ? 0 : squares / (depot.Count - 1));
    }

    private DateOnly Begin => today.AddDays(1 - PlanningWindow.Days);

    /// <summary>Items that visits of the kind may use; of others no visit of this world ever asks any.</summary>
    private IEnumerable<int> Rated(int kind) => Enumerable.Range(0, world.Items.Count).Where(i => world.Rate[kind, i] > 0);

    private void Learn()
    {
        isKnown = true;
        for (var k = 0; k < world.Kinds.Count; k++)
        {
            foreach (var i in Rated(k))
            {
                var history = UseHistory.Of(days[k, i] ?? [], world.Rate[k, i], world.Weight[k, i], rules.ChangeLimit, Begin);
                uses[k, i] = history.Use;
                var seen = history.Changes.Count(c => c.SeenOn == today);
                Alarms = (Alarms.All + seen, Alarms.Counted + (today >= World.Date(World.WarmUp) ? seen : 0));
            }
        }
    }

    /// <summary>A van-day without any visit report is not known, as in the product.</summary>
    private void KeepBookings(int day)
    {
        var date = new KindKept[kept.Length];
        for (var v = 0; v < World.Vans; v++)
        {
            var visits = world.Visits[day, v];
            for (var k = 0; k < date.Length && visits.Length > 0; k++)
            {
                var (booked, made) = (world.Booked[day, v][k], visits.Count(x => x.Kind == k));
                date[k] = Sum(date[k], new(booked, Math.Min(booked, made), Math.Max(0, made - booked), 1), 1);
            }
        }

        dates.Enqueue(date);
        Count(date, 1);
        if (dates.Count > BookingsKept.Dates)
            Count(dates.Dequeue(), -1);
    }

    private void Count(KindKept[] date, int sign)
    {
        for (var k = 0; k < kept.Length; k++)
            kept[k] = Sum(kept[k], date[k], sign);
    }

    private static KindKept Sum(KindKept a, KindKept b, int sign) =>
        new(a.Booked + sign * b.Booked, a.Made + sign * b.Made, a.Beyond + sign * b.Beyond, a.VanDays + sign * b.VanDays);
}
