using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>ISO 8601 week dates as published, all seen unless said.</summary>
public class IsoWeekTests
{
    [Theory]
    // Wikipedia, "ISO week date", examples of contemporary dates around New Year, seen in copies
    [InlineData("1977-01-01", "1976-W53", 6)]
    [InlineData("1977-01-02", "1976-W53", 7)]
    [InlineData("1977-12-31", "1977-W52", 6)]
    [InlineData("1978-01-01", "1977-W52", 7)]
    [InlineData("1978-01-02", "1978-W01", 1)]
    [InlineData("2019-12-30", "2020-W01", 1)]
    // Assorted.Utils (a C# library), DateUtilsTests.Parse_Iso8601
    [InlineData("2005-01-01", "2004-W53", 6)]
    [InlineData("2005-01-02", "2004-W53", 7)]
    [InlineData("2005-12-31", "2005-W52", 6)]
    [InlineData("2006-01-01", "2005-W52", 7)]
    [InlineData("2006-01-02", "2006-W01", 1)]
    [InlineData("2006-12-31", "2006-W52", 7)]
    [InlineData("2007-01-01", "2007-W01", 1)]
    [InlineData("2007-12-30", "2007-W52", 7)]
    [InlineData("2007-12-31", "2008-W01", 1)]
    [InlineData("2008-01-01", "2008-W01", 2)]
    [InlineData("2008-12-28", "2008-W52", 7)]
    [InlineData("2008-12-29", "2009-W01", 1)]
    [InlineData("2008-12-30", "2009-W01", 2)]
    [InlineData("2008-12-31", "2009-W01", 3)]
    [InlineData("2009-01-01", "2009-W01", 4)]
    [InlineData("2009-12-31", "2009-W53", 4)]
    [InlineData("2010-01-01", "2009-W53", 5)]
    [InlineData("2010-01-02", "2009-W53", 6)]
    [InlineData("2010-01-03", "2009-W53", 7)]
    // reconhub/aweek (an R package), "January first dates can be properly converted"
    [InlineData("2001-01-01", "2001-W01", 1)]
    [InlineData("2004-01-01", "2004-W01", 4)]
    [InlineData("2011-01-01", "2010-W52", 6)]
    [InlineData("2012-01-01", "2011-W52", 7)]
    [InlineData("2013-01-01", "2013-W01", 2)]
    [InlineData("2016-01-01", "2015-W53", 5)]
    [InlineData("2017-01-01", "2016-W52", 7)]
    [InlineData("2018-01-01", "2018-W01", 1)]
    [InlineData("2019-01-01", "2019-W01", 2)]
    // "ISO week date format", nicephore-site.pages.dev, "why the ISO year differs" and "at a glance", 2026
    [InlineData("2016-01-02", "2015-W53", 6)]
    [InlineData("2026-05-28", "2026-W22", 4)]
    // From memory, recomputed: one stored web article says 2023-W01-6, which is wrong
    [InlineData("2022-12-31", "2022-W52", 6)]
    public void A_date_has_the_week_and_day_that_is_published(string date, string week, int day)
    {
        var on = DateOnly.ParseExact(date, "yyyy-MM-dd");
        IsoWeek.Name(on).Should().Be(week);
        (on.DayNumber - IsoWeek.Monday(on).DayNumber + 1).Should().Be(day);
    }

    /// <summary>
    /// Markus Kuhn, "International standard date and time notation", on weeks: week 1 of 1997 lasts from 1996-12-30 to
    /// 1997-01-05.
    /// </summary>
    [Fact]
    public void Week_one_of_1997_lasts_from_30_December_to_5_January()
    {
        for (var date = new DateOnly(1996, 12, 30); date <= new DateOnly(1997, 1, 5); date = date.AddDays(1))
        {
            IsoWeek.Name(date).Should().Be("1997-W01");
            IsoWeek.Monday(date).Should().Be(new DateOnly(1996, 12, 30));
        }

        IsoWeek.Name(new DateOnly(1996, 12, 29)).Should().Be("1996-W52");
        IsoWeek.Name(new DateOnly(1997, 1, 6)).Should().Be("1997-W02");
    }

    /// <summary>Assorted.Utils, DateUtilsTests.Iso8601_Weeks_In_Year. 28 December always lies in the last week.</summary>
    [Theory]
    [InlineData(2004, 53)]
    [InlineData(2005, 52)]
    [InlineData(2006, 52)]
    [InlineData(2007, 52)]
    [InlineData(2008, 52)]
    [InlineData(2009, 53)]
    public void A_year_has_so_many_weeks(int year, int weeks) => IsoWeek.Name(new(year, 12, 28)).Should().Be($"{year}-W{weeks}");

    /// <summary>world.clndr.org/calendars/ISO-week-date-calendar, "cycle": 71 years of 53 weeks and 20,871 weeks in 400 years.</summary>
    [Fact]
    public void In_four_hundred_years_seventy_one_have_fifty_three_weeks()
    {
        var weeks = Enumerable.Range(2001, 400).Select(y => IsoWeek.Name(new(y, 12, 28))[^2..]).ToList();
        weeks.Count(w => w == "53").Should().Be(71);
        weeks.Sum(int.Parse).Should().Be(20_871);
    }
}
