using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given what is on order, when cartons come, then they stand on the shelf and the orders due first are filled.</summary>
public class DeliveryStories
{
    private static readonly DateOnly Monday = Tiny.Monday.AddDays(7);
    private static readonly Order Late = new(Lamp, 4, Monday);
    private static readonly Order Soon = new(Lamp, 3, Tiny.Friday);
    private static readonly Order Other = new(Tiny.Shower.Code, 5, Tiny.Friday);

    private static readonly Depot Ordered = Tiny.Opened("shelf: 1 LAMP").Stocked(s => s with { Orders = [Late, Soon, Other] });

    private static ReceiveDelivery Came(int cartons) => new(Lamp, cartons, Tiny.T2);

    [Fact]
    public void Cartons_come_from_the_supplier_onto_the_shelf()
    {
        var entry = (DeliveryReceived)Ordered.Accepts(Came(7));
        (entry.Cartons, entry.Ordered).Should().Be((7, 7));
        entry.Moves.Should().Equal(new Move(Lamp, 70, Place.Supplier, Place.Shelf));
        Ordered.Take(entry).Stock.Ledger.Units(Place.Shelf, Lamp).Should().Be(80);
    }

    [Fact]
    public void An_exact_delivery_leaves_no_order_of_the_item() => Ordered.Did(Came(7)).Stock.Orders.Should().Equal(Other);

    [Theory]
    [InlineData(2, "LAMP 4 2026-11-23, LAMP 1 2026-11-20, SHOWER 5 2026-11-20")]
    [InlineData(3, "LAMP 4 2026-11-23, SHOWER 5 2026-11-20")]
    [InlineData(5, "LAMP 2 2026-11-23, SHOWER 5 2026-11-20")]
    public void Too_few_fill_the_orders_that_are_due_first(int came, string left) =>
        string.Join(", ", Ordered.Did(Came(came)).Stock.Orders.Select(o => $"{o.Item} {o.Cartons} {o.Due:yyyy-MM-dd}")).Should().Be(left);

    [Fact]
    public void Deliveries_add_up() => Ordered.Did(Came(2), Came(2)).Stock.Orders.Should().Equal(new Order(Lamp, 3, Monday, Arrived: 1), Other);

    [Fact]
    public void Too_many_are_kept_and_the_entry_says_how_many_were_ordered()
    {
        var entry = (DeliveryReceived)Ordered.Accepts(Came(9));
        (entry.Cartons, entry.Ordered).Should().Be((9, 7));
        var after = Ordered.Take(entry);
        after.Stock.Ledger.Units(Place.Shelf, Lamp).Should().Be(100);
        after.Stock.Orders.Should().Equal(Other);
    }

    [Fact]
    public void What_nobody_ordered_is_received_all_the_same() =>
        ((DeliveryReceived)Tiny.Opened().Accepts(Came(1))).Ordered.Should().Be(0);

    [Fact]
    public void Two_orders_alike_are_two_orders()
    {
        var twins = Tiny.Opened().Stocked(s => s with { Orders = [Soon, Soon] });
        twins.Did(Came(4)).Stock.Orders.Should().Equal(Soon with { Cartons = 2, Arrived = 1 });
    }

    [Fact]
    public void What_came_is_for_tonights_plan_and_no_longer_on_order()
    {
        var bare = Tiny.Opened().Stocked(s => s with { Orders = [Soon] });
        bare.Given(Tiny.B1).Should().Be(0);
        var after = bare.Did(Came(3));
        new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Select(v => after.Given(v)).Should().Equal(10, 10, 10);
        RestockPlan.For(after).Shelf.Single(s => s.Item.Code == Lamp).OnOrder.Should().Be(0);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(10_000)]    // 100 000 lamps
    [InlineData(int.MaxValue)]
    public void A_number_that_no_delivery_has_is_refused(int cartons) => Ordered.Refuses(Came(cartons)).Code.Should().Be("out-of-range");

    [Fact]
    public void What_is_left_on_order_is_carried_to_the_next_page() => Ordered.Did(Came(2)).Next(Thursday).Stock.Orders.Should().Equal(Late, Soon with { Cartons = 1, Arrived = 2 }, Other);
}
