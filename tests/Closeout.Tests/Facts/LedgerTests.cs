using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public class LedgerTests
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;

    private static readonly Place[] Places =
    [
        Place.Shelf, Place.Bin, Place.Sealed(Tiny.B1), Place.Loose(Tiny.B1), Place.Sealed(Tiny.B2), Place.Loose(Tiny.B2),
        Place.Supplier, Place.Homes, Place.Scrap, Place.Unexplained,
    ];

    private static readonly Gen<Move[]> AnyMoves = Gen
        .Select(Gen.OneOf(Tiny.Lamp, Tiny.Shower, Tiny.Wrap), Gen.Int[1, 50], Gen.OneOf(Places), Gen.OneOf(Places))
        .Where((_, _, from, to) => from != to)
        .Select((item, units, from, to) => new Move(item.Code, units, from, to))
        .Array[0, 60];

    [Fact]
    public void What_leaves_one_place_arrives_at_the_other()
    {
        var ledger = Ledger.Empty.Post([new Move(Lamp, 30, Place.Supplier, Place.Shelf), new Move(Lamp, 10, Place.Shelf, Place.Sealed(Tiny.B1))]);

        ledger.Units(Place.Supplier, Lamp).Should().Be(-30);
        ledger.Units(Place.Shelf, Lamp).Should().Be(20);
        ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(new Holding(1, 0));
    }

    [Fact]
    public void A_balance_that_comes_to_zero_vanishes() =>
        Ledger.Empty.Post([new Move(Lamp, 5, Place.Supplier, Place.Bin), new Move(Lamp, 5, Place.Bin, Place.Homes)])
            .Balances.Should().BeEquivalentTo([new Balance(Place.Supplier, Lamp, -5), new Balance(Place.Homes, Lamp, 5)]);

    [Fact]
    public void Whatever_is_moved_every_item_sums_to_zero_over_all_places() => AnyMoves.Holds(moves =>
    {
        var ledger = Ledger.Empty.Post(moves);
        ledger.Unbalanced.Should().BeEmpty();
        ledger.Balances.Should().NotContain(b => b.Units == 0);
        ledger.Balances.GroupBy(b => b.Item).Should().NotContain(g => g.Sum(b => b.Units) != 0);
    });

    [Fact]
    public void Moves_taken_back_leave_nothing_behind() => AnyMoves.Holds(moves =>
        Ledger.Empty.Post(moves).Post(moves.Reverse().Select(m => m.Back())).Balances.Should().BeEmpty());

    [Fact]
    public void Posting_at_once_or_one_by_one_comes_to_the_same() => AnyMoves.Holds(moves =>
        moves.Aggregate(Ledger.Empty, (ledger, m) => ledger.Post([m])).Balances
            .Should().BeEquivalentTo(Ledger.Empty.Post(moves).Balances));

    [Fact]
    public void A_ledger_carried_forward_says_what_it_said() => AnyMoves.Holds(moves =>
    {
        var ledger = Ledger.Empty.Post(moves);
        Ledger.Carried(ledger.Balances).Balances.Should().BeEquivalentTo(ledger.Balances);
    });

    [Fact]
    public void Less_than_nothing_is_told_of_a_place_one_can_walk_up_to_and_of_no_far_end()
    {
        var ledger = Ledger.Empty.Post([new Move(Lamp, 2, Place.Bin, Place.Homes), new Move(Lamp, 3, Place.Unexplained, Place.Shelf)]);
        ledger.BelowZero.Should().Equal(new Balance(Place.Bin, Lamp, -2));
    }

    [Fact]
    public void A_ledger_that_does_not_balance_names_the_item_and_the_sum() =>
        Ledger.Carried([new Balance(Place.Bin, Lamp, 7)]).Unbalanced.Should().Equal((Lamp, 7));

    [Fact]
    public void A_ledger_already_made_does_not_change_under_a_later_post()
    {
        var first = Ledger.Empty.Post([new Move(Lamp, 5, Place.Supplier, Place.Bin)]);
        first.Post([new Move(Lamp, 5, Place.Bin, Place.Homes)]);
        first.Units(Place.Bin, Lamp).Should().Be(5);
    }
}
