using Closeout.Facts;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>Miles a gallon over several stretches: a harmonic mean, as published examples have it.</summary>
public sealed class FuelEconomyReferenceTests
{
    /// <summary>
    /// Worked example at forums.speedlife.net/t/54-5-mpgs-by-2025/259691/39, seen: 20 and 100 mpg over equal distances are
    /// 33.33.
    /// </summary>
    [Fact]
    public void Twenty_and_a_hundred_over_equal_distances_are_33_33() => Over((300, 20), (300, 100)).MilesPerGallon.Should().BeApproximately(33.33m, 0.005m);

    /// <summary>
    /// An encyclopedia's text on how a fleet's average is reckoned, seen quoted at ecomodder.com/forum/103815-post18.html: 15,
    /// 13, 17 and 100 mpg are "slightly less than 19"; exactly 18.8312.
    /// </summary>
    [Fact]
    public void A_fleet_of_15_13_17_and_100_is_slightly_less_than_19() =>
        Over((100, 15), (100, 13), (100, 17), (100, 100)).MilesPerGallon.Should().BeApproximately(18.8312m, 0.00005m).And.BeInRange(18.5m, 19m);

    /// <summary>
    /// EPA combines city and highway harmonically, 0.55 and 0.45: 40 CFR 600.206-86(a)(3), seen. The 27.7 and 36.9 of its
    /// sample, 40 CFR part 600, Appendix II (a), were seen; that they combine to 31.2 was derived here, not seen.
    /// </summary>
    [Fact]
    public void City_27_7_and_highway_36_9_combine_to_31_2()
    {
        var combined = Over((55, 27.7m), (45, 36.9m)).MilesPerGallon;
        combined.Should().BeApproximately(1 / (0.55m / 27.7m + 0.45m / 36.9m), 0.0001m);
        Math.Round(combined, 1).Should().Be(31.2m);
    }

    /// <summary>Why not the arithmetic mean: 60 mpg would promise 600 miles on 10 gallons, and 18 were burnt.</summary>
    [Fact]
    public void The_arithmetic_mean_promises_fuel_that_is_not_there()
    {
        var economy = Over((300, 20), (300, 100));
        economy.Gal.Should().Be(18);
        (economy.Mi / ((20 + 100) / 2m)).Should().Be(10);
        economy.MilesPerGallon.Should().BeLessThan((20 + 100) / 2m);
        economy.GallonsPer100Miles.Should().Be(3);
    }

    /// <summary>
    /// From fill to fill: what was in the tank before the first fill is nobody's business, and days between count with their
    /// miles.
    /// </summary>
    [Fact]
    public void The_first_fill_only_begins_the_count()
    {
        var days = new[] { Day(1, 0, 500, 40), Day(2, 500, 600, null), Day(3, 600, 700, 10), Day(4, 700, 790, null) };
        FuelEconomy.Of(days).Should().Be(new FuelEconomy(200, 10, 1));
        FuelEconomy.Of(days[..2]).Should().BeNull();
        FuelEconomy.Of([Day(1, 100, 100, 5), Day(2, 100, 100, 5)]).Should().BeNull("it was not driven between");
    }

    /// <summary>Three fills: common practice, partial fills even out over several only. No rule says how many.</summary>
    [Fact]
    public void Few_fills_are_said_to_be_few_and_kilometres_are_read_as_litres()
    {
        Over((300, 20), (300, 20)).Words(new UnitSystem(false)).Should().StartWith("20.0 mpg over 2 fills, too few to trust; true only when");
        Over((300, 20), (300, 20), (300, 20)).Words(new UnitSystem(false)).Should().StartWith("20.0 mpg over 3 fills; true only when");

        // 235.215 / mpg is litres on 100 km, from memory: 3.785411784 x 100 / 1.609344.
        Over((300, 20)).Words(new UnitSystem(true)).Should().StartWith("11.8 L/100 km over 1 fill, too few to trust");
    }

    /// <summary>A fill, then a stretch at each economy, ended by a fill.</summary>
    private static FuelEconomy Over(params (decimal Mi, decimal Mpg)[] stretches)
    {
        var days = new List<DrivenDay> { Day(1, 900, 1000, 12) };
        foreach (var (mi, mpg) in stretches)
        {
            days.Add(Day(days.Count + 1, days[^1].EndMi, days[^1].EndMi + mi, mi / mpg));
        }

        return FuelEconomy.Of(days)!;
    }

    private static DrivenDay Day(int day, decimal start, decimal end, decimal? gal) => new(Tiny.Monday.AddDays(day), start, end, gal);
}
