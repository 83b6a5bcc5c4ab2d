using System.Runtime.CompilerServices;
using Closeout.DayBook;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.DayBook;

/// <summary>Every step against every trigger, beside the grid in Golden/flow-grid.txt: a change of the flow shows there as a change.</summary>
public class FlowGridTests
{
    [Fact]
    public void The_flow_is_the_grid_that_was_agreed() => Grid().Should().Be(Golden());

    [Fact]
    public void A_way_that_is_not_in_the_flow_throws_and_names_both_ends() =>
        FluentActions.Invoking(() => ShiftFlow.After(Step.Leftovers, Trigger.Sign))
            .Should().Throw<InvalidOperationException>().WithMessage("*Sign*Leftovers*");

    [Fact]
    public void Only_a_lead_moves_a_close_out_that_is_closed() =>
        Enum.GetValues<Trigger>().Where(t => ShiftFlow.Allows(Step.Closed, t)).Should().Equal(Trigger.Reopen);

    [Theory]
    [InlineData(false, "Leftovers Cardboard Mileage Damage Kit SignOff")]
    [InlineData(true, "Leftovers Cardboard Mileage Damage Kit Weekly SignOff")]
    [InlineData(true, "Leftovers Cardboard Mileage Damage Kit Weekly Handover SignOff", true)]
    public void The_steps_asked_are_in_the_order_of_the_floor(bool weeklyDue, string steps, bool handoverDue = false) =>
        string.Join(' ', ShiftFlow.Asked(weeklyDue, handoverDue)).Should().Be(steps);

    [Fact]
    public void Every_step_has_a_name_of_its_own() =>
        Enum.GetValues<Step>().Select(StepWords.Name).Should().OnlyHaveUniqueItems().And.NotContain("");

    private static string Grid()
    {
        var triggers = Enum.GetValues<Trigger>();
        var lines = new List<string> { string.Concat(triggers.Select(t => t.ToString().PadRight(13)).Prepend("".PadRight(11))).TrimEnd() };
        lines.AddRange(Enum.GetValues<Step>().Select(step =>
            string.Concat(triggers.Select(t => Cell(step, t).PadRight(13)).Prepend(step.ToString().PadRight(11))).TrimEnd()));
        return string.Join('\n', lines) + "\n";
    }

    private static string Cell(Step step, Trigger trigger) => !ShiftFlow.Allows(step, trigger) ? "."
        : ShiftFlow.After(step, trigger) is var next && next == step ? "stays" : next.ToString();

    private static string Golden([CallerFilePath] string here = "") =>
        File.ReadAllText(Path.Combine(Path.GetDirectoryName(here)!, "..", "Golden", "flow-grid.txt")).ReplaceLineEndings("\n");
}
