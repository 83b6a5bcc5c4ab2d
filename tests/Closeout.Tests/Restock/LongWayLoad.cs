using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Tests.Restock;

/// <summary>
/// The plan within the vans' payloads, the long way and with decimal pounds: units shared one by one, every possible packing,
/// every van weighed anew from each line, units cut one at a time. Written from the rules in docs/methods.md alone; only the
/// wants (target and demand of a line) are taken from a plan in which nothing is weighed.
/// </summary>
internal sealed class LongWayLoad
{
    private readonly Depot depot;
    private readonly IReadOnlyList<RestockLine> wants;
    private readonly Dictionary<(string Van, string Item), int> caps = [];
    private readonly Dictionary<string, int> gaveUp = [];

    public LongWayLoad(Depot depot)
    {
        this.depot = depot;
        wants = RestockPlan.For(HeavyDepot.Unweighed(depot)).Lines;
        var cut = true;
        while (cut)
        {
            Loads = [.. depot.Setup.Items.SelectMany(Plan)];
            cut = false;
            foreach (var van in depot.Setup.Vans.Where(v => v.PayloadLb > 0))
            {
                cut |= Cut(van);
            }
        }
    }

    public sealed record Load(RestockLine Want, int Target, int Sealed, int Loose, int Short)
    {
        public Item Item => Want.Item;

        public int Units => Sealed * Item.UnitsPerCarton + Loose;
    }

    public IReadOnlyList<Load> Loads { get; private set; } = [];

    public decimal Weight(Van van) => depot.Setup.Items.Sum(i => Pounds(i, depot.Stock.Ledger.Aboard(van.Code, i).Units(i.UnitsPerCarton), depot.Stock.Ledger.Aboard(van.Code, i).Sealed))
        + Loads.Where(l => l.Want.Van.Code == van.Code).Sum(l => Pounds(l.Item, l.Units, l.Sealed));

    private IEnumerable<Load> Plan(Item item)
    {
        var lines = wants.Where(w => w.Item.Code == item.Code).ToList();
        var targets = lines.Select(l => Math.Min(l.Target.Units, Cap(l))).ToList();
        var needs = lines.Select((l, v) => l.Need == 0 ? 0 : Math.Max(0, targets[v] - l.Aboard)).ToList();
        var (shelf, bin) = (depot.Stock.Ledger.Units(Place.Shelf, item.Code) / item.UnitsPerCarton, depot.Stock.Ledger.Units(Place.Bin, item.Code));
        var given = Share(lines, needs, bin + shelf * item.UnitsPerCarton);
        var packing = EveryPacking.Best([.. lines.Select((l, v) => new Portion(given[v], l.Aboard, Math.Min(l.High, Cap(l))))], item.UnitsPerCarton, bin, shelf)!;
        return lines.Select((l, v) => new Load(l, targets[v], packing.Vans[v].Sealed, packing.Vans[v].Loose, needs[v] - given[v]));
    }

    private static int[] Share(List<RestockLine> lines, List<int> needs, int supply)
    {
        var given = new int[lines.Count];
        while (supply-- > 0 && Enumerable.Range(0, given.Length).Where(v => given[v] < needs[v]).ToList() is { Count: > 0 } open)
        {
            var largest = open.Max(v => lines[v].ChanceAbove(lines[v].Aboard + given[v]));
            given[open.First(v => lines[v].ChanceAbove(lines[v].Aboard + given[v]) >= largest - 1e-12)]++;
        }

        return given;
    }

    /// <summary>Takes units off one by one until the van fits or nothing that weighs is left; first of all what is less important than something it gave up before.</summary>
    private bool Cut(Van van)
    {
        var (weight, most, before) = (Weight(van), (decimal)van.PayloadLb - (decimal)depot.Setup.Depot.CrewAndKitLb, gaveUp.GetValueOrDefault(van.Code.Text, 9));
        var cut = false;
        foreach (var load in Order([.. Loads.Where(l => l.Want.Van.Code == van.Code && l.Units > 0 && l.Item.UnitWeightLb > 0)]))
        {
            for (var left = load.Units; left > 0 && (weight > most + 0.000_001m || (gaveUp.ContainsKey(van.Code.Text) && before < load.Item.Priority)); left--)
            {
                weight -= (decimal)load.Item.UnitWeightLb;
                caps[(van.Code.Text, load.Item.Code.Text)] = load.Want.Aboard + left - 1;
                gaveUp[van.Code.Text] = Math.Min(gaveUp.GetValueOrDefault(van.Code.Text, 9), load.Item.Priority);
                cut = true;
            }
        }

        return cut;
    }

    private static List<Load> Order(List<Load> loads)
    {
        var (left, order) = (loads.OrderBy(l => l.Item.Code.Text, StringComparer.Ordinal).ToList(), new List<Load>());
        while (left.Count > 0)
        {
            var lowest = left.Where(l => l.Item.Priority == left.Max(o => o.Item.Priority)).ToList();
            var least = lowest.Min(Missed);
            order.Add(lowest.First(l => Missed(l) <= least + 1e-12));
            left.Remove(order[^1]);
        }

        return order;
    }

    private static double Missed(Load l) => l.Want.ChanceAbove(l.Want.Aboard + l.Units - 1) / l.Want.Item.UnitWeightLb;

    private int Cap(RestockLine l) => caps.GetValueOrDefault((l.Van.Code.Text, l.Item.Code.Text), int.MaxValue);

    /// <summary>All boxes here are of 32ECT-C: 105 lb a thousand square feet of (2L + 2W + 1.5) x (W + D) square inches.</summary>
    private static decimal Pounds(Item i, int units, int cartons)
    {
        var (l, w, d) = ((decimal)i.Box.LengthIn, (decimal)i.Box.WidthIn, (decimal)i.Box.DepthIn);
        return units * (decimal)i.UnitWeightLb + cartons * (2 * l + 2 * w + 1.5m) * (w + d) / 144_000 * 105;
    }
}
