using System.Globalization;

namespace Closeout.Bench.Year;

/// <summary>The same year for several seeds, side by side, and what they say together.</summary>
public static class Seeds
{
    /// <param name="run">Of a seed, from 1.</param>
    public static T[] Each<T>(int seeds, Func<int, T> run)
    {
        var results = new T[seeds];
        Parallel.For(0, seeds, s => results[s] = run(s + 1));
        return results;
    }

    /// <summary>Mean and standard deviation of those that are numbers, and of how many where not all are; "-": of none.</summary>
    public static string Spread(IEnumerable<double> values, string format)
    {
        var all = values.ToList();
        var numbers = all.Where(v => !double.IsNaN(v)).ToList();
        if (numbers.Count == 0)
            return "-";

        var mean = numbers.Average();
        var deviation = Math.Sqrt(numbers.Sum(v => (v - mean) * (v - mean)) / Math.Max(1, numbers.Count - 1));
        string Text(double v) => v.ToString(format, CultureInfo.InvariantCulture);
        return $"{Text(mean)} ± {Text(deviation)}" + (numbers.Count < all.Count ? $" ({numbers.Count} of {all.Count})" : "");
    }
}
