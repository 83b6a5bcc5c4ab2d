using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>What of the plan holds whatever the forecast says.</summary>
public class RestockPlanTests
{
    private static readonly Code<VisitKind> Home = new("HOME");

    [Fact]
    public void Tomorrow_is_the_next_day_with_a_visit_booked_for_any_van()
    {
        var depot = Tiny.Opened().Planned(p => p with { Bookings = [new(Tiny.Wednesday, Tiny.B1, Home, 4), new(Tiny.Friday, Tiny.B1, Home, 0), new(Tiny.Friday.AddDays(3), Tiny.B2, Home, 1)] });
        RestockPlan.Tomorrow(depot).Should().Be(Tiny.Friday.AddDays(3), "today and a booking of no visits do not count");
    }

    [Fact]
    public void Without_bookings_tomorrow_is_the_day_after() => RestockPlan.Tomorrow(Tiny.Opened()).Should().Be(Tiny.Wednesday.AddDays(1));

    [Fact]
    public void Units_of_the_bin_go_before_those_of_opened_cartons_in_bay_order()
    {
        // Lamps: low 10 each. B1 has 4 and needs 6, B2 has 5 and needs 5, B3 has enough. High 10: nobody may be rounded up.
        var tight = Tiny.Setup with { Items = [Tiny.Lamp with { High = 10 }] };
        var plan = RestockPlan.For(Tiny.Opened("shelf: 2 LAMP; bin: 8 LAMP; B1: 0+4 LAMP; B2: 0+5 LAMP; B3: 1+0 LAMP", setup: tight));

        plan.Lines.Select(l => (l.Van.Code.Text, l.Need, l.Sealed, l.FromBin, l.FromOpened, l.Short))
            .Should().Equal(("B1", 6, 0, 6, 0, 0), ("B2", 5, 0, 2, 3, 0));
        plan.Shelf.Should().ContainSingle().Which.Should().BeEquivalentTo(
            new { ShelfBefore = 2, BinBefore = 8, SealedOut = 0, Opened = 1, LooseOut = 11, ShelfAfter = 1, BinAfter = 7, Short = 0 });
    }

    [Fact]
    public void What_the_depot_does_not_have_is_short()
    {
        var plan = RestockPlan.For(Tiny.Opened("bin: 8 LAMP", setup: Tiny.Setup with { Items = [Tiny.Lamp] }));
        plan.Lines.Sum(l => l.Units).Should().Be(8);
        plan.Lines.Sum(l => l.Short).Should().Be(22);
        plan.Shelf[0].Short.Should().Be(22);
    }

    [Fact]
    public void A_van_that_is_not_closed_has_provisional_lines_by_the_book()
    {
        var depot = Tiny.Opened("B1: 0+4 LAMP; B2: 0+4 LAMP").At(Tiny.B1, Step.SignOff).At(Tiny.B2, Step.Closed);
        RestockPlan.For(depot).Lines.Where(l => l.Item.Code == Tiny.Lamp.Code).ToDictionary(l => l.Van.Code.Text, l => l.Provisional)
            .Should().BeEquivalentTo(new Dictionary<string, bool> { ["B1"] = true, ["B2"] = false, ["B3"] = true });
    }

    [Fact]
    public void Lines_are_in_bay_order_then_item_order_and_the_shelf_has_every_item()
    {
        var plan = RestockPlan.For(Tiny.Opened());
        plan.Lines.Select(l => $"{l.Van.Code} {l.Item.Code}").Should().Equal(
            from van in new[] { "B1", "B2", "B3" } from item in new[] { "LAMP", "SHOWER", "WRAP" } select $"{van} {item}");
        plan.Shelf.Select(s => s.Item.Code.Text).Should().Equal("LAMP", "SHOWER", "WRAP");
    }

    [Fact]
    public void A_van_may_have_its_own_low_and_high()
    {
        var own = Tiny.Setup with { Limits = [new VanLimit(Tiny.B2, Tiny.Lamp.Code, 0, 0)] };
        RestockPlan.For(Tiny.Opened(setup: own)).Lines.Where(l => l.Item.Code == Tiny.Lamp.Code).Select(l => l.Van.Code.Text).Should().Equal("B1", "B3");
    }
}
