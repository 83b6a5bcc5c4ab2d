using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

public sealed class HoldStories
{
    private static readonly Depot Held = Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "windscreen", Severity.Unsafe, "crack"));

    [Fact]
    public void A_lead_lifts_a_hold_with_a_reason_that_stays_on_the_wall()
    {
        var after = Held.Did(new LiftHolds(Tiny.B1, "replaced, slip 12", Tiny.Lead));

        var state = Readiness.Of(after, after.Setup.Van(Tiny.B1));
        state.Holds.Should().BeEmpty();
        state.Notes.Should().Contain("hold lifted by L1: replaced, slip 12 (windscreen, unsafe: crack (incident 1))");
    }

    [Fact]
    public void What_was_lifted_is_not_carried_to_the_next_page_and_what_was_not_is()
    {
        NextPage.After(Held, Tiny.Friday).Carried.Vans[0].Incidents.Should().ContainSingle().Which.Holds.Should().BeTrue();
        NextPage.After(Held.Did(new LiftHolds(Tiny.B1, "replaced", Tiny.Lead)), Tiny.Friday).Carried.Vans[0].Incidents.Should().ContainSingle("lifted is not closed").Which.Holds.Should().BeFalse();
    }

    [Fact]
    public void A_hold_of_an_earlier_day_is_lifted_while_the_van_is_on_the_road()
    {
        var next = Depot.Open(new Recorded(1, Tiny.FiveOClock, NextPage.After(Held, Tiny.Friday)));
        Readiness.Of(next, next.Setup.Van(Tiny.B1)).Morning.Should().Be(Morning.Held);

        Readiness.Of(next.Did(new LiftHolds(Tiny.B1, "replaced", Tiny.Lead)), next.Setup.Van(Tiny.B1)).Morning.Should().Be(Morning.NotClosed);
    }

    [Fact]
    public void A_damage_found_after_the_lift_holds_again()
    {
        var after = Held.Did(new LiftHolds(Tiny.B1, "replaced", Tiny.Lead)).Did(new ReportDamage(Tiny.B1, "rear", Severity.Unsafe, "door will not lock"));

        Readiness.Of(after, after.Setup.Van(Tiny.B1)).Holds.Should().Equal("rear, unsafe: door will not lock (incident 2)");
    }

    [Theory]
    [InlineData("T1", "replaced", "only-a-lead")]
    [InlineData("T9", "replaced", "no-such-technician")]
    [InlineData("L1", "  ", "no-words")]
    public void Nobody_else_lifts_it_and_never_without_a_reason(string by, string why, string code) =>
        VanDesk.Decide(Held, new LiftHolds(Tiny.B1, why, new(by))).Refusal!.Code.Should().Be(code);

    [Fact]
    public void A_van_that_is_not_held_has_nothing_to_lift() =>
        VanDesk.Decide(Held, new LiftHolds(Tiny.B2, "why not", Tiny.Lead)).Refusal!.Code.Should().Be("not-held");
}
