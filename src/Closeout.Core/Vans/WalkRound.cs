namespace Closeout.Vans;

/// <summary>What is looked at on the weekly walk-around, part by part.</summary>
/// <remarks>
/// A model list after the parts that 49 CFR 396.11(a)(1) names for driver reports: brakes, lighting devices, tires, wipers,
/// mirrors, emergency equipment. Most service vans are below the weight at which that rule binds (10,001 lb, 49 CFR 390.5),
/// so it is a list to look by, not a duty; local rules and the maker's instructions come first. Brakes are judged as felt on
/// the road today: nobody works on them here.
/// </remarks>
public static class WalkRound
{
    public static readonly IReadOnlyList<string> Parts =
        [Later("lights"), Later("tires"), Later("glass"), Later("brake feel"), Later("mirrors"), Later("wipers"), Later("leaks"),
            Later("doors"), Later("ladder rack"), Later("load secured")];

    /// <summary>What books and files of before 30 November 2026 call them.</summary>
    private static readonly Dictionary<string, string> Before = new(StringComparer.OrdinalIgnoreCase)
    {
        ["tyres"] = "tires", ["brakes as felt"] = "brake feel", ["fluids seen"] = "leaks",
    };

    /// <summary>The part of that name, whatever its case; null: none.</summary>
    public static string? Find(string name) =>
        Before.GetValueOrDefault(name.Trim())
        ?? Parts.FirstOrDefault(p => string.Equals(p, name.Trim(), StringComparison.OrdinalIgnoreCase));
}
