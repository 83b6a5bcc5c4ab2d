using Closeout.Files;
using Closeout.Screens.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed class ManyFaultsTests
{
    [Theory]
    [InlineData("load")]
    [InlineData("rehearse")]
    [Trait(Built.Starts, "closeout")]
    public void Twelve_faults_in_ten_files_are_all_told_and_nothing_is_loaded(string command)
    {
        using var temp = new TempFolder();
        string[] args = command == "load" ? ["--book", temp["book"], "load"] : ["rehearse", "--out", temp["out"]];

        var said = Started.Closeout(temp.Path, [.. args, Repository.Golden("twelve-faults")]);

        said.Code.Should().Be(2);
        said.Out.Should().BeEmpty();
        said.Err.ReplaceLineEndings("\n").Split('\n').Should().BeEquivalentTo(File.ReadAllLines(Repository.Golden("twelve-faults.stderr")).Append(""));
        Directory.EnumerateFileSystemEntries(temp.Path).Should().BeEmpty();
    }

    [Fact]
    public void Faults_are_told_in_the_order_of_files_as_read_then_of_lines()
    {
        var problems = DayFolder.Read(Repository.Golden("twelve-faults"), StepPages.Evening).Findings.Problems;

        problems.Select(p => p.ToString()).Should().Equal(File.ReadAllLines(Repository.Golden("twelve-faults.stderr")).SkipLast(1));
    }

    [Fact]
    public void Two_faults_of_one_row_are_both_told() =>
        ReadDay.FaultsWith("items.csv", "LAMP,Lamp,1,10,0.1,12,8,4,32ECT-C,20,40", "LAMP,Lamp,9,10,0.1,12,8,4,32ECT-C,41,40").Should().Equal(
            "items.csv:2:11: priority is no whole number in range: found \"9\", allowed 1 to 3",
            "items.csv:2:38: high is below low: found \"40\", allowed at least low, 41");

    [Fact]
    public void A_bay_taken_twice_is_told_whatever_else_is_wrong_with_the_row() =>
        ReadDay.FaultsWith("vans.csv", "B2,2,Ruff,1500", "B2,1,Ruff,heavy").Should().BeEquivalentTo(
            "vans.csv:3:4: bay is taken by another van: found \"1\", allowed each bay once",
            "vans.csv:3:11: payload_lb is no number in range: found \"heavy\", allowed 0 to 100000, with a decimal point");
}
