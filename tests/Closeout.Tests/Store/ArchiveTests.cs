using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class ArchiveTests
{
    private static readonly DateOnly Tomorrow = SmallDay.Date.AddDays(1);

    [Fact]
    public void It_is_made_when_missing()
    {
        using var book = Emptied();
        Directory.Exists(book.Folder.Archive).Should().BeFalse();

        Boxes(book).Should().Equal(new BoxDay(SmallDay.Date, 3, 3, Boxes(book)[0].WeightLb));

        new Archive(book.Folder).Seen().Number.Should().Be(book.Book.Depot.Number);
    }

    [Fact]
    public void The_sums_of_boxes_are_those_of_all_vans_by_day_from_one_date_to_another_both_included()
    {
        using var book = new SmallBook();
        Empty(book.Book, SmallBook.B1);
        Empty(book.NextDay(), SmallBook.B2);

        var days = Boxes(book);

        days.Select(d => (d.Date, d.Expected, d.Flattened)).Should().Equal((SmallDay.Date, 2, 2), (Tomorrow, 1, 1));
        days[0].WeightLb.Should().BeApproximately(
            CardboardOf(Book.Open(book.Folder, SmallDay.Date).Depot), 1e-9);
        new Archive(book.Folder).Boxes(Tomorrow, Tomorrow).Should().ContainSingle().Which.Date.Should().Be(Tomorrow);
        new Archive(book.Folder).Boxes(SmallDay.Date.AddDays(-9), SmallDay.Date.AddDays(-1)).Should().BeEmpty();
    }

    [Fact]
    public void An_archive_that_cannot_be_made_is_told_in_a_sentence()
    {
        using var book = Emptied();
        Directory.CreateDirectory(Path.Combine(book.Folder.Archive, "closeout.db"));

        var asking = () => Boxes(book);

        asking.Should().Throw<BookException>().WithMessage($"The archive at {book.Folder.Archive} cannot be written: *Every entry is safe in the pages*");
    }

    [Theory]
    [InlineData("garbage")]
    [InlineData("empty")]
    [InlineData("cut")]
    [InlineData("flipped")]
    public void It_is_made_anew_when_damaged(string how)
    {
        using var book = Emptied();
        var expected = Boxes(book);
        var database = Path.Combine(book.Folder.Archive, "closeout.db");
        var bytes = File.ReadAllBytes(database);
        File.WriteAllBytes(database, how switch
        {
            "garbage" => Enumerable.Range(0, 20_000).Select(i => (byte)(i * 31 % 251)).ToArray(),
            "empty" => [],
            "cut" => bytes[..(bytes.Length / 2)],
            _ => [.. bytes.Select((b, i) => i is > 8192 and < 60_000 ? (byte)(b ^ 0xFF) : b)],
        });

        Boxes(book).Should().Equal(expected);
        new Archive(book.Folder).EntriesOf("B1").Should().NotBeEmpty();
        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void A_byte_that_flips_anywhere_in_it_never_changes_an_answer()
    {
        using var book = Emptied();
        var expected = Boxes(book);
        var database = Path.Combine(book.Folder.Archive, "closeout.db");
        var good = File.ReadAllBytes(database);
        var random = new Random(20261125);
        for (var i = 0; i < 40; i++)
        {
            var bad = (byte[])good.Clone();
            bad[random.Next(bad.Length)] ^= (byte)(1 << random.Next(8));
            File.WriteAllBytes(database, bad);

            Boxes(book).Should().Equal(expected);
            good = File.ReadAllBytes(database);
        }
    }

    [Theory]
    [InlineData("closeout.db")]
    [InlineData("closeout.db.sha256")]
    public void One_of_its_files_gone_it_is_made_anew(string file)
    {
        using var book = Emptied();
        var expected = Boxes(book);
        File.Delete(Path.Combine(book.Folder.Archive, file));

        Boxes(book).Should().Equal(expected);
    }

    [Fact]
    public void A_log_that_a_program_left_when_it_died_is_not_believed()
    {
        using var book = Emptied();
        var expected = Boxes(book);
        File.WriteAllBytes(Path.Combine(book.Folder.Archive, "closeout-log.db"), new byte[8192]);

        new Archive(book.Folder).Seen().Number.Should().Be(0);
        Boxes(book).Should().Equal(expected);
        new Archive(book.Folder).Seen().Number.Should().Be(book.Book.Depot.Number);
    }

    [Fact]
    public void Asking_a_second_time_writes_nothing()
    {
        using var book = Emptied();
        Boxes(book);
        var before = Directory.EnumerateFiles(book.Folder.Archive).ToDictionary(f => f, f => Convert.ToHexString(File.ReadAllBytes(f)));

        Boxes(book);
        new Archive(book.Folder).EntriesOf("B1");

        Directory.EnumerateFiles(book.Folder.Archive).ToDictionary(f => f, f => Convert.ToHexString(File.ReadAllBytes(f))).Should().BeEquivalentTo(before);
    }

    [Fact]
    public void By_command_it_is_made_anew_and_says_how_long_that_took()
    {
        using var book = Emptied();
        var expected = Boxes(book);
        File.WriteAllText(Path.Combine(book.Folder.Archive, "closeout.db"), "nonsense");

        var said = Spoken.By(() => Closeout.Commands.ArchiveCommand.Run(book.Folder, TimeProvider.System));

        said.Out.Should().MatchRegex(@"^Remade the archive from 1 page, \d+ entries, in \d+\.\d s\.\n$");
        Boxes(book).Should().Equal(expected);
    }

    [Fact]
    public void By_command_it_is_left_alone_while_the_pages_are_damaged_for_it_may_know_what_they_lost()
    {
        using var book = new SmallBook().With(counts: 2);
        new Archive(book.Folder).CatchUp();
        var lines = LongBook.Lines(book.Page);
        LongBook.Write(book.Page, lines[..^1]);

        var making = () => Closeout.Commands.ArchiveCommand.Run(book.Folder, TimeProvider.System);

        making.Should().Throw<BookException>().WithMessage("The archive was left as it is: * missing at the end*");
        new Archive(book.Folder).Seen().Number.Should().Be(5);
    }

    [Fact]
    public void A_page_that_is_missing_between_is_not_passed_over()
    {
        using var book = new LongBook();
        Directory.Delete(book.Folder.Archive, recursive: true);
        File.Delete(book.Folder.Page(LongBook.Second));

        var making = () => new Archive(book.Folder).CatchUp();

        making.Should().Throw<BookException>().WithMessage($"{book.Folder.Page(LongBook.Third)}:1: *");
    }

    [Fact]
    public void It_tells_how_far_it_is()
    {
        using var book = new LongBook();
        Directory.Delete(book.Folder.Archive, recursive: true);
        var told = new List<(int, int)>();

        new Archive(book.Folder, (done, all) => told.Add((done, all))).CatchUp();

        told.Should().Equal((0, 3), (1, 3), (2, 3));
    }

    [Fact]
    public void It_catches_up_when_behind_by_entries_and_by_a_page()
    {
        using var book = new SmallBook().With(counts: 1);
        new Archive(book.Folder).CatchUp();
        SmallBook.Count(book.Book, SmallBook.B2, kept: 4).Should().BeNull();
        new Archive(book.Folder).EntriesOf("B2").Should().Equal(3, 5);

        SmallBook.Count(book.Book, SmallBook.B1, kept: 5).Should().BeNull();
        book.Book.Turned(NextPage.After(book.Book.Depot, Tomorrow), SmallBook.At(9));

        new Archive(book.Folder).CatchUp();
        new Archive(book.Folder).Seen().Number.Should().Be(7);
        new Archive(book.Folder).EntriesOf("B1").Should().Equal(2, 4, 6);
    }

    [Fact]
    public void Caught_up_twice_it_holds_each_entry_once()
    {
        using var book = new SmallBook().With(counts: 2);
        new Archive(book.Folder).CatchUp();
        new Archive(book.Folder).CatchUp();

        new Archive(book.Folder).EntriesOf("B1").Should().Equal(2, 4, 5);
    }

    [Fact]
    public void An_archive_of_another_book_is_not_taken_for_this_ones()
    {
        using var book = new SmallBook().With(counts: 0);
        using (var other = new SmallBook(second: -9).Closed(SmallBook.B1, SmallBook.B2))
        {
            new Archive(other.Folder).CatchUp();
            CopyFolder(other.Folder.Archive, book.Folder.Archive);
        }

        new Archive(book.Folder).EntriesOf("B1").Should().Equal([2], "the pages are the truth, and the archive says other entries");
    }

    [Fact]
    public void While_another_program_uses_it_a_sentence_says_so()
    {
        using var book = new SmallBook();
        new Archive(book.Folder).CatchUp();
        using var held = new FileStream(Path.Combine(book.Folder.Archive, "lock"), FileMode.Open, FileAccess.ReadWrite, FileShare.None);

        var reading = () => Boxes(book);

        reading.Should().Throw<BookException>().WithMessage("*is in use*");
        SmallBook.Tell(book.Book, new ComeIn(SmallBook.B1, new("T1"))).Should().BeNull("recording does not need the archive");
    }

    [Fact]
    public void A_damaged_page_is_told_and_the_archive_is_left_alone()
    {
        using var book = new SmallBook().With(counts: 1);
        new Archive(book.Folder).CatchUp();
        File.AppendAllText(book.Page, "nonsense\n");

        var reading = () => new Archive(book.Folder).CatchUp();

        reading.Should().Throw<BookException>().WithMessage($"{book.Page}:5:*");
        Directory.GetFiles(book.Folder.Archive, "*.damaged").Should().BeEmpty();
    }

    /// <summary>B1 empties two cartons of lamps and B2 one; all boxes are flattened.</summary>
    private static SmallBook Emptied()
    {
        var book = new SmallBook();
        Empty(book.Book, SmallBook.B1);
        Empty(book.Book, SmallBook.B2);
        return book;
    }

    private static void Empty(Book book, Code<Van> van)
    {
        SmallBook.Tell(book, new ComeIn(van, new("T1"))).Should().BeNull();
        SmallBook.Tell(book, new CountLeftover(van, SmallBook.Lamp, 0, 0, 0, null, Sure: true)).Should().BeNull();
        foreach (var command in new ICommand[] { new ConfirmLeftovers(van), new ConfirmCardboard(van), new LogMileage(van, 2100, Sure: true), new ConfirmDamage(van, true), new ConfirmKit(van), new CheckWeekly(van, null, 0, true), new Sign(van, new("T1")) })
        {
            SmallBook.Tell(book, command).Should().BeNull();
        }
    }

    private static double CardboardOf(Depot depot) => Closeout.Cardboard.CardboardTotals.Rows(depot).Sum(r => r.WeightLb);

    private static IReadOnlyList<BoxDay> Boxes(SmallBook book) =>
    [
        .. new Archive(book.Folder).Boxes(SmallDay.Date, Tomorrow).GroupBy(b => b.Date)
            .Select(g => new BoxDay(g.Key, g.Sum(b => b.Row.Expected), g.Sum(b => b.Row.Flattened), g.Sum(b => b.Row.WeightLb))),
    ];

    private static void CopyFolder(string from, string to)
    {
        Directory.CreateDirectory(to);
        foreach (var file in Directory.GetFiles(from))
        {
            File.Copy(file, Path.Combine(to, Path.GetFileName(file)));
        }
    }
}
