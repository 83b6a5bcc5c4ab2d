using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>A depot's own questions before the signature.</summary>
public sealed class HandoverStories
{
    private static readonly Code<HandoverQuestion> Swept = new("SWEPT");
    private static readonly Code<HandoverQuestion> Place = new("PLACE");

    private static readonly Depot Asked = Tiny
        .Opened(setup: Tiny.Setup with { Handover = [new(Swept, "Swept and emptied?"), new(Place, "Everything in its place?")] })
        .At(Tiny.B1, Step.Kit).Did(new ConfirmKit(Tiny.B1));

    [Fact]
    public void They_are_asked_before_the_signature_and_only_where_the_depot_has_some()
    {
        Asked.Shift(Tiny.B1)!.Step.Should().Be(Step.Handover);
        Tiny.Opened().At(Tiny.B1, Step.Kit).Did(new ConfirmKit(Tiny.B1)).Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);
    }

    [Fact]
    public void A_no_is_a_note_for_the_morning_with_what_is_wrong()
    {
        var after = Asked.Did(new AnswerHandover(Tiny.B1, [new(Swept, true), new(Place, false, "cones under the seat")]));

        after.Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);
        Notes(after).Should().Contain("Everything in its place? No: cones under the seat").And.NotContain(n => n.Contains("Swept", StringComparison.Ordinal));
    }

    [Fact]
    public void A_second_answer_replaces_the_first()
    {
        var after = Asked.Did(new AnswerHandover(Tiny.B1, [new(Swept, true), new(Place, false, "cones under the seat")]))
            .Did(new AnswerHandover(Tiny.B1, [new(Swept, true), new(Place, true)]));

        Notes(after).Should().NotContain(n => n.Contains("place", StringComparison.Ordinal));
    }

    [Fact]
    public void Where_nobody_was_asked_the_morning_is_told_so() =>
        Notes(Asked.Did(new AnswerHandover(Tiny.B1, []))).Should().Contain("handover not answered");

    private static IReadOnlyList<string> Notes(Depot depot) => Readiness.Of(depot, depot.Setup.Van(Tiny.B1)).Notes;
}
