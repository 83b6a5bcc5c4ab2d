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
        var onOrder = lines.Where(l => l.Item == i).Sum(l => l.Ordered);
        var service = rules.OrderService ?? world.Depot.Service(item.Priority);
        var cartons = Reorder.Of(item, use, service, atDepot, (long)onOrder * item.UnitsPerCarton, record).Cartons;
        if (cartons == 0)
            return;

        var due = day + Math.Max(1, item.LeadDays);
        var isScarce = rules.Scarce && world.ScarceWeeks.Contains(due / 5);
        lines.Add(isScarce ? new(i, cartons, due, due + WeekLate, (cartons + 1) / 2) : new(i, cartons, due, due, cartons));
    }
}
