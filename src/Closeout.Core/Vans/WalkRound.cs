namespace Closeout.Vans;

/// <summary>What is looked at on the weekly walk-round, part by part.</summary>
/// <remarks>
/// A model list after the parts that 49 CFR 396.11(a)(1) names for driver reports: brakes, lighting devices, tyres, wipers,
/// mirrors, emergency equipment. Most service vans are below the weight at which that rule binds (10,001 lb, 49 CFR 390.5),
/// so it is a list to look by, not a duty; local rules and the maker's instructions come first. Brakes are judged as felt on
/// the road today: nobody works on them here.
/// </remarks>
public static class WalkRound
{
    public static readonly IReadOnlyList<string> Parts =
        ["lights", "tyres", "glass", "brakes as felt", "mirrors", "wipers", "fluids seen", "doors", "ladder rack", "load secured"];

    /// <summary>The part of that name, whatever its case; null: none.</summary>
    public static string? Find(string name) => Parts.FirstOrDefault(p => string.Equals(p, name.Trim(), StringComparison.OrdinalIgnoreCase));
}
