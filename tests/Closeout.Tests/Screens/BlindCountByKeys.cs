using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Two kiosks whose books differ only in what a blind item has aboard: until it is counted, nobody can tell one from the other.</summary>
public sealed class BlindCountByKeys
{
    private static readonly Code<Item> Blind = new("AER-10");
    private static readonly Place Box = Place.Loose(new("B3"));

    public static TheoryData<string> BeforeItIsCounted => new()
    {
        "",
        "{F1}",
        "1",
        "1{Tab}2",
        "1{Backspace}",
        "{Tab}{Tab}4",
        "{Enter}{Enter}{Enter}",    // nothing typed
        "=",
        "*",
        "/aer",
        "/AER-10{Enter}",
        "/TAPE-12{Enter}{Up}{Up}{Up}{Up}",
        "{Escape}",
    };

    [Theory]
    [MemberData(nameof(BeforeItIsCounted))]
    public void The_kiosk_shows_nothing_of_the_book_for_a_blind_item_before_it_is_counted(string keys) => Same(keys);

    [Fact]
    public void A_blind_count_above_the_book_is_asked_again_without_the_books_figure() => Same("99{Enter}");

    [Fact]
    public void Once_it_is_counted_the_book_is_shown()
    {
        using var kiosk = With(units: 0);
        kiosk.Press("B3{Enter}{Enter}1{Enter}/AER-10{Enter}");
        kiosk.Show().Should().Contain("This morning");
    }

    [Fact]
    public void The_rest_as_booked_passes_a_blind_item_by_only_when_it_is_said_twice()
    {
        using var kiosk = With(units: 0);
        kiosk.Press("B3{Enter}{Enter}*");
        kiosk.Closeout.At.Should().Be(Step.Leftovers);
        kiosk.Session.Model.Said.Should().Contain("counted blind").And.Contain("* again");
        kiosk.Entries.OfType<LeftoversConfirmed>().Should().BeEmpty();

        kiosk.Press("1{Backspace}*");
        kiosk.Entries.OfType<LeftoversConfirmed>().Should().BeEmpty("something else was typed between");

        kiosk.Press("*");
        kiosk.Entries.OfType<LeftoversConfirmed>().Should().ContainSingle();
        kiosk.Closeout.At.Should().Be(Step.Cardboard);
        kiosk.Depot.Stock.SpotCounts.Should().BeEmpty("it is asked for again the next evening");
    }

    private static void Same(string keys)
    {
        using var some = With(units: 0);
        using var more = With(units: 31);
        foreach (var kiosk in new[] { some, more })
        {
            kiosk.Press("B3{Enter}{Enter}");
            kiosk.Closeout.Item.Should().Be(Blind);
            kiosk.Press(keys);
            kiosk.Entries.OfType<LeftoverCounted>().Should().BeEmpty("it is not counted yet");
        }

        foreach (var (width, height) in new[] { (80, 24), (120, 40) })
        {
            more.Show(width, height).Should().Be(some.Show(width, height));
        }
    }

    private static SampleKiosk With(int units) => new(given => given with
    {
        Stock = [.. given.Stock.Select(b => b.Item == Blind && (b.Place == Box || b.Place == Place.Supplier) ? b with { Units = b.Units + (b.Place == Box ? units : -units) } : b)],
    });
}
