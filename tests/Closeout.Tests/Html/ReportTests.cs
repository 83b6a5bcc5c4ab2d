using System.Security.Cryptography;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Html;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary>Incident reports and weekly reports, with their photos.</summary>
public sealed class ReportTests
{
    private static readonly byte[] Jpeg = [0xFF, 0xD8, 0xFF, 0xE0, 1, 2, 3];
    private static readonly byte[] Heic = [0, 0, 0, 24, .. "ftypheic"u8, 0, 0, 0, 0];

    private static readonly Depot Damaged = Tiny.Opened().At(Tiny.B1, Step.Damage)
        .Did(new ReportDamage(Tiny.B1, "windshield", Severity.Unsafe, "crack <deep>"), new ConfirmDamage(Tiny.B1, false));

    [Fact]
    public void A_report_says_all_that_is_known_of_its_incident() =>
        Rows(Report(Damaged)).Should().Equal(
            ("Van", "B1 Avocet, bay 1"), ("Reported", "Wed 18 Nov 2026 at 17:06 by T1 Tess Invented"), ("Where", "windshield"), ("What", "crack <deep>"),
            ("How bad", "unsafe"), ("Drivable", "no, said whoever reported it"), ("Told", "nobody told yet"), ("Hold", "it holds the van until a lead lifts the hold"), ("Status", "open"));

    [Fact]
    public void A_hold_that_was_lifted_and_an_incident_that_was_closed_are_told()
    {
        var reason = Readiness.Standing(Damaged, Tiny.B1)[0].Reason;
        var lifted = Damaged.Did(new LiftHolds(Tiny.B1, "glass is in", Tiny.Lead));
        reason.Should().Contain("windshield");
        Rows(Report(lifted)).Should().Contain(("Hold", "a lead lifted the hold; the incident stays open"));
        Report(lifted).Should().Contain(">OPEN<");

        var closed = lifted.Did(new CloseIncident(Tiny.B1, 1, "new glass", Tiny.Lead));
        Rows(Report(closed)).Should().Contain([("Status", "closed"), ("Hold", "none"), ("Closed", "Wed 18 Nov 2026 by L1 Lee Invented: new glass")]);
        Report(closed).Should().Contain(">CLOSED<").And.NotContain(">HELD<");
        Report(Damaged).Should().Contain(">HELD<").And.Contain("It does not say that the van is safe.");
    }

    [Fact]
    public void Photos_are_inside_the_page_byte_for_byte()
    {
        var page = PageText.Parsed(Report(Damaged, ("crack.jpg", Jpeg)));

        Convert.FromBase64String(((string)page.Descendants("img").Single().Attribute("src")!)["data:image/jpeg;base64,".Length..]).Should().Equal(Jpeg);
        page.Descendants("figcaption").Single().Value.Should().Be("crack.jpg");
    }

    [Fact]
    public void What_browsers_do_not_show_or_a_page_cannot_hold_is_named_instead()
    {
        var large = new byte[PagePhotosMost - 10];
        Jpeg.CopyTo(large, 0);
        var page = PageText.Parsed(Report(Damaged, ("a.heic", Heic), ("small.jpg", Jpeg), ("large.jpg", large), ("more.jpg", Jpeg)));

        page.Descendants("figure").Select(f => f.Element("img") is not null).Should().Equal(false, true, false, true);
        page.Descendants("figure").First().Value.Should().Contain("few browsers show this kind");
        page.Descendants("figure").ElementAt(2).Value.Should().Contain("a page holds 16 MB of photos");
    }

    [Fact]
    public void A_photo_that_the_book_has_lost_is_missing_on_the_page_and_told()
    {
        var (html, faults) = IncidentReport.Of(Damaged, IncidentLog.Of(Damaged)[0], [new(Tiny.B1, "x", "gone.jpg", 7)], _ => throw new BookException("It is gone."));

        faults.Should().Equal("It is gone.");
        html.Should().Contain(">MISSING<").And.Contain("gone.jpg");
    }

    [Fact]
    public void A_week_has_a_row_for_each_day_of_the_book_and_their_sums()
    {
        var monday = Tiny.Opened(date: Tiny.Monday).At(Tiny.B1, Step.Mileage).Did(new LogMileage(Tiny.B1, 1030)).At(Tiny.B1, Step.Damage)
            .Did(new ReportDamage(Tiny.B1, "left door", Severity.Repair, "dent"), new ConfirmDamage(Tiny.B1, false)).At(Tiny.B1, Step.Closed);
        var tuesday = monday.NextDay().Did(new CloseIncident(Tiny.B1, 1, "straightened", Tiny.Lead)).At(Tiny.B1, Step.Mileage).Did(new LogMileage(Tiny.B1, 1072)).At(Tiny.B1, Step.Closed);
        var wednesday = tuesday.NextDay().Did(new PlaceHold(Tiny.B1, "recall", Tiny.Lead));
        var html = WeeklyReport.Of([monday, tuesday, wednesday], Tiny.Setup.Vans[0], _ => Jpeg).Html;
        var page = PageText.Parsed(html);

        page.Descendants("tbody").First().Elements("tr").Select(r => r.Elements("td").Select(d => d.Value).ToList()).Select(r => (r[0], r[3], r[4])).Should().Equal(
            ("Mon 16 Nov 2026", "1030 mi", "30 mi"), ("Tue 17 Nov 2026", "1072 mi", "42 mi"), ("Wed 18 Nov 2026", "", ""));
        html.Should().Contain("Driven in the week: 72 mi; fuel: none.").And.Contain(">HELD<").And.Contain("week 2026-W47 up to Wed 18 Nov 2026");
        Rows(html).Should().Contain([("HELD", "recall, since 2026-11-18"), ("closed", "left door, to repair: dent (incident 1), since 2026-11-16; nobody told yet"), ("Done", "none in this book")]);
    }

    [Fact]
    public void A_weekly_check_is_told_with_its_day_and_the_photos_of_all_days_are_there()
    {
        var friday = Tiny.Opened(date: Tiny.Friday).At(Tiny.B1, Step.Weekly);
        friday.Shift(Tiny.B1)!.WeeklyDue.Should().BeTrue();
        var done = friday.Take(new PhotoAttached(Tiny.B1, new string('a', 64), "tire.jpg", Jpeg.Length)).Did(new CheckWeekly(Tiny.B1, new(2026, 10, 5), 1, false));
        var html = WeeklyReport.Of([done], Tiny.Setup.Vans[0], _ => Jpeg).Html;

        Rows(html).Should().Contain([("Done", "Fri 20 Nov 2026 by T1 Tess Invented"), ("Oil change", "2026-10-05, as the sticker says"), ("Clean", "no, to be cleaned"), ("Photos", "1")]);
        PageText.Parsed(html).Descendants("img").Should().ContainSingle();
    }

    private const int PagePhotosMost = 16 * 1024 * 1024;

    private static string Report(Depot depot, params (string Name, byte[] Bytes)[] photos)
    {
        var files = photos.GroupBy(p => Sha(p.Bytes)).ToDictionary(g => g.Key, g => g.First().Bytes);
        return IncidentReport.Of(depot, IncidentLog.Of(depot)[0], [.. photos.Select(p => new PhotoAttached(Tiny.B1, Sha(p.Bytes), p.Name, p.Bytes.Length))], sha => files[sha]).Html;
    }

    private static string Sha(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    private static IEnumerable<(string, string)> Rows(string html) =>
        PageText.Parsed(html).Of("td", "w").Select(w => (w.Value, w.ElementsAfterSelf().First().Value));
}
