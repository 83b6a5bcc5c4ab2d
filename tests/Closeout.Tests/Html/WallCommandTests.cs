using System.Diagnostics;
using Closeout.Commands;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Turning;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary><c>wall --html</c>, once and again and again.</summary>
public sealed class WallCommandTests : IDisposable
{
    private readonly SampleKiosk kiosk = new();
    private readonly TempFolder temp = new();

    public void Dispose()
    {
        kiosk.Dispose();
        temp.Dispose();
    }

    [Fact]
    public void It_is_written_once_and_nothing_is_printed()
    {
        Run("--html", temp["wall.html"]).Should().Be(new Spoken(0, "", ""));

        PageText.MustStandAlone(File.ReadAllText(temp["wall.html"]));
        Directory.GetFiles(temp.Path).Should().Equal(temp["wall.html"]);
        Run("--html", temp["wall.html"], "--final").Should().Match<Spoken>(s => s.Code == 1 && s.Err.Contains("is not closed"));
    }

    [Fact]
    public void Again_and_again_it_shows_what_others_recorded_meanwhile_and_at_last_that_it_has_ended()
    {
        var seen = new List<string>();
        var said = Every(temp["wall.html"], time =>
        {
            time.Should().Be(TimeSpan.FromSeconds(5));
            seen.Add(File.ReadAllText(temp["wall.html"]));
            kiosk.Session.Desk.Record(new ComeIn(new($"B{seen.Count}"), new("T02"))).Should().BeNull();
            return seen.Count < 3;
        });

        said.Should().Be(new Spoken(0, "", ""));
        seen.Select(s => s.Count(c => c == '◐')).Should().Equal(0, 1, 2);
        seen.Should().OnlyContain(s => s.Contains("content=\"5\"") && s.EndsWith("</html>\n", StringComparison.Ordinal));
        File.ReadAllText(temp["wall.html"]).Should().Contain("ENDED");
    }

    [Fact]
    public void A_place_that_is_away_is_told_once_and_tried_again_until_it_is_back()
    {
        var turns = 0;
        var said = Every(temp["display", "wall.html"], _ =>
        {
            if (++turns == 2)
                Directory.CreateDirectory(temp["display"]);

            return turns < 4;
        });

        said.Code.Should().Be(0);
        said.Err.Should().MatchRegex("^.*wall.html cannot be written: .* It is tried again every 5 s.\n$").And.Subject.Count(c => c == '\n').Should().Be(1);
        File.Exists(temp["display", "wall.html"]).Should().BeTrue();
    }

    [Fact]
    public void When_the_day_is_ended_the_wall_goes_on_with_the_next()
    {
        var said = Every(temp["wall.html"], _ =>
        {
            var next = kiosk.Book.Date.AddDays(1);
            if (Book.Open(kiosk.Folder).Date == next)
                return false;

            return Book.Open(kiosk.Folder).Record(depot => new(NextPage.After(depot, next), null), kiosk.Clock.GetLocalNow()) is null;
        });

        said.Should().Be(new Spoken(0, "", ""));
        File.ReadAllText(temp["wall.html"]).Should().Contain("<p>Thu 19 Nov 2026, as of");
    }

    [Fact]
    public void A_book_that_is_moved_away_is_told_and_the_wall_stays_as_it_was()
    {
        var turns = 0;
        var said = Every(temp["wall.html"], _ =>
        {
            if (++turns == 1)
                Directory.Move(kiosk.Folder.Pages, kiosk.Folder.Pages + "-away");
            else
                Directory.Move(kiosk.Folder.Pages + "-away", kiosk.Folder.Pages);

            return turns < 2;
        });

        said.Should().Match<Spoken>(s => s.Code == 0 && s.Err.Contains("is gone") && s.Err.Contains("tried again every 5 s"));
    }

    [Theory]
    [InlineData("--every needs --html", "--every", "5")]
    [InlineData("--every is out of bounds: found 1, allowed 2 to 3600", "--html", "x.html", "--every", "1")]
    [InlineData("--every is out of bounds: found 3601,", "--html", "x.html", "--every", "3601")]
    [InlineData("--every writes a file again and again: found -", "--html", "-", "--every", "5")]
    [InlineData("Leave --date and --final away", "--html", "x.html", "--every", "5", "--final")]
    [InlineData("Leave --date and --final away", "--html", "x.html", "--every", "5", "--date", "2026-11-18")]
    [InlineData("--html is empty", "--html", "")]
    public void What_makes_no_sense_is_refused(string told, params string[] args) =>
        Run(args).Should().Match<Spoken>(s => s.Code == 2 && s.Out == "" && s.Err.Contains(told));

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void It_never_gets_into_a_book(bool again)
    {
        var page = kiosk.Folder.Page(kiosk.Book.Date);
        var before = File.ReadAllBytes(page);
        Directory.CreateSymbolicLink(temp["link"], kiosk.Folder.Pages);

        string[] every = again ? ["--every", "5"] : [];
        Run(["--html", page, .. every]).Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith("--html is inside a book"));
        Run(["--html", temp["link", "2026-12-24.jsonl"], .. every]).Code.Should().Be(2);
        File.ReadAllBytes(page).Should().Equal(before);
        Directory.GetFiles(kiosk.Folder.Pages).Should().Equal(page);
    }

    [NeedsFact(Needs.Linux)]
    [Trait(Built.Starts, "closeout")]
    public void A_signal_ends_the_program_with_the_last_wall_written()
    {
        using var program = Process.Start(new ProcessStartInfo(
            Built.Words(Built.Closeout)[0], [.. Built.Words(Built.Closeout)[1..], "--book", kiosk.Folder.Path, "wall", "--html", temp["wall.html"], "--every", "3600"]))!;
        SpinWait.SpinUntil(() => File.Exists(temp["wall.html"]) || program.HasExited, TimeSpan.FromSeconds(60)).Should().BeTrue();
        Process.Start("kill", ["-TERM", $"{program.Id}"]).WaitForExit();

        program.WaitForExit(TimeSpan.FromSeconds(60)).Should().BeTrue();
        program.ExitCode.Should().Be(0);
        File.ReadAllText(temp["wall.html"]).Should().Contain("ENDED");
    }

    private Spoken Every(string file, Func<TimeSpan, bool> goesOn) => Spoken.By(() => WallCommand.Every(kiosk.Folder, file, 5, kiosk.Clock, goesOn));

    private Spoken Run(params string[] args) => Spoken.By(() => CommandLine.Build(kiosk.Clock).Parse(["--book", kiosk.Folder.Path, "wall", .. args]).Invoke());
}
