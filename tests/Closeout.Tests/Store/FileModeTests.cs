using System.Runtime.Versioning;
using Closeout.Commands;
using FluentAssertions;

namespace Closeout.Tests.Store;

[UnsupportedOSPlatform("windows")]
public sealed class FileModeTests
{
    private const UnixFileMode OwnersFile = UnixFileMode.UserRead | UnixFileMode.UserWrite;
    private const UnixFileMode OwnersFolder = OwnersFile | UnixFileMode.UserExecute;

    [NeedsFact(Needs.Unix)]
    public void Every_folder_and_file_of_a_book_is_for_its_owner_alone_and_so_is_a_backup()
    {
        using var temp = new TempFolder();
        SmallDay.Write(temp["day"], SmallDay.Evening("B1,T1,sign,,,"));
        Command(temp, "rehearse", temp["day"], "--out", temp["out"]);
        Command(temp, "--book", temp["book"], "load", temp["day"]);
        Command(temp, "--book", temp["book"], "backup", "--out", temp["b.zip"]);
        Command(temp, "--book", temp["back"], "restore", temp["b.zip"]);
        Command(temp, "--book", temp["book"], "check", "--repair", "--out", temp["saved"]);

        var books = new[] { temp["out", "book"], temp["book"], temp["back"], temp["saved"] };
        foreach (var folder in books.Concat(books.SelectMany(b => Directory.EnumerateDirectories(b, "*", SearchOption.AllDirectories))))
        {
            File.GetUnixFileMode(folder).Should().Be(OwnersFolder, folder);
        }

        foreach (var file in books.SelectMany(b => Directory.EnumerateFiles(b, "*", SearchOption.AllDirectories)).Append(temp["b.zip"]))
        {
            File.GetUnixFileMode(file).Should().Be(OwnersFile, file);
        }

        Directory.EnumerateFiles(temp["book", "backups"]).Should().ContainSingle("load wrote the day's backup");
    }

    [NeedsFact(Needs.Unix)]
    public void A_file_written_for_others_keeps_the_users_own_mask()
    {
        using var book = new SmallBook();
        using var temp = new TempFolder();
        File.WriteAllText(temp["as-the-mask-says"], "");
        Command(temp, "--book", book.Folder.Path, "restock", "--out", temp["restock.csv"]);

        File.GetUnixFileMode(temp["restock.csv"]).Should().Be(File.GetUnixFileMode(temp["as-the-mask-says"]));
    }

    private static void Command(TempFolder temp, params string[] args)
    {
        var run = Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse(args).Invoke(new() { EnableDefaultExceptionHandler = false }));
        run.Code.Should().Be(0, run.Err.Replace(temp.Path, "", StringComparison.Ordinal));
    }
}
