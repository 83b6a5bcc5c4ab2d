using System.Globalization;
using Closeout.Facts;
using Closeout.Faults.Machine;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Processes;

/// <summary>One, two and four processes that append to one book at once.</summary>
public static class ManyProcesses
{
    private static readonly string[] Vans = ["B1", "B2", "B3", "B4"];

    /// <param name="rounds">Appends of each process.</param>
    public static Figure Run(int rounds, int seed)
    {
        var (faults, medians, late, longest) = (new FaultList(), new Dictionary<int, double>(), 0.0, 0.0);
        foreach (var processes in new[] { 1, 2, 4 })
        {
            var took = Together(processes, rounds, faults);
            medians[processes] = Numbers.Median(took);
            (late, longest) = (Numbers.Part(took, 0.95), took.Max());
        }

        return Figure.Of(
            "processes", faults.All,
            $"{rounds} appends each of one, two and four processes on one book; lost {faults.All.Count(f => f.Contains("LOST"))}, doubled {faults.All.Count(f => f.Contains("DOUBLED"))}, not openable {faults.All.Count(f => f.Contains("NOT OPENABLE"))}; median latency beside one alone: two {medians[2] / medians[1]:0.0}, four {medians[4] / medians[1]:0.0} (one alone {medians[1]:0.00} ms; of four, 95 % within {late:0.0} ms, the longest {longest:0} ms)",
            ("two", medians[2] / medians[1]), ("four", medians[4] / medians[1]));
    }

    /// <summary>The milliseconds of every append.</summary>
    private static List<double> Together(int processes, int times, FaultList faults)
    {
        using var temp = new TempFolder();
        var folder = new BookFolder(temp["book"]);
        Books.New(folder);
        var vans = Vans[..processes];
        var children = vans.Select(v => Child.Part("append", folder.Path, v, times.ToString(CultureInfo.InvariantCulture))).ToList();
        try
        {
            children.ForEach(c => Expect(c.StandardOutput.ReadLine(), "ready"));
            children.ForEach(c => c.StandardInput.WriteLine());
            var said = children.Select(c => c.StandardOutput.ReadLineAsync()).ToList();
            var took = said.SelectMany(s => (s.Result ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(t => double.Parse(t, CultureInfo.InvariantCulture))).ToList();
            foreach (var child in children)
            {
                child.WaitForExit();
                if (child.ExitCode != 0)
                {
                    faults.Add($"{processes} processes: one ended with {child.ExitCode}: {child.StandardError.ReadToEnd().Trim()}");
                }
            }

            Look(folder, vans, times, faults);
            return took;
        }
        finally
        {
            children.ForEach(c => c.Kill());
            children.ForEach(c => c.WaitForExit());
        }
    }

    private static void Look(BookFolder folder, string[] vans, int times, FaultList faults)
    {
        if (Books.WhyNotGood(folder) is { } bad)
        {
            faults.Add($"{vans.Length} processes: NOT OPENABLE {bad}");
            return;
        }

        var counts = PageReader.Read(folder.Page(folder.Dates[0]), default).Entries.Select(e => e.Entry).OfType<LeftoverCounted>().ToLookup(c => c.Van.Text, c => c.Count.Kept);
        foreach (var van in vans)
        {
            var kept = counts[van].ToList();
            foreach (var missing in Enumerable.Range(1, times).Except(kept))
            {
                faults.Add($"{vans.Length} processes: LOST count {missing} of {van}");
            }

            if (kept.Count != kept.Distinct().Count() || !kept.SequenceEqual(kept.Order()))
            {
                faults.Add($"{vans.Length} processes: DOUBLED or out of order on {van}: {kept.Count} counts, {kept.Distinct().Count()} of them different");
            }
        }
    }

    private static void Expect(string? said, string expected)
    {
        if (said != expected)
        {
            throw new InvalidOperationException($"the process said '{said}' and not '{expected}'");
        }
    }
}
