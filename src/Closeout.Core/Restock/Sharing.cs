namespace Closeout.Restock;

/// <summary>A van's claim on an item that is short.</summary>
/// <param name="Need">Units it lacks.</param>
/// <param name="Aboard">Units it has.</param>
/// <param name="Above">P(D above x): the chance that x units aboard do not suffice.</param>
public sealed record Claim(int Need, int Aboard, Func<int, double> Above);

/// <summary>Who gets what when the depot is short of an item.</summary>
public static class Sharing
{
    /// <summary>Chances within this of each other are a tie, which goes to the smaller bay.</summary>
    public const double Tie = 1e-12;

    /// <summary>
    /// Gives the supply unit by unit, each to the van with the largest chance of missing it. That makes the expected units
    /// missed, the sum over vans of E[(D - aboard - given)+], as small as it can be: the sum is separable and convex, so
    /// marginal allocation is optimal (Fox 1966; Gross 1956).
    /// </summary>
    /// <param name="claims">In bay order.</param>
    /// <param name="supply">Units at the depot: the bin and all cartons on the shelf.</param>
    /// <returns>Units given to each van: never above its need, never above supply in all.</returns>
    public static int[] ByChance(IReadOnlyList<Claim> claims, long supply)
    {
        var given = new int[claims.Count];
        if (claims.Sum(c => (long)c.Need) <= supply)
            return [.. claims.Select(c => c.Need)];

        var chances = new double[claims.Count];
        for (var v = 0; v < chances.Length; v++)
            chances[v] = claims[v].Need > 0 ? claims[v].Above(claims[v].Aboard) : Nobody;

        for (var left = Math.Max(0, supply); left > 0; left--)
        {
            var v = First(chances);
            given[v]++;
            chances[v] = given[v] < claims[v].Need ? claims[v].Above(claims[v].Aboard + given[v]) : Nobody;
        }

        return given;
    }

    /// <summary>Below every chance: the van needs no more.</summary>
    private const double Nobody = double.NegativeInfinity;

    private static int First(double[] chances)
    {
        var largest = Nobody;
        foreach (var chance in chances)
            largest = chance > largest ? chance : largest;

        var v = 0;
        while (chances[v] < largest - Tie)
            v++;

        return v;
    }
}
