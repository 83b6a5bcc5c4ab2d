using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class BookTests
{
    [Fact]
    public void Entries_survive_closing_and_opening_the_book()
    {
        using var book = new SmallBook().With(counts: 3);

        var reopened = Book.Open(book.Folder);

        reopened.Date.Should().Be(SmallDay.Date);
        reopened.Depot.Number.Should().Be(6);
        reopened.Depot.Shift(SmallBook.B1)!.Counts[SmallBook.Lamp].Count.Kept.Should().Be(3);
        reopened.Depot.Stock.Ledger.Balances.Should().BeEquivalentTo(book.Book.Depot.Stock.Ledger.Balances);
        reopened.Depot.Shift(SmallBook.B1)!.Story.Should().BeEquivalentTo(book.Book.Depot.Shift(SmallBook.B1)!.Story, o => o.RespectingRuntimeTypes());
    }

    [Fact]
    public void Numbers_go_on_over_pages_without_a_hole()
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        var last = book.Book.Depot.Number;

        var next = book.NextDay();
        SmallBook.Tell(next, new ComeIn(SmallBook.B1, new("T1"))).Should().BeNull();

        next.Date.Should().Be(SmallDay.Date.AddDays(1));
        PageReader.Read(book.Folder.Page(next.Date), default).Entries.Select(e => e.Number).Should().Equal(last + 1, last + 2);
        book.Check().Out.Should().Contain($"2 pages, {last + 2} entries");
    }

    [Fact]
    public void The_page_of_an_earlier_date_can_still_be_read()
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        book.NextDay();

        Book.Open(book.Folder, SmallDay.Date).Depot.Shift(SmallBook.B1)!.IsClosed.Should().BeTrue();
        Book.Open(book.Folder).Depot.Shift(SmallBook.B1).Should().BeNull();
    }

    [Fact]
    public void A_date_without_a_page_is_refused_naming_those_that_there_are()
    {
        using var book = new SmallBook();

        var opening = () => Book.Open(book.Folder, new DateOnly(2026, 3, 9));

        opening.Should().Throw<BookException>().WithMessage("The book has no page for 2026-03-09; it has 2026-03-04 to 2026-03-04.*");
    }

    [Fact]
    public void Refresh_takes_in_what_another_book_object_appended()
    {
        using var book = new SmallBook().With(counts: 1);
        var other = Book.Open(book.Folder);
        other.Refresh().Should().BeFalse();
        SmallBook.Count(book.Book, SmallBook.B2, kept: 2).Should().BeNull();

        other.Refresh().Should().BeTrue();

        other.Depot.Number.Should().Be(5);
        other.Depot.Shift(SmallBook.B2)!.Counts[SmallBook.Lamp].Count.Kept.Should().Be(2);
        other.Refresh().Should().BeFalse();
    }

    [Fact]
    public void An_answer_is_decided_on_what_others_wrote_a_moment_before()
    {
        using var book = new SmallBook();
        var other = Book.Open(book.Folder);
        SmallBook.Tell(book.Book, new ComeIn(SmallBook.B1, new("T1"))).Should().BeNull();

        SmallBook.Tell(other, new ComeIn(SmallBook.B1, new("T2")))!.Code.Should().Be("already-in");
    }

    [Fact]
    public void A_page_opened_by_another_is_followed_by_reading_and_by_writing()
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        var (reader, writer) = (Book.Open(book.Folder), Book.Open(book.Folder));
        book.NextDay();

        reader.Refresh().Should().BeTrue();
        reader.Date.Should().Be(SmallDay.Date.AddDays(1));
        SmallBook.Tell(writer, new ComeIn(SmallBook.B1, new("T1"))).Should().BeNull();
        writer.Date.Should().Be(SmallDay.Date.AddDays(1));
        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void A_next_page_made_from_a_book_that_others_wrote_to_since_loses_none_of_their_entries()
    {
        using var book = new SmallBook().With(counts: 1);
        var stale = Book.Open(book.Folder);
        SmallBook.Count(book.Book, SmallBook.B1, kept: 2).Should().BeNull();

        stale.Record(d => NextPage.After(d, SmallDay.Date.AddDays(1)), SmallBook.At(9)).Should().BeNull();

        stale.Depot.Stock.Ledger.Units(Place.Loose(SmallBook.B1), SmallBook.Lamp).Should().Be(2);
        book.Check().Should().Match<Spoken>(s => s.Code == 0, "the new page follows the last entry");
    }

    [Fact]
    public void Two_first_pages_cannot_both_be_opened()
    {
        using var book = new SmallBook();

        var opening = () => Book.New(book.Folder, SmallDay.Given().FirstPage(false) with { Date = SmallDay.Date.AddDays(1) }, SmallBook.At(9));

        opening.Should().Throw<BookException>();
        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void The_same_page_cannot_be_opened_twice()
    {
        using var book = new SmallBook();
        var before = book.Bytes;

        var opening = () => Book.New(book.Folder, SmallDay.Given().FirstPage(false), SmallBook.At(9));

        opening.Should().Throw<BookException>().WithMessage("*another program*");
        book.Bytes.Should().Equal(before);
    }
}
