using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Commands;

public sealed class SampleDayTests
{
    private static readonly string[] Checked = ["restock", "shelf", "cardboard", "mileage"];

    [Fact]
    public void Rehearsed_twice_it_gives_the_expected_files_and_the_same_book_to_the_byte()
    {
        using var temp = new TempFolder();
        var (first, again) = (Rehearse(temp, "first"), Rehearse(temp, "first"));
        var second = Rehearse(temp, "second");

        first.Should().Match<Started>(s => s.Code == 0 && s.Err == "" && s.Out.Length > 0);
        again.Should().Be(first);
        second.Should().Be(first);
        Page(temp, "first").Should().Equal(Page(temp, "second"));
        foreach (var name in Checked)
        {
            File.ReadAllText(temp["first", name + ".csv"]).Should().Be(File.ReadAllText(Path.Combine(Repository.SampleDay, "expected", name + ".csv")), $"of {name}.csv");
        }

        foreach (var file in Directory.GetFiles(temp["first"], "*.csv").Select(f => Path.GetFileName(f)!))
        {
            File.ReadAllBytes(temp["second", file]).Should().Equal(File.ReadAllBytes(temp["first", file]), $"of {file}");
        }
    }

    [Fact]
    public void Exported_from_its_book_the_files_are_the_rehearsals_and_the_book_is_good()
    {
        using var temp = new TempFolder();
        Rehearse(temp, "out");
        foreach (var name in Checked)
        {
            Started.Closeout(temp.Path, "--book", "out/book", name, "--out", name + ".csv").Should().Be(new Started(0, "", ""));
            File.ReadAllBytes(temp[name + ".csv"]).Should().Equal(File.ReadAllBytes(temp["out", name + ".csv"]));
        }

        Started.Closeout(temp.Path, "--book", "out/book", "check").Should().Match<Started>(s => s.Code == 0 && s.Out.StartsWith("The book is good: 1 page, ", StringComparison.Ordinal));
    }

    [Fact]
    public void Its_ledger_balances_and_nothing_is_below_zero()
    {
        using var temp = new TempFolder();
        Rehearse(temp, "out");

        var ledger = Book.Open(new BookFolder(temp["out", "book"])).Depot.Ledger;

        ledger.Unbalanced.Should().BeEmpty();
        ledger.BelowZero.Should().BeEmpty();
    }

    private static Started Rehearse(TempFolder temp, string name) => Started.Closeout(temp.Path, "rehearse", Repository.SampleDay, "--out", name);

    private static byte[] Page(TempFolder temp, string name) => File.ReadAllBytes(new BookFolder(temp[name, "book"]).Page(new(2026, 11, 18)));
}
