using Closeout.Cardboard;

namespace Closeout.Restock;

/// <summary>
/// Weighs the vans, in pounds: sealed cartons with their flattened box's weight, loose units without. Vans by their number in bay order.
/// </summary>
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
                    AboardLb[v] += there.Units[v] * item.UnitWeightLb + there.Sealed[v] / item.UnitsPerCarton * boxLb[i];
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
    public void Weigh(IEnumerable<IReadOnlyList<RestockLine>> lines) => LoadedLb = Sum(AboardLb, lines, l => (l.Units, l.Sealed));

    /// <summary>
    /// By van: whether it would be too heavy with all that it lacks, and a carton more of each line and of each loaded item. Below that
    /// nothing was cut.
    /// </summary>
    /// <param name="lines">Of each item, in bay order; as weighed last.</param>
    /// <param name="loaded">What was loaded tonight, by van.</param>
    public bool[] MayHaveBeenCut(IEnumerable<IReadOnlyList<RestockLine>> lines, ILookup<Code<Van>, LoadedLine> loaded)
    {
        var carton = items.Index().ToDictionary(i => i.Item.Code, i => i.Item.UnitsPerCarton * i.Item.UnitWeightLb + boxLb[i.Index]);
        var most = Sum(LoadedLb, lines, l => (l.Need + l.Item.UnitsPerCarton, l.Need / l.Item.UnitsPerCarton + 2));
        return [
            .. vans.Select((van, v) =>
                most[v] + loaded[van.Code].Sum(l => carton.GetValueOrDefault(l.Item)) > (allowance[v] ?? double.MaxValue))];
    }

    /// <summary>Pounds above the allowance as weighed last; 0: it fits, or no payload is stated.</summary>
    public double Above(int van) => allowance[van] is { } most && LoadedLb[van] > most + Payload.SameLb ? LoadedLb[van] - most : 0;

    private double[] Sum(double[] before, IEnumerable<IReadOnlyList<RestockLine>> lines, Func<RestockLine, (int Units, int Cartons)> load)
    {
        double[] weights = [.. before];
        foreach (var (i, ofItem) in lines.Index())
        {
            var v = 0;
            foreach (var line in ofItem)
            {
                while (!ReferenceEquals(vans[v], line.Van))
                    v++;

                var (units, cartons) = load(line);
                weights[v] += units * items[i].UnitWeightLb + cartons * boxLb[i];
            }
        }

        return weights;
    }
}
