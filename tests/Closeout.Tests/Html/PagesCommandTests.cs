using Closeout.Commands;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Tests.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary><c>stow</c>, <c>incident</c>, <c>weekly</c>, <c>labels</c>: which files there are, and where they never go.</summary>
public sealed class PagesCommandTests : IDisposable
{
    private readonly TempFolder temp = new();

    public static TheoryData<string, string> Written => new()
    {
        { "stow", "stow-B1.html stow-B2.html stow-B3.html stow-B4.html stow-B5.html stow-B6.html" },
        { "incident", "incident-1.html incident-2.html incident-3.html incident-4.html" },
        { "weekly", "weekly-B1.html weekly-B2.html weekly-B3.html weekly-B4.html weekly-B5.html weekly-B6.html" },
        { "labels", "labels-badges.html labels-bins.html labels-boxes.html labels-shelf.html labels-vans.html" },
    };

    public void Dispose() => temp.Dispose();

    [Theory]
    [MemberData(nameof(Written))]
    public void Each_page_is_a_file_that_stands_alone_and_the_same_book_gives_the_same_bytes(string command, string files)
    {
        using var kiosk = SampleKiosk.Evening();

        Run(kiosk.Folder, command, temp["a"]).Should().Match<Spoken>(s => s.Code == 0 && s.Err == "" && s.Out.EndsWith(" written.\n"));
        Run(kiosk.Folder, command, temp["b"]).Code.Should().Be(0);

        Directory.GetFiles(temp["a"]).Select(Path.GetFileName).Order(StringComparer.Ordinal).Should().Equal(files.Split(' '));
        foreach (var file in files.Split(' '))
        {
            PageText.MustStandAlone(File.ReadAllText(temp["a", file]));
            File.ReadAllBytes(temp["a", file]).Should().Equal(File.ReadAllBytes(temp["b", file]));
        }
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void A_book_just_set_up_gives_its_pages_too(string command, string files)
    {
        using var kiosk = new SampleKiosk();

        Run(kiosk.Folder, command, temp["out"]).Code.Should().Be(0);
        Directory.GetFiles(temp["out"]).Should().HaveCount(command == "incident" ? 1 : files.Split(' ').Length);
    }

    [Theory]
    [MemberData(nameof(Written))]
    public void No_page_gets_into_a_book_also_not_through_a_link(string command, string files)
    {
        using var book = new LongBook();
        var before = Directory.GetFiles(book.Folder.Pages).Order().ToList();
        Directory.CreateSymbolicLink(temp["link"], book.Folder.Pages);

        Run(book.Folder, command, book.Folder.Files).Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith("--out is inside a book"));
        Run(book.Folder, command, temp["link"]).Code.Should().Be(2);
        Directory.CreateDirectory(temp["out"]);
        File.CreateSymbolicLink(temp["out", files.Split(' ')[0]], Path.Combine(book.Folder.Pages, "2026-12-24.jsonl"));
        if (command is not "incident")
            Run(book.Folder, command, temp["out"]).Code.Should().Be(2);

        Directory.GetFiles(book.Folder.Pages).Order().Should().Equal(before);
        Directory.GetFiles(temp["out"]).Should().ContainSingle("a page that cannot be written leaves the others unwritten");
    }

    [Fact]
    public void Of_a_book_of_several_days_the_week_has_them_all_and_a_date_ends_it_earlier()
    {
        using var book = new LongBook();

        Run(book.Folder, "weekly", temp["all"]).Code.Should().Be(0);
        Rows(temp["all", "weekly-B1.html"]).Should().Be(3);
        Run(book.Folder, "weekly", temp["two"], "--date", $"{LongBook.Second:yyyy-MM-dd}").Code.Should().Be(0);
        Rows(temp["two", "weekly-B1.html"]).Should().Be(2);

        static int Rows(string file) => PageText.Parsed(File.ReadAllText(file)).Descendants("tbody").First().Elements("tr").Count();
    }

    [Fact]
    public void A_photo_that_the_book_has_lost_is_told_with_its_page_and_all_pages_are_written()
    {
        using var kiosk = SampleKiosk.Evening();
        Directory.GetFiles(kiosk.Folder.Files).ToList().ForEach(File.Delete);

        Run(kiosk.Folder, "incident", temp["out"]).Should().Match<Spoken>(s => s.Code == 1 && s.Err.StartsWith("incident-3.html: ") && s.Err.Contains("Restore it from a backup"));
        Directory.GetFiles(temp["out"]).Should().HaveCount(4);
        File.ReadAllText(temp["out", "incident-3.html"]).Should().Contain(">MISSING<");
    }

    private static Spoken Run(BookFolder folder, string command, string outDir, params string[] more) =>
        Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse(["--book", folder.Path, command, "--out", outDir, .. more]).Invoke());
}
