using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>A van's day without visit reports, told by its close-out: one visit of kind day.</summary>
public class CountedDayTests
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly DateOnly Tomorrow = Tiny.Wednesday.AddDays(1);

    /// <summary>B1 went out with 20 and 5 lamps, came back with a carton and 3 loose, put 2 into the bin: used 25 - 15 = 10.</summary>
    private static Depot Evening(Step until = Step.Closed) => Tiny.Opened("B1: 2+5 LAMP; B2: 1+0 LAMP")
        .At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 1, 2, 3, Sure: true)).At(Tiny.B1, until);

    [Fact]
    public void A_signed_close_out_tells_what_the_day_used() => Day(Evening()).Should().Be(new VisitUse(1, 10, 0));

    [Fact]
    public void One_that_is_not_signed_tells_nothing() => Day(Evening(until: Step.SignOff)).Should().Be(default(VisitUse));

    // Two days: 10 and 0. m = 5, s2 = (100 - 2 * 5 * 10 + 2 * 25) / 2 = 25.
    [Fact]
    public void A_day_that_used_nothing_counts_too() => Day(Evening().At(Tiny.B2, Step.Closed)).Should().Be(new VisitUse(2, 5, 25));

    [Fact]
    public void A_van_with_visit_reports_is_not_counted_a_second_time()
    {
        var told = Evening().Planned(p => p with { Use = [Reported(10)], ByVan = p.ByVan.Add((Tiny.Wednesday, Tiny.B1), new(Tiny.Wednesday, Tiny.B1, [new(Lamp, 10)], [])) });
        Day(told).Should().Be(default(VisitUse));
        VisitHistory.Of(told).UseOf(new("HOME"), Lamp).Should().Be(new VisitUse(1, 10, 0));
    }

    [Fact]
    public void The_next_pages_remember_the_day_for_sixty_days()
    {
        Day(Open(NextPage.After(Evening(), Tomorrow))).Should().Be(new VisitUse(1, 10, 0));
        Day(Open(NextPage.After(Evening(), Tiny.Wednesday.AddDays(59)))).Should().Be(new VisitUse(1, 10, 0));
        Day(Open(NextPage.After(Evening(), Tiny.Wednesday.AddDays(60)))).Should().Be(default(VisitUse));
    }

    [Fact]
    public void Reports_loaded_later_for_the_same_day_take_its_place()
    {
        var loaded = Open(NextPage.After(Evening(), Tomorrow)).Take(Loaded(Tiny.Wednesday, Reported(9)));
        Day(loaded).Should().Be(default(VisitUse));
        VisitHistory.Of(loaded).UseOf(new("HOME"), Lamp).Should().Be(new VisitUse(1, 9, 0));
    }

    [Fact]
    public void Reports_loaded_with_the_next_date_take_the_place_of_what_was_counted_tonight()
    {
        var given = new DayGiven(
            Tomorrow, Tiny.Setup, [], GivenBookings.None, new([Tiny.Wednesday], [Reported(9)], [], [new(Tiny.Wednesday, Tiny.B1)], []), null, []);
        var loaded = Open(Loading.NextPageWith(Evening(), given));
        Day(loaded).Should().Be(default(VisitUse));
        VisitHistory.Of(loaded).UseOf(new("HOME"), Lamp).Should().Be(new VisitUse(1, 9, 0));
    }

    [Fact]
    public void Reports_of_another_day_leave_it()
    {
        var monday = Reported(9) with { Date = Tiny.Monday };
        Day(Open(NextPage.After(Evening(), Tomorrow)).Take(Loaded(Tiny.Monday, monday))).Should().Be(new VisitUse(1, 10, 0));
    }

    [Fact]
    public void Reports_of_other_vans_for_the_same_day_leave_it()
    {
        var reports = Loaded(Tiny.Wednesday, Reported(9)) with { Reported = [new(Tiny.Wednesday, Tiny.B2)] };
        Day(Open(NextPage.After(Evening(), Tomorrow)).Take(reports)).Should().Be(new VisitUse(1, 10, 0), "B1 has no report");
    }

    // A depot that has only its counts plans by them: a day booked for B1 needs what such a day used. Poisson(10) at 0.98: 17.
    [Fact]
    public void A_booking_of_a_day_is_planned_by_such_days()
    {
        var depot = Evening().Planned(p => p with { Bookings = [new(Tomorrow, Tiny.B1, CountedDay.Kind, 1)] });
        var line = RestockPlan.For(depot).Lines.Single(l => l.Van.Code == Tiny.B1 && l.Item.Code == Lamp);
        (line.Booked.Mean, line.Q, line.Aboard, line.Need).Should().Be((10, 17, 13, 4));
    }

    private static VisitUse Day(Depot depot) => VisitHistory.Of(depot).UseOf(CountedDay.Kind, Lamp);

    private static Depot Open(PageOpened page) => Depot.Open(new(90, Tiny.FiveOClock, page));

    private static DailyUse Reported(int units) => new(Tiny.Wednesday, new("HOME"), 1, [new(Lamp, units, units * units)]);

    private static DayFolderLoaded Loaded(DateOnly date, DailyUse use) => new(Tiny.Setup, [], [], [date], [use], [], [new(date, Tiny.B1)], null);
}
