using System.Diagnostics;

namespace Closeout.Bench;

/// <summary>Times things side by side: in turns, so that a slow minute of the machine falls on all of them.</summary>
public static class Timed
{
    /// <summary>Milliseconds by thing and round, after one round that is not counted. Garbage is collected before each, outside the time.</summary>
    public static double[][] Rounds(int rounds, params Action[] things) => Rounds(Of, rounds, things);

    /// <summary>The same in the program's processor time, all threads: what others do on the machine counts less.</summary>
    public static double[][] ProcessorRounds(int rounds, params Action[] things) => Rounds(Processor, rounds, things);

    private static double[][] Rounds(Func<Action, double> clock, int rounds, Action[] things)
    {
        var times = things.Select(_ => new double[rounds]).ToArray();
        for (var round = -1; round < rounds; round++)
        {
            for (var i = 0; i < things.Length; i++)
            {
                GC.Collect();
                GC.WaitForPendingFinalizers();
                var time = clock(things[i]);
                if (round >= 0)
                {
                    times[i][round] = time;
                }
            }
        }

        return times;
    }

    /// <summary>The medians of the rounds.</summary>
    public static double[] InTurns(int rounds, params Action[] things) => [.. Rounds(rounds, things).Select(Median)];

    /// <summary>The median of the ratios, round by round: what slows one round slows both.</summary>
    public static double Ratio(double[] one, double[] other) => Median(one.Zip(other, (a, b) => a / b));

    /// <summary>Milliseconds of one run.</summary>
    public static double Of(Action thing)
    {
        var begun = Stopwatch.GetTimestamp();
        thing();
        return Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
    }

    private static double Processor(Action thing)
    {
        using var process = Process.GetCurrentProcess();
        var begun = process.TotalProcessorTime;
        thing();
        process.Refresh();
        return (process.TotalProcessorTime - begun).TotalMilliseconds;
    }

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count % 2 == 1 ? sorted[sorted.Count / 2] : (sorted[sorted.Count / 2 - 1] + sorted[sorted.Count / 2]) / 2;
    }
}
