using System.Text.Json;
using Closeout.Commands;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Store;

/// <summary>The committed page with every kind of entry, in the hands of the program itself.</summary>
[Trait(Built.Starts, "closeout")]
public sealed class ProgramReadsEveryKindTests : IDisposable
{
    private readonly TempFolder temp = new();

    public ProgramReadsEveryKindTests()
    {
        Directory.CreateDirectory(temp["book", "pages"]);
        Directory.CreateDirectory(temp["book", "files"]);
        File.Copy(Repository.Golden("every-kind.jsonl"), Page("book"));
    }

    [Fact]
    public void It_reads_them_all_and_tells_each()
    {
        string[] audit = ["--book", temp["book"], "audit", "--out"];

        Started.Closeout(temp.Path, [.. audit, "there.csv"]).Should().Be(new Started(0, "", ""));

        Spoken.By(() => CommandLine.Build(TimeProvider.System).Parse([.. audit, temp["here.csv"]]).Invoke()).Code.Should().Be(0);
        var told = File.ReadAllText(temp["there.csv"]);
        told.Should().Be(File.ReadAllText(temp["here.csv"])).And.ContainAll(EveryKind.Page.Select(e => EntryKind.Of(e.Entry).Name));
    }

    [Fact]
    public void It_writes_them_as_any_other()
    {
        Salvage.Into(new(temp["book"]), new(temp["here"]), SmallBook.At(9)).Lost.Should().Be(2, "a picture is not there, nor what was taken back behind it");

        Started.Closeout(temp.Path, "--book", temp["book"], "check", "--repair", "--out", "there").Out.Should().Contain("49 of 51 entries kept");

        Told("there").Should().Equal(Told("here")).And.HaveCount(50);
    }

    public void Dispose() => temp.Dispose();

    private string Page(string book) => temp[book, "pages", "2026-03-04.jsonl"];

    /// <summary>The kinds of a page and what they tell, as written.</summary>
    private List<string> Told(string book) =>
        [.. File.ReadLines(Page(book)).Select(l => JsonDocument.Parse(l).RootElement).Select(e => $"{e.GetProperty("kind").GetString()} {e.GetProperty("entry").GetRawText()}")];
}
