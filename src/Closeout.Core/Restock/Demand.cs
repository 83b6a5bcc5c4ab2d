namespace Closeout.Restock;

/// <summary>How demand is spread.</summary>
public enum Spread
{
    /// <summary>Nothing is demanded.</summary>
    None,

    /// <summary>Variance at most the mean.</summary>
    Poisson,

    /// <summary>Variance above the mean: lumpy.</summary>
    NegativeBinomial,
}

/// <summary>
/// The distribution of a demand of whole units with mean M and variance V: Poisson when V is at most M, else negative
/// binomial with size M*M/(V-M), the usual choice for lumpy demand (Silver, Pyke, Thomas).
/// </summary>
/// <remarks>
/// Probabilities are added up from 0 by each term's ratio to the one before, with compensated sums and a scale kept apart,
/// so that means of thousands and a variance a hair above the mean stay exact to about 1e-11. The incomplete beta function
/// of a library loses all its digits for such sizes; docs/methods.md has the comparison.
/// </remarks>
public sealed class Demand
{
    private const double Rescale = 1e280;
    private static readonly double LogRescale = Math.Log(Rescale);

    /// <summary>P(D at most x) for x = 0, 1, ...; grown as far as somebody asks.</summary>
    private readonly List<double> atMost = [];
    private readonly double size;
    private readonly double ratio;

    // The term of the last x and the sum so far, both to be multiplied by exp(log); lost: what the sum rounded away.
    private double term;
    private double sum;
    private double lost;
    private double log;

    /// <param name="mean">M, at least 0.</param>
    /// <param name="variance">V; at or below the mean it counts as the mean.</param>
    public Demand(double mean, double variance)
    {
        (Mean, Variance) = (mean, variance);
        Spread = mean <= 0 ? Spread.None : variance <= mean ? Spread.Poisson : Spread.NegativeBinomial;
        if (Spread == Spread.NegativeBinomial)
        {
            size = mean * mean / (variance - mean);
            ratio = (variance - mean) / variance;
        }

        if (Spread != Spread.None)
            Begin();
    }

    public static readonly Demand Nothing = new(0, 0);

    public double Mean { get; }

    public double Variance { get; }

    public Spread Spread { get; }

    /// <summary>P(D at most x); 0 below 0.</summary>
    public double AtMost(int x)
    {
        if (x < 0)
            return 0;

        if (Spread == Spread.None)
            return 1;

        while (atMost.Count <= x)
        {
            if (IsSpent)
                return 1;

            Grow();
        }

        return atMost[x];
    }

    /// <summary>P(D above x): the chance that x units do not suffice.</summary>
    public double Above(int x) => Math.Max(0, 1 - AtMost(x));

    /// <summary>The smallest x with P(D at most x) of at least p.</summary>
    /// <param name="p">Above 0 and below 1.</param>
    public int Quantile(double p)
    {
        var x = 0;
        while (AtMost(x) < p)
            x++;

        return x;
    }

    /// <summary>Whether all that is left is too little to change a sum near 1.</summary>
    private bool IsSpent => atMost.Count > Mean && atMost.Count > 0 && term * Math.Exp(log) * (1 + Variance) < 1e-19;

    private void Begin()
    {
        // The first term as one power where that neither underflows nor loses the size's digits; else by logarithms.
        var first = Spread == Spread.Poisson ? Math.Exp(-Mean) : size <= 1000 ? Math.Pow(Mean / Variance, size) : 0;
        if (first > 1e-250)
        {
            term = first;
        }
        else
        {
            term = 1;
            log = Spread == Spread.Poisson ? -Mean : -size * LogOnePlus((Variance - Mean) / Mean);
        }

        sum = term;
        atMost.Add(Sum);
    }

    private void Grow()
    {
        var x = atMost.Count;
        term *= Spread == Spread.Poisson ? Mean / x : (size + x - 1) / x * ratio;
        var more = term - lost;
        var next = sum + more;
        lost = next - sum - more;
        sum = next;
        if (sum > Rescale)
        {
            (term, sum, lost) = (term / Rescale, sum / Rescale, lost / Rescale);
            log += LogRescale;
        }

        atMost.Add(Sum);
    }

    private double Sum => Math.Min(1, log == 0 ? sum : sum * Math.Exp(log));

    /// <summary>log(1 + y) without the loss of digits for small y (Kahan's correction).</summary>
    private static double LogOnePlus(double y)
    {
        var u = 1 + y;
        return u == 1 ? y : Math.Log(u) * y / (u - 1);
    }
}
