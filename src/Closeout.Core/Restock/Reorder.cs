namespace Closeout.Restock;

/// <summary>What the depot must buy of an item.</summary>
/// <param name="Position">Units at the depot after tonight's plan, and what is to be expected of those on order.</param>
/// <param name="ReorderPoint">s: at or below it, order. Quantile of demand until a delivery is there.</param>
/// <param name="UpTo">S: order so much that the position reaches it. Quantile over lead and review time.</param>
/// <param name="Cartons">Cartons to order; 0: none.</param>
public readonly record struct Reorder(double Position, int ReorderPoint, int UpTo, int Cartons)
{
    /// <param name="service">The promised chance of ordering.</param>
    /// <param name="atDepot">Units on the shelf and in the bin.</param>
    /// <param name="onOrder">Units on order.</param>
    /// <param name="by">How the item's supplier delivers; null: nothing is known, so whole and in time.</param>
    public static Reorder Of(
        Item item, WorkingDays.Use use, double service, long atDepot, long onOrder = 0, SupplierRecord? by = null)
    {
        var supplier = by ?? SupplierRecord.Unknown;
        var position = atDepot + supplier.Fill * onOrder;
        var lead = Over(use, item.LeadDays, supplier).Quantile(service);
        var both = Over(use, item.LeadDays + item.ReviewDays, supplier);
        var upTo = both.Quantile(service);
        var cartons = both.Mean > 0 && position <= lead
            ? Math.Max(item.MinOrderCartons, (int)Math.Ceiling((upTo - position) / (item.UnitsPerCarton * supplier.Fill)))
            : 0;
        return new(position, lead, upTo, Math.Max(0, cartons));
    }

    /// <summary>
    /// Demand over a time that itself varies: mean mu (T + D), variance v (T + D) + mu^2 t2, as every text of stock control has it; see
    /// docs/methods.md.
    /// </summary>
    public static Demand Over(WorkingDays.Use use, int days, SupplierRecord supplier) => new(
        use.Mean * (days + supplier.Late),
        use.Variance * (days + supplier.Late) + use.Mean * use.Mean * supplier.LateVariance);
}

/// <summary>
/// The depot's use of each item on its working days: dates of the planning window with any visit report; where none has any, dates on which
/// vans were counted.
/// </summary>
public sealed class WorkingDays
{
    private readonly Dictionary<Code<Item>, List<long>> used = [];

    /// <summary>Mean and sample variance (divisor n - 1) of units used on a working day.</summary>
    public readonly record struct Use(double Mean, double Variance);

    private WorkingDays(int count, bool areCounted) => (Count, AreCounted) = (count, areCounted);

    public int Count { get; }

    /// <summary>Whether no visit report tells of use, so that the counts of close-outs do.</summary>
    public bool AreCounted { get; }

    public static WorkingDays Of(Depot depot)
    {
        var from = depot.Date.AddDays(-PlanningWindow.Days);
        var days = depot.Planning.Use.Where(u => u.Date > from && u.Date <= depot.Date)
            .GroupBy(u => u.Date, u => u.Items.Select(i => (i.Item, i.Sum))).ToList();
        return days.Count > 0
            ? new WorkingDays(days.Count, false).With(depot.Setup, days)
            : Counted(depot, [.. depot.Planning.Counted.Where(d => d.Date > from && d.Date <= depot.Date), .. CountedDays.Tonight(depot)]);
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

    private static WorkingDays Counted(Depot depot, IReadOnlyList<CountedDay> counted)
    {
        var days = counted.GroupBy(d => d.Date, d => d.Used.Select(u => (u.Item, (long)u.Units))).ToList();
        return new WorkingDays(days.Count, days.Count > 0).With(depot.Setup, days);
    }

    private WorkingDays With(Setup setup, IEnumerable<IEnumerable<IEnumerable<(Code<Item> Item, long Units)>>> days)
    {
        foreach (var day in days)
        {
            foreach (var item in day.SelectMany(u => u).GroupBy(i => setup.Now(i.Item), i => i.Units))
            {
                if (!used.TryGetValue(item.Key, out var list))
                    used[item.Key] = list = [];

                list.Add(item.Sum());
            }
        }

        return this;
    }
}
