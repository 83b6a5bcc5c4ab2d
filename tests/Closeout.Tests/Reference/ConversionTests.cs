using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>NIST SP 811 (2008), Appendix B, as reproduced in the tables named; VERIFIED unless said.</summary>
public class ConversionTests
{
    private const decimal CmPerInch = 2.54m;   // NIST SP 811 Appendix B, inch 25.4 mm, exact

    /// <summary>Mile 1.609344 km, exact. A structural handout prints 1.609347: that is the US survey mile, not an odometer's.</summary>
    [Fact]
    public void A_mile_is_1_609344_kilometres()
    {
        UnitSystem.KmPerMile.Should().Be(1.609344m).And.Be(5280 * 12 * CmPerInch / 100_000);
        UnitSystem.KmPerMile.Should().NotBe(1.609347m);
    }

    /// <summary>US gallon 3.785412 L by SP 811; exact 3.785411784 (231 cubic inches). Handouts with 3.785306 and 3.7853 contradict it.</summary>
    [Fact]
    public void A_gallon_is_3_785412_litres()
    {
        UnitSystem.LitresPerGallon.Should().Be(3.785412m);
        Math.Round(231 * CmPerInch * CmPerInch * CmPerInch / 1000, 6).Should().Be(UnitSystem.LitresPerGallon);
    }

    /// <summary>Pound 0.45359237 kg, exact (conversion tables of a college and a school board); short ton 907.18474 kg from the same.</summary>
    [Fact]
    public void A_pound_is_0_45359237_kilograms_and_two_thousand_are_a_short_ton()
    {
        UnitSystem.KgPerPound.Should().Be(0.45359237);
        (2000 * UnitSystem.KgPerPound).Should().BeApproximately(907.18474, 1e-9);
    }

    /// <summary>Cubic yard 0.7645549 m3 (conversion tables; a Navy SI appendix prints 0.764555); cubic foot 0.02831685 m3 by SP 811.</summary>
    [Fact]
    public void A_cubic_yard_is_0_7645549_cubic_metres()
    {
        UnitSystem.CubicMetresPerCubicYard.Should().Be(0.7645549);
        (27 * 0.02831685).Should().BeApproximately(UnitSystem.CubicMetresPerCubicYard, 1e-7);
    }

    /// <summary>Pound per square foot 4.8824 kg/m2 (conversion table): 1 lb/MSF = 4.8824 g/m2. Exactly 0.45359237 kg / 92.90304 m2.</summary>
    [Fact]
    public void A_pound_per_thousand_square_feet_is_4_8824_grams_per_square_metre() =>
        (UnitSystem.KgPerPound * 1000 / 92.90304).Should().BeApproximately(4.8824, 0.00005);

    /// <summary>Box makers' question column (AICC), 2018: 230 g = 47.13 and 140 g = 28.68 lb/MSF by its divisor 4.88; the exact one gives 47.11 and 28.67.</summary>
    [Theory]
    [InlineData(230, 47.13)]
    [InlineData(140, 28.68)]
    public void The_trades_divisor_of_4_88_is_good_to_a_part_in_a_thousand(double grams, double lbPerMsf)
    {
        (grams / 4.88).Should().BeApproximately(lbPerMsf, 0.01);
        (grams / (UnitSystem.KgPerPound * 1000 / 92.90304)).Should().BeApproximately(lbPerMsf, lbPerMsf * 0.001);
    }

    /// <summary>Worked entry of a mileage log, tax practitioner's page, 2015, VERIFIED: 40315 to 40350 are 35 miles.</summary>
    [Fact]
    public void From_40315_to_40350_is_35_miles() =>
        new MileageLogged(Tiny.B1, Tiny.T1, 40315, 40350, null, null, false).DistanceMi.Should().Be(35);
}
