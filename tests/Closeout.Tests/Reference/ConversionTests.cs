using Closeout.Cardboard;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// NIST Special Publication 811, Guide for the Use of the SI, 2008, Appendix B, seen as reproduced (mdarc.org, metric
/// conversions), and the tables named. Exact values by the definitions in hgrecco/pint, pint/default_en.txt, seen.
/// </summary>
public class ConversionTests
{
    private static readonly UnitSystem Metric = new(true);

    /// <summary>
    /// Mile 1.609344 km, exact. Another table prints 1.609347 (brassmein.com/tech/tech003): that is the US survey mile, not an
    /// odometer's.
    /// </summary>
    /// <remarks>At two million miles the two differ by six kilometres.</remarks>
    [Fact]
    public void A_mile_is_1_609344_kilometres()
    {
        UnitSystem.KmPerMile.Should().Be(1.609344m);
        Metric.Distance(2_000_000).Should().Be("3218688 km", "the survey mile would make 3218694 of them");
    }

    /// <summary>
    /// US gallon 3.785412 L by SP 811; exact 3.785411784 (231 cubic inches). Handouts with 3.785306 and 3.7853 contradict it.
    /// </summary>
    [Fact]
    public void A_gallon_is_3_785412_litres()
    {
        UnitSystem.LitresPerGallon.Should().Be(3.785412m);
        Metric.Fuel(10_000).Should().Be("37854.1", "the handouts would make 37853.1 or 37853 of it");
    }

    /// <summary>
    /// Pound 0.45359237 kg, exact, and short ton 907.18474 kg: Upper Canada District School Board, Conversion Factors
    /// (www2.ucdsb.on.ca), seen.
    /// </summary>
    [Fact]
    public void A_pound_is_0_45359237_kilograms_and_two_thousand_are_a_short_ton()
    {
        UnitSystem.KgPerPound.Should().Be(0.45359237);
        (GreenhouseGas.LbPerShortTon * UnitSystem.KgPerPound).Should().BeApproximately(907.18474, 1e-9);
        Metric.Weight(2000).Should().Be("907.2 kg");
    }

    /// <summary>
    /// Cubic yard 0.7645549 m3: brassmein.com/tech/tech003, seen; US Navy, SI appendix, navalfacilities.tpub.com, seen, prints
    /// 0.764555.
    /// </summary>
    [Fact]
    public void A_cubic_yard_is_0_7645549_cubic_metres()
    {
        UnitSystem.CubicMetresPerCubicYard.Should().Be(0.7645549);
        Metric.Volume(10_000).Should().Be("7645.55 m3");
    }

    /// <summary>Worked entry of a mileage log, taxabletalk.com/?p=7560, 2015, seen: 40315 to 40350 are 35 miles.</summary>
    [Fact]
    public void From_40315_to_40350_is_35_miles() =>
        new MileageLogged(Tiny.B1, Tiny.T1, 40315, 40350, null, null, false).DistanceMi.Should().Be(35);
}
