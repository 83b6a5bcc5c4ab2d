using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Shifts;
using Closeout.Store;
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

        kiosk.Show().Should().Contain("leftovers, 0 of ");
        kiosk.Session.Refresh().Should().BeFalse("nothing more was written");
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
        kiosk.Press("B3{Enter}{Enter}**{Enter}={Enter}={Enter}B3{Enter}");
        kiosk.Closeout.At.Should().Be(Step.Closed);
        var given = DayFolder.Read(Repository.SampleDay).Given! with { BusinessDate = new(2026, 11, 19) };
        Book.OpenPage(kiosk.Folder, Book.Open(kiosk.Folder), Loading.NextPageWith(kiosk.Depot, given), DateTimeOffset.UnixEpoch);

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

    private static Desk Other(SampleKiosk kiosk) => new(Book.Open(kiosk.Folder), new FixedClock(16, 50));
}
