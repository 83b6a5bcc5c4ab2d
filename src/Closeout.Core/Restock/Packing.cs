namespace Closeout.Restock;

/// <summary>What a van is to get of an item: units given, units aboard already, and the most it may carry.</summary>
public readonly record struct Portion(int Given, int Aboard, int High);

/// <summary>How one van's portion is packed.</summary>
/// <param name="Sealed">Sealed cartons.</param>
/// <param name="Loose">Loose units, from the bin or an opened carton.</param>
/// <param name="Up">Rounded up to a whole carton beyond what was given.</param>
public readonly record struct Packed(int Sealed, int Loose, bool Up);

/// <summary>Cartons opened at the depot, and every van's packing, in bay order.</summary>
public sealed record PackingPlan(int Opened, IReadOnlyList<Packed> Vans);

/// <summary>
/// Chooses cartons and loose units: fewest cartons opened; then most loose units handed out; then fewest vans rounded up;
/// then the lexicographically largest loose units in bay order. Exact.
/// </summary>
/// <remarks>
/// Write f = given / c, r = given % c. With a set of vans rounded up and J cartons' worth handed out loose by the others,
/// loose units are (sum of r of the others) + c * J, and sealed cartons (sum of all f) + (vans rounded up) - J, whichever
/// vans the J fall on. So of a set only its size, its sum of r and its sum of f matter: a dynamic programme over
/// (van, sum of r) that keeps the pairs (size, sum of f) which no other betters. See docs/methods.md.
/// </remarks>
public static class Packing
{
    /// <param name="vans">Portions in bay order; together no more than bin + shelf * c.</param>
    /// <param name="unitsPerCarton">c, at least 1.</param>
    /// <param name="bin">Loose units at the depot.</param>
    /// <param name="shelf">Sealed cartons at the depot.</param>
    /// <exception cref="InvalidOperationException">More was given than there is.</exception>
    public static PackingPlan Pack(IReadOnlyList<Portion> vans, int unitsPerCarton, int bin, int shelf)
    {
        var choice = new CartonChoice(vans, unitsPerCarton);
        for (var opened = choice.LeastOpened(bin); opened <= shelf; opened++)
        {
            if (choice.Best(bin + (long)opened * unitsPerCarton, shelf - opened) is { } packed)
                return new(opened, packed);
        }

        throw new InvalidOperationException(
            $"{vans.Sum(v => v.Given)} units were given of {bin} loose and {shelf} cartons of {unitsPerCarton}");
    }
}
