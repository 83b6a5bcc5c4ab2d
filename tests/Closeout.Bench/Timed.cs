using System.Diagnostics;

namespace Closeout.Bench;

/// <summary>Times things side by side: in turns, so that a slow minute of the machine falls on all of them.</summary>
public static class Timed
{
    /// <summary>Medians in milliseconds of so many rounds, after one round that is not counted. Garbage is collected before each, outside the time.</summary>
    public static double[] InTurns(int rounds, params Action[] things)
    {
        var times = things.Select(_ => new List<double>(rounds)).ToArray();
        for (var round = 0; round <= rounds; round++)
        {
            for (var i = 0; i < things.Length; i++)
            {
                GC.Collect();
                GC.WaitForPendingFinalizers();
                var time = Of(things[i]);
                if (round > 0)
                {
                    times[i].Add(time);
                }
            }
        }

        return [.. times.Select(Median)];
    }

    /// <summary>Milliseconds of one run.</summary>
    public static double Of(Action thing)
    {
        var begun = Stopwatch.GetTimestamp();
        thing();
        return Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
    }

    public static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        return sorted.Count % 2 == 1 ? sorted[sorted.Count / 2] : (sorted[sorted.Count / 2 - 1] + sorted[sorted.Count / 2]) / 2;
    }
}
