namespace Closeout.Bench.Year;

/// <summary>Outcomes of one policy from few units aboard to many. Between two of them: straight lines, misses by their logarithm.</summary>
public sealed class Curve
{
    /// <summary>Fewer misses than this per thousand count as this.</summary>
    private const double Least = 0.001;

    private readonly (double Aboard, double LogMissed)[] points;

    public Curve(IEnumerable<Outcome> outcomes) =>
        points = [.. outcomes.Select(o => (o.Aboard, Math.Log(Math.Max(Least, o.MissedPerThousand)))).OrderBy(p => p.Aboard)];

    /// <summary>Misses with so many units aboard; not a number outside the curve.</summary>
    public double MissedWith(double aboard)
    {
        foreach (var (a, b) in points.Zip(points.Skip(1)).Where(s => s.First.Aboard <= aboard && aboard <= s.Second.Aboard))
        {
            return Math.Exp(Between(a.LogMissed, b.LogMissed, (aboard - a.Aboard) / (b.Aboard - a.Aboard)));
        }

        return double.NaN;
    }

    /// <summary>The fewest units aboard with so many misses; not a number outside the curve.</summary>
    public double AboardFor(double missed)
    {
        var wanted = Math.Log(Math.Max(Least, missed));
        foreach (var (a, b) in points.Zip(points.Skip(1)).Where(s => s.First.LogMissed >= wanted && wanted >= s.Second.LogMissed))
        {
            return Between(a.Aboard, b.Aboard, (a.LogMissed - wanted) / (a.LogMissed - b.LogMissed));
        }

        return double.NaN;
    }

    private static double Between(double a, double b, double part) => a + (b - a) * part;
}
