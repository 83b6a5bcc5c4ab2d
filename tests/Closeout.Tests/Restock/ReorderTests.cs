using Closeout.Facts;
using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class ReorderTests
{
    // Cartons of 4, 5 days of lead and 5 of review, at least one carton.
    private static readonly Item Head = Tiny.Shower with { LeadDays = 5, ReviewDays = 5, MinOrderCartons = 1 };

    // 2 a day, variance 2: Poisson of 10 over the lead, P(<= 14) = 0.9165, P(<= 15) = 0.9513: s = 15.
    // Poisson of 20 over both, P(<= 27) = 0.9475, P(<= 28) = 0.9657: S = 28.
    [Theory]
    [InlineData(15, 4)]     // at the reorder point: (28 - 15) / 4 = 3.25, up to 4
    [InlineData(16, 0)]     // above it
    [InlineData(12, 4)]     // 16 / 4 to the unit
    [InlineData(11, 5)]
    [InlineData(0, 7)]
    [InlineData(-5, 9)]     // below nothing: 33 / 4
    public void At_the_reorder_point_and_below_the_order_fills_up(long position, int cartons) =>
        Reorder.Of(Head, new(2, 2), 0.95, position).Should().Be(new Reorder(position, 15, 28, cartons));

    [Theory]
    [InlineData(15, 6, 6)]
    [InlineData(0, 6, 7)]
    [InlineData(16, 6, 0)]
    [InlineData(15, 0, 4)]
    public void The_least_order_is_ordered_only_when_there_is_one(long position, int least, int cartons) =>
        Reorder.Of(Head with { MinOrderCartons = least }, new(2, 2), 0.95, position).Cartons.Should().Be(cartons);

    // 2 a day, variance 6: over 5 days 10 and 30, over 10 days 20 and 60, negative binomial; the variance grows as the days do.
    [Fact]
    public void Lumpy_use_is_negative_binomial()
    {
        var order = Reorder.Of(Head, new(2, 6), 0.95, 0);
        (order.ReorderPoint, order.UpTo).Should().Be((new Demand(10, 30).Quantile(0.95), new Demand(20, 60).Quantile(0.95)));
        order.ReorderPoint.Should().BeGreaterThan(15);
    }

    [Fact]
    public void An_item_that_nobody_uses_is_never_ordered() =>
        Reorder.Of(Head with { MinOrderCartons = 9 }, default, 0.98, 0).Should().Be(new Reorder(0, 0, 0, 0));

    [Fact]
    public void Without_a_lead_time_it_is_ordered_when_nothing_is_left()
    {
        var here = Head with { LeadDays = 0 };
        Reorder.Of(here, new(2, 2), 0.95, 0).Should().Be(new Reorder(0, 0, 15, 4));
        Reorder.Of(here, new(2, 2), 0.95, 1).Cartons.Should().Be(0);
    }

    [Fact]
    public void What_is_ordered_reaches_the_level_with_less_than_a_carton_over() =>
        Gen.Select(Gen.Select(Gen.Double[0.01, 30], Gen.Double[0, 4]), Gen.Select(Gen.Int[1, 24], Gen.Int[0, 12], Gen.Int[0, 20]), Gen.Int[-5, 400]).Holds((use, item, position) =>
        {
            var (c, lead, review) = item;
            var order = Reorder.Of(Head with { UnitsPerCarton = c, LeadDays = lead, ReviewDays = review, MinOrderCartons = 0 }, new(use.Item1, use.Item1 * use.Item2), 0.9, position);
            order.UpTo.Should().BeGreaterThanOrEqualTo(order.ReorderPoint);
            if (position > order.ReorderPoint)
            {
                order.Cartons.Should().Be(0);
            }
            else
            {
                (position + (long)order.Cartons * c - order.UpTo).Should().BeInRange(0, c - 1);
            }
        });

    // Three working days: 3 and, of another kind of visit, 2; none; 7. Mean 12 / 3 = 4, variance (1 + 16 + 9) / 2 = 13.
    [Fact]
    public void A_working_day_is_the_depot_s_use_of_all_kinds()
    {
        var working = WorkingDays.Of(Tiny.Opened().Planned(p => p with { Use = [On(-1, "HOME", 3), On(-1, "CHECK", 2), On(-2, "HOME", 0), On(-5, "CHECK", 7), On(-60, "HOME", 99), On(1, "HOME", 99)] }));
        working.Count.Should().Be(3);
        working.UseOf(Tiny.Lamp.Code).Should().Be(new WorkingDays.Use(4, 13));
        working.UseOf(Tiny.Wrap.Code).Should().Be(default(WorkingDays.Use), "never used on any of them");
    }

    [Fact]
    public void Of_a_single_working_day_no_spread_is_known() =>
        WorkingDays.Of(Tiny.Opened().Planned(p => p with { Use = [On(0, "HOME", 6)] })).UseOf(Tiny.Lamp.Code).Should().Be(new WorkingDays.Use(6, 0));

    [Fact]
    public void Without_any_nothing_is_ordered()
    {
        var shelf = RestockPlan.For(Tiny.Opened()).Shelf;
        shelf.Select(s => s.Order.Cartons).Should().Equal(0, 0, 0);
        WorkingDays.Of(Tiny.Opened()).UseOf(Tiny.Lamp.Code).Should().Be(default(WorkingDays.Use));
    }

    // 4 a day: Poisson of 20 over 5 days of lead, s at 0.98 = 30. Shelf 2 cartons of 10, bin 4, on order 1 carton; B1 needs 10:
    // a sealed carton goes. Position 10 + 4 + 10 = 24, not 34: what tonight takes out is gone, what is on order is there.
    [Fact]
    public void The_position_is_what_tonight_leaves_and_what_is_on_order()
    {
        var setup = Tiny.Setup with { Items = [Tiny.Lamp], Vans = [Tiny.Setup.Vans[0]] };
        var depot = Tiny.Opened("shelf: 2 LAMP; bin: 4 LAMP", setup: setup)
            .Planned(p => p with { Use = [On(-1, "HOME", 4), On(-2, "HOME", 4)] })
            .Stocked(s => s with { Orders = [new(Tiny.Lamp.Code, 1, Tiny.Wednesday.AddDays(30))] });
        var shelf = RestockPlan.For(depot).Shelf.Single();
        (shelf.Order.Position, shelf.Order.ReorderPoint).Should().Be((24, 30));
        shelf.Order.UpTo.Should().Be(new Demand(40, 0).Quantile(0.98));
        shelf.Order.Cartons.Should().Be((shelf.Order.UpTo - 24 + 9) / 10);
    }

    private static DailyUse On(int day, string kind, int lamps) =>
        new(Tiny.Wednesday.AddDays(day), new(kind), 1, lamps == 0 ? [] : [new(Tiny.Lamp.Code, lamps, lamps * lamps)]);
}
