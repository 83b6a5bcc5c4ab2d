using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>The weekly walk-around, part by part: what is not in order is described as a damage.</summary>
public sealed class WalkRoundStories
{
    private static readonly Depot AtWeekly = Tiny.Opened(date: Tiny.Friday).At(Tiny.B1, Step.Weekly);

    [Fact]
    public void A_part_not_in_order_needs_its_incident()
    {
        AtWeekly.Refuses(Check("wipers")).Code.Should().Be("part-not-told");

        var told = AtWeekly.Did(new ReportDamage(Tiny.B1, "wipers", Severity.Repair, "left blade torn"));
        Checked(told.Did(Check("wipers"))).NotInOrder.Should().Equal("wipers");
        told.Refuses(Check("wipers", "tires")).Text.Should().Contain("the tires", "the wipers are told, and the tires are not");
    }

    [Fact]
    public void What_was_told_of_a_part_is_not_in_order_whether_it_is_said_again_or_not()
    {
        var told = AtWeekly.Did(new ReportDamage(Tiny.B1, " TYRES ", Severity.Note, "worn"), new ReportDamage(Tiny.B1, "lights", Severity.Repair, "left one dark"), new ReportDamage(Tiny.B1, "rear door", Severity.Note, "scratch"));

        foreach (var check in new[] { Check(), new CheckWeekly(Tiny.B1, null, 0, true), Check("Lights") })
        {
            Checked(told.Did(check)).NotInOrder.Should().Equal(["lights", "tires"], "in the order of the list; a rear door is no part of it");
        }
    }

    [Fact]
    public void A_damage_of_another_evening_does_not_say_what_was_seen_tonight()
    {
        var before = Tiny.Opened(date: Tiny.Friday, carried: v => v.Van == Tiny.B1
            ? v with { Incidents = [new(1, Tiny.Monday, Tiny.FiveOClock, Tiny.T1, "wipers", Severity.Repair, "torn", true, "", null, false)] }
            : v).At(Tiny.B1, Step.Weekly);

        before.Refuses(Check("wipers")).Code.Should().Be("part-not-told");
        Checked(before.Did(Check())).NotInOrder.Should().BeEmpty();
    }

    [Fact]
    public void A_second_check_replaces_the_first()
    {
        var depot = AtWeekly.Did(Check()).Did(new ReportDamage(Tiny.B1, "mirrors", Severity.Repair, "cracked"), Check("mirrors"));

        Checked(depot).NotInOrder.Should().Equal("mirrors");
        depot.Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);
    }

    [Fact]
    public void Every_part_has_a_name_of_its_own_and_is_found_whatever_its_case()
    {
        WalkRound.Parts.Should().OnlyHaveUniqueItems().And.OnlyContain(p => p == p.ToLowerInvariant());
        WalkRound.Parts.Select(p => WalkRound.Find($" {p.ToUpperInvariant()} ")).Should().Equal(WalkRound.Parts);
        WalkRound.Find("engine").Should().BeNull();
    }

    private static CheckWeekly Check(params string[] notInOrder) => new(Tiny.B1, null, 0, true, notInOrder);

    private static WeeklyChecked Checked(Depot depot) => depot.Shift(Tiny.B1)!.Weekly!;
}
