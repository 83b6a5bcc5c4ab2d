using System.Diagnostics;
using Closeout.Commands;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

/// <summary>Where files out may go, and what is said when nothing can be said.</summary>
public sealed class OutputTests : IDisposable
{
    private readonly SampleKiosk kiosk = new();
    private readonly TempFolder temp = new();

    public void Dispose()
    {
        kiosk.Dispose();
        temp.Dispose();
    }

    [Theory]
    [InlineData("pages/2026-11-18.jsonl")]
    [InlineData("last.txt")]
    [InlineData("files/restock.csv")]
    public void A_file_out_never_takes_the_place_of_a_books_own(string name)
    {
        var before = File.ReadAllBytes(kiosk.Folder.Page(kiosk.Book.Date));

        var said = Run("restock", Path.Combine(kiosk.Folder.Path, name));

        said.Should().Match<Spoken>(s => s.Code == 2 && s.Err.Contains("--out is inside a book"));
        File.ReadAllBytes(kiosk.Folder.Page(kiosk.Book.Date)).Should().Equal(before);
        Run("check").Code.Should().Be(0);
    }

    [NeedsFact(Needs.Pipe)]
    public void Nor_that_of_a_pipe_or_device()
    {
        using var made = Process.Start("mkfifo", temp["pipe"])!;
        made.WaitForExit();

        Run("restock", temp["pipe"]).Should().Match<Spoken>(s => s.Code == 3 && s.Err.Contains("a pipe or a device, and no file"));
        Run("restock", "/dev/null").Code.Should().Be(3);
    }

    [Fact]
    public void A_link_stays_one_and_the_file_behind_it_is_written()
    {
        File.WriteAllText(temp["real.csv"], "old");
        File.CreateSymbolicLink(temp["link.csv"], temp["real.csv"]);

        Run("restock", temp["link.csv"]).Code.Should().Be(0);

        File.ResolveLinkTarget(temp["link.csv"], false)!.FullName.Should().Be(temp["real.csv"]);
        File.ReadAllText(temp["real.csv"]).Should().StartWith("date,van,");
    }

    [NeedsTheory(Needs.Linux, Needs.Shell)]
    [InlineData("wall")]
    [InlineData("restock --out -")]
    [InlineData("--help")]
    [Trait(Built.Starts, "closeout")]
    public void A_standard_output_that_takes_no_more_is_told_in_a_sentence(string command)
    {
        using var shell = Process.Start(new ProcessStartInfo("sh", ["-c", $"{string.Join(' ', Built.Words(Built.Closeout))} --book {kiosk.Folder.Path} {command} > /dev/full"]) { RedirectStandardError = true })!;
        var err = shell.StandardError.ReadToEnd();
        shell.WaitForExit();

        shell.ExitCode.Should().Be(3, err);
        err.Should().StartWith("This could not be read or written: ").And.NotContain("   at ");
    }

    private Spoken Run(string command, string? file = null) =>
        Spoken.By(() => CommandLine.Build(kiosk.Clock).Parse(["--book", kiosk.Folder.Path, command, .. file is null ? Array.Empty<string>() : ["--out", file]]).Invoke());
}
