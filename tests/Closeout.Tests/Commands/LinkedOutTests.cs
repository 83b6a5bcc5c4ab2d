using Closeout.Commands;
using Closeout.Store;
using Closeout.Tests.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>No file out gets into a book by a link: not one of the file itself, of a folder on the way, or one that leads to nothing yet.</summary>
public sealed class LinkedOutTests : IDisposable
{
    private readonly LongBook book = new();
    private readonly string page;
    private readonly IReadOnlyDictionary<string, string> before;

    public LinkedOutTests()
    {
        page = book.Folder.Page(LongBook.Second);
        before = Everything();
    }

    public static TheoryData<string> FilesOut => [.. Output.Files.Keys.Where(f => f != "wall"), "audit", "backup"];

    private TempFolder Temp => book.Temp;

    public void Dispose() => book.Dispose();

    [Theory]
    [MemberData(nameof(FilesOut))]
    public void A_command_writes_no_page_through_a_linked_folder(string command)
    {
        Directory.CreateSymbolicLink(Temp["out"], book.Folder.Pages);

        Refused(Run(command, "--out", Temp["out", "2026-12-24.jsonl"]));
        if (command != "backup")
        {
            Refused(Run(command, "--out", Temp["out", Path.GetFileName(page)]));
        }
    }

    [Theory]
    [MemberData(nameof(FilesOut))]
    public void A_command_writes_nothing_into_a_book_through_a_link_that_dangles(string command)
    {
        File.CreateSymbolicLink(Temp["out.csv"], Path.Combine(book.Folder.Pages, "2026-12-24.jsonl"));

        Run(command, "--out", Temp["out.csv"]).Should().Match<Spoken>(s => s.Code == 2 && s.Err.Length > 0);
        Everything().Should().BeEquivalentTo(before);
    }

    [Fact]
    public void Links_are_followed_one_to_the_next_and_back_through_folders_above()
    {
        Directory.CreateDirectory(Temp["a", "b"]);
        Directory.CreateSymbolicLink(Temp["a", "b", "pages"], "../../book/pages");
        Directory.CreateSymbolicLink(Temp["pages"], "a/b/pages");
        File.CreateSymbolicLink(Temp["r.csv"], "a/b/pages/../files/r.csv");

        Refused(Run("restock", "--out", Temp["pages", Path.GetFileName(page)]));
        Refused(Run("restock", "--out", Temp["r.csv"]));
    }

    [Theory]
    [InlineData("picks", "picks.html")]
    [InlineData("picks", "pick-B1.txt")]
    [InlineData("morning", "morning.html")]
    [InlineData("morning", "morning-B2.txt")]
    public void Sheets_are_not_written_over_a_page(string command, string sheet)
    {
        Directory.CreateDirectory(Temp["sheets"]);
        File.CreateSymbolicLink(Temp["sheets", sheet], page);

        Refused(Run(command, "--out", Temp["sheets"]));
    }

    [Theory]
    [InlineData("picks")]
    [InlineData("morning")]
    [InlineData("photos")]
    public void A_folder_out_is_made_in_no_book(string command)
    {
        Directory.CreateSymbolicLink(Temp["link"], book.Folder.Path);

        var said = Run(command, "--out", Temp["link"]);

        Refused(said);
        said.Err.Should().Contain($"found {Temp["link"]}");
        Refused(Run(command, "--out", Temp["link", "sub"]));
        Refused(Run(command, "--out", Path.Combine(book.Folder.Path, "pages", "sub")));
    }

    [Fact]
    public void A_picture_out_goes_into_no_book()
    {
        var into = Temp["pictures", "2026-03-06"];
        Directory.CreateDirectory(Path.GetDirectoryName(into)!);
        Directory.CreateSymbolicLink(into, book.Folder.Files);

        Refused(Run("photos", "--out", Temp["pictures"]));
    }

    [Fact]
    public void A_rehearsal_leaves_a_book_alone()
    {
        Directory.CreateSymbolicLink(Temp["link"], book.Folder.Pages);
        var day = SmallDay.Write(Temp["day"]);
        Directory.CreateDirectory(Temp["out"]);
        File.CreateSymbolicLink(Temp["out", "restock.csv"], page);
        Directory.CreateSymbolicLink(Temp["out2"], Temp["out3"]);
        Directory.CreateDirectory(Temp["out3"]);
        Directory.CreateSymbolicLink(Temp["out3", "morning"], book.Folder.Files);

        Refused(Run("rehearse", day, "--out", Temp["link"]));
        Refused(Run("rehearse", day, "--out", Temp["link", "sub"]));
        Refused(Run("rehearse", day, "--out", Temp["out"]));
        Refused(Run("rehearse", day, "--out", Temp["out2"]));
        Directory.EnumerateFileSystemEntries(Temp["out"]).Should().ContainSingle("nothing is written when one file may not be");
    }

