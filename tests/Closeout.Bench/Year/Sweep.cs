namespace Closeout.Bench.Year;

/// <summary>
/// One way to run a year at service levels from low to high, each run only where somebody asks. Between two levels: straight lines,
/// misses by their logarithm.
/// </summary>
public sealed class Sweep(Func<double, Outcome> run)
{
    private static readonly double[] Levels =
        [0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995, 0.998, 0.999, 0.9995, 0.9999, 0.99999, 0.999999, 0.9999999];

    /// <summary>Fewer misses than this per thousand count as this.</summary>
    private const double Least = 0.001;

    private readonly Outcome?[] outcomes = new Outcome?[Levels.Length];

    /// <summary>Misses with as much stock; not a number outside the levels.</summary>
    /// <param name="stock">Which stock: the more, the higher the level.</param>
    public double MissedWith(double units, Func<Outcome, double> stock) =>
        Between(x => stock(x) >= units, x => (units - stock(x.Low)) / (stock(x.High) - stock(x.Low)), LogMissed) is var log
            ? Math.Exp(log)
            : double.NaN;

    /// <summary>The least stock with so many misses; not a number outside the levels.</summary>
    public double StockFor(double missed, Func<Outcome, double> stock)
    {
        var wanted = Math.Log(Math.Max(Least, missed));
        return Between(
            x => LogMissed(x) <= wanted, x => (LogMissed(x.Low) - wanted) / (LogMissed(x.Low) - LogMissed(x.High)), stock);
    }

    private static double LogMissed(Outcome x) => Math.Log(Math.Max(Least, x.MissedPerThousand));

    /// <summary>What lies so far between the last level that is not enough and the first that is.</summary>
    private double Between(
        Func<Outcome, bool> isEnough, Func<(Outcome Low, Outcome High), double> part, Func<Outcome, double> of)
    {
        var (low, high) = (-1, Levels.Length);
        while (high - low > 1)
        {
            var middle = (low + high) / 2;
            (low, high) = isEnough(At(middle)) ? (low, middle) : (middle, high);
        }

        if (low < 0 || high == Levels.Length)
            return double.NaN;

        var (a, b) = (At(low), At(high));
        return of(a) + (of(b) - of(a)) * part((a, b));
    }

    private Outcome At(int level) => outcomes[level] ??= run(Levels[level]);
}
