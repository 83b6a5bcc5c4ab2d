using System.Diagnostics;
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

        Told.Row($"vans", $"plan, of 50 vans'", $"whole, of 50 vans'", $"allocated by the plan, of 50 vans'");
        Told.Row($"---", $"---", $"---", $"---");
        for (var i = 0; i < Sizes.Length; i++)
        {
            Told.Row($"{Sizes[i]}", $"{plans[i] / plans[0]:0.00}", $"{wholes[i] / wholes[0]:0.00}", $"{memory[i] / memory[0]:0.00}");
        }

        Told.Line($"exponent of the vans: plan {Exponent(plans):0.00}, whole {Exponent(wholes):0.00}, allocated {Exponent(memory):0.00} (1 is proportional)");
        foreach (var depot in depots)
        {
            PlanParts.Tell(depot, RestockPlan.For(depot), 3);
        }

        Told.Line($"peak working set {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
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
