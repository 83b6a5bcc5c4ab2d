using System.Diagnostics;
using Closeout.Shifts.Steps;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>What the lock says to whoever takes it next, and what it is told to people who cannot take it.</summary>
public sealed class BookLockTests
{
    private static readonly DateOnly Tomorrow = SmallDay.Date.AddDays(1);

    [Theory]
    [InlineData("")]
    [InlineData("2026-03")]
    [InlineData("rubbish!!!")]
    [InlineData("2026-13-01")]
    public void A_lock_that_says_no_date_says_nothing(string told)
    {
        using var temp = new TempFolder();
        File.WriteAllText(temp["lock"], told);

        using var held = BookLock.Take(temp["lock"]);

        held.Newest.Should().BeNull();
    }

    [Fact]
    public void What_one_holder_tells_the_next_one_reads()
    {
        using var temp = new TempFolder();
        foreach (var date in new[] { Tomorrow, SmallDay.Date })
        {
            using (var held = BookLock.Take(temp["lock"]))
            {
                held.Tell(date);
            }

            using var next = BookLock.Take(temp["lock"]);
            next.Newest.Should().Be(date);
        }
    }

    [Theory]
    [InlineData("2026-02-01")]
    [InlineData("2026-03-05")]
    [InlineData("2031-01-01")]
    [InlineData("rubbish!!!")]
    [InlineData("")]
    public void Whatever_the_lock_says_an_entry_goes_to_the_newest_page(string told)
    {
        using var book = new SmallBook().Closed(SmallBook.B1);
        var stale = Book.Open(book.Folder);
        book.NextDay();
        foreach (var (writer, van) in new[] { (stale, SmallBook.B1), (Book.Open(book.Folder), SmallBook.B2) })
        {
            File.WriteAllText(book.Folder.Lock, told);

            SmallBook.Tell(writer, new ComeIn(van, new("T1"))).Should().BeNull();

            writer.Date.Should().Be(Tomorrow);
            File.ReadAllText(book.Folder.Lock).Should().Be("2026-03-05", "the next one need not look");
        }

        Book.Open(book.Folder).Depot.Shifts.Should().HaveCount(2);
        book.Check().Should().Match<Spoken>(s => s.Code == 0);
    }

    [Fact]
    public void A_lock_that_cannot_be_had_for_another_reason_than_a_holder_is_told_at_once_and_not_as_in_use()
    {
        using var temp = new TempFolder();
        File.WriteAllText(temp["file"], "");
        Directory.CreateDirectory(temp["lock"]);
        foreach (var path in new[] { temp["file", "lock"], temp["lock"], temp["nowhere", "lock"], temp[new string('x', 300)] })
        {
            var begun = Stopwatch.StartNew();

            FluentActions.Invoking(() => BookLock.Take(path)).Should().Throw<BookException>().Which.Message.Should().StartWith("The book at ").And.Contain(" cannot be written: ").And.NotContain("in use");

            begun.Elapsed.Should().BeLessThan(BookLock.Patience);
        }
    }

    [Fact]
    public void To_look_only_nobody_makes_a_lock()
    {
        using var temp = new TempFolder();

        BookLock.TakeToLook(temp["lock"]).Should().BeNull();

        Directory.EnumerateFiles(temp.Path).Should().BeEmpty();
    }
}
