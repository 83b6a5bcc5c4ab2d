using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>A van whose load was cut is loaded, line by line or at once: what is said of the rest of the evening stays true.</summary>
public class LoadedToPayloadStories
{
    private static readonly Code<Item> Shower = Tiny.Shower.Code;
    private static readonly Code<Item> Wrap = Tiny.Wrap.Code;

    /// <summary>10 lamps and 4 showerheads weigh 4 lb, 2 pieces of wrap 0.6. 3.6 lb for stock: no wrap, and 3 showerheads.</summary>
    private static readonly Depot Evening = Tiny.Opened("bin: 10 LAMP, 9 SHOWER, 9 WRAP", setup: PayloadStories.Van(3.6) with { Rates = [new(new("HOME"), Shower, 2, 5)] })
        .At(Tiny.B1, Step.Closed).Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, new("HOME"), 1)] });

    [Fact]
    public void Loaded_as_planned_nothing_is_left_to_load_and_nothing_is_called_short()
    {
        var before = RestockPlan.For(Evening);
        var after = RestockPlan.For(Evening.Did(Evening.AsPlanned(Tiny.B1)));

        before.Lines.Select(l => (l.Item.Code.Text, l.Target.Basis, l.Units)).Should().Equal(("LAMP", Basis.Low, 10), ("SHOWER", Basis.Payload, 3), ("WRAP", Basis.Payload, 0));
        after.Lines.Sum(l => l.Units + l.Need + l.Short).Should().Be(0);
        after.Lines.Select(l => (l.Item.Code.Text, l.Target)).Should().Equal(("SHOWER", new(3, Basis.Payload)), ("WRAP", new(0, Basis.Payload)));
        after.Weight(Tiny.B1).LoadedLb.Should().BeApproximately(3.5, 1e-9);
        after.Shelf.Should().NotBeEmpty().And.OnlyContain(s => s.Short == 0, "the depot still has them");
    }

    [Fact]
    public void Why_says_of_a_loaded_line_that_there_is_no_room_for_more()
    {
        var depot = Evening.Did(Evening.AsPlanned(Tiny.B1));
        var line = depot.Line(Tiny.B1, Shower)!;
        Why.Of(depot.Setup, line, RestockPlan.For(depot).Weight(Tiny.B1)).Single(w => w.Heading == "Payload").Sentence
            .Should().StartWith($"{line.CutUnits} are left out: all that was planned would make ").And.Contain(", and 3.6 lb is what the payload leaves").And.EndWith("is cut to 3");
    }

    [Fact]
    public void The_promise_is_what_was_cut_to_whether_it_was_loaded_or_not()
    {
        Evening.Next(Thursday).Planning.Promises.Should().ContainSingle(p => p.Item == Shower).Which.Target.Should().Be(3);
        Evening.Did(Evening.AsPlanned(Tiny.B1)).Next(Thursday).Planning.Promises.Should().ContainSingle(p => p.Item == Shower).Which.Target.Should().Be(3);
    }

    [Fact]
    public void Line_by_line_the_lines_that_are_left_stay_as_they_were()
    {
        var depot = Evening;
        foreach (var take in Evening.AsPlanned(Tiny.B1).Lines)
        {
            var left = RestockPlan.For(depot).Lines.Where(l => l.Item.Code != take.Item).Select(l => (l.Item.Code, l.Target, l.Units)).ToList();
            depot = depot.Did(new LoadVan(Tiny.B1, [take], Tiny.T1));
            RestockPlan.For(depot).Lines.Where(l => l.Item.Code != take.Item).Select(l => (l.Item.Code, l.Target, l.Units)).Should().Equal(left);
        }
    }

    [Fact]
    public void A_short_pick_makes_room_for_others_and_is_still_called_short()
    {
        var depot = Evening.Did(new LoadVan(Tiny.B1, [new(Lamp, 0, 4)], Tiny.T1));
        depot.Line(Tiny.B1)!.Should().Match<RestockLine>(l => l.Short == 6 && l.Target.Basis == Basis.Low, "six were planned and not taken: weight is not why");
        depot.Given(Tiny.B1, Shower).Should().BeGreaterThan(3);
        depot.Given(Tiny.B1, Wrap).Should().BeGreaterThan(0);
    }

    [Fact]
    public void What_the_depot_has_no_more_of_stays_short_in_a_van_that_is_full()
    {
        // Ten lamps and the last three showerheads weigh just 3.5 lb. A fourth would be too heavy, and there is none.
        var depot = Tiny.Opened("bin: 10 LAMP, 3 SHOWER; B1: 0+2 WRAP", setup: PayloadStories.Van(3.5 + 0.6)).At(Tiny.B1, Step.Closed);
        var loaded = depot.Did(depot.AsPlanned(Tiny.B1));
        loaded.Line(Tiny.B1, Shower)!.Should().Match<RestockLine>(l => l.Short == 1 && l.Target == new Target(4, Basis.Low));
    }

    [Fact]
    public void What_others_took_of_it_is_still_not_short_in_the_van_that_could_not_carry_it()
    {
        // 12 lamps for two vans that lack 10 each. B1 may carry 4, so B2 gets 8, and then there are none.
        var setup = Tiny.Setup with { Items = [Tiny.Lamp], Vans = [Tiny.Setup.Vans[0] with { PayloadLb = 450.8 }, Tiny.Setup.Vans[1]] };
        var depot = Tiny.Opened("bin: 12 LAMP", setup: setup).At(Tiny.B1, Step.Closed).At(Tiny.B2, Step.Closed);
        depot = depot.Did(depot.AsPlanned(Tiny.B1));
        depot = depot.Did(depot.AsPlanned(Tiny.B2));

        depot.Line(Tiny.B1)!.Should().Match<RestockLine>(l => l.Short == 0 && l.Target == new Target(4, Basis.Payload) && l.CutUnits == 6);
        depot.Line(Tiny.B2)!.Should().Match<RestockLine>(l => l.Short == 2 && l.Target == new Target(10, Basis.Low));
    }

    [Fact]
    public void What_rounding_left_is_not_offered_when_the_rest_is_loaded()
    {
        // Two tapes of 0.1 lb go first, wholly, then one of the lamps: 0.1 lb are left, room for a tape.
        var (lamp, tape) = (Tiny.Lamp with { Low = 5, Priority = 2 }, Tiny.Wrap with { Code = new("TAPE"), UnitWeightLb = 0.1, Priority = 3 });
        var depot = Tiny.Opened("bin: 9 LAMP, 9 TAPE", setup: PayloadStories.Van(0.9, Tiny.Setup with { Items = [lamp, tape] })).At(Tiny.B1, Step.Closed);
        (depot.Given(Tiny.B1), depot.Given(Tiny.B1, tape.Code)).Should().Be((4, 0));

        var loaded = depot.Did(depot.AsPlanned(Tiny.B1));
        RestockPlan.For(loaded).Weight(Tiny.B1).Should().Match<VanWeight>(w => w.LoadedLb < 0.81 && w.Cut.Count == 2);
        RestockPlan.For(loaded).Lines.Sum(l => l.Units).Should().Be(0);
    }

    [Fact]
    public void What_was_taken_in_spite_of_its_weight_is_no_longer_told_as_left_out()
    {
        var depot = Evening.Did(new LoadVan(Tiny.B1, [new(Shower, 0, 4)], Tiny.T1));
        var (planned, now) = (Evening.Line(Tiny.B1, Shower)!, depot.Line(Tiny.B1, Shower)!);
        now.CutUnits.Should().Be(planned.CutUnits - 1);
        depot.Did(new LoadVan(Tiny.B1, [new(Lamp, 0, 9)], Tiny.T1)).Line(Tiny.B1, Shower)!.CutUnits.Should().Be(planned.CutUnits - 1);
    }

    [Fact]
    public void A_line_of_which_everything_was_taken_in_spite_of_its_weight_is_done()
    {
        var wanted = Evening.Line(Tiny.B1, Shower)!.Cut!.Target.Units;
        Evening.Did(new LoadVan(Tiny.B1, [new(Shower, 0, wanted)], Tiny.T1)).Line(Tiny.B1, Shower).Should().BeNull();
    }

    [Fact]
    public void A_count_corrected_since_does_not_make_a_cut_line_short()
    {
        // Five lamps out of a carton opened for them; the five that went into the bin are gone when somebody counts it.
        var depot = Tiny.Opened("shelf: 1 LAMP", setup: PayloadStories.Van(2)).At(Tiny.B1, Step.Closed);
        depot = depot.Did(depot.AsPlanned(Tiny.B1)).Did(new CorrectCount(Place.Bin, Lamp, 0, "fell behind the bin", Tiny.T1));
        depot.Line(Tiny.B1)!.Should().Match<RestockLine>(l => l.Aboard == 5 && l.Short == 0 && l.Target == new Target(5, Basis.Payload));
    }

    [Fact]
    public void An_item_that_left_the_set_up_after_it_was_loaded_troubles_nobody()
    {
        var depot = Tiny.Opened("bin: 20 LAMP", setup: PayloadStories.Van(1)).At(Tiny.B1, Step.Closed);
        depot = depot.Did(new LoadVan(Tiny.B1, [new(Wrap, 0, 0)], Tiny.T1));
        var gone = depot.Take(new DayFolderLoaded(depot.Setup with { Items = [Tiny.Lamp, Tiny.Shower] }, [], [], [], [], [], [], []));
        gone.Given(Tiny.B1).Should().Be(5);
    }

    [Fact]
    public void Taking_more_than_planned_makes_the_van_too_heavy_and_the_plan_says_by_how_much()
    {
        var depot = Evening.Did(new LoadVan(Tiny.B1, [new(Lamp, 0, 10), new(Shower, 0, 6)], Tiny.T1));
        RestockPlan.For(depot).Weight(Tiny.B1).AboveLb.Should().BeApproximately(1.4, 1e-9);
        depot.Given(Tiny.B1, Wrap).Should().Be(0);
    }
}
