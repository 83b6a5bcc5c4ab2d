using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Vans;
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

    /// <summary>The median and six spreads, a spread of 10 mi at least, and in any case twice the median: our own rule.</summary>
    [Theory]
    [InlineData(40, 0, 100)]
    [InlineData(40, 20, 160)]
    [InlineData(200, 0, 400)]
    [InlineData(200, 40, 440)]
    public void How_far_is_far_follows_the_vans_own_days(int median, int spread, int far) =>
        new DrivingHabit(median, spread, DrivingHabit.LeastDays).FarMi.Should().Be(far);

    /// <summary>1019 below a start of 1030 may be 1109 or 1091: whichever is nearer to what the van usually does.</summary>
    [Theory]
    [InlineData(40, 1091)]
    [InlineData(80, 1109)]
    public void Of_two_readings_that_swapped_digits_may_have_meant_the_one_nearest_to_the_usual_day_is_offered(int usual, int meant)
    {
        var driven = Enumerable.Range(1, DrivingHabit.LeastDays).Select(d => new DrivenDay(Tiny.Wednesday.AddDays(-d), 0, usual, null)).Reverse().ToList();
        var depot = Tiny.Opened(carried: v => v with { OdometerMi = 1030, Driven = driven }).At(Tiny.B1, Step.Mileage);

        depot.Refuses(new LogMileage(Tiny.B1, 1019)).Should().Match<Refusal>(r => r.Code == "odometer-below-start" && r.InsteadMi == meant);
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

    [Fact]
    public void A_lead_corrects_a_wrong_start_and_the_day_is_counted_from_there()
    {
        var depot = Tiny.Opened().Did(new CorrectOdometer(Tiny.B1, 11_000, "read wrong last night", Tiny.Lead, Sure: true)).At(Tiny.B1, Step.Mileage);

        ((MileageLogged)depot.Accepts(new LogMileage(Tiny.B1, 11_040))).DistanceMi.Should().Be(40);
    }

    [Fact]
    public void Several_doubts_are_one_question()
    {
        var depot = Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers)
            .Did(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 2, 0, 0)).At(Tiny.B1, Step.Mileage);

        var doubt = depot.Refuses(new LogMileage(Tiny.B1, 1000, 5, "diesel"));
        doubt.Should().Match<Refusal>(r => r.AskAgain && r.Code == "used-not-driven" && r.Text.Contains("5 units were used") && r.Text.Contains("not diesel"));
        ((MileageLogged)depot.Accepts(new LogMileage(Tiny.B1, 1000, 5, "diesel", Sure: true))).Sure.Should().BeFalse("the reading itself is not odd");
    }

    [Fact]
    public void No_fuel_is_0() =>
        ((MileageLogged)Tiny.Opened().At(Tiny.B1, Step.Mileage).Accepts(new LogMileage(Tiny.B1, 1040, 0))).FuelGal.Should().BeNull();

    private static Setup Metric => Tiny.Setup with { Depot = Tiny.Settings with { Metric = true } };
}
