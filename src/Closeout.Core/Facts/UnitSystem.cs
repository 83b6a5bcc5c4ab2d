using System.Globalization;

namespace Closeout.Facts;

/// <summary>
/// How a depot reads its quantities on screens. Inside and in files there is one unit for each: miles, US gallons, pounds, cubic yards.
/// </summary>
/// <remarks>Factors: NIST SP 811 (2008), Appendix B.</remarks>
public sealed record UnitSystem(bool Metric)
{
    public const decimal KmPerMile = 1.609344m;
    public const decimal LitresPerGallon = 3.785412m;
    public const double KgPerPound = 0.45359237;
    public const double CubicMetresPerCubicYard = 0.7645549;

    public string DistanceUnit => Metric ? "km" : "mi";

    public string FuelUnit => Metric ? "L" : "gal";

    /// <summary>A distance or a reading in miles, as whole units of the screen.</summary>
    public string Distance(decimal miles) => Whole(Metric ? miles * KmPerMile : miles) + " " + DistanceUnit;

    /// <summary>A reading typed on the screen, in miles to a tenth: a kilometre typed comes back as the same kilometre.</summary>
    public decimal Miles(decimal typed) => Metric ? Math.Round(typed / KmPerMile, 1) : typed;

    /// <summary>Fuel typed on the screen, in US gallons to a hundredth.</summary>
    public decimal Gallons(decimal typed) => Metric ? Math.Round(typed / LitresPerGallon, 2) : typed;

    /// <summary>Fuel in US gallons, as the screen's number.</summary>
    public string Fuel(decimal gallons) =>
        (Metric ? Math.Round(gallons * LitresPerGallon, 1) : gallons).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>Miles a US gallon as the screen's economy: mpg, or litres on 100 km.</summary>
    public string Economy(decimal milesPerGallon) => Metric
        ? (100 * LitresPerGallon / (milesPerGallon * KmPerMile)).ToString("0.0", CultureInfo.InvariantCulture) + " L/100 km"
        : milesPerGallon.ToString("0.0", CultureInfo.InvariantCulture) + " mpg";

    public string WeightUnit => Metric ? "kg" : "lb";

    /// <summary>Pounds as the screen's number.</summary>
    public string Amount(decimal pounds) =>
        (Metric ? Math.Round(pounds * (decimal)KgPerPound, 1) : pounds).ToString("0.##", CultureInfo.InvariantCulture);

    /// <summary>A weight typed on the screen, in pounds to a hundredth.</summary>
    public decimal Pounds(decimal typed) => Metric ? Math.Round(typed / (decimal)KgPerPound, 2) : typed;

    public string Weight(double pounds) => Metric
        ? (pounds * KgPerPound).ToString("0.0", CultureInfo.InvariantCulture) + " kg"
        : pounds.ToString("0.0", CultureInfo.InvariantCulture) + " lb";

    public string Volume(double cubicYards) => Metric
        ? (cubicYards * CubicMetresPerCubicYard).ToString("0.00", CultureInfo.InvariantCulture) + " m3"
        : cubicYards.ToString("0.00", CultureInfo.InvariantCulture) + " cu yd";

    private static string Whole(decimal number) =>
        Math.Round(number, 0, MidpointRounding.AwayFromZero).ToString("0", CultureInfo.InvariantCulture);
}
