using Closeout.Restock;

namespace Closeout.Bench.Year;

/// <summary>
/// What is on order. An order is believed whole and in time until it is received; then what came is booked, and the rest is told not to
/// come. In a scarce week what is due comes a week late, and half of it.
/// </summary>
public sealed class OrderBook(World world, Rules rules)
{
    private const int WeekLate = 5;

    private readonly List<Line> lines = [];
    private readonly List<(int Day, int Delay, double Fill)> receipts = [];
    private SupplierRecord record = SupplierRecord.Unknown;

    /// <param name="Due">The day for which it is promised.</param>
    /// <param name="Arrives">The day on which it comes, which nobody knows before.</param>
    private sealed record Line(int Item, int Ordered, int Due, int Arrives, int Comes);

    /// <summary>What comes on the day: item and cartons.</summary>
    public IReadOnlyList<(int Item, int Cartons)> Receive(int day)
    {
        var here = lines.Where(l => l.Arrives == day).ToList();
        lines.RemoveAll(l => l.Arrives == day);
        receipts.AddRange(here.Select(l => (day, day - l.Due, (double)l.Comes / l.Ordered)));
        receipts.RemoveAll(r => day - r.Day >= Suppliers.WorkingDays);
        if (rules.Suppliers)
            record = SupplierRecord.Of([.. receipts.Select(r => (r.Delay, r.Fill))]);

        return [.. here.Select(l => (l.Item, l.Comes))];
    }

    /// <summary>By the product's rule, every evening.</summary>
    /// <param name="atDepot">Units on the shelf and in the bin.</param>
    public void Order(int day, int i, WorkingDays.Use use, long atDepot)
    {
        var item = world.Items[i];
        var onOrder = (long)lines.Where(l => l.Item == i).Sum(l => l.Ordered) * item.UnitsPerCarton;
        var service = rules.OrderService ?? world.Depot.Service(item.Priority);
        if (IsPlenty(use, item.LeadDays, service, atDepot + record.Fill * onOrder))
            return;

        var cartons = Reorder.Of(item, use, service, atDepot, onOrder, record).Cartons;
        if (cartons == 0)
            return;

        var due = day + Math.Max(1, item.LeadDays);
        var isScarce = rules.Scarce && world.ScarceWeeks.Contains(due / 5);
        lines.Add(isScarce ? new(i, cartons, due, due + WeekLate, (cartons + 1) / 2) : new(i, cartons, due, due, cartons));
    }

    /// <summary>
    /// Whether the rule cannot but say that nothing is to be ordered, so that it need not be asked: it takes most of a year's time.
    /// By Chernoff's bound of a Poisson or negative binomial tail, a thousand times below what the promise allows.
    /// </summary>
    private bool IsPlenty(WorkingDays.Use use, int leadDays, double service, double x)
    {
        var mean = use.Mean * (leadDays + record.Late);
        var variance = use.Variance * (leadDays + record.Late) + use.Mean * use.Mean * record.LateVariance;
        if (mean <= 0 || x <= mean)
            return false;

        var log = x - mean;
        if (variance > mean)
        {
            var size = mean * mean / (variance - mean);
            log = (x + size) * Math.Log((x + size) / (mean + size));
        }

        return log - x * Math.Log(x / mean) < Math.Log((1 - service) / 1000);
    }
}
