using Closeout.Commands;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

public sealed class BookInUseTests
{
    [Fact]
    public void While_another_holds_the_lock_nothing_is_recorded_and_a_sentence_says_why_after_some_patience()
    {
        using var book = new SmallBook().With(counts: 1);
        var before = book.Bytes;
        using (Held(book.Folder.Lock))
        {
            var counting = () => SmallBook.Count(book.Book, SmallBook.B1, kept: 2);

            counting.Should().Throw<BookException>().WithMessage($"The book at {book.Folder.Path} is in use: another program has held it for 5 seconds. Nothing was recorded; try again when it is done.");
        }

        book.Bytes.Should().Equal(before);
        SmallBook.Count(book.Book, SmallBook.B1, kept: 2).Should().BeNull("the lock is free again");
    }

    [Fact]
    public void A_lock_freed_within_the_patience_is_waited_for()
    {
        using var book = new SmallBook().With(counts: 1);
        var held = Held(book.Folder.Lock);
        using var later = new Timer(_ => held.Dispose(), null, 300, Timeout.Infinite);

        SmallBook.Count(book.Book, SmallBook.B1, kept: 2).Should().BeNull();
    }

    [Fact]
    public void Readers_work_while_the_book_is_held()
    {
        using var book = new SmallBook().With(counts: 1);
        using var temp = new TempFolder();
        using (Held(book.Folder.Lock))
        {
            foreach (var command in new[] { "wall", $"restock --out {temp["r.csv"]}", "check" })
            {
                var said = Command(book.Folder, command.Split(' '));
                said.Code.Should().Be(0, said.Err);
            }

            Book.Open(book.Folder).Refresh().Should().BeFalse();
        }

        File.Exists(temp["r.csv"]).Should().BeTrue();
    }

    [Fact]
    public void Loading_into_a_book_in_use_exits_with_3_and_a_sentence()
    {
        using var book = new SmallBook();
        using var temp = new TempFolder();
        var before = book.Bytes;
        using var held = Held(book.Folder.Lock);

        var load = Command(book.Folder, "load", SmallDay.Write(temp["day"]));

        load.Code.Should().Be(3);
        load.Err.Should().Contain("is in use");
        book.Bytes.Should().Equal(before);
    }

    [Fact]
    public void A_lock_held_by_a_program_that_died_is_free()
    {
        using var book = new SmallBook().With(counts: 0);
        using (var writer = Started.Begin(Built.Appender, Path.GetTempPath(), book.Folder.Path, "B1", "LAMP", "1000000"))
        {
            writer.StandardInput.WriteLine();
            while (writer.StandardOutput.ReadLine() is not (null or "20"))
            {
            }

            writer.Kill();
            writer.WaitForExit();
        }

        using var taken = BookLock.Take(book.Folder.Lock);
        File.Exists(book.Folder.Lock).Should().BeTrue();
    }

    private static FileStream Held(string path) => new(path, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);

    private static Spoken Command(BookFolder book, params string[] args) =>
        Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse(["--book", book.Path, .. args]).Invoke(new() { EnableDefaultExceptionHandler = false }));
}
