using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>A limit on how long a file may be, of a disk or of a user, through the program itself: a sentence, and nothing half written.</summary>
[Trait(Built.Starts, "closeout")]
public sealed class FileSizeLimitTests
{
    // A thousand bytes; the signal ignored, as the system tells it by an error then.
    private static readonly string[] Limited = ["sh", "-c", "trap '' XFSZ; ulimit -f 1; exec \"$@\"", "sh"];

    [NeedsFact(Needs.Shell)]
    public void Backup_restore_repair_and_files_out_end_with_a_sentence()
    {
        using var book = new LongBook();
        using var temp = new TempFolder();
        Backup.Write(book.Folder, temp["good.zip"], SmallBook.At(9));
        foreach (var args in new string[][] { ["backup", "--out", "b.zip"], ["check", "--repair", "--out", "saved"], ["picks", "--out", "picks"], ["--book", "new", "restore", "good.zip"] })
        {
            var said = Started.CloseoutBy(Limited, temp.Path, [.. args[0] == "--book" ? [] : new[] { "--book", book.Folder.Path }, .. args]);

            said.Code.Should().Be(3, string.Join(' ', args) + said.Out + said.Err);
            said.Err.Should().Contain("The file may not become so long: the disk has a limit for one file, or the user has.").And.NotContain("   at ");
        }

        Directory.EnumerateFileSystemEntries(temp.Path).Select(f => Path.GetFileName(f)).Should().BeEquivalentTo("good.zip", "picks");
    }
}
