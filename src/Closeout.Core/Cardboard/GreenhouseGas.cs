namespace Closeout.Cardboard;

/// <summary>What recycling the cardboard stands for in greenhouse gas, by the depot's own factor.</summary>
/// <remarks>
/// There is no default. An inventory factor is a small burden, an avoided-emissions factor a credit: they have opposite
/// signs and must never be mixed, so the words say which it is, and the factor's source stands beside the figure.
/// </remarks>
public static class GreenhouseGas
{
    /// <summary>Pounds in a short ton, exactly.</summary>
    public const double LbPerShortTon = 2000;

    /// <summary>Metric tons of CO2 equivalent; negative: a credit. Null: the depot gave no factor with a source.</summary>
    public static double? Tons(DepotSettings depot, double weightLb) =>
        depot is { GhgFactor: { } factor, GhgFactorSource: { Length: > 0 } } ? weightLb / LbPerShortTon * factor : null;

    /// <summary>The figure with its kind, factor and source; null: there is none.</summary>
    public static string? Words(DepotSettings depot, double weightLb) => Tons(depot, weightLb) is { } tons
        ? T($"{Math.Abs(tons):0.0000} t CO2e {Kind(depot)}, at {depot.GhgFactor:0.##} t a short ton: {depot.GhgFactorSource}")
        : null;

    /// <summary>Which kind of factor it is, by its sign.</summary>
    public static string Kind(DepotSettings depot) => depot.GhgFactor < 0 ? T("avoided (a credit)") : T("emitted (a burden)");
}
