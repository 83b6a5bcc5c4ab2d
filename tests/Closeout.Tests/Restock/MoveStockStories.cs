using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Shifts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Stock that goes from van to van: at the depot, and on the road.</summary>
public class MoveStockStories
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Depot Evening = Tiny.Opened("B1: 3+4 LAMP; B2: 1+1 LAMP");

    [Fact]
    public void A_carton_goes_back_to_the_shelf_and_loose_units_to_the_bin()
    {
        var moved = Evening.AllClosed().Did(new MoveStock(Tiny.B1, null, Lamp, 1, 3, "short tonight", Tiny.T1));
        Held(moved, Tiny.B1).Should().Be(new Holding(2, 1));
        (moved.Stock.Ledger.Units(Place.Shelf, Lamp), moved.Stock.Ledger.Units(Place.Bin, Lamp)).Should().Be((10, 3));
    }

    [Fact]
    public void A_carton_is_opened_where_loose_units_do_not_suffice_and_its_box_is_to_be_flattened()
    {
        var moved = Evening.AllClosed().Did(new MoveStock(Tiny.B1, Tiny.B2, Lamp, 0, 9, "short tonight", Tiny.T1));
        (Held(moved, Tiny.B1), Held(moved, Tiny.B2)).Should().Be((new Holding(2, 5), new Holding(1, 10)));
        moved.Stock.OpenedBack[Lamp].Should().Be(1);
    }

    [Theory]
    [InlineData(0, 0, "nothing-moved")]
    [InlineData(4, 0, "not-aboard")]
    [InlineData(3, 5, "not-aboard")]
    [InlineData(0, 35, "not-aboard")]
    public void Only_what_is_aboard_can_go(int boxed, int loose, string refusal) =>
        Evening.AllClosed().Refuses(new MoveStock(Tiny.B1, Tiny.B2, Lamp, boxed, loose, "short tonight", Tiny.T1)).Code.Should().Be(refusal);

    [Fact]
    public void Vans_that_nobody_counted_yet_keep_what_they_have()
    {
        Evening.Refuses(new MoveStock(Tiny.B1, Tiny.B2, Lamp, 1, 0, "short tonight", Tiny.T1)).Code.Should().Be("not-closed-yet");
        Evening.AllClosed().Refuses(new MoveStock(Tiny.B1, Tiny.B1, Lamp, 1, 0, "short tonight", Tiny.T1)).Code.Should().Be("same-van");
    }

    [Fact]
    public void Ten_lamps_handed_over_on_the_road_are_in_the_other_van_before_either_is_counted()
    {
        var told = Gave(Evening.At(Tiny.B1, Step.Leftovers), 1, 0);
        (Held(told, Tiny.B1), Held(told, Tiny.B2)).Should().Be((new Holding(2, 4), new Holding(2, 1)));
        told.Shift(Tiny.B1)!.Before[Lamp].Should().Be(new Holding(2, 4));
        told.At(Tiny.B2, Step.Leftovers).Shift(Tiny.B2)!.Before[Lamp].Should().Be(new Holding(2, 1));
        Readiness(told).Should().Contain("LAMP from B1 not confirmed: did it come?");
    }

    [Fact]
    public void Who_counted_before_it_was_said_counted_what_was_left_or_what_was_there_already()
    {
        // B2 comes in first, counts 11 more than on record and confirms it; B1 counts 10 fewer. Then B1 says it.
        var counted = Evening.At(Tiny.B2, Step.Leftovers).Did(new CountLeftover(Tiny.B2, Lamp, 2, 0, 1, Sure: true)).At(Tiny.B2, Step.Closed)
            .At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 2, 0, 4));
        (counted.Shift(Tiny.B1)!.Counts[Lamp].Used, counted.Shift(Tiny.B2)!.Counts[Lamp].Gap).Should().Be((10, -10));

        var told = Gave(counted, 1, 0);
        (Held(told, Tiny.B1), Held(told, Tiny.B2)).Should().Be((new Holding(2, 4), new Holding(2, 1)), "both are as they were counted");
        (told.Shift(Tiny.B1)!.Counts[Lamp].Used, told.Shift(Tiny.B2)!.Counts[Lamp].Gap).Should().Be((0, 0));
        (told.Stock.Ledger.Units(Place.Homes, Lamp), told.Stock.Ledger.Units(Place.Unexplained, Lamp)).Should().Be((0, 0));
        told.Stock.Ledger.Unbalanced.Should().BeEmpty();
    }

    [Fact]
    public void A_carton_opened_on_the_road_for_the_other_van_leaves_its_box_in_this_one()
    {
        var told = Gave(Evening.At(Tiny.B1, Step.Leftovers), 0, 9);
        (Held(told, Tiny.B1), Held(told, Tiny.B2)).Should().Be((new Holding(2, 5), new Holding(1, 10)));
        told.Shift(Tiny.B1)!.ExpectedOf(Lamp).Should().Be(1);
        told.Did(new CountLeftover(Tiny.B1, Lamp, 1, 0, 5)).Shift(Tiny.B1)!.Expected.Should().Equal((Lamp, 2));
    }

    [Fact]
    public void The_other_technician_or_a_lead_says_whether_it_came()
    {
        var told = Gave(Evening.At(Tiny.B1, Step.Leftovers), 1, 0).At(Tiny.B2, Step.Leftovers);
        var number = told.Stock.Gifts.Single().Key;
        told.Refuses(new AnswerGift(number, true, Tiny.T3)).Code.Should().Be("not-your-van");
        told.Did(new AnswerGift(number, true, Tiny.T1)).Stock.Gifts.Should().BeEmpty();
        told.Did(new AnswerGift(number, true, Tiny.Lead)).Refuses(new AnswerGift(number, true, Tiny.Lead)).Code.Should().Be("not-given");
    }

    [Fact]
    public void What_did_not_come_is_unexplained_and_the_other_van_never_had_it()
    {
        var told = Gave(Evening.At(Tiny.B1, Step.Leftovers), 1, 0).At(Tiny.B2, Step.Leftovers);
        var number = told.Stock.Gifts.Single().Key;
        var no = told.Did(new AnswerGift(number, false, Tiny.Lead));
        (Held(no, Tiny.B2), no.Stock.Ledger.Units(Place.Unexplained, Lamp)).Should().Be((new Holding(1, 1), 10));

        var counted = told.Did(new CountLeftover(Tiny.B2, Lamp, 1, 0, 1)).Did(new AnswerGift(number, false, Tiny.Lead));
        (Held(counted, Tiny.B2), counted.Shift(Tiny.B2)!.Counts[Lamp].Used).Should().Be((new Holding(1, 1), 0));
        (counted.Stock.Ledger.Units(Place.Homes, Lamp), counted.Stock.Ledger.Units(Place.Unexplained, Lamp)).Should().Be((0, 10));
    }

    [Fact]
    public void An_answer_may_wait_for_the_next_day()
    {
        var next = Gave(Evening.At(Tiny.B1, Step.Leftovers), 1, 0).AllClosed().Next(TinyDesk.Thursday);
        next.Stock.Gifts.Should().ContainSingle();
        Held(next.Did(new AnswerGift(next.Stock.Gifts.Single().Key, false, Tiny.Lead)), Tiny.B2).Should().Be(new Holding(1, 1));
    }

    private static Depot Gave(Depot depot, int boxed, int loose) => depot.Did(new GiveStock(Tiny.B1, Tiny.B2, Lamp, boxed, loose, Tiny.T1));

    private static Holding Held(Depot depot, Code<Van> van) => depot.Stock.Ledger.Aboard(van, Tiny.Lamp);

    private static IEnumerable<string> Readiness(Depot depot) => Closeout.Vans.Readiness.Of(depot, depot.Setup.Van(Tiny.B2)).Notes;
}
