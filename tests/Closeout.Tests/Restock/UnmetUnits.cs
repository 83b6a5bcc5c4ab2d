using MathNet.Numerics;

namespace Closeout.Tests.Restock;

/// <summary>Expected units unmet, E[(D - units)+], added up from a probability function by the gamma function: another road than the product takes.</summary>
/// <remarks>Meant for means up to about a hundred, where it is right to 1e-11.</remarks>
internal sealed class UnmetUnits
{
    private readonly double[] chance;

    public UnmetUnits(double mean, double variance)
    {
        var last = (int)(mean + 40 * Math.Sqrt(Math.Max(mean, variance)) + 60 * Math.Max(1, variance / Math.Max(mean, 1e-9)));
        chance = [.. Enumerable.Range(0, last).Select(x => Chance(mean, variance, x))];
    }

    public double Above(int units) => Enumerable.Range(units, Math.Max(0, chance.Length - units)).Sum(x => (double)(x - units) * chance[x]);

    /// <summary>P(D = x).</summary>
    public static double Chance(double mean, double variance, int x)
    {
        if (mean == 0)
        {
            return x == 0 ? 1 : 0;
        }

        if (variance <= mean)
        {
            return Math.Exp(x * Math.Log(mean) - mean - SpecialFunctions.GammaLn(x + 1));
        }

        var size = mean * mean / (variance - mean);
        var p = mean / variance;
        return Math.Exp(SpecialFunctions.GammaLn(size + x) - SpecialFunctions.GammaLn(size) - SpecialFunctions.GammaLn(x + 1) + size * Math.Log(p) + x * Math.Log(1 - p));
    }
}
