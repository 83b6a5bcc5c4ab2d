using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given vans that are closed, when one is loaded, then an entry with what was really taken, or a refusal.</summary>
public class LoadVanStories
{
    // Each van lacks 10 lamps. A carton for each, or the bin.
    private static readonly Depot Evening = Tiny.Opened("shelf: 3 LAMP; bin: 4 LAMP").AllClosed();

    [Fact]
    public void An_exact_pick_moves_what_the_plan_said_and_nothing_else()
    {
        var loaded = (VanLoaded)Evening.Accepts(new LoadVan(Tiny.B1, [new(Lamp, 1, 0)], Tiny.T1));

        loaded.Lines.Should().Equal(new LoadedLine(Lamp, 1, 0, 0, 10));
        loaded.Moves.Should().Equal(new Move(Lamp, 10, Place.Shelf, Place.Sealed(Tiny.B1)));
        var after = Evening.Take(loaded);
        after.Stock.Ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(new Holding(1, 0));
        after.Line(Tiny.B1).Should().BeNull("it lacks nothing any more");
        (after.Given(Tiny.B2), after.Given(Tiny.B3)).Should().Be((Evening.Given(Tiny.B2), Evening.Given(Tiny.B3)));
    }

    [Fact]
    public void Planning_alone_moves_nothing()
    {
        RestockPlan.For(Evening);
        Evening.Stock.Ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(default(Holding));
    }

    [Fact]
    public void A_short_pick_is_kept_and_what_is_left_is_planned_for_the_others()
    {
        // One carton and 4 loose for three vans that lack 10 each; nothing is booked, so the smaller bay goes first.
        var scarce = Tiny.Opened("shelf: 1 LAMP; bin: 4 LAMP").AllClosed();
        new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Select(v => scarce.Given(v)).Should().Equal(10, 4, 0);

        var after = scarce.Did(new LoadVan(Tiny.B1, [new(Lamp, 0, 2)], Tiny.T1));

        var line = after.Line(Tiny.B1)!;
        (line.Aboard, line.Units, line.Short).Should().Be((2, 0, 8), "what was loaded is done, and the rest of it is short");
        after.Stock.Loaded[(Tiny.B1, Lamp)].Planned.Should().Be(10);
        new[] { Tiny.B2, Tiny.B3 }.Select(v => after.Given(v)).Should().Equal(10, 2);
    }

    [Fact]
    public void Nothing_taken_of_a_line_is_a_short_pick_too()
    {
        var after = Evening.Did(new LoadVan(Tiny.B1, [new(Lamp, 0, 0)], null));
        after.Stock.Ledger.Balances.Should().BeEquivalentTo(Evening.Stock.Ledger.Balances);
        after.Given(Tiny.B1).Should().Be(0);
    }

    [Fact]
    public void More_than_planned_may_be_taken_while_the_depot_has_it()
    {
        var after = Evening.Did(new LoadVan(Tiny.B1, [new(Lamp, 2, 3)], Tiny.T1));
        after.Stock.Ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(new Holding(2, 3));
        RestockPlan.For(after).Lines.Where(l => l.Item.Code == Lamp).Sum(l => l.Units).Should().Be(11, "a carton and a lamp are left for the two others");
    }

    [Fact]
    public void Loose_units_beyond_the_bin_come_from_cartons_opened_for_them_and_the_rest_goes_into_the_bin()
    {
        var loaded = (VanLoaded)Evening.Accepts(new LoadVan(Tiny.B1, [new(Lamp, 0, 16)], Tiny.T1));

        loaded.Lines[0].Opened.Should().Be(2, "4 in the bin and 12 more");
        var after = Evening.Take(loaded).Stock.Ledger;
        (after.Units(Place.Shelf, Lamp), after.Units(Place.Bin, Lamp), after.Units(Place.Loose(Tiny.B1), Lamp)).Should().Be((10, 8, 16));
    }

    [Fact]
    public void A_shelf_that_does_not_have_it_is_told_with_both_numbers()
    {
        Evening.Refuses(new LoadVan(Tiny.B1, [new(Lamp, 4, 0)], null)).Text.Should().StartWith("4 sealed cartons of LED lamp").And.Contain("only 3 on the shelf");
        Evening.Refuses(new LoadVan(Tiny.B1, [new(Lamp, 3, 5)], null)).Text.Should().Contain("and 1 to open");
        new LoadVan(Tiny.B1, [new(Lamp, 3, 4)], null).Decide(Evening).Refusal.Should().BeNull("the bin alone suffices for the loose ones");
    }

    [Theory]
    [InlineData(Step.OnTheRoad)]
    [InlineData(Step.Leftovers)]
    [InlineData(Step.SignOff)]
    public void A_van_that_is_not_closed_is_not_loaded(Step at)
    {
        var depot = at == Step.OnTheRoad ? Tiny.Opened("shelf: 3 LAMP") : Tiny.Opened("shelf: 3 LAMP").At(Tiny.B1, at);
        depot.Refuses(new LoadVan(Tiny.B1, [new(Lamp, 1, 0)], null)).Code.Should().Be("not-closed-yet");
    }

    [Fact]
    public void A_line_is_loaded_once_a_night_and_the_next_night_again()
    {
        var twice = new LoadVan(Tiny.B1, [new(Lamp, 1, 0)], null);
        Evening.Did(twice).Refuses(twice).Code.Should().Be("loaded-already");
        Evening.Refuses(new LoadVan(Tiny.B1, [new(Lamp, 1, 0), new(new("lamp"), 1, 0)], null)).Code.Should().Be("loaded-already", "twice in one answer");
        Evening.Did(twice).Next(Thursday).At(Tiny.B1, Step.Closed).Did(twice).Stock.Ledger.Aboard(Tiny.B1, Tiny.Lamp).Sealed.Should().Be(2);
    }

    [Fact]
    public void One_line_refused_leaves_the_others_unloaded_too() =>
        Evening.Refuses(new LoadVan(Tiny.B1, [new(Lamp, 1, 0), new(new("NONE"), 1, 0)], null)).Code.Should().Be("no-such-item");

    [Fact]
    public void All_lines_of_the_plan_at_once_leave_nothing_to_load()
    {
        var depot = Tiny.Opened("shelf: 5 LAMP, 4 SHOWER, 9 WRAP; bin: 3 SHOWER").AllClosed();
        foreach (var van in new[] { Tiny.B1, Tiny.B2, Tiny.B3 })
        {
            depot = depot.Did(depot.AsPlanned(van));
        }

        RestockPlan.For(depot).Lines.Should().BeEmpty();
    }
}