    [Fact]
    public void A_new_book_is_made_in_no_other()
    {
        Directory.CreateSymbolicLink(Temp["link"], book.Folder.Path);
        Backup.Write(book.Folder, Temp["b.zip"], SmallBook.At(9));

        Refused(Run("check", "--repair", "--out", Temp["link", "saved"]));
        Refused(Spoken.By(() => Invoke("--book", Temp["link", "back"], "restore", Temp["b.zip"])));
        Refused(Spoken.By(() => Invoke("--book", Temp["link", "pages", "inner"], "rehearse", SmallDay.Write(Temp["day"]), "--out", Temp["out"])));
    }

    [Fact]
    public void A_new_book_is_made_where_a_link_leads_and_the_link_stays_one()
    {
        Backup.Write(book.Folder, Temp["b.zip"], SmallBook.At(9));
        Directory.CreateDirectory(Temp["disk", "empty"]);
        Directory.CreateSymbolicLink(Temp["link"], Temp["disk", "empty"]);
        Directory.CreateSymbolicLink(Temp["dangling"], Temp["disk", "new"]);

        Spoken.By(() => Invoke("--book", Temp["link"], "restore", Temp["b.zip"])).Code.Should().Be(0);
        Run("check", "--repair", "--out", Temp["dangling"]).Code.Should().Be(0);

        Directory.ResolveLinkTarget(Temp["link"], false)!.FullName.Should().Be(Temp["disk", "empty"]);
        Directory.ResolveLinkTarget(Temp["dangling"], false)!.FullName.Should().Be(Temp["disk", "new"]);
        BookCheck.Of(new(Temp["disk", "empty"])).Entries.Should().Be(book.Entries);
        BookCheck.Of(new(Temp["disk", "new"])).Entries.Should().Be(book.Entries);
    }

    [Fact]
    public void A_backup_may_go_where_the_program_keeps_its_own()
    {
        Directory.CreateDirectory(book.Folder.Backups);

        Run("backup", "--out", Path.Combine(book.Folder.Backups, "by-hand.zip")).Code.Should().Be(0);
        Run("restock", "--out", Path.Combine(book.Folder.Backups, "r.csv")).Code.Should().Be(2);
    }

    [Fact]
    public void A_link_that_leads_outside_and_dangles_is_followed()
    {
        File.CreateSymbolicLink(Temp["r.csv"], Temp["real.csv"]);

        Run("restock", "--out", Temp["r.csv"]).Code.Should().Be(0);

        File.ResolveLinkTarget(Temp["r.csv"], false)!.FullName.Should().Be(Temp["real.csv"]);
        File.ReadAllText(Temp["real.csv"]).Should().StartWith("date,van,");
    }

    [Fact]
    public void Links_in_a_circle_are_told()
    {
        File.CreateSymbolicLink(Temp["one"], Temp["two"]);
        File.CreateSymbolicLink(Temp["two"], Temp["one"]);

        Run("restock", "--out", Temp["one"]).Should().Match<Spoken>(s => s.Code == 3 && s.Err.Contains("in a circle"));
    }

    private void Refused(Spoken said)
    {
        said.Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith("--", StringComparison.Ordinal) && s.Err.Contains("is inside a book: found "), said.Out + said.Err);
        Everything().Should().BeEquivalentTo(before);
    }

    /// <summary>Every file of the book but its archive's, with its content.</summary>
    private Dictionary<string, string> Everything() => Directory.EnumerateFileSystemEntries(book.Folder.Path, "*", SearchOption.AllDirectories)
        .Where(f => !f.StartsWith(book.Folder.Archive, StringComparison.Ordinal))
        .ToDictionary(f => f, f => File.Exists(f) ? Convert.ToHexString(File.ReadAllBytes(f)) : "folder");

    private Spoken Run(params string[] args) => Spoken.By(() => Invoke(args[0] == "rehearse" ? args : ["--book", book.Folder.Path, .. args]));

    private static int Invoke(params string[] args) => CommandLine.Build(TimeProvider.System).Parse(args).Invoke(new() { EnableDefaultExceptionHandler = false });
}
