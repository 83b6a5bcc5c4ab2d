using System.Diagnostics;
using System.Globalization;
using Closeout.Facts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Two real processes at one book, and processes that are killed.</summary>
public sealed class TwoProgramsTests
{
    [Fact]
    public void Two_programs_that_append_at_once_lose_and_double_nothing()
    {
        using var book = new SmallBook().With(counts: 0);
        using var one = Begin(book, SmallBook.B1, 500);
        using var two = Begin(book, SmallBook.B2, 500);
        one.StandardInput.WriteLine();
        two.StandardInput.WriteLine();
        Ended(one).Should().Be("");
        Ended(two).Should().Be("");

        var counts = Counts(book);
        counts.Where(c => c.Van == SmallBook.B1).Select(c => c.Count.Kept).Should().Equal(Enumerable.Range(1, 500));
        counts.Where(c => c.Van == SmallBook.B2).Select(c => c.Count.Kept).Should().Equal(Enumerable.Range(1, 500));
        counts.Zip(counts.Skip(1)).Count(pair => pair.First.Van != pair.Second.Van).Should().BeGreaterThan(10, "they must really have written side by side");
        book.Check().Should().Match<Spoken>(s => s.Code == 0 && s.Out.Contains("1003 entries"));
    }

    [Fact]
    public void Two_book_objects_on_two_threads_lose_and_double_nothing()
    {
        using var book = new SmallBook().With(counts: 0);
        Code<Van>[] vans = [SmallBook.B1, SmallBook.B2];
        Parallel.ForEach(vans, new ParallelOptions { MaxDegreeOfParallelism = 2 }, van =>
        {
            var own = Book.Open(book.Folder);
            for (var kept = 1; kept <= 200; kept++)
            {
                SmallBook.Count(own, van, kept).Should().BeNull();
            }
        });

        foreach (var van in vans)
        {
            Counts(book).Where(c => c.Van == van).Select(c => c.Count.Kept).Should().Equal(Enumerable.Range(1, 200));
        }

        book.Check().Code.Should().Be(0);
    }

    [Fact]
    public void A_writer_that_is_killed_leaves_a_good_book_with_all_that_it_said_was_recorded()
    {
        using var book = new SmallBook().With(counts: 0);
        for (var round = 1; round <= 4; round++)
        {
            var before = Counts(book).Count;
            using var writer = Begin(book, SmallBook.B1, 1_000_000);
            writer.StandardInput.WriteLine();
            var said = 1;
            while (said < 40 * round && writer.StandardOutput.ReadLine() is { } line)
            {
                said = int.Parse(line, CultureInfo.InvariantCulture);
            }

            writer.Kill();
            said = writer.StandardOutput.ReadToEnd().Split('\n').SkipLast(1).Select(l => int.Parse(l, CultureInfo.InvariantCulture)).LastOrDefault(said);
            writer.WaitForExit();

            var counts = Counts(book).Skip(before).Select(c => c.Count.Kept).ToList();
            counts.Should().Equal(Enumerable.Range(1, counts.Count));
            counts.Count.Should().BeInRange(said, said + 1, "what was said is on disk, and at most one entry was not said any more");
            book.Check().Code.Should().Be(0);
        }

        SmallBook.Count(Book.Open(book.Folder), SmallBook.B2, kept: 1).Should().BeNull();
        book.Check().Code.Should().Be(0);
    }

    private static Process Begin(SmallBook book, Code<Van> van, int counts)
    {
        var program = Started.Begin(Built.Appender, Path.GetTempPath(), book.Folder.Path, van.Text, SmallBook.Lamp.Text, counts.ToString(CultureInfo.InvariantCulture));
        program.StandardOutput.ReadLine().Should().Be("1");
        return program;
    }

    /// <summary>Its standard error, once it has ended well.</summary>
    private static string Ended(Process program)
    {
        program.StandardOutput.ReadToEndAsync();
        var err = program.StandardError.ReadToEnd();
        program.WaitForExit();
        return err;
    }

    private static List<LeftoverCounted> Counts(SmallBook book) =>
        [.. PageReader.Read(book.Page, default).Entries.Select(e => e.Entry).OfType<LeftoverCounted>()];
}
