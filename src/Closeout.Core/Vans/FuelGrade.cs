namespace Closeout.Vans;

/// <summary>How a grade filled stands to what a van takes.</summary>
public enum FuelMatch
{
    /// <summary>The same, a better one, or nobody said.</summary>
    Fits,

    /// <summary>A lower grade of the same fuel, or a word that is not known and not the van's own: looked at once more.</summary>
    Doubtful,

    /// <summary>Another fuel: the engine must not be started.</summary>
    OtherFuel,
}

/// <summary>Compares what was filled with what a van takes, in the words of pumps and slips.</summary>
/// <remarks>
/// Common practice: petrol is sold by octane (regular 87, midgrade 89, premium 91 and up); a higher grade does no harm; a flex-fuel van
/// takes petrol too.
/// </remarks>
public static class FuelGrade
{
    private enum Fuel
    {
        Petrol,
        Diesel,
        Flex,
        Cng,
        Lpg,
        Electric,
    }

    private static readonly Dictionary<string, (Fuel Fuel, int Grade)> Words = new(StringComparer.OrdinalIgnoreCase)
    {
        ["petrol"] = (Fuel.Petrol, 0), ["gasoline"] = (Fuel.Petrol, 0), ["gas"] = (Fuel.Petrol, 0), ["unleaded"] = (Fuel.Petrol, 0),
        ["e10"] = (Fuel.Petrol, 0), ["e15"] = (Fuel.Petrol, 0),
        ["regular"] = (Fuel.Petrol, 1), ["midgrade"] = (Fuel.Petrol, 2), ["mid"] = (Fuel.Petrol, 2), ["plus"] = (Fuel.Petrol, 2),
        ["premium"] = (Fuel.Petrol, 3), ["super"] = (Fuel.Petrol, 3),
        ["diesel"] = (Fuel.Diesel, 0), ["biodiesel"] = (Fuel.Diesel, 0), ["ulsd"] = (Fuel.Diesel, 0), ["b5"] = (Fuel.Diesel, 0),
        ["b20"] = (Fuel.Diesel, 0),
        ["e85"] = (Fuel.Flex, 0), ["flex"] = (Fuel.Flex, 0), ["cng"] = (Fuel.Cng, 0), ["lpg"] = (Fuel.Lpg, 0), ["propane"] = (Fuel.Lpg, 0),
        ["electric"] = (Fuel.Electric, 0), ["ev"] = (Fuel.Electric, 0),
    };

    /// <param name="takes">What the van takes; empty: nobody said.</param>
    /// <param name="filled">What was filled; empty or null: nobody said.</param>
    public static FuelMatch Of(string takes, string? filled)
    {
        if (takes.Trim().Length == 0 || filled is null || filled.Trim().Length == 0
            || string.Equals(takes.Trim(), filled.Trim(), StringComparison.OrdinalIgnoreCase))
        {
            return FuelMatch.Fits;
        }

        return (Read(takes), Read(filled)) switch
        {
            (null, _) or (_, null) => FuelMatch.Doubtful,
            ({ Fuel: Fuel.Flex }, { Fuel: Fuel.Petrol }) => FuelMatch.Fits,
            ({ } van, { } pump) when van.Fuel != pump.Fuel => FuelMatch.OtherFuel,
            ({ } van, { } pump) => van.Grade > 0 && pump.Grade > 0 && pump.Grade < van.Grade ? FuelMatch.Doubtful : FuelMatch.Fits,
        };
    }

    /// <summary>The first word that says a fuel; an octane number is petrol of its grade.</summary>
    private static (Fuel Fuel, int Grade)? Read(string text)
    {
        foreach (var word in text.Split([' ', ',', '/', '(', ')'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Words.TryGetValue(word, out var known))
                return known;

            if (int.TryParse(word, out var octane) && octane is >= 85 and <= 100)
                return (Fuel.Petrol, octane < 89 ? 1 : octane < 91 ? 2 : 3);
        }

        return null;
    }
}
