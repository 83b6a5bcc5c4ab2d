namespace Closeout.Faults.Machine;

/// <summary>Medians and the like.</summary>
internal static class Numbers
{
    public static double Median(IEnumerable<double> values) => Part(values, 0.5);

    /// <summary>A seed of its own for each round, the same in every run.</summary>
    public static int Mix(int seed, int round) => unchecked((seed * 397) ^ (round * -1640531535));

    /// <summary>The value that this part of all does not exceed.</summary>
    public static double Part(IEnumerable<double> values, double part)
    {
        var sorted = values.Order().ToList();
        return sorted[Math.Min(sorted.Count - 1, (int)(part * sorted.Count))];
    }
}
