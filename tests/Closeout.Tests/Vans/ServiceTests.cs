using Closeout.Facts;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

public class ServiceTests
{
    private static readonly UnitSystem Us = new(false);

    /// <summary>Due at 6000 mi and on 2027-04-01.</summary>
    private static readonly Service Due = Service.Of(Tiny.Van("B1", 1, "Avocet", 1000));

    [Fact]
    public void Due_is_so_many_miles_and_months_after_the_last() => Due.Should().Be(new Service(6000, new DateOnly(2027, 4, 1)));

    [Theory]
    [InlineData(2026, 8, 31, 6, 2027, 2, 28)]     // February has no 31st
    [InlineData(2027, 8, 31, 6, 2028, 2, 29)]     // in a leap year one day more
    [InlineData(2026, 1, 31, 1, 2026, 2, 28)]
    [InlineData(2026, 2, 28, 6, 2026, 8, 28)]     // and it does not stretch back
    public void A_month_that_is_too_short_ends_it_on_its_last_day(int y, int m, int d, int months, int dueY, int dueM, int dueD) =>
        Service.Of(Tiny.Van("B1", 1, "Avocet", 0) with { LastServiceOn = new(y, m, d), ServiceEveryMonths = months }).DueOn.Should().Be(new DateOnly(dueY, dueM, dueD));

    [Fact]
    public void No_interval_no_service()
    {
        var none = Service.Of(Tiny.Van("B1", 1, "Avocet", 1000) with { ServiceEveryMi = 0, ServiceEveryMonths = 0 });
        none.Should().Be(new Service(null, null));
        none.Note(1_999_999, DateOnly.MaxValue, Us).Should().BeNull();
    }

    [Theory]
    [InlineData(5499, "2027-01-01", null)]
    [InlineData(5499.9, "2027-03-17", null)]                             // 500.1 mi and 15 days before
    [InlineData(5500, "2027-01-01", "service in 500 mi")]
    [InlineData(6000, "2027-01-01", "service in 0 mi")]                  // due, not overdue
    [InlineData(6001, "2027-01-01", "service overdue by 1 mi")]
    [InlineData(1000, "2027-03-18", "service by 2027-04-01")]            // 14 days before
    [InlineData(1000, "2027-04-01", "service by 2027-04-01")]            // on the day
    [InlineData(1000, "2027-04-02", "service overdue since 2027-04-01")]
    [InlineData(5800, "2027-04-02", "service overdue since 2027-04-01")] // overdue speaks before nearly due
    [InlineData(6100, "2027-03-20", "service overdue by 100 mi")]
    [InlineData(6100, "2027-05-01", "service overdue by 100 mi")]
    [InlineData(5800, "2027-03-20", "service in 200 mi")]
    public void Whichever_comes_first_is_said(double odometerMi, string today, string? note) =>
        Due.Note((decimal)odometerMi, DateOnly.Parse(today), Us).Should().Be(note);

    /// <summary>Due at 6000 mi, and not by date.</summary>
    [Theory]
    [InlineData(1000, 50.0, "2027-02-26")]       // 5000 mi at 50 a day: 100 days
    [InlineData(1000, 49.9, "2027-02-27")]       // a part of a day counts as one
    [InlineData(6000, 50.0, "2026-11-18")]       // now
    [InlineData(6001, 50.0, "2026-11-18")]
    [InlineData(1000, null, null)]               // no pace: nobody can say
    [InlineData(1000, 0.0, null)]
    [InlineData(1000, 1.3, null)]                // beyond ten years
    [InlineData(5999.9, 1e-28, null)]
    public void By_distance_it_is_expected_at_the_vans_own_pace(double odometerMi, double? paceMi, string? on) =>
        (Due with { DueOn = null }).Expected((decimal)odometerMi, Tiny.Wednesday, (decimal?)paceMi).Should().Be(on is null ? null : DateOnly.Parse(on));

    [Theory]
    [InlineData(100.0, "2027-01-07")]            // by distance first
    [InlineData(30.0, "2027-04-01")]             // by date first
    [InlineData(1e-28, "2027-04-01")]
    [InlineData(null, "2027-04-01")]
    public void Expected_is_whichever_comes_first(double? paceMi, string on) =>
        Due.Expected(1000, Tiny.Wednesday, (decimal?)paceMi).Should().Be(DateOnly.Parse(on));

    [Fact]
    public void A_metric_depot_reads_kilometres() => Due.Note(5500, Tiny.Wednesday, new UnitSystem(true)).Should().Be("service in 805 km");
}
