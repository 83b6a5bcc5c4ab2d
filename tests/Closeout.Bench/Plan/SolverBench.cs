using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Bench.Plan;

/// <summary>
/// Sharing out and packing against CP-SAT on the same items and the same chances. A first model shares the supply out, a
/// second packs what was given, aim after aim. Demands are made beforehand: neither side's time has them in it. Where the
/// solver proves no best within its time, its time so far counts, and what it found must not be better than ours.
/// </summary>
public static class SolverBench
{
    private const int Vans = 200;
    private const int Each = 20;
    private const int Again = 50;

    private sealed record Case(Item Item, Claim[] Claims, int[] Highs, int Bin, int Shelf)
    {
        public long Supply => Bin + (long)Shelf * Item.UnitsPerCarton;

        public bool IsShort => Claims.Sum(c => (long)c.Need) > Supply;
    }

    public static void Run()
    {
        using var temp = new TempFolder();
        BigDay.Write(temp.Path, Vans);
        var depot = BigPlan.Open(BigPlan.Read(temp.Path));
        var cases = RestockPlan.For(depot).Lines.GroupBy(l => l.Item.Code).OrderBy(g => g.Key).Select(g => new Case(
            g.First().Item,
            [.. g.Select(l => new Claim(l.Need, l.Aboard, l.Demand.Above))],
            [.. g.Select(l => l.High)],
            depot.Stock.Ledger.Units(Place.Bin, g.Key),
            depot.Stock.Ledger.Units(Place.Shelf, g.Key) / g.First().Item.UnitsPerCarton)).ToList();
        Told.Line($"## Sharing and packing against CP-SAT (OR-Tools 9.15.6755), {Vans} vans, {Each} items of each row");
        Told.Row($"items", $"vans that need", $"proved and equal", $"not proved", $"CP-SAT better", $"CP-SAT / ours, median", $"least", $"most", $"solver's own time / ours, median", $"all items together", $"our microseconds an item");
        Told.Row($"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---", $"---");
        Compare("short", [.. cases.Where(c => c.IsShort).Take(Each)]);
        Compare("enough", [.. cases.Where(c => !c.IsShort).Take(Each)]);
    }

    private static void Compare(string name, Case[] cases)
    {
        var (sumTheirs, sumOurs) = (0.0, 0.0);
        var (equal, unproved, worse, ratios, inner) = (0, 0, 0, new List<double>(), new List<double>());
        foreach (var one in cases)
        {
            var (given, packing) = Ours(one);
            var ours = Timed.Median(Enumerable.Range(0, Again).Select(_ => Timed.Of(() => Ours(one))));
            var found = new List<Solved>();
            var theirs = Timed.Of(() =>
            {
                found.AddRange(one.IsShort ? [SharingModel.Solve(one.Claims, one.Supply)] : []);
                found.AddRange(PackingModel.Solve(Portions(one, given), one.Item.UnitsPerCarton, one.Bin, one.Shelf));
            });
            long[] own = [.. one.IsShort ? [SharingModel.Value(one.Claims, given)] : Array.Empty<long>(), .. PackingModel.Values(packing)];
            var pairs = found.Zip(own).ToList();
            equal += pairs.All(p => p.First.IsProved && p.First.Value == p.Second) ? 1 : 0;
            unproved += pairs.Any(p => !p.First.IsProved) ? 1 : 0;
            worse += pairs.Any(p => p.First.Value < p.Second) ? 1 : 0;
            ratios.Add(theirs / ours);
            (sumTheirs, sumOurs) = (sumTheirs + theirs, sumOurs + ours);
            inner.Add(found.Sum(f => f.Milliseconds) / ours);
        }

        Told.Row(
            $"{name}", $"{cases.Average(c => c.Claims.Length):0}", $"{equal} of {cases.Length}", $"{unproved}", $"{worse}",
            $"{Timed.Median(ratios):0}", $"{ratios.Min():0}", $"{ratios.Max():0}", $"{Timed.Median(inner):0}", $"{sumTheirs / sumOurs:0}", $"{sumOurs / cases.Length * 1000:0}");
    }

    private static (int[] Given, PackingPlan Packing) Ours(Case one)
    {
        var given = Sharing.ByChance(one.Claims, one.Supply);
        return (given, Packing.Pack(Portions(one, given), one.Item.UnitsPerCarton, one.Bin, one.Shelf));
    }

    private static Portion[] Portions(Case one, int[] given) =>
        [.. one.Claims.Select((c, v) => new Portion(given[v], c.Aboard, one.Highs[v]))];
}
