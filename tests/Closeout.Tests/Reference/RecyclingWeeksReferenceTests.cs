using Closeout.Cardboard;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Recycling by ISO 8601 week where the years meet. Week dates of Assorted.Utils, DateUtilsTests.Parse_Iso8601, seen; the last
/// row from memory.
/// </summary>
public sealed class RecyclingWeeksReferenceTests
{
    [Theory]
    [InlineData("2004-12-27", "2005-01-02", "2004-W53")]
    [InlineData("2005-12-26", "2006-01-01", "2005-W52")]
    [InlineData("2007-12-31", "2008-01-06", "2008-W01")]
    [InlineData("2008-12-22", "2008-12-28", "2008-W52")]
    [InlineData("2008-12-29", "2009-01-04", "2009-W01")]
    [InlineData("2009-12-28", "2010-01-03", "2009-W53")]
    [InlineData("2022-12-26", "2023-01-01", "2022-W52")]
    public void A_week_over_the_turn_of_the_year_is_one_week_and_its_months_are_two(string monday, string sunday, string week)
    {
        var (from, to) = (DateOnly.Parse(monday), DateOnly.Parse(sunday));
        var boxes = Enumerable.Range(-1, 9).Select(d => new DatedBoxes(from.AddDays(d), new(Tiny.B1, Tiny.Lamp.Code, 1, 1, 0.5))).ToList();

        var weeks = RecyclingTotals.By(Period.Week, Tiny.Settings, boxes);

        weeks.Should().HaveCount(3, "a day before and a day after lie in other weeks");
        weeks[1].Should().Match<PeriodTotal>(w => w.Name == week && w.From == from && w.To == to && w.Days == 7 && w.Sum.Flattened == 7);
        RecyclingTotals.By(Period.Month, Tiny.Settings, boxes).Sum(m => m.Sum.Flattened).Should().Be(9);
    }

    /// <summary>
    /// A year of 53 weeks, 2009 by DateUtilsTests.Iso8601_Weeks_In_Year, seen: its weeks sort behind one another, and the next
    /// year's first comes after.
    /// </summary>
    [Fact]
    public void Fifty_three_weeks_come_in_order()
    {
        var boxes = Enumerable.Range(0, 371).Select(d => new DatedBoxes(new DateOnly(2008, 12, 29).AddDays(d), new(Tiny.B1, Tiny.Lamp.Code, 1, 1, 0.5)));

        RecyclingTotals.By(Period.Week, Tiny.Settings, boxes).Select(w => w.Name)
            .Should().Equal(Enumerable.Range(1, 53).Select(w => $"2009-W{w:00}"));
    }
}
