namespace Closeout.Restock;

/// <summary>How a supplier delivers, by the first deliveries of its order lines and ten that were whole and in time.</summary>
/// <param name="Late">D, the mean delay in working days, at least 0.</param>
/// <param name="LateVariance">t2, the delays' variance, in working days squared.</param>
/// <param name="Fill">F, the mean share of an order that the first delivery brings.</param>
/// <param name="Delays">Of each delivery on record, the oldest first, in working days.</param>
public sealed record SupplierRecord(double Late, double LateVariance, double Fill, IReadOnlyList<int> Delays)
{
    /// <summary>Deliveries, whole and in time, that are added: one late one does not say much.</summary>
    private const int Prior = 10;

    public static readonly SupplierRecord Unknown = new(0, 0, 1, []);

    /// <param name="deliveries">Delay in working days, and came / ordered.</param>
    public static SupplierRecord Of(IReadOnlyList<(int Delay, double Fill)> deliveries)
    {
        var n = deliveries.Count + Prior;
        var late = (double)deliveries.Sum(d => d.Delay) / n;
        var spread = deliveries.Sum(d => (d.Delay - late) * (d.Delay - late)) + Prior * late * late;
        return new(late, spread / n, (deliveries.Sum(d => d.Fill) + Prior) / n, [.. deliveries.Select(d => d.Delay)]);
    }

    /// <summary>Deliveries that came after the date for which they were promised.</summary>
    public int LateOnes => Delays.Count(d => d > 0);
}

/// <summary>The depot's suppliers as they were over the last 250 working days.</summary>
public sealed class Suppliers
{
    /// <summary>About a year of working days: a supplier who mended its ways is forgiven after it.</summary>
    public const int WorkingDays = 250;

    private readonly ILookup<Code<Supplier>?, Receipt> receipts;
    private readonly Dictionary<Code<Supplier>, SupplierRecord> records = [];
    private readonly SupplierRecord only;

    private Suppliers(Depot depot)
    {
        var week = new WorkingWeek(depot.Setup);
        receipts = depot.Stock.Receipts.Where(r => week.Between(r.On, depot.Date) < WorkingDays).ToLookup(r => r.Supplier);
        only = Record(null);
        foreach (var supplier in receipts.Select(g => g.Key).OfType<Code<Supplier>>())
            records[supplier] = Record(supplier);

        SupplierRecord Record(Code<Supplier>? supplier) =>
            SupplierRecord.Of([.. receipts[supplier].Select(r => (week.Between(r.Due, r.On), (double)r.Came / r.Ordered))]);
    }

    public static Suppliers Of(Depot depot) => new(depot);

    /// <summary>Those with deliveries on record, in the order of their codes, the depot's one supplier first.</summary>
    public IEnumerable<(Code<Supplier>? Supplier, SupplierRecord Record)> All => receipts.Select(g => g.Key).OrderBy(s => s?.Text,
        StringComparer.OrdinalIgnoreCase).Select(s => (s, Of(s)));

    /// <param name="supplier">Null: the depot's one supplier.</param>
    public SupplierRecord Of(Code<Supplier>? supplier) =>
        supplier is { } code ? records.GetValueOrDefault(code) ?? SupplierRecord.Unknown : only;
}
