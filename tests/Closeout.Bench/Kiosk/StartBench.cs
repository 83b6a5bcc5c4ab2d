using System.Diagnostics;

namespace Closeout.Bench.Kiosk;

/// <summary>
/// From the start of the program to its first full screen, one command to its end, memory and size: closeout in the three ways that a
/// program can be published, beside a window of the terminal library with nothing in it.
/// </summary>
public static class StartBench
{
    private const int Rounds = 9;

    /// <summary>What stands near the end of the kiosk's first screen.</summary>
    internal const string WallIsThere = "Van to open";

    public static void Run()
    {
        using var temp = new TempFolder();
        var (closeout, hello) = (Published.Kiosk(temp.Path), Published.Hello(temp.Path));
        End(closeout[0].Program, "rehearse", TempFolder.InTree("sample-day"), "--out", temp.At("rehearsed"));
        var book = temp.At("rehearsed/book");

        var all = closeout.Concat(hello).ToList();
        var starts = all.ToDictionary(p => p, _ => new List<InTerminal>());
        var walls = closeout.ToDictionary(p => p, _ => new List<double>());
        for (var round = 0; round <= Rounds; round++)
        {
            foreach (var program in all)
            {
                var start = closeout.Contains(program)
                    ? InTerminal.Start($"{program.Program} --book {book}", WallIsThere)
                    : InTerminal.Start(program.Program, "Hello, terminal");
                var wall = closeout.Contains(program) ? Timed.Of(() => End(program.Program, "--book", book, "wall")) : 0;
                if (round == 0)
                    continue;

                starts[program].Add(start);
                walls.GetValueOrDefault(program)?.Add(wall);
            }
        }

        Told.Line($"## Start-up, the sample's evening: medians of {Rounds} in turns (least to most)");
        Console.WriteLine("| | | first full screen, ms | of the processor, ms | `wall`, ms | peak memory, MB | on disk, MB |");
        Console.WriteLine("|---|---|---|---|---|---|---|");
        foreach (var program in all)
        {
            var of = starts[program];
            Told.Row(
                $"{program.Name}", $"{program.Way}", Spread([.. of.Select(s => s.Elapsed)]), $"{Timed.Median(of.Select(s => s.Processor)):0}",
                walls.TryGetValue(program, out var wall) ? Spread(wall) : $"", $"{Timed.Median(of.Select(s => s.PeakMb)):0}", $"{program.Bytes / 1e6:0.0}");
        }

        Told.Line($"on disk: just in time and ready to run need the .NET runtime beside them, ahead of time needs nothing");
        foreach (var (ours, bare) in closeout.Zip(hello))
        {
            var ratio = Timed.Ratio([.. starts[ours].Select(s => s.Elapsed)], [.. starts[bare].Select(s => s.Elapsed)]);
            Told.Line($"{ours.Way}: closeout / hello, first full screen {ratio:0.00}");
        }
    }

    private static FormattableString Spread(IReadOnlyList<double> times) => $"{Timed.Median(times):0} ({times.Min():0} to {times.Max():0})";

    /// <summary>Runs a command to its good end, and lets it say what it likes.</summary>
    private static void End(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true })!;
        process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}");
        }
    }
}
