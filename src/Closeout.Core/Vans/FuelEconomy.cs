namespace Closeout.Vans;

/// <summary>What a van does on its fuel, from fill to fill.</summary>
/// <param name="Mi">Miles between the first and the last fill.</param>
/// <param name="Gal">US gallons of all fills but the first: what those miles took.</param>
/// <param name="Fills">Stretches from one fill to the next.</param>
/// <remarks>
/// Distance over fuel, which is the harmonic mean of the stretches weighted by their distance; an arithmetic mean would be
/// too high (40 CFR 600.206 averages harmonically for the same reason). A stretch is true only when both fills
/// ended at the same level: partial fills shift fuel from one stretch to the next, and only over many do they even out.
/// </remarks>
public sealed record FuelEconomy(decimal Mi, decimal Gal, int Fills)
{
    /// <summary>Fewer stretches than this are shown as a first impression.</summary>
    public const int FewFills = 3;

    /// <summary>Miles a US gallon.</summary>
    public decimal MilesPerGallon => Mi / Gal;

    /// <summary>US gallons in 100 miles.</summary>
    public decimal GallonsPer100Miles => 100 * Gal / Mi;

    /// <summary>
    /// The van's economy over the days that the book knows; null: fewer than two fills, or not a mile or no fuel to speak of between.
    /// </summary>
    public static FuelEconomy? Of(Depot depot, Code<Van> van) => Of(DrivingHabit.Known(depot, van));

    /// <summary>The economy over days in their order.</summary>
    public static FuelEconomy? Of(IReadOnlyList<DrivenDay> days)
    {
        var fills = days.Where(d => d.FuelGal > 0).ToList();
        if (fills.Count < 2)
            return null;

        var (mi, gal) = (fills[^1].EndMi - fills[0].EndMi, fills.Skip(1).Sum(f => f.FuelGal!.Value));
        return mi >= 1 && gal >= 0.001m ? new(mi, gal, fills.Count - 1) : null;
    }

    /// <summary>The figure with its caution.</summary>
    public string Words(UnitSystem units) =>
        T($"{units.Economy(MilesPerGallon)} over {Fills} {(Fills == 1 ? T("fill") : T("fills"))}")
        + (Fills < FewFills ? T(", too few to trust") : "") + T("; true only when every fill reached the same level");
}
