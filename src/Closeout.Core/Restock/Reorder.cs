namespace Closeout.Restock;

/// <summary>What the depot must buy of an item.</summary>
/// <param name="Position">Units at the depot after tonight's plan, and on order.</param>
/// <param name="ReorderPoint">s: at or below it, order. Quantile of demand over the lead time.</param>
/// <param name="UpTo">S: order so much that the position reaches it. Quantile over lead and review time.</param>
/// <param name="Cartons">Cartons to order; 0: none.</param>
public readonly record struct Reorder(long Position, int ReorderPoint, int UpTo, int Cartons)
{
    /// <param name="service">The promised chance of the item's priority.</param>
    public static Reorder Of(Item item, WorkingDays.Use use, double service, long position)
    {
        var lead = Over(use, item.LeadDays).Quantile(service);
        var both = Over(use, item.LeadDays + item.ReviewDays);
        var upTo = both.Quantile(service);
        var cartons = both.Mean > 0 && position <= lead
            ? Math.Max(item.MinOrderCartons, (int)((upTo - position + item.UnitsPerCarton - 1) / item.UnitsPerCarton))
            : 0;
        return new(position, lead, upTo, Math.Max(0, cartons));
    }

    private static Demand Over(WorkingDays.Use use, int days) => new(use.Mean * days, use.Variance * days);
}

/// <summary>The depot's use of each item on its working days: dates of the planning window with any visit report.</summary>
public sealed class WorkingDays
{
    private readonly Dictionary<Code<Item>, List<long>> used = [];

    /// <summary>Mean and sample variance (divisor n - 1) of units used on a working day.</summary>
    public readonly record struct Use(double Mean, double Variance);

    private WorkingDays(int count) => Count = count;

    public int Count { get; }

    public static WorkingDays Of(Depot depot)
    {
        var from = depot.Date.AddDays(-PlanningWindow.Days);
        var days = depot.Planning.Use.Where(u => u.Date > from && u.Date <= depot.Date).GroupBy(u => u.Date).ToList();
        var working = new WorkingDays(days.Count);
        foreach (var day in days)
        {
            foreach (var item in day.SelectMany(u => u.Items).GroupBy(i => i.Item, i => i.Sum))
            {
                if (!working.used.TryGetValue(item.Key, out var list))
                    working.used[item.Key] = list = [];

                list.Add(item.Sum());
            }
        }

        return working;
    }

    /// <summary>The item's use; days on which none was used count as 0.</summary>
    public Use UseOf(Code<Item> item)
    {
        if (Count == 0 || !used.TryGetValue(item, out var units))
            return default;

        var mean = units.Sum() / (double)Count;
        var idle = Count - units.Count;
        var squares = units.Sum(u => (u - mean) * (u - mean)) + idle * mean * mean;
        return new(mean, Count < 2 ? 0 : squares / (Count - 1));
    }
}
