using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Html;
using Closeout.Shifts.Steps;
using Closeout.Tests.Screens;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary>The bay wall as a page.</summary>
public sealed class WallPageTests
{
    private static readonly WallMoment Now = new(Tiny.FiveOClock);

    [Fact]
    public void A_small_evening_looks_as_its_picture() => PageText.MustBeGolden(WallPage.Html(new(Small()), Now), "wall.html");

    [Fact]
    public void Every_van_stands_there_once_in_bay_order_with_its_word_its_evening_and_what_explains_it()
    {
        using var kiosk = SampleKiosk.Evening();
        var vans = PageText.Parsed(WallPage.Html(kiosk.Session.Desk.Tonight, Now)).Of("li", "van").ToList();

        vans.Select(v => v.Descendants("b").First().Value).Should().Equal("B1", "B2", "B3", "B4", "B5", "B6");
        vans.Select(v => v.Of("span", "b").Single().Value).Should().Equal("READY", "NOTES 3", "NOTES 3", "HELD", "OPEN", "HELD");
        vans.Select(v => (string?)v.Attribute("class")).Should().Equal("van good", "van note", "van note", "van stop", "van quiet", "van stop");
        vans[0].Value.Should().Contain("●");
        vans[4].Value.Should().Contain("○");
        vans[5].Element("ul")!.Elements("li").Select(l => l.Value).Should().Equal(
            Readiness.Of(kiosk.Depot, kiosk.Depot.Setup.Vans[5]) is var fulmar ? fulmar.Holds.Concat(fulmar.Notes) : []);
        vans[0].Element("ul").Should().BeNull();
    }

    [Fact]
    public void The_counts_stand_first_and_add_up_to_the_vans()
    {
        using var kiosk = SampleKiosk.Evening();
        var counts = PageText.Parsed(WallPage.Html(kiosk.Session.Desk.Tonight, Now)).Of("p", "counts").Single().Elements("span").Select(s => s.Value);

        counts.Should().Equal("2 HELD", "1 OPEN", "2 NOTES", "1 READY");
    }

    [Fact]
    public void It_clears_nobody_says_when_it_was_written_and_loads_itself_anew()
    {
        var html = WallPage.Html(new(Small()), new(Tiny.FiveOClock.AddSeconds(7), 15));

        html.Should().Contain("The wall repeats what people confirmed. It does not say that a van is safe.").And.Contain("as of Wed 17:00:07")
            .And.Contain("<meta http-equiv=\"refresh\" content=\"15\"/>").And.NotContain("REHEARSAL").And.NotContain("ENDED");
        WallPage.Html(new(Small() with { Rehearsal = true }), Now).Should().Contain("<span class=\"b note\">REHEARSAL</span>");
    }

    [Fact]
    public void The_last_one_says_that_it_has_ended_and_is_not_loaded_again() =>
        WallPage.Html(new(Small()), new(Tiny.FiveOClock, 15, Ended: true)).Should().Contain("ENDED").And.NotContain("http-equiv=\"refresh\"");

    [Fact]
    public void Of_many_notes_four_are_shown_and_the_rest_counted_and_a_fifth_alone_is_shown()
    {
        Items(7).Should().HaveCount(5).And.EndWith("and 3 more notes");
        Items(5).Should().HaveCount(5).And.NotContain(l => l.Contains("more"));

        static List<string> Items(int notes)
        {
            var page = PageText.Parsed(WallPage.Html(new(Tiny.Opened(carried: v => v with { Incidents = [.. Enumerable.Range(1, notes).Select(n => Dent(n))] })), Now));
            return [.. page.Of("li", "van").First().Element("ul")!.Elements("li").Select(l => l.Value)];
        }
    }

    [Fact]
    public void A_late_van_is_said_to_be_late_by_the_moment_of_the_page() =>
        WallPage.Html(new(Tiny.Opened()), Now).Should().Contain("30 min late");

    private static Incident Dent(int number) =>
        new(number, Tiny.Monday, Tiny.FiveOClock, null, "left door", Severity.Note, $"dent {number}", true, "", null, false);

    /// <summary>B1 closed with a dent, B2 at its mileage, B3 held and out.</summary>
    private static Depot Small() => Tiny.Opened("shelf: 2 LAMP; B1: 0+12 LAMP")
        .At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "left door", Severity.Repair, "dent <deep>"), new ConfirmDamage(Tiny.B1, false)).At(Tiny.B1, Step.Closed)
        .At(Tiny.B2, Step.Mileage).Did(new PlaceHold(Tiny.B3, "recall & inspection", Tiny.Lead));
}
