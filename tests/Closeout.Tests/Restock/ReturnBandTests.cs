using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>What of a van's loose units goes back to the bin, and how much of that was for nothing.</summary>
public class ReturnBandTests
{
    private static readonly Code<VisitKind> Install = new("INSTALL");

    [Theory]
    [InlineData(1.0, 30, 30, 0)]
    [InlineData(1.0, 34, 34, 7)]
    [InlineData(1.0, 34, 3, 3)]
    [InlineData(0.0, 30, 30, 3)]
    [InlineData(9.0, 60, 60, 0)]
    public void Loose_units_go_down_to_the_target_only_where_far_more_is_aboard(double band, int aboard, int loose, int toBin)
    {
        // One visit of 16 lamps, as good as Poisson: 0.98 takes 25, and low is 27; the standard deviation is 4.
        var depot = Tiny.Opened(setup: Tiny.Setup with
        {
            Depot = Tiny.Settings with { ReturnAt = band }, Items = [Tiny.Lamp with { Low = 27 }], Rates = [new(Install, Tiny.Lamp.Code, 16, 1e12)],
        }).Planned(p => p with { Bookings = [new(TinyDesk.Thursday, Tiny.B1, Install, 1)] });
        ReturnBand.ToBin(depot, Tiny.B1, depot.Setup.Items[0], aboard, loose).Should().Be(toBin);
    }

    [Fact]
    public void Units_given_back_and_loaded_into_the_same_van_within_three_evenings_were_for_nothing()
    {
        var evening = Tiny.Opened("bin: 20 LAMP").Planned(p => p with { Returned = [new(Tiny.B1, Tiny.Lamp.Code, 4, 1), new(Tiny.B1, Tiny.Lamp.Code, 3, 2), new(Tiny.B2, Tiny.Lamp.Code, 9, 1)] })
            .AllClosed().Did(new LoadVan(Tiny.B1, [new(Tiny.Lamp.Code, 0, 5)], Tiny.T1));
        Handling.Tonight(evening).Should().Equal(new Handled(Tiny.Wednesday, 1, 0, 5, 5));
        Handling.StillReturned(evening).Should().Equal(new ReturnedUnits(Tiny.B1, Tiny.Lamp.Code, 2, 2), new ReturnedUnits(Tiny.B2, Tiny.Lamp.Code, 9, 2));
        Handling.Of(evening.Next(TinyDesk.Thursday)).Should().ContainSingle();
    }
}
