using System.Diagnostics;
using Closeout.Restock;

namespace Closeout.Bench.Plan;

/// <summary>
/// The whole plan against floors that read the same folder and write the same bytes without planning. The floor meant
/// reads as the product reads, faults and all, and writes from a plan that is ready. A barer one only splits the same
/// files into fields and writes bytes that are ready: nothing that has the plan's input and output can do less.
/// </summary>
public static class FloorBench
{
    private const int Vans = 200;
    private const int Rounds = 7;

    public static void Run()
    {
        using var temp = new TempFolder();
        BigDay.Write(temp.Path, Vans);
        var given = BigPlan.Read(temp.Path);
        var plan = RestockPlan.For(BigPlan.Open(given));
        var ready = BigPlan.Bytes(plan);
        Told.Line($"## Plan against a floor: {Vans} vans, {BigDay.Items} items");
        Told.Line($"input {Directory.EnumerateFiles(temp.Path).Sum(f => new FileInfo(f).Length) / 1e6:0.0} MB, {File.ReadLines(temp.At("usage.csv")).Count() - 1} usage rows, {File.ReadLines(temp.At("stock.csv")).Count() - 1} stock rows; output {plan.Lines.Count} restock lines, {plan.Shelf.Count(s => s.Short > 0)} items short, {plan.Shelf.Sum(s => s.Opened)} cartons opened");

        void Floor()
        {
            BigPlan.Read(temp.Path);
            BigPlan.Save(temp.Path, BigPlan.Bytes(plan));
        }

        var times = Timed.Rounds(
            Rounds,
            () => BigPlan.Whole(temp.Path),
            Floor,
            () =>
            {
                EveningBench.Split(temp.Path);
                BigPlan.Save(temp.Path, ready);
            },
            () => BigPlan.Read(temp.Path),
            () => BigPlan.Open(given),
            () => RestockPlan.For(BigPlan.Open(given)),
            () => BigPlan.Bytes(plan));
        var (whole, floor, bare, read, open, planned, write) = (times[0], times[1], times[2], times[3], times[4], times[5], times[6]);
        var plans = planned.Zip(open, (p, o) => p - o).ToArray();
        Told.Line($"whole / floor {Timed.Ratio(whole, floor):0.00} (rounds {whole.Zip(floor, (w, f) => w / f).Min():0.00} to {whole.Zip(floor, (w, f) => w / f).Max():0.00}; least / least {whole.Min() / floor.Min():0.00}; aim at most 1.5)");
        var work = Timed.ProcessorRounds(Rounds, () => BigPlan.Whole(temp.Path), Floor);
        Told.Line($"in processor time: whole / floor {Timed.Ratio(work[0], work[1]):0.00} (rounds {work[0].Zip(work[1], (w, f) => w / f).Min():0.00} to {work[0].Zip(work[1], (w, f) => w / f).Max():0.00})");
        Told.Line($"whole / bare floor {Timed.Ratio(whole, bare):0.0}; floor / bare floor {Timed.Ratio(floor, bare):0.0}");
        Told.Line($"of the whole: read {Timed.Ratio(read, whole):0.000}, depot {Timed.Ratio(open, whole):0.000}, plan {Timed.Ratio(plans, whole):0.000}, write {Timed.Ratio(write, whole):0.000}");
        Told.Line($"plan alone / write alone {Timed.Ratio(plans, write):0.0}, plan alone / bare floor {Timed.Ratio(plans, bare):0.0}; milliseconds: whole {Timed.Median(whole):0}, plan {Timed.Median(plans):0}");

        var depot = BigPlan.Open(given);
        PlanParts.Tell(depot, plan, Rounds);
        var before = GC.GetAllocatedBytesForCurrentThread();
        RestockPlan.For(depot);
        var planBytes = GC.GetAllocatedBytesForCurrentThread() - before;
        before = GC.GetAllocatedBytesForCurrentThread();
        BigPlan.Read(temp.Path);
        var readBytes = GC.GetAllocatedBytesForCurrentThread() - before;
        Told.Line($"allocated: plan {planBytes / 1e6:0} MB, read {readBytes / 1e6:0} MB; peak working set of all of this {Process.GetCurrentProcess().PeakWorkingSet64 / 1e6:0} MB");
    }
}
