using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Leads;

/// <summary>What was recorded by mistake at the desk is taken back by a new entry.</summary>
public sealed class TakeBackStories
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Code<WasteStream> Lamps = new("lamps");
    private static readonly DateOnly Friday = Tiny.Wednesday.AddDays(2);

    private static readonly Depot Evening = Ordered(Tiny.Opened("B1: 2+5 LAMP; shelf: 3 LAMP").At(Tiny.B1, Step.Closed));

    [Fact]
    public void A_load_goes_back_to_the_shelf_and_the_bin_and_is_planned_again()
    {
        var loaded = Evening.Did(new LoadVan(Tiny.B1, [new(Lamp, 1, 4)], Tiny.T1));
        var after = loaded.Did(new TakeBack(loaded.Number, null, "wrong van", Tiny.T1));

        after.Stock.Ledger.Units(Place.Sealed(Tiny.B1), Lamp).Should().Be(Evening.Stock.Ledger.Units(Place.Sealed(Tiny.B1), Lamp));
        after.Stock.Ledger.Units(Place.Loose(Tiny.B1), Lamp).Should().Be(Evening.Stock.Ledger.Units(Place.Loose(Tiny.B1), Lamp));
        (after.Stock.Ledger.Units(Place.Shelf, Lamp), after.Stock.Ledger.Units(Place.Bin, Lamp)).Should().Be((20, 10), "the carton that was opened stays open");
        CardboardTotals.OpenedAtDepot(after, Lamp).Should().Be(1, "and its box is there");
        Refused(after, new LoadVan(Tiny.B1, [new(Lamp, 1, 0)], Tiny.T1)).Should().BeNull("it can be loaded anew");
    }

    [Fact]
    public void Of_several_items_loaded_the_one_named_goes_back()
    {
        var two = Tiny.Opened("B1: 0+0 LAMP; shelf: 3 LAMP, 2 WRAP").At(Tiny.B1, Step.Closed)
            .Did(new LoadVan(Tiny.B1, [new(Lamp, 1, 0), new(new("WRAP"), 1, 0)], Tiny.T1));
        Refused(two, new TakeBack(two.Number, null, "wrong van", Tiny.T1)).Should().Be("which-item");

        var after = two.Did(new TakeBack(two.Number, Lamp, "wrong van", Tiny.T1));
        after.Stock.Loaded.Keys.Select(k => k.Item).Should().Equal(new Code<Item>("WRAP"));
        Refused(after, new TakeBack(two.Number, Lamp, "wrong van", Tiny.T1)).Should().Be("which-item", "that line is gone");
        after.Did(new TakeBack(two.Number, new("WRAP"), "wrong van", Tiny.T1)).Stock.MayGoBack.Should().BeEmpty();
    }

    [Fact]
    public void A_delivery_leaves_the_shelf_and_is_on_order_again_by_its_date()
    {
        var came = Evening.Did(new ReceiveDelivery(Lamp, 5, Tiny.T1));
        var after = came.Did(new TakeBack(came.Number, null, "came for another depot", Tiny.T1));

        came.Stock.Orders.Should().BeEmpty();
        after.Stock.Orders.Should().Equal(new Order(Lamp, 4, Friday));
        after.Stock.Ledger.Units(Place.Shelf, Lamp).Should().Be(30);
    }

    [Fact]
    public void A_pickup_puts_its_cardboard_into_the_container_again()
    {
        var full = Evening.Did(new CountDepotBoxes(Lamp, 7, Tiny.T1));
        var empty = full.Did(new EmptyContainer(80, null, Tiny.T1));
        Container.LoadedLb(empty).Should().Be(0);

        Container.LoadedLb(empty.Did(new TakeBack(empty.Number, null, "the truck was full", Tiny.T1))).Should().Be(Container.LoadedLb(full));
    }

    [Fact]
    public void A_shipped_box_stands_in_the_yard_again_with_its_date_unless_the_next_has_begun()
    {
        var yard = Tiny.Opened("B1: 2+5 LAMP", setup: Streams).At(Tiny.B1, Step.Cardboard).Did(new CountStream(Tiny.B1, Lamps, 3));
        var shipped = yard.Did(new ShipCollected(Lamps, "recycler, slip 7", Tiny.T1));

        shipped.Did(new TakeBack(shipped.Number, null, "he took the other box", Tiny.T1)).Yard.Collecting.Should().BeEquivalentTo(yard.Yard.Collecting);

        var next = shipped.Did(new CountStream(Tiny.B1, Lamps, 5));
        Refused(next, new TakeBack(shipped.Number, null, "he took the other box", Tiny.T1)).Should().Be("next-box-begun");
    }

    [Fact]
    public void Whoever_recorded_it_takes_it_back_or_a_lead_and_nobody_else()
    {
        var came = Evening.Did(new ReceiveDelivery(Lamp, 5, Tiny.T1));

        Refused(came, new TakeBack(came.Number, null, "not mine", Tiny.T2)).Should().Be("not-who-recorded");
        Refused(came, new TakeBack(came.Number, null, "a lead may", Tiny.Lead)).Should().BeNull();
        Refused(came, new TakeBack(came.Number, null, " ", Tiny.Lead)).Should().Be("no-words");
    }

    [Fact]
    public void What_something_was_built_on_stays()
    {
        var came = Evening.Did(new ReceiveDelivery(Lamp, 5, Tiny.T1));
        var counted = came.Did(new CorrectCount(Place.Shelf, Lamp, 6, "counted", Tiny.T1));
        Refused(counted, new TakeBack(came.Number, null, "late", Tiny.T1)).Should().Be("not-to-take-back", "the shelf was counted since");

        var gone = came.Did(new LoadVan(Tiny.B1, [new(Lamp, 5, 0)], Tiny.T1));
        Refused(gone, new TakeBack(came.Number, null, "late", Tiny.T1)).Should().Be("no-longer-there", "three cartons are left");

        Refused(Evening, new TakeBack(1, null, "the opening", Tiny.T1)).Should().Be("not-to-take-back");
        var once = came.Did(new TakeBack(came.Number, null, "by mistake", Tiny.T1));
        Refused(once, new TakeBack(came.Number, null, "again", Tiny.T1)).Should().Be("not-to-take-back", "once is enough");
    }

    private static Depot Ordered(Depot depot) => depot with { Stock = depot.Stock with { Orders = [new(Lamp, 4, Friday)] } };

    private static Setup Streams => Tiny.Setup with { Depot = Tiny.Setup.Depot with { Streams = [Lamps] } };

    private static string? Refused(Depot depot, TakeBack command) => command.Decide(depot).Refusal?.Code;

    private static string? Refused(Depot depot, LoadVan command) => command.Decide(depot).Refusal?.Code;
}
