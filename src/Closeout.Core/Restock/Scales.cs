using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Restock;

/// <summary>Weighs the vans, in pounds: sealed cartons with their flattened box's weight, loose units without. Vans by their number in bay order.</summary>
internal sealed class Scales
{
    private readonly IReadOnlyList<Van> vans;
    private readonly IReadOnlyList<Item> items;
    private readonly double[] boxLb;
    private readonly double?[] allowance;

    /// <param name="items">In the order of the sums: the same book then gives the same bits.</param>
    public Scales(Depot depot, IReadOnlyList<Item> items, Planner planner)
    {
        (vans, this.items) = (depot.Setup.Vans, items);
        boxLb = [.. items.Select(i => BoxBlank.WeightLb(depot.Setup, i))];
        allowance = [.. vans.Select(v => Payload.AllowanceLb(v.PayloadLb, depot.Setup.Depot.CrewAndKitLb))];
        AboardLb = new double[vans.Count];
        foreach (var (i, item) in items.Index())
        {
            if (planner.Aboard(item.Code) is { } there)
            {
                for (var v = 0; v < AboardLb.Length; v++)
                {
                    AboardLb[v] += there.Units[v] * item.UnitWeightLb + there.Sealed[v] / item.UnitsPerCarton * boxLb[i];
                }
            }
        }

        LoadedLb = AboardLb;
    }

    /// <summary>The stock aboard now.</summary>
    public double[] AboardLb { get; }

    /// <summary>With what was weighed last.</summary>
    public double[] LoadedLb { get; private set; }

    /// <summary>Weighs the vans with these lines loaded.</summary>
    /// <param name="lines">Of each item, in bay order.</param>
    public double[] Weigh(IEnumerable<IReadOnlyList<RestockLine>> lines)
    {
        LoadedLb = (double[])AboardLb.Clone();
        foreach (var (i, ofItem) in lines.Index())
        {
            var v = 0;
            foreach (var line in ofItem)
            {
                while (!ReferenceEquals(vans[v], line.Van))
                {
                    v++;
                }

                LoadedLb[v] += line.Units * items[i].UnitWeightLb + line.Sealed * boxLb[i];
            }
        }

        return LoadedLb;
    }

    /// <summary>Pounds above the allowance as weighed last; 0: it fits, or no payload is stated.</summary>
    public double Above(int van) => allowance[van] is { } most && LoadedLb[van] > most + Payload.SameLb ? LoadedLb[van] - most : 0;

    /// <summary>Whether one unit more of the item would be too much.</summary>
    public bool HasNoRoomFor(int van, Item item) => allowance[van] is { } most && LoadedLb[van] + item.UnitWeightLb > most + Payload.SameLb;
}
