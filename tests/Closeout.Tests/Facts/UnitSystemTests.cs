using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public class UnitSystemTests
{
    private static readonly UnitSystem Us = new(false);
    private static readonly UnitSystem Metric = new(true);

    [Fact]
    public void A_kilometre_typed_comes_back_as_the_same_kilometre() => Gen.Int[0, 3_000_000].Holds(
        km => Metric.Distance(Metric.Miles(km)).Should().Be($"{km} km"), 2000);

    [Fact]
    public void A_mile_typed_is_kept_to_the_digit() => Gen.Decimal[0, 2_000_000].Holds(miles => Us.Miles(miles).Should().Be(miles));

    [Fact]
    public void More_kilometres_typed_are_never_fewer_miles() => Gen.Select(Gen.Int[0, 999_999], Gen.Int[0, 50]).Holds(t =>
        Metric.Miles(t.Item1 + t.Item2).Should().BeGreaterThanOrEqualTo(Metric.Miles(t.Item1)));

    [Theory]
    [InlineData(0.4, "0 mi", "1 km")]
    [InlineData(0.5, "1 mi", "1 km")]
    [InlineData(1.5, "2 mi", "2 km")]      // halves go away from zero
    [InlineData(2.5, "3 mi", "4 km")]
    [InlineData(-0.5, "-1 mi", "-1 km")]
    [InlineData(1000, "1000 mi", "1609 km")]
    public void Distances_show_in_whole_units(double miles, string us, string metric)
    {
        Us.Distance((decimal)miles).Should().Be(us);
        Metric.Distance((decimal)miles).Should().Be(metric);
    }

    [Fact]
    public void Weights_and_volumes_show_in_the_screens_units()
    {
        (Us.Weight(10), Metric.Weight(10)).Should().Be(("10.0 lb", "4.5 kg"));
        (Us.Volume(2), Metric.Volume(2)).Should().Be(("2.00 cu yd", "1.53 m3"));
    }

    [Fact]
    public void Litres_typed_are_gallons_to_a_hundredth()
    {
        Metric.Gallons(40).Should().Be(10.57m);
        Us.Gallons(10.567m).Should().Be(10.567m);
    }
}
