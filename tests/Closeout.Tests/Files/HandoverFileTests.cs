using Closeout.Commands;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Screens.Steps;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>handover.csv, and its answers in evening.csv.</summary>
public sealed class HandoverFileTests : IDisposable
{
    private readonly TempFolder folder = new();

    [Fact]
    public void Its_questions_are_asked_and_answered_in_an_evening()
    {
        var day = Sample("code,question\nSWEPT,Swept and emptied?\nPLACE,Everything in its place?\n",
            "B1,T02,handover,SWEPT,,yes,\nB1,T02,handover,PLACE,,no,cones under the seat\nB1,T02,sign,,,,\n");
        var read = DayFolder.Read(day, StepPages.Evening);
        read.Findings.Problems.Should().BeEmpty();
        read.Given!.Setup.Questions.Should().HaveCount(2);

        RehearseCommand.Run(day, folder["out"], null, null, false).Should().Be(0);
        Book.Open(BookFolder.At(folder["out/book"])).Depot.Shift(new("B1"))!.Handover!.Answers.Should().Equal(
            new HandoverAnswer(new("SWEPT"), "Swept and emptied?", true, ""),
            new HandoverAnswer(new("PLACE"), "Everything in its place?", false, "cones under the seat"));
        File.ReadAllText(folder["out/wall.csv"]).Should().Contain("Everything in its place? No: cones under the seat");
    }

    [Fact]
    public void Without_it_no_step_of_that_name_is_allowed() =>
        DayFolder.Read(Sample(null, "B1,T02,handover,SWEPT,,yes,\n"), StepPages.Evening).Findings.Problems.Should().ContainSingle()
            .Which.ToString().Should().Contain("step is none of the words allowed");

    [Fact]
    public void More_than_six_questions_and_a_code_that_stands_twice_are_faults() =>
        DayFolder.Read(Sample("code,question\n" + string.Concat(Enumerable.Range(1, 7).Select(i => $"Q{i},Question {i}?\n")) + "Q1,Again?\n", ""), StepPages.Evening)
            .Findings.Problems.Select(p => p.ToString()).Should().Contain(p => p.Contains("too many questions")).And.Contain(p => p.Contains("stands twice"));

    public void Dispose() => folder.Dispose();

    /// <summary>The sample day with these questions, and these answers for its evening.</summary>
    private string Sample(string? questions, string evening)
    {
        var day = folder["day"];
        Directory.CreateDirectory(day);
        foreach (var file in Directory.EnumerateFiles(Repository.SampleDay, "*.csv"))
            File.Copy(file, Path.Combine(day, Path.GetFileName(file)), overwrite: true);

        File.WriteAllText(Path.Combine(day, "evening.csv"), "van,technician,step,field,item,value,why\n" + evening);
        if (questions is not null)
            File.WriteAllText(Path.Combine(day, "handover.csv"), questions);

        return day;
    }
}
