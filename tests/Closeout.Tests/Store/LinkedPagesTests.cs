using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Opening a page reads that page; that it is this book's, and all of it, is seen from the ends of the pages beside it and from what the book remembers.</summary>
public sealed class LinkedPagesTests
{
    [Fact]
    public void Every_line_is_verified_on_its_own_and_names_the_line_before()
    {
        using var book = new LongBook();
        var prev = PageLine.Nothing;
        foreach (var line in LongBook.Dates.SelectMany(d => LongBook.Lines(book.Folder.Page(d))))
        {
            var read = PageLine.Read(line.AsSpan(0, line.Length - 1), null);

            read.Prev.Should().Be(prev);
            prev = read.Sha;
        }
    }

    [Theory]
    [InlineData(0, "a page of another book in the place of the first")]
    [InlineData(1, "in the place of a middle one")]
    [InlineData(2, "in the place of the newest")]
    public void A_page_of_another_book_is_named_as_such_by_whoever_opens_it_and_by_check(int page, string why)
    {
        using var book = new LongBook();
        using var other = new LongBook(second: 1000);
        var path = book.Folder.Page(LongBook.Dates[page]);
        File.Copy(other.Folder.Page(LongBook.Dates[page]), path, overwrite: true);

        Opening(book, LongBook.Dates[page]).Should().StartWith($"{path}:1: the page belongs to another book: it names ", why);
        BookCheck.Of(book.Folder).Fault.Should().StartWith($"{path}:1: the page belongs to another book: it names ", why);
        File.Delete(book.Folder.Last);
        Opening(book, LongBook.Dates[page]).Should().Contain("another book", "the pages beside it tell it, too");
    }

    [Fact]
    public void A_page_that_lost_whole_lines_at_its_end_is_refused_by_whoever_opens_it()
    {
        foreach (var date in LongBook.Dates)
        {
            using var book = new LongBook();
            LongBook.Write(book.Folder.Page(date), LongBook.Lines(book.Folder.Page(date))[..^1]);

            Opening(book, date).Should().StartWith(book.Folder.Page(date)).And.Contain("missing at the end");
        }
    }

    [Fact]
    public void A_newest_page_that_is_gone_is_told_and_the_one_before_is_not_taken_for_it()
    {
        using var book = new LongBook();
        File.Delete(book.Folder.Page(LongBook.Third));

        Opening(book, null).Should().StartWith($"{book.Folder.Page(LongBook.Third)} is gone: the book has had entry {book.Entries} there. ");
        BookCheck.Of(book.Folder).Fault.Should().Contain("are missing at the end");
    }

    [Fact]
    public void A_page_before_that_is_gone_is_told()
    {
        using var book = new LongBook();
        File.Delete(book.Folder.Page(LongBook.Second));

        Opening(book, null).Should().Contain("or is missing").And.Contain(book.Folder.Page(LongBook.First));
        Opening(book, LongBook.First).Should().Contain("a page between is missing");
    }

    [Fact]
    public void Pages_that_are_all_gone_are_told_and_no_new_book_is_set_up_there()
    {
        using var book = new LongBook();
        Directory.Delete(book.Folder.Pages, recursive: true);

        Opening(book, null).Should().StartWith($"The pages of the book at {book.Folder.Path} are gone: it has had entries up to {book.Entries}, of {LongBook.Third:yyyy-MM-dd}.");
        var anew = () => Book.New(book.Folder, SmallDay.Given().FirstPage(rehearsal: false), SmallBook.At(0));
        anew.Should().Throw<BookException>().WithMessage("*are gone*");
        Directory.EnumerateFiles(book.Folder.Pages).Should().BeEmpty();
    }

    [Fact]
    public void A_page_in_a_file_of_another_date_is_refused()
    {
        using var book = new LongBook();
        File.Move(book.Folder.Page(LongBook.Third), book.Folder.Page(LongBook.Third.AddDays(1)));
        File.Delete(book.Folder.Last);

        Opening(book, null).Should().Contain("does not open the page of 2026-03-07");
    }

    [Theory]
    [InlineData("")]
    [InlineData("nonsense")]
    [InlineData("entry 0000000099")]
    public void A_damaged_memory_of_the_last_entry_says_nothing(string text)
    {
        using var book = new LongBook();
        File.WriteAllText(book.Folder.Last, text);

        Opening(book, null).Should().BeEmpty();
        BookCheck.Of(book.Folder).Fault.Should().BeNull();
    }

    [Fact]
    public void A_memory_of_the_last_entry_that_was_changed_or_lags_behind_says_nothing_wrong()
    {
        using var book = new SmallBook().With(counts: 1);
        var old = File.ReadAllText(book.Folder.Last);
        SmallBook.Count(book.Book, SmallBook.B1, kept: 2).Should().BeNull();
        var now = File.ReadAllText(book.Folder.Last);
        now.Should().StartWith("entry 0000000005 of 2026-03-04, sha ").And.NotBe(old);

        foreach (var text in new[] { old, now.Replace("entry 0000000005", "entry 0000000009", StringComparison.Ordinal), now + now })
        {
            File.WriteAllText(book.Folder.Last, text);
            book.Check().Code.Should().Be(0);
            Book.Open(book.Folder).Depot.Number.Should().Be(5);
        }
    }

    [Fact]
    public void A_page_of_an_earlier_version_is_named_as_one()
    {
        using var book = new SmallBook();
        var opened = PageReader.Read(book.Page, default).Entries[0];
        var line = System.Text.Encoding.UTF8.GetString(ForgedLine.Of(opened, "{\"n\":1,", "{\"n\":1,", PageLine.Nothing));
        var body = line[..line.LastIndexOf(",\"sha\"", StringComparison.Ordinal)];
        var sha = Convert.ToHexStringLower(System.Security.Cryptography.SHA256.HashData(System.Text.Encoding.UTF8.GetBytes(PageLine.Nothing + body)));
        File.WriteAllText(book.Page, $"{body},\"sha\":\"{sha}\"}}\n");

        book.Check().Err.Should().Contain($"{book.Page}:1: the line was written by an earlier version of this program, whose books this one does not read. Nothing is damaged: use the version that wrote this book.");
    }

    /// <summary>What opening says; empty: nothing.</summary>
    private static string Opening(LongBook book, DateOnly? date)
    {
        try
        {
            Book.Open(book.Folder, date);
            return "";
        }
        catch (BookException e)
        {
            return e.Message;
        }
    }
}
