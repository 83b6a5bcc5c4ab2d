using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using Closeout.Vans;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Vans;

public sealed class HoldStories
{
    private static readonly Depot Held = Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "windshield", Severity.Unsafe, "crack"));

    [Fact]
    public void A_lead_lifts_a_hold_with_a_reason_that_stays_on_the_wall()
    {
        var after = Held.Did(new LiftHolds(Tiny.B1, "replaced, slip 12", Tiny.Lead));

        var state = Readiness.Of(after, after.Setup.Van(Tiny.B1));
        state.Holds.Should().BeEmpty();
        state.Notes.Should().Contain("hold lifted by L1: replaced, slip 12 (windshield, unsafe: crack (incident 1))");
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

    [Fact]
    public void A_hold_that_a_lead_put_on_stands_until_one_lifts_it_however_many_days_that_takes()
    {
        var depot = Tiny.Opened().Did(new PlaceHold(Tiny.B2, " steering pulls ", Tiny.Lead));
        Readiness.Standing(depot, Tiny.B2).Should().Equal(new Hold(Tiny.Wednesday, "steering pulls"));
        Readiness.Standing(depot, Tiny.B1).Should().BeEmpty();

        var later = depot.Next(Tiny.Friday).At(Tiny.B2, Step.Closed).Next(Tiny.Friday.AddDays(3));
        Readiness.Standing(later, Tiny.B2).Should().Equal(new Hold(Tiny.Wednesday, "steering pulls"));
        Readiness.Standing(later.Did(new LiftHolds(Tiny.B2, "track rod replaced", Tiny.Lead)), Tiny.B2).Should().BeEmpty();
    }

    [Fact]
    public void Lifted_and_put_on_again_it_stands_again_once_and_the_lifting_is_no_longer_said_of_it()
    {
        var again = Tiny.Opened().Did(
            new PlaceHold(Tiny.B2, "steering pulls", Tiny.Lead), new LiftHolds(Tiny.B2, "looks right", Tiny.Lead), new PlaceHold(Tiny.B2, "steering pulls", Tiny.Lead));

        var state = Readiness.Of(again, again.Setup.Van(Tiny.B2));
        state.Holds.Should().Equal("steering pulls");
        state.Notes.Should().BeEmpty();
        Readiness.Standing(again.Did(new LiftHolds(Tiny.B2, "track rod replaced", Tiny.Lead)), Tiny.B2).Should().BeEmpty();
        Readiness.Standing(again.Next(Tiny.Friday), Tiny.B2).Should().ContainSingle();
    }

    [Fact]
    public void A_hold_in_the_words_of_an_incident_lifted_on_an_earlier_day_stands_over_night()
    {
        var lifted = Held.Did(new LiftHolds(Tiny.B1, "drives to the workshop", Tiny.Lead)).Next(Tiny.Friday);
        var held = lifted.Did(new PlaceHold(Tiny.B1, "windshield, unsafe: crack (incident 1)", Tiny.Lead));

        Readiness.Standing(held, Tiny.B1).Should().ContainSingle();
        Readiness.Standing(held.Next(Tiny.Friday.AddDays(3)), Tiny.B1).Should().ContainSingle("nobody lifted it");
    }

    [Fact]
    public void All_holds_of_a_van_are_lifted_together_and_those_of_another_van_stand()
    {
        var both = Held.At(Tiny.B2, Step.Damage).Did(new ReportDamage(Tiny.B2, "rear", Severity.Unsafe, "door will not lock")).Did(new PlaceHold(Tiny.B1, "steering pulls", Tiny.Lead));

        var after = both.Did(new LiftHolds(Tiny.B1, "workshop, slip 12", Tiny.Lead, Sure: true));
        Readiness.Standing(after, Tiny.B1).Should().BeEmpty();
        Readiness.Standing(after, Tiny.B2).Should().ContainSingle();
        after.Vans.Lifted.Should().ContainSingle().Which.Reasons.Should().BeEquivalentTo("windshield, unsafe: crack (incident 1)", "steering pulls");
    }

    [Fact]
    public void One_hold_is_lifted_by_its_number_and_the_others_stand()
    {
        var two = Held.Did(new PlaceHold(Tiny.B1, "steering pulls", Tiny.Lead));

        var after = two.Did(new LiftHolds(Tiny.B1, "track rod replaced", Tiny.Lead, 2));
        Readiness.Standing(after, Tiny.B1).Should().ContainSingle().Which.Reason.Should().Be("windshield, unsafe: crack (incident 1)");
        after.Vans.Lifted.Should().ContainSingle().Which.Reasons.Should().Equal("steering pulls");
    }

    [Fact]
    public void A_piece_of_the_kit_that_a_lead_let_go_without_is_not_asked_for_the_next_day()
    {
        var short1 = Tiny.Opened().At(Tiny.B1, Step.Kit).Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0));
        Readiness.Standing(short1.Next(Tiny.Friday), Tiny.B1).Should().ContainSingle();

        var lifted = short1.Did(new LiftHolds(Tiny.B1, "takes the one of B2", Tiny.Lead)).Next(Tiny.Friday);
        Readiness.Standing(lifted, Tiny.B1).Should().BeEmpty();
        Readiness.Standing(lifted.At(Tiny.B1, Step.Kit).Did(new CountKit(Tiny.B1, Tiny.Extinguisher.Code, 0)), Tiny.B1).Should().ContainSingle("it was counted anew");
    }

    [Theory]
    [InlineData("T1", "replaced", "only-a-lead")]
    [InlineData("T9", "replaced", "no-such-technician")]
    [InlineData("L1", "  ", "no-words")]
    public void Nobody_else_lifts_it_and_never_without_a_reason(string by, string why, string code) =>
        new LiftHolds(Tiny.B1, why, new(by)).Decide(Held).Refusal!.Code.Should().Be(code);

    [Fact]
    public void A_van_that_is_not_held_has_nothing_to_lift() =>
        new LiftHolds(Tiny.B2, "why not", Tiny.Lead).Decide(Held).Refusal!.Code.Should().Be("not-held");
}
