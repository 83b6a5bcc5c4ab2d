using Closeout.Commands;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>Files written whole, and what is told where they cannot be.</summary>
public sealed class DiskTests : IDisposable
{
    private readonly TempFolder temp = new();

    public void Dispose() => temp.Dispose();

    [Fact]
    public void A_writer_that_fails_takes_nothing_away_from_another()
    {
        // The other has the name that all writers used to share.
        using var other = new FileStream(temp["a.csv.new"], FileMode.CreateNew, FileAccess.Write, FileShare.None);

        Output.Write(temp["a.csv"], "mine"u8.ToArray());
        Directory.CreateDirectory(temp["b.csv"]);
        FluentActions.Invoking(() => Output.Write(temp["b.csv"], "mine"u8.ToArray())).Should().Throw<BookException>();

        File.ReadAllText(temp["a.csv"]).Should().Be("mine");
        Directory.EnumerateFiles(temp.Path).Select(f => Path.GetFileName(f)).Should().BeEquivalentTo("a.csv", "a.csv.new");
    }

    [Fact]
    public void Many_writers_of_one_file_each_write_it_whole()
    {
        Parallel.For(0, 60, i => Output.Write(temp["a.csv"], System.Text.Encoding.ASCII.GetBytes(new string((char)('a' + (i % 26)), 5_000))));

        File.ReadAllText(temp["a.csv"]).Should().HaveLength(5_000).And.Match(t => t.Distinct().Count() == 1);
        Directory.EnumerateFiles(temp.Path).Should().ContainSingle();
    }

    [Fact]
    public void What_is_told_of_a_file_that_cannot_be_written_is_its_own_name() =>
        FluentActions.Invoking(() => Output.Write(temp["nowhere", "a.csv"], [1])).Should().Throw<BookException>().Which.Message.Should().Contain(temp["nowhere", "a.csv"] + "'");

    [Fact]
    public void What_writers_that_died_left_in_a_book_is_no_page_and_no_attachment_and_no_fault()
    {
        using var book = new SmallBook().With(counts: 1);
        Directory.CreateDirectory(book.Folder.Files);
        var page = $"{book.Folder.Page(SmallDay.Date.AddDays(1))}.{Guid.NewGuid():N}.new";
        var picture = Path.Combine(book.Folder.Files, $"{new string('a', 64)}.{Guid.NewGuid():N}.new");
        var old = Path.Combine(book.Folder.Files, new string('b', 64) + ".new");
        foreach (var left in new[] { page, picture, old })
        {
            File.WriteAllText(left, "half");
        }

        book.Folder.Dates.Should().Equal(SmallDay.Date);
        Book.Open(book.Folder).Date.Should().Be(SmallDay.Date);
        var said = book.Check();

        said.Code.Should().Be(0, said.Err);
        new[] { page, picture, old }.Should().AllSatisfy(left => said.Out.Should().Contain($"{left} was begun by a program that died, and is not read; it may be deleted."));
        Backup.Write(book.Folder, temp["b.zip"], SmallBook.At(9)).Parts.Should().ContainSingle();
    }
}
