using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given leftovers in the bin, when another van is loaded with them, then the first count cannot take them back.</summary>
public class LoadedMeanwhileStories
{
    [Fact]
    public void A_recount_that_takes_loaded_units_out_of_the_bin_is_refused_with_both_numbers()
    {
        var depot = Tiny.Opened("bin: 1 LAMP; B1: 0+8 LAMP").At(Tiny.B2, Step.Closed).At(Tiny.B1, Step.Leftovers)
            .Did(new CountLeftover(Tiny.B1, Lamp, 0, 6, 2))
            .Did(new LoadVan(Tiny.B2, [new(Lamp, 0, 5)], Tiny.T2));

        var refusal = depot.Refuses(new CountLeftover(Tiny.B1, Lamp, 0, 0, 8));
        refusal.Code.Should().Be("bin-too-low");
        refusal.Text.Should().Contain("holds 2 of").And.Contain("takes 6 back");

        depot.Did(new CountLeftover(Tiny.B1, Lamp, 0, 4, 4)).Stock.Ledger.Units(Place.Bin, Lamp).Should().Be(0, "two of them are still there");
    }
}
