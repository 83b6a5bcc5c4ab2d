using Closeout.Facts;
using Closeout.Files;
using Closeout.Screens.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>Files whose every field is in range and whose sums are not: an answer, never a crash.</summary>
public sealed class ExtremeFileTests
{
    [Fact]
    public void Stock_beyond_what_can_be_counted_is_a_fault()
    {
        var reading = () => ReadDay.With(
            ("items.csv", SmallDay.Text("items.csv").Replace("Lamp,1,10,", "Lamp,1,100000,", StringComparison.Ordinal)),
            ("stock.csv", "place,item,cartons,loose\nshelf,LAMP,10000,0\nB1,LAMP,10000,0\nB2,LAMP,10000,0\n"));

        reading.Should().NotThrow().Which.Findings.Problems.Should().NotBeEmpty().And.OnlyContain(p => p.File == "stock.csv");
    }

    [Fact]
    public void Use_in_thousands_of_millions_is_summed_without_a_crash()
    {
        var rows = string.Concat(Enumerable.Range(1, 2_200).Select(i => $"2026-03-03,B1,{i},install,LAMP,1000000\n"));
        var reading = () => ReadDay.With(("usage.csv", "date,van,visit,visit_kind,item,units\n" + rows));

        reading.Should().NotThrow().Which.Given!.Used.Use.Should().ContainSingle().Which.Items.Should().ContainSingle().Which.Sum.Should().Be(2_200_000_000);
    }

    [Theory]
    [InlineData("item,cartons,due\n", ",")]
    [InlineData("item,cartons,due", ",item")]
    [InlineData("item,cartons,due\n\"\n\n\n\n\"", ",x")]
    public void A_row_without_an_end_is_told_in_a_moment(string before, string again)
    {
        IReadOnlyList<Problem> problems = [];

        Worked.Over(() => problems = ReadDay.With(("orders.csv", before + string.Concat(Enumerable.Repeat(again, 1_000_000 / again.Length)))).Findings.Problems)
            .Should().BeLessThan(TimeSpan.FromSeconds(15), "half a minute was what it took when each place was reckoned from the row's start");

        problems.Should().OnlyContain(p => p.File == "orders.csv").And.NotBeEmpty();
    }

    [Fact]
    public void Past_visits_of_a_van_that_is_gone_count_all_the_same()
    {
        var read = ReadDay.With(("usage.csv", "date,van,visit,visit_kind,item,units\n2026-03-03,B9,1,install,LAMP,4\n2026-03-03,B9,2,install,,0\n2026-03-03,B1,3,INSTALL,LAMP,2\n2026-03-03,B1,3,install,lamp,3\n"));

        read.Given!.Used.Use.Should().ContainSingle().Which.Should().BeEquivalentTo(
            new DailyUse(new(2026, 3, 3), new("install"), 3, [new(new("LAMP"), 9, 41)]), "three visits used 4, 0 and 2 + 3");
    }

    [Fact]
    public void A_folder_with_nothing_in_it_misses_seven_files()
    {
        using var temp = new TempFolder();

        DayFolder.Read(temp.Path, StepPages.Evening).Findings.Problems.Select(p => p.File).Should().Equal("depot.csv", "items.csv", "vans.csv", "kit.csv", "crew.csv", "visits.csv", "stock.csv");
    }
}
