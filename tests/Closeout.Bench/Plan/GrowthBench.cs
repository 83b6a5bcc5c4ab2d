using System.Diagnostics;
using Closeout.DayBook;
using Closeout.Restock;

namespace Closeout.Bench.Plan;

/// <summary>What the plan costs for 50 to 400 vans, beside 50, in processor time: proportional is 1, 2, 4, 8.</summary>
public static class GrowthBench
{
    private const int Rounds = 5;
    private static readonly int[] Sizes = [50, 100, 200, 400];

    public static void Run()
    {
        using var temp = new TempFolder();
        Told.Line($"## Growth with the vans");
        var depots = Sizes.Select(vans =>
        {
            BigDay.Write(temp.At($"{vans}"), vans);
            return BigPlan.Open(BigPlan.Read(temp.At($"{vans}")));
        }).ToArray();
        double[] plans = [.. Timed.ProcessorRounds(Rounds, [.. depots.Select(d => (Action)(() => RestockPlan.For(d)))]).Select(Timed.Median)];
        var memory = depots.Select(d =>
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            RestockPlan.For(d);
            return (double)(GC.GetAllocatedBytesForCurrentThread() - before);
        }).ToArray();
        double[] wholes = [.. Timed.ProcessorRounds(3, [.. Sizes.Select(vans => (Action)(() => BigPlan.Whole(temp.At($"{vans}"))))]).Select(Timed.Median)];

        double[] reads = [.. Timed.ProcessorRounds(Rounds, [.. Sizes.Select(vans => (Action)(() => BigPlan.Read(temp.At($"{vans}"))))]).Select(Timed.Median)];
        double[] splits = [.. Timed.ProcessorRounds(Rounds, [.. Sizes.Select(vans => (Action)(() => EveningBench.Split(temp.At($"{vans}"))))]).Select(Timed.Median)];
        double[] rows = [.. Sizes.Select(vans => (double)Directory.EnumerateFiles(temp.At($"{vans}"), "*.csv").Where(f => !f.EndsWith("-out.csv", StringComparison.Ordinal)).Sum(f => File.ReadLines(f).Count()))];

        Told.Row($"vans", $"plan, of 50 vans'", $"whole, of 50 vans'", $"allocated by the plan, of 50 vans'", $"read, of 50 vans'", $"bare split, of 50 vans'", $"rows, of 50 vans'");
        Told.Row($"---", $"---", $"---", $"---", $"---", $"---", $"---");
        for (var i = 0; i < Sizes.Length; i++)
        {
            Told.Row($"{Sizes[i]}", $"{plans[i] / plans[0]:0.00}", $"{wholes[i] / wholes[0]:0.00}", $"{memory[i] / memory[0]:0.00}", $"{reads[i] / reads[0]:0.00}", $"{splits[i] / splits[0]:0.00}", $"{rows[i] / rows[0]:0.00}");
        }

        Told.Line($"exponent of the vans: plan {Exponent(plans):0.00}, whole {Exponent(wholes):0.00}, allocated {Exponent(memory):0.00}, read {Exponent(reads):0.00}, bare split {Exponent(splits):0.00}, rows {Exponent(rows):0.00} (1 is proportional)");
        Cut(depots[2]);
        foreach (var depot in depots)
        {
            PlanParts.Tell(depot, RestockPlan.For(depot), 3);
        }

        Told.Line($"peak working set {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
    }

    /// <summary>What it costs when every van may carry nine tenths of what it would be loaded with, beside the plan in which weight cuts nothing.</summary>
    private static void Cut(Depot ample)
    {
        var vans = RestockPlan.For(ample).Weights.Select(w => w.Van with { PayloadLb = w.CrewAndKitLb + w.AboardLb + 0.9 * (w.LoadedLb - w.AboardLb) });
        var tight = ample with { Setup = ample.Setup with { Vans = [.. vans] } };
        double[] times = [.. Timed.ProcessorRounds(Rounds, () => RestockPlan.For(ample), () => RestockPlan.For(tight)).Select(Timed.Median)];
        var cut = RestockPlan.For(tight).Weights.Where(w => w.Cut.Count > 0).ToList();
        Told.Line($"{cut.Count} of {tight.Setup.Vans.Count} vans cut, {cut.Sum(w => w.Cut.Count)} lines: {times[1] / times[0]:0.00} of the plan that cuts nothing");
    }

    /// <summary>Slope of the least-squares line through the logarithms.</summary>
    private static double Exponent(double[] costs)
    {
        var x = Sizes.Select(s => Math.Log((double)s)).ToArray();
        var y = costs.Select(c => Math.Log(c)).ToArray();
        var (mx, my) = (x.Average(), y.Average());
        return x.Zip(y, (a, b) => (a - mx) * (b - my)).Sum() / x.Sum(a => (a - mx) * (a - mx));
    }
}
