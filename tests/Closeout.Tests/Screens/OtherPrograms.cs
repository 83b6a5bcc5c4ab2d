using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The kiosk while other programs write to the same book.</summary>
public sealed class OtherPrograms
{
    [Fact]
    public void What_another_kiosk_confirmed_appears_on_the_wall()
    {
        using var kiosk = new SampleKiosk();
        Other(kiosk).Record(new ComeIn(new("B5"), new("T09"))).Should().BeNull();

        kiosk.Session.Refresh().Should().BeTrue();

        kiosk.Show().Should().Contain("◐ items 0/");
        kiosk.Session.Refresh().Should().BeFalse("nothing more was written");
    }

    [Fact]
    public void While_nothing_changes_the_screen_is_drawn_anew_only_when_the_minute_does()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Show();

        Enumerable.Range(0, 59).Select(_ => Second(kiosk)).ToList().Should().AllBeEquivalentTo(false);
        Second(kiosk).Should().BeTrue("the clock stands on it");

        kiosk.Show();
        Second(kiosk).Should().BeFalse();
        kiosk.Press("B");
        kiosk.Session.Refresh().Should().BeTrue("a key was pressed and nothing drawn yet");
    }

    [Fact]
    public void The_page_that_asks_for_a_PIN_is_drawn_at_each_second_while_it_says_how_many_are_left()
    {
        using var kiosk = new SampleKiosk(typesPins: false);
        kiosk.Press("B3{Enter}{Enter}**==n={Enter}wrong{Enter}").Clock.Pass(1);
        kiosk.Press("wrong{Enter}{Backspace}").Show().Should().Contain("in 2 s");

        var drawn = Enumerable.Range(0, 4).Select(_ =>
        {
            var anew = Second(kiosk);
            kiosk.Show();
            return anew;
        }).ToList();

        drawn.Should().Equal(true, true, false, false);
    }

    private static bool Second(SampleKiosk kiosk)
    {
        kiosk.Clock.Pass(1);
        return kiosk.Session.Refresh();
    }

    [Fact]
    public void Bringing_in_a_van_that_another_kiosk_has_is_refused_or_leads_back_to_the_wall()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}");
        Other(kiosk).Record(new ComeIn(new("B5"), new("T09"))).Should().BeNull();

        kiosk.Press("{Enter}");

        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
        kiosk.Entries.OfType<VanCameIn>().Should().ContainSingle();
    }

    [Fact]
    public void The_next_business_date_opened_elsewhere_leads_back_to_the_wall()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**{Enter}=n={Enter}B3{Enter}");
        kiosk.Closeout.At.Should().Be(Step.Closed);
        var given = SampleDay.Given with { BusinessDate = new(2026, 11, 19) };
        Book.Open(kiosk.Folder).Record(new LoadFolder(given).Decide, DateTimeOffset.UnixEpoch);

        kiosk.Press("{PageUp}");
        kiosk.Session.Refresh();

        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
        kiosk.Show().Should().Contain("Thu 19 Nov 2026").And.Contain("Everything confirmed is kept");
    }

    [Fact]
    public void A_book_that_vanishes_is_told_and_the_kiosk_stays()
    {
        using var kiosk = new SampleKiosk();
        Directory.Delete(kiosk.Folder.Path, recursive: true);

        kiosk.Session.Refresh();
        kiosk.Press("B3{Enter}{Enter}");

        kiosk.Session.Model.Said.Should().Contain(kiosk.Folder.Path);
        Directory.CreateDirectory(kiosk.Folder.Path);
    }

    [Theory]
    [InlineData("B4{F7}", "B4 Dunlin")]
    [InlineData("B4{F7}h", "HOLD A VAN")]
    [InlineData("{F3}b", "BOXES OPENED HERE")]
    [InlineData("B2{Enter}{Enter}{F8}", "photos")]
    [InlineData("{F8}", "DAY BOOK")]
    public void A_screen_that_still_has_something_to_show_stays_when_the_set_up_changes(string keys, string shown)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys);
        Change(kiosk, setup => setup with { Kit = [], Depot = setup.Depot with { Streams = [] } });

        kiosk.Session.Refresh().Should().BeTrue();
        kiosk.Show().Should().Contain(shown);
        kiosk.Press("{Escape}").Show();
    }

    [Theory]
    [InlineData("B4{F7}")]
    [InlineData("B4{F7}h")]
    [InlineData("B4{F7}{F1}")]
    public void The_page_of_a_van_that_the_depot_no_longer_has_leads_back_to_the_wall(string keys)
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press(keys);
        Change(kiosk, setup => setup with { Vans = [.. setup.Vans.Where(v => v.Code.Text != "B4")], Crew = [.. setup.Crew.Select(t => t.Van?.Text == "B4" ? t with { Van = null } : t)] });

        kiosk.Session.Refresh();

        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
        kiosk.Show().Should().Contain("Everything confirmed is kept").And.NotContain("Dunlin");
    }

    [Fact]
    public void Pictures_of_a_close_out_that_another_kiosk_signed_lead_back_to_the_wall()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**==n={F8}");
        Other(kiosk).Record(new Sign(new("B3"), new("T07"))).Should().BeNull();

        kiosk.Session.Refresh();

        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
    }

    [Fact]
    public void Streams_switched_off_while_they_are_asked_are_refused_and_nothing_breaks()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}**4");
        Change(kiosk, setup => setup with { Depot = setup.Depot with { Streams = [] } });
        kiosk.Session.Refresh();

        kiosk.Press("{Enter}").Session.Model.Said.Should().Contain("lamps is not counted at this depot.");
        kiosk.Press("{Escape}B3{Enter}{Enter}").Closeout.At.Should().Be(Step.Mileage);
    }

    /// <summary>Another program loads a folder with another set-up.</summary>
    private static void Change(SampleKiosk kiosk, Func<Setup, Setup> change)
    {
        var other = Book.Open(kiosk.Folder);
        other.Record(depot => new DayFolderLoaded(change(depot.Setup), [], [], [], [], [], [], null), DateTimeOffset.UnixEpoch).Should().BeNull();
    }

    private static Desk Other(SampleKiosk kiosk) => new(Book.Open(kiosk.Folder), new FixedClock(16, 50));
}
