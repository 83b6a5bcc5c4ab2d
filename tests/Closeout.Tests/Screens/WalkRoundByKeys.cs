using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>The weekly walk-around at B2, which is due.</summary>
public sealed class WalkRoundByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = new SampleKiosk().Press("B2{Enter}{Enter}**==n=");

    public WalkRoundByKeys() => kiosk.Closeout.At.Should().Be(Step.Weekly, kiosk.Show());

    [Fact]
    public void All_in_order_is_four_keys()
    {
        kiosk.Press("={Enter}{Enter}{Enter}");

        kiosk.Entries.OfType<WeeklyChecked>().Single().Should().BeEquivalentTo(new WeeklyChecked(new("B2"), null, 0, true, []));
        kiosk.Closeout.At.Should().Be(Step.SignOff);
    }

    [Fact]
    public void N_leads_to_the_report_and_back_with_everything_typed_kept()
    {
        kiosk.Press("{Enter}{Down}{Down}{Down}{Down}n");
        kiosk.Closeout.IsReport.Should().BeTrue();
        (kiosk.Closeout.Form["zone"].Text, kiosk.Closeout.Form["severity"].Text, kiosk.Closeout.Form.Now!.Name).Should().Be(("wipers", "R", "severity"), "the part and the usual severity are there already");

        kiosk.Press("{Enter}left blade torn{Enter}{Enter}L1{Enter}1641{Backspace}{Backspace}:41{Enter}");
        kiosk.Entries.OfType<DamageFound>().Single().Should().Be(
            new DamageFound(new("B2"), 2, new("T05"), "wipers", Severity.Repair, "left blade torn", true, "L1", new(16, 41)));
        (kiosk.Closeout.IsReport, kiosk.Closeout.Form.Now!.Name, kiosk.Closeout.Form["wipers"].Text).Should().Be((false, "leaks", "n"), "on with the part behind it");

        kiosk.Press("nn{Enter}oil under the engine{Enter}={Enter}7{Enter}n{Enter}");
        var check = kiosk.Entries.OfType<WeeklyChecked>().Single();
        check.NotInOrder.Should().Equal("wipers", "leaks");
        (check.Photos, check.Clean).Should().Be((7, false));
    }

    [Fact]
    public void What_was_typed_before_a_part_was_described_stands_behind_it()
    {
        kiosk.Press("=2026-08-03{Enter}5{Up}{Up}{Up}{Up}n");
        kiosk.Closeout.IsReport.Should().BeTrue(kiosk.Show());

        kiosk.Press("n{Enter}rung loose{Enter}");

        (kiosk.Closeout.Form["oil"].Text, kiosk.Closeout.Form["photos"].Text).Should().Be(("2026-08-03", "5"));
    }

    [Fact]
    public void Esc_from_the_report_takes_the_N_back_that_began_it()
    {
        kiosk.Press("ntorn{Escape}");
        kiosk.Entries.OfType<DamageFound>().Should().BeEmpty();
        kiosk.Closeout.Form["lights"].Text.Should().Be("Y", "do not report takes the N back");

        kiosk.Press("={Enter}{Enter}{Enter}");
        kiosk.Entries.OfType<WeeklyChecked>().Single().NotInOrder.Should().BeEmpty();
    }

    [Fact]
    public void A_part_told_already_is_not_asked_again_neither_here_nor_after_coming_back()
    {
        kiosk.Press("n{Enter}left one dark{Enter}{Enter}{Enter}{Enter}{Up}{Enter}");
        kiosk.Closeout.IsReport.Should().BeFalse("the lights are told");

        kiosk.Press("{Escape}B2{Enter}");
        kiosk.Closeout.Form["lights"].Text.Should().Be("N");
        kiosk.Press("={Enter}{Enter}{Enter}").Entries.OfType<WeeklyChecked>().Single().NotInOrder.Should().Equal("lights");
    }

    [Fact]
    public void A_damage_found_on_the_walk_round_can_be_changed_after_the_check()
    {
        kiosk.Press("={Enter}{Enter}{Enter}{PageUp}{Down}nu{Enter}worn to the cords{Enter}{Enter}{Enter}{Enter}");
        kiosk.Closeout.At.Should().Be(Step.Weekly);
        kiosk.Press("={Enter}{Enter}{Enter}");

        kiosk.Closeout.At.Should().Be(Step.SignOff);
        kiosk.Depot.Shift(new("B2"))!.Weekly!.NotInOrder.Should().Equal("tires");
        kiosk.Show().Should().Contain("HELD").And.Contain("not in order: tires");
    }

    [Theory]
    [InlineData("x{Enter}={Enter}{Enter}{Enter}", "Say whether this part is in order: lights. Y yes, N no.")]
    [InlineData("={Enter}{Enter}x{Enter}", "Say whether it is clean inside: Y yes, N no.")]
    [InlineData("=2026{Enter}{Enter}{Enter}", "\"2026\" is no date")]
    [InlineData("=2026-11-19{Enter}{Enter}{Enter}", "The last oil change cannot be 2026-11-19; today is 2026-11-18.")]
    [InlineData("nx{Enter}dark{Enter}{Enter}{Enter}{Enter}", "Say how bad it is")]
    [InlineData("n{Enter}dark{Enter}{Enter}{Enter}4{Enter}", "\"4\" is no time. Type it as")]
    [InlineData("n{Enter}{Enter}{Enter}{Enter}{Enter}", "Say what it is (1 to 80 characters)")]
    public void What_is_missing_is_said_and_nothing_is_recorded(string keys, string said)
    {
        var before = kiosk.Entries.Count;
        kiosk.Press(keys);

        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Entries.Should().HaveCount(before);
    }

    public void Dispose() => kiosk.Dispose();
}
