using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class TornLineTests
{
    [Fact]
    public void A_last_line_cut_anywhere_is_left_out_by_readers_and_the_lines_before_it_stand()
    {
        using var book = new SmallBook().With(counts: 2);
        var whole = book.Bytes;
        var last = whole.AsSpan(0, whole.Length - 1).LastIndexOf((byte)'\n') + 1;
        for (var length = last + 1; length < whole.Length; length++)
        {
            File.WriteAllBytes(book.Page, whole[..length]);

            var read = PageReader.Read(book.Page, default);

            read.Mark.Number.Should().Be(4);
            read.Torn.Should().Equal(whole[last..length]);
        }
    }

    [Fact]
    public void The_next_entry_sets_a_torn_line_aside_and_says_so()
    {
        using var book = new SmallBook().With(counts: 2);
        var whole = book.Bytes;
        var torn = "{\"n\":6,\"at\":\"2026-03-0"u8.ToArray();
        File.WriteAllBytes(book.Page, [.. whole, .. torn]);
        var reopened = Book.Open(book.Folder);
        File.ReadAllBytes(book.Page).Should().HaveCount(whole.Length + torn.Length, "opening reads and changes nothing");

        SmallBook.Count(reopened, SmallBook.B2, kept: 1).Should().BeNull();

        reopened.Said.Should().Contain("after entry 5").And.Contain("torn");
        Directory.GetFiles(book.Folder.TornLines).Should().ContainSingle().Which.Should().Match(f => File.ReadAllBytes(f).SequenceEqual(torn));
        PageReader.Read(book.Page, default).Should().Match<PageRead>(p => p.Torn.Length == 0 && p.Mark.Number == 6);
        File.ReadAllBytes(book.Page).Should().StartWith(whole);
        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void The_kiosk_says_it_once()
    {
        using var kiosk = new Closeout.Tests.Screens.SampleKiosk();
        kiosk.Press("B3{Enter}{Enter}");
        File.AppendAllText(kiosk.Folder.Page(kiosk.Book.Date), "{\"n\":3,\"prev\"");

        kiosk.Press("**");

        kiosk.Session.Model.Said.Should().Contain("A line begun after entry 2 was never confirmed; it was set aside in");
        kiosk.Press("={Enter}").Session.Model.Said.Should().NotContain("set aside");
    }

    [Fact]
    public void A_refused_answer_leaves_nothing_written()
    {
        using var book = new SmallBook().With(counts: 1);
        var before = book.Bytes;

        SmallBook.Tell(book.Book, new Closeout.Shifts.Steps.ConfirmKit(SmallBook.B1)).Should().NotBeNull();

        book.Bytes.Should().Equal(before);
    }

    [Fact]
    public void Check_mentions_a_torn_line_and_still_finds_the_book_good()
    {
        using var book = new SmallBook().With(counts: 1);
        File.AppendAllText(book.Page, "{\"n\":");

        var check = book.Check();

        check.Code.Should().Be(0);
        check.Out.Should().Contain("after entry 4 was never confirmed");
    }

    [Fact]
    public void A_page_whose_only_line_is_torn_is_refused_with_its_place()
    {
        using var book = new SmallBook();
        File.WriteAllBytes(book.Page, book.Bytes[..^20]);

        var opening = () => Book.Open(book.Folder);

        opening.Should().Throw<BookException>().WithMessage($"{book.Page}:1: the page has no whole line*");
        book.Check().Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains(":1:"));
    }

    [Fact]
    public void A_page_cut_between_two_lines_is_found_through_the_archive()
    {
        using var book = new SmallBook().With(counts: 3);
        new Archive(book.Folder).CatchUp();
        CutLastLine(book);
        File.Delete(book.Folder.Last);

        var check = book.Check();

        check.Code.Should().Be(1);
        check.Err.Should().Contain("entry 6 is missing at the end: the archive has seen");
    }

    [Fact]
    public void A_page_cut_between_two_lines_and_written_on_is_found_through_the_archive()
    {
        using var book = new SmallBook().With(counts: 3);
        new Archive(book.Folder).CatchUp();
        CutLastLine(book);
        File.Delete(book.Folder.Last);
        Directory.Move(book.Folder.Archive, book.Folder.Archive + ".away");
        SmallBook.Count(Book.Open(book.Folder), SmallBook.B2, kept: 1).Should().BeNull("nothing was there that could tell");
        Directory.Move(book.Folder.Archive + ".away", book.Folder.Archive);

        book.Check().Code.Should().Be(1, "entry 6 is not the one that the archive has seen");
    }

    [Fact]
    public void A_page_cut_under_an_open_book_is_told_and_nothing_is_appended()
    {
        using var book = new SmallBook().With(counts: 3);
        CutLastLine(book);
        var cut = book.Bytes;

        var counting = () => SmallBook.Count(book.Book, SmallBook.B1, kept: 9);

        counting.Should().Throw<BookException>().WithMessage("*was cut short*");
        book.Bytes.Should().Equal(cut);
    }

    [Fact]
    public void A_last_line_with_a_sector_never_written_is_torn_though_its_line_feed_is_there()
    {
        using var book = new SmallBook().With(counts: 6);
        var whole = book.Bytes;
        var last = whole.AsSpan(0, whole.Length - 1).LastIndexOf((byte)'\n') + 1;
        if (last / 512 == (whole.Length - 1) / 512)
        {
            // The last line must reach over the end of a sector.
            book.Told(new Closeout.Shifts.Steps.CountLeftover(SmallBook.B2, SmallBook.Lamp, null, 0, 3, 0, Sure: true));
            whole = book.Bytes;
            last = whole.AsSpan(0, whole.Length - 1).LastIndexOf((byte)'\n') + 1;
        }

        var before = PageReader.Read(book.Page, default).Mark.Number - 1;
        var sector = (last / 512 + 1) * 512;
        sector.Should().BeLessThan(whole.Length);
        whole.AsSpan(last, sector - last).Clear();
        File.WriteAllBytes(book.Page, whole);

        // It was never acknowledged: nothing beside the pages bears witness of it.
        File.Delete(book.Folder.Last);

        var reopened = Book.Open(book.Folder);
        SmallBook.Count(reopened, SmallBook.B2, kept: 1).Should().BeNull();

        reopened.Depot.Number.Should().Be(before + 1);
        reopened.Said.Should().Contain($"after entry {before}");
        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void A_line_with_such_a_hole_that_others_follow_is_damaged()
    {
        using var book = new SmallBook().With(counts: 8);
        var bytes = book.Bytes;
        var sector = (bytes.Length / 512 - 2) * 512;
        bytes.AsSpan(sector - 20, 20).Clear();
        File.WriteAllBytes(book.Page, bytes);

        var opening = () => Book.Open(book.Folder);

        opening.Should().Throw<BookException>().WithMessage("*Entries up to * are good*");
    }

    private static void CutLastLine(SmallBook book)
    {
        var bytes = book.Bytes;
        File.WriteAllBytes(book.Page, bytes[..(bytes.AsSpan(0, bytes.Length - 1).LastIndexOf((byte)'\n') + 1)]);
    }
}
