using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

/// <summary>Monday 16 November 2026 begins ISO week 47. Days are given as days from it.</summary>
public class WeeklyCheckTests
{
    private static readonly DayOfWeek[] MondayToThursday = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday];

    [Theory]
    [InlineData(2, -4, false)]    // Wednesday, checked last Thursday
    [InlineData(3, -4, true)]     // the last rostered day
    [InlineData(4, -4, true)]     // a day after it
    [InlineData(6, -4, true)]     // Sunday ends the week
    [InlineData(3, 0, false)]     // checked on Monday of this week
    [InlineData(3, 3, false)]     // checked today
    [InlineData(7, 3, false)]     // next Monday, checked this Thursday
    [InlineData(0, -7, false)]    // Monday, checked last Monday
    [InlineData(0, -8, true)]     // Monday, and all of last week went by
    [InlineData(2, -30, true)]
    public void Due_on_or_after_the_last_rostered_day_and_whenever_a_week_went_by(int day, int checkedOn, bool due) =>
        WeeklyCheck.IsDue(MondayToThursday, Tiny.Monday.AddDays(day), Tiny.Monday.AddDays(checkedOn)).Should().Be(due);

    [Theory]
    [InlineData(2, false)]
    [InlineData(3, true)]
    [InlineData(6, true)]
    public void Never_checked_is_due_on_the_last_rostered_day_and_not_overdue(int day, bool due)
    {
        WeeklyCheck.IsDue(MondayToThursday, Tiny.Monday.AddDays(day), null).Should().Be(due);
        WeeklyCheck.IsOverdue(Tiny.Monday.AddDays(day), null).Should().BeFalse("nobody knows");
    }

    [Fact]
    public void Sunday_is_the_last_day_of_a_week_and_of_a_roster_that_has_it()
    {
        DayOfWeek[] weekend = [DayOfWeek.Sunday, DayOfWeek.Saturday];
        WeeklyCheck.IsDue(weekend, Tiny.Monday.AddDays(5), null).Should().BeFalse();
        WeeklyCheck.IsDue(weekend, Tiny.Monday.AddDays(6), null).Should().BeTrue();
        IsoWeek.Monday(Tiny.Monday.AddDays(6)).Should().Be(Tiny.Monday);
    }

    [Fact]
    public void Somebody_without_a_roster_is_asked_only_when_it_is_overdue()
    {
        WeeklyCheck.IsDue([], Tiny.Monday.AddDays(6), Tiny.Monday.AddDays(-1)).Should().BeFalse();
        WeeklyCheck.IsDue([], Tiny.Monday, Tiny.Monday.AddDays(-8)).Should().BeTrue();
    }

    [Fact]
    public void It_is_asked_of_the_technician_who_brings_the_van_in()
    {
        var friday = Tiny.Opened(date: Tiny.Friday);
        friday.Did(new ComeIn(Tiny.B1, Tiny.T1)).Shift(Tiny.B1)!.WeeklyDue.Should().BeTrue("Friday is the last day of T1");
        friday.Did(new ComeIn(Tiny.B1, Tiny.T3)).Shift(Tiny.B1)!.WeeklyDue.Should().BeFalse("T3 works on Saturday too");
    }

    [Fact]
    public void Due_it_stands_between_the_kit_and_the_sign_off()
    {
        var depot = Tiny.Opened(date: Tiny.Friday).At(Tiny.B1, Step.Weekly);
        depot.Shift(Tiny.B1)!.Step.Should().Be(Step.Weekly);
        depot.Refuses(new Sign(Tiny.B1, Tiny.T1)).Code.Should().Be("too-early");
        depot.Did(new CheckWeekly(Tiny.B1, null, 4, true)).Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);
    }
}
