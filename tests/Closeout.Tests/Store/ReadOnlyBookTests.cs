using System.Diagnostics;
using Closeout.Faults.Machine;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>A book that may only be read, and a check that only reads.</summary>
public sealed class ReadOnlyBookTests
{
    [NeedsFact(Needs.Mounts)]
    [Trait(Built.Starts, "closeout")]
    public void Check_and_repair_of_a_book_on_a_disk_that_cannot_be_written_work_with_the_archive_as_a_witness()
    {
        using var book = new LongBook();
        File.Delete(book.Folder.Last);
        string[] readOnly = [.. OwnMounts.Words, "sh", "-c", "mount --bind \"$0\" \"$0\" && mount -o remount,ro,bind \"$0\" && exec \"$@\"", book.Folder.Path];

        var check = Started.CloseoutBy(readOnly, book.Temp.Path, "--book", book.Folder.Path, "check");
        var repair = Started.CloseoutBy(readOnly, book.Temp.Path, "--book", book.Folder.Path, "check", "--repair", "--out", "saved");
        CutOff(book);
        var cut = Started.CloseoutBy(readOnly, book.Temp.Path, "--book", book.Folder.Path, "check");

        check.Code.Should().Be(0, check.Out + check.Err);
        check.Out.Should().NotContain("was not asked");
        repair.Code.Should().Be(0, repair.Out + repair.Err);
        cut.Code.Should().Be(1);
        cut.Err.Should().Contain("the archive has seen them");
    }

    [NeedsFact(Needs.OrdinaryUser)]
    [Trait(Built.Starts, "closeout")]
    public void Check_of_a_book_of_which_nothing_may_be_written_works_for_whoever_may_read_it()
    {
        using var book = new LongBook();
        Do("chmod", "-R", "a-w", book.Folder.Path);
        try
        {
            var said = Started.CloseoutBy(Needs.AsOrdinaryUser, book.Temp.Path, "--book", book.Folder.Path, "check");

            said.Code.Should().Be(0, said.Out + said.Err);
            said.Out.Should().NotContain("was not asked").And.EndWith("the ledger balances.\n");
        }
        finally
        {
            Do("chmod", "-R", "u+w", book.Folder.Path);
        }
    }

    [NeedsFact(Needs.OrdinaryUser)]
    [Trait(Built.Starts, "closeout")]
    public void A_folder_of_the_book_that_may_not_be_read_is_a_sentence()
    {
        foreach (var folder in new[] { "files", "pages" })
        {
            using var book = new LongBook();
            var path = Path.Combine(book.Folder.Path, folder);
            Do("chmod", "0", path);
            var said = Started.CloseoutBy(Needs.AsOrdinaryUser, book.Temp.Path, "--book", book.Folder.Path, "check");
            Do("chmod", "700", path);

            said.Code.Should().Be(3);
            said.Err.Should().Contain($"at {path} cannot be listed: ").And.NotContain("   at ");
        }
    }

    [Fact]
    public void Check_changes_not_a_byte_and_makes_not_a_file()
    {
        using var book = new LongBook();
        File.Delete(book.Folder.Last);
        var before = Everything(book.Folder.Path);

        Spoken.By(() => Closeout.Commands.CheckCommand.Run(book.Folder)).Code.Should().Be(0);
        Salvage.Into(book.Folder, new(book.Temp["saved"]), SmallBook.At(9)).Lost.Should().Be(0);

        Everything(book.Folder.Path).Should().Equal(before);
    }

    [Fact]
    public void An_archive_in_use_bears_no_witness_and_a_note_says_so()
    {
        using var book = new LongBook();
        using var held = BookLock.Take(Path.Combine(book.Folder.Archive, "lock"));

        var said = Spoken.By(() => Closeout.Commands.CheckCommand.Run(book.Folder));

        said.Code.Should().Be(0);
        said.Out.Should().Contain($"The archive at {book.Folder.Archive} was not asked what it has seen. The book at {book.Folder.Archive} is in use");
    }

    private static void CutOff(LongBook book)
    {
        var page = book.Folder.Page(LongBook.Third);
        var lines = File.ReadAllLines(page);
        File.WriteAllText(page, string.Concat(lines[..^1].Select(l => l + "\n")));
    }

    private static List<string> Everything(string folder) =>
        [.. Directory.EnumerateFileSystemEntries(folder, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => $"{f} {File.GetLastWriteTimeUtc(f):O} {(File.Exists(f) ? Convert.ToHexString(System.Security.Cryptography.SHA256.HashData(File.ReadAllBytes(f))) : "")}")];

    private static void Do(params string[] words)
    {
        using var process = Process.Start(words[0], words[1..]);
        process.WaitForExit();
        process.ExitCode.Should().Be(0, string.Join(' ', words));
    }
}
