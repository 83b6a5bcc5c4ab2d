using Closeout.Cardboard;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Universal waste by 40 CFR part 273. One year from the date on which it was generated or received: 273.15(a), and with the
/// same words 273.35(a), seen in a reprint of 2025; guidance of South Carolina (dmsbcam.sc.edu), Orange County (ocgov.com) and
/// Everett, Washington (lfportal.everettwa.gov) says one year too, seen. The container bears the earliest date: 273.15(c)(1),
/// seen in the same reprint of 273.35(c)(1).
/// </summary>
public sealed class UniversalWasteReferenceTests
{
    /// <summary>
    /// 40 CFR 273.14(e), seen as compliance guidance for lamps quotes it; (a) and (d), seen as waste handlers' pages quote
    /// them.
    /// </summary>
    [Theory]
    [InlineData("lamps", "Universal Waste-Lamp(s)")]
    [InlineData("batteries", "Universal Waste-Battery(ies)")]
    [InlineData("thermostats", "Universal Waste-Mercury Thermostat(s)")]
    [InlineData("metal", null)]
    [InlineData("film", null)]
    public void The_label_has_the_rules_words(string stream, string? label) => WasteStream.Of(new(stream)).Label.Should().Be(label);

    /// <summary>
    /// Of a 29 February the year ends on the 28th, the 365th day after: the rule is silent on it, so the careful reading.
    /// </summary>
    [Theory]
    [InlineData("2026-01-05", "2027-01-05")]
    [InlineData("2027-02-28", "2028-02-28")]   // a leap year behind it
    [InlineData("2027-03-01", "2028-03-01")]   // one within it
    [InlineData("2028-02-28", "2029-02-28")]
    [InlineData("2028-02-29", "2029-02-28")]
    [InlineData("2026-12-31", "2027-12-31")]
    public void One_year_from_the_first_thing_in_it(string started, string last) => Collecting.ShipBy(Box("lamps", started)).Should().Be(DateOnly.Parse(last));

    /// <summary>
    /// Sixty days: common practice, a pickup takes weeks to arrange. That the last day still counts is the rule's "no longer
    /// than one year".
    /// </summary>
    [Theory]
    [InlineData("2026-01-05", "2026-11-05", null)]             // 61 days before
    [InlineData("2026-01-05", "2026-11-06", "must go by")]     // 60
    [InlineData("2026-01-05", "2027-01-05", "must go by")]     // on its last day it may still be there
    [InlineData("2026-01-05", "2027-01-06", "should have gone by")]
    [InlineData("2028-02-29", "2028-12-29", null)]
    [InlineData("2028-02-29", "2028-12-30", "must go by")]
    [InlineData("2028-02-29", "2029-02-28", "must go by")]
    [InlineData("2028-02-29", "2029-03-01", "should have gone by")]
    public void It_is_said_from_sixty_days_before_and_the_last_day_is_still_good(string started, string today, string? note)
    {
        var said = Collecting.Note(Box("lamps", started), DateOnly.Parse(today));
        if (note is null)
        {
            said.Should().BeNull();
        }
        else
        {
            said.Should().StartWith($"box of removed lamps, fluorescent, begun {started}, {note} ");
        }
    }

    [Fact]
    public void On_every_day_of_eight_years_the_limit_is_365_or_366_days_away_and_the_warning_is_sixty()
    {
        for (var started = new DateOnly(2023, 1, 1); started.Year < 2031; started = started.AddDays(1))
        {
            var box = new CollectingBox(new("batteries"), started, 1);
            var last = Collecting.ShipBy(box)!.Value;
            var leap = started < new DateOnly(2024, 2, 29) ? last >= new DateOnly(2024, 2, 29) : started < new DateOnly(2028, 2, 29) && last >= new DateOnly(2028, 2, 29);
            (last.DayNumber - started.DayNumber).Should().Be(leap ? 366 : 365, $"of {started:yyyy-MM-dd}");
            Collecting.Note(box, last.AddDays(-61)).Should().BeNull();
            Collecting.Note(box, last.AddDays(-60)).Should().Contain("must go by");
            Collecting.Note(box, last).Should().Contain("must go by");
            Collecting.Note(box, last.AddDays(1)).Should().Contain("should have gone by").And.Contain("ask the recycler");
        }
    }

    [Theory]
    [InlineData("metal")]
    [InlineData("film")]
    public void What_is_no_universal_waste_has_no_limit(string stream)
    {
        Collecting.ShipBy(Box(stream, "1999-01-01")).Should().BeNull();
        Collecting.Note(Box(stream, "1999-01-01"), Tiny.Wednesday).Should().BeNull();
    }

    private static CollectingBox Box(string stream, string started) => new(new(stream), DateOnly.Parse(started), 3);
}
