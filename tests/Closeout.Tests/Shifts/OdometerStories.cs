using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

public class OdometerStories
{
    private static readonly Depot AtMileage = Tiny.Opened().At(Tiny.B1, Step.Mileage);

    [Fact]
    public void A_plain_reading_is_recorded_with_the_start_of_the_book()
    {
        var read = (MileageLogged)AtMileage.Accepts(new LogMileage(Tiny.B1, 1040.5m, 12.3m, "regular", Sure: true));
        read.Should().Be(new MileageLogged(Tiny.B1, Tiny.T1, 1000, 1040.5m, 12.3m, "regular", false));
        read.DistanceMi.Should().Be(40.5m);
    }

    [Theory]
    [InlineData(1000, true)]     // did not move
    [InlineData(1300, true)]     // as far as goes without a question
    [InlineData(1300.1, false)]
    [InlineData(999.9, false)]
    public void Three_hundred_miles_and_no_miles_need_no_second_look(double end, bool plain) =>
        (new LogMileage(Tiny.B1, (decimal)end).Decide(AtMileage).Refusal is null).Should().Be(plain);

    [Fact]
    public void A_reading_below_the_start_confirmed_is_recorded_as_sure_and_as_no_distance()
    {
        var read = (MileageLogged)AtMileage.Accepts(new LogMileage(Tiny.B1, 900, Sure: true));
        (read.Sure, read.DistanceMi).Should().Be((true, 0m), "nobody knows how far it went");
    }

    [Theory]
    [InlineData(0.001)]
    [InlineData(100)]
    public void Fuel_goes_from_a_drop_to_a_hundred_gallons(double gallons) =>
        ((MileageLogged)AtMileage.Accepts(new LogMileage(Tiny.B1, 1040, (decimal)gallons))).FuelGal.Should().Be((decimal)gallons);

    [Fact]
    public void A_metric_depot_is_told_kilometres()
    {
        var depot = Tiny.Opened(setup: Metric).At(Tiny.B1, Step.Mileage);
        depot.Refuses(new LogMileage(Tiny.B1, 900)).Text.Should().Contain("1448 km").And.Contain("1609 km");
        depot.Refuses(new LogMileage(Tiny.B1, 1400)).Text.Should().Contain("644 km in one day");
    }

    [Fact]
    public void The_start_typed_as_the_screen_shows_it_is_a_van_that_did_not_move()
    {
        // 1000 mi are 1609.344 km; the screen shows 1609 km, and 1609 km typed are 999.8 mi.
        var depot = Tiny.Opened(setup: Metric).At(Tiny.B1, Step.Mileage);
        var units = depot.Setup.Units;
        units.Distance(1000).Should().Be("1609 km");

        new LogMileage(Tiny.B1, units.Miles(1609)).Decide(depot).Refusal.Should().BeNull();
    }

    private static Setup Metric => Tiny.Setup with { Depot = Tiny.Settings with { Metric = true } };
}
