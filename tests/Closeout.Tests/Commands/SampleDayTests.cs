using Closeout.Commands;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

public sealed class SampleDayTests(SampleDayTests.Rehearsed rehearsed) : IClassFixture<SampleDayTests.Rehearsed>
{
    /// <summary>The sample day rehearsed once, for tests that only look.</summary>
    public sealed class Rehearsed : IDisposable
    {
        public Rehearsed() => Said = Rehearse(Temp, "out");

        internal TempFolder Temp { get; } = new();

        internal Started Said { get; }

        public void Dispose() => Temp.Dispose();
    }

    private static readonly string Expected = Path.Combine(Repository.SampleDay, "expected");

    private static readonly string[] Exported = [.. Output.Rehearsed.Where(f => f != "wall")];

    [Fact]
    public void Every_table_of_a_rehearsal_and_the_depots_morning_sheet_is_expected() =>
        ExpectedFiles.Should().BeEquivalentTo(Output.Rehearsed.Select(f => f + ".csv").Append(Path.Combine("morning", "morning.txt")));

    [Fact]
    [Trait(Built.Starts, "closeout")]
    public void Rehearsed_twice_it_gives_the_expected_files_and_the_same_book_to_the_byte()
    {
        using var temp = new TempFolder();
        var (first, again) = (Rehearse(temp, "first"), Rehearse(temp, "first"));
        var second = rehearsed.Said;

        first.Should().Match<Started>(s => s.Code == 0 && s.Err == "" && s.Out.Length > 0);
        again.Should().Be(first);
        second.Should().Be(first);
        Page(temp, "first").Should().Equal(Page(rehearsed.Temp, "out"));
        foreach (var file in ExpectedFiles)
        {
            File.ReadAllText(temp["first", file]).Should().Be(File.ReadAllText(Path.Combine(Expected, file)), $"of {file}");
        }

        foreach (var file in Directory.GetFiles(temp["first"], "*.csv").Concat(Directory.GetFiles(temp["first", "morning"])).Select(f => Path.GetRelativePath(temp["first"], f)))
        {
            File.ReadAllBytes(rehearsed.Temp["out", file]).Should().Equal(File.ReadAllBytes(temp["first", file]), $"of {file}");
        }
    }

    [Fact]
    [Trait(Built.Starts, "closeout")]
    public void Exported_from_its_book_the_files_are_the_rehearsals_and_the_book_is_good()
    {
        var temp = rehearsed.Temp;
        using var program = new CommandsInOne();
        foreach (var name in Exported)
        {
            program.Run(temp.Path, "--book", "out/book", name, "--out", name + ".csv").Should().Be(new Started(0, "", ""));
            File.ReadAllBytes(temp[name + ".csv"]).Should().Equal(File.ReadAllBytes(temp["out", name + ".csv"]), $"of {name}");
        }

        program.Run(temp.Path, "--book", "out/book", "morning", "--out", "sheets").Should().Be(new Started(0, "", ""));
        foreach (var sheet in Directory.GetFiles(temp["out", "morning"]).Select(f => Path.GetFileName(f)!))
        {
            File.ReadAllBytes(temp["sheets", sheet]).Should().Equal(File.ReadAllBytes(temp["out", "morning", sheet]), $"of {sheet}");
        }

        program.Run(temp.Path, "--book", "out/book", "check").Should().Match<Started>(s => s.Code == 0 && s.Out.StartsWith("The book is good: 1 page, ", StringComparison.Ordinal));
    }

    [Fact]
    public void Its_ledger_balances_and_nothing_is_below_zero()
    {
        var ledger = Book.Open(new BookFolder(rehearsed.Temp["out", "book"])).Depot.Stock.Ledger;

        ledger.Unbalanced.Should().BeEmpty();
        ledger.BelowZero.Should().BeEmpty();
    }

    private static IEnumerable<string> ExpectedFiles =>
        Directory.GetFiles(Expected, "*.*", SearchOption.AllDirectories).Select(f => Path.GetRelativePath(Expected, f)).Where(f => f != ".gitattributes");

    private static Started Rehearse(TempFolder temp, string name) => Started.Closeout(temp.Path, "rehearse", Repository.SampleDay, "--out", name);

    private static byte[] Page(TempFolder temp, string name) => File.ReadAllBytes(new BookFolder(temp[name, "book"]).Page(new(2026, 11, 18)));
}
