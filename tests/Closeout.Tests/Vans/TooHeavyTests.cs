using Closeout.DayBook;
using Closeout.Restock;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

/// <summary>A van whose stock is more than its payload leaves for it, whatever the plan loads.</summary>
public class TooHeavyTests
{
    private static Depot With(double payloadLb)
    {
        var depot = Tiny.Opened("B1: 2+5 LAMP");
        return depot with { Setup = depot.Setup with { Vans = [.. depot.Setup.Vans.Select(v => v.Code == Tiny.B1 ? v with { PayloadLb = payloadLb } : v)] } };
    }

    [Fact]
    public void It_is_said_on_the_wall_as_soon_as_the_book_has_it_aboard()
    {
        var depot = With(451).At(Tiny.B1, Step.Closed);
        var above = Payload.AboveLb(depot, depot.Setup.Van(Tiny.B1));

        above.Should().BeApproximately(RestockPlan.For(depot).Weight(Tiny.B1).AboardLb - 1, 1e-9, "crew and kit are 450 lb of it");
        Readiness.Of(depot, depot.Setup.Van(Tiny.B1)).Notes.Should().Contain($"TOO HEAVY by {depot.Setup.Units.Weight(above)} with the stock aboard: take some off");
        Readiness.Of(depot, depot.Setup.Van(Tiny.B1)).Morning.Should().Be(Morning.ReadyWithNotes);
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(-0.25, 0.25)]
    public void Just_the_payload_is_not_too_heavy_and_a_quarter_of_a_pound_above_it_is(double left, double aboveLb)
    {
        var depot = With(450 + RestockPlan.For(With(3000)).Weight(Tiny.B1).AboardLb + left);

        Payload.AboveLb(depot, depot.Setup.Van(Tiny.B1)).Should().BeApproximately(aboveLb, 1e-9);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(3000)]
    public void Within_the_payload_and_where_none_is_stated_nothing_is_said(double payloadLb)
    {
        var depot = With(payloadLb);

        Payload.AboveLb(depot, depot.Setup.Van(Tiny.B1)).Should().Be(0);
        Readiness.Of(depot, depot.Setup.Van(Tiny.B1)).Notes.Should().NotContain(n => n.Contains("HEAVY"));
    }
}
