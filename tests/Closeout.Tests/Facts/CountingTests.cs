using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public class CountingTests
{
    /// <summary>A count of an item that comes in cartons of c: what was aboard, what was counted, what visits report (null: nothing).</summary>
    public sealed record Counted(int C, Holding Before, LeftoverCount Count, int? Installed)
    {
        public Item Item => Tiny.Lamp with { UnitsPerCarton = C };

        public int Used => Counting.Used(Before, Count, C);

        public List<Move> Moves => [.. Counting.Moves(Tiny.B1, Item, Before, Count, Installed)];

        public Ledger Start => Ledger.Empty.Post([
            .. Move.Signed(Item.Code, Before.Sealed * C, Place.Supplier, Place.Sealed(Tiny.B1)),
            .. Move.Signed(Item.Code, Before.Loose, Place.Supplier, Place.Loose(Tiny.B1)),
        ]);
    }

    private static readonly Gen<LeftoverCount> AnyCount =
        Gen.Select(Gen.Int[0, 6], Gen.Int[0, 25], Gen.Int[0, 25], (@sealed, bin, kept) => new LeftoverCount(@sealed, bin, kept));

    private static readonly Gen<int?> AnyInstalled = Gen.OneOf(Gen.Const((int?)null), Gen.Int[0, 60].Select(i => (int?)i));

    private static readonly Gen<Counted> Any = Gen.Select(
        Gen.Int[1, 24], Gen.Int[0, 5], Gen.Int[0, 30], AnyCount, AnyInstalled,
        (c, @sealed, loose, count, installed) => new Counted(c, new(@sealed, loose), count, installed));

    [Theory]
    [InlineData(2, 5, 2, 0, 5, 0)]     // as booked
    [InlineData(2, 5, 1, 0, 3, 12)]    // a carton opened, 3 of 15 loose left
    [InlineData(2, 5, 1, 4, 3, 8)]     // and 4 of them back in the bin
    [InlineData(2, 5, 0, 0, 0, 25)]    // all gone
    [InlineData(2, 5, 3, 0, 0, -5)]    // more than the book had
    [InlineData(0, 0, 0, 2, 0, -2)]    // nothing in the book, two in the bin
    public void Used_is_what_was_aboard_less_what_came_back(int sealedBefore, int looseBefore, int @sealed, int bin, int kept, int used) =>
        Counting.Used(new(sealedBefore, looseBefore), new(@sealed, bin, kept), 10).Should().Be(used);

    [Theory]
    [InlineData(3, 1, 2)]
    [InlineData(3, 3, 0)]
    [InlineData(3, 4, 0)]
    [InlineData(0, 0, 0)]
    public void Cartons_emptied_are_sealed_before_less_sealed_after_and_never_below_zero(int before, int after, int emptied) =>
        Counting.Emptied(new(before, 9), new(after, 0, 0)).Should().Be(emptied);

    [Theory]
    [InlineData(12, null, 0)]     // no reports: what is gone was used
    [InlineData(-5, null, -5)]    // found more than the book had
    [InlineData(12, 12, 0)]
    [InlineData(12, 10, 2)]       // two more gone than installed: more in the book
    [InlineData(12, 15, -3)]      // fewer gone than installed
    [InlineData(-2, 3, -5)]
    public void The_gap_is_book_minus_count(int used, int? installed, int gap) => Counting.Gap(used, installed).Should().Be(gap);

    [Fact]
    public void After_the_moves_the_ledger_says_what_was_counted_and_where_the_rest_went() => Any.Holds(
        counted =>
        {
            var after = counted.Start.Post(counted.Moves);
            var homes = counted.Installed ?? Math.Max(counted.Used, 0);

            after.Aboard(Tiny.B1, counted.Item).Should().Be(new Holding(counted.Count.Sealed, counted.Count.Kept));
            after.Units(Place.Bin, counted.Item.Code).Should().Be(counted.Count.Bin);
            after.Units(Place.Homes, counted.Item.Code).Should().Be(homes);
            after.Units(Place.Unexplained, counted.Item.Code).Should().Be(counted.Used - homes).And.Be(Counting.Gap(counted.Used, counted.Installed));
            after.Unbalanced.Should().BeEmpty();
        },
        1000);

    [Fact]
    public void No_place_one_can_walk_up_to_falls_below_zero_at_any_move_on_the_way() => Any.Holds(
        counted =>
        {
            var ledger = counted.Start;
            foreach (var move in counted.Moves)
            {
                ledger = ledger.Post([move]);
                ledger.BelowZero.Should().BeEmpty($"{move} comes in its order");
            }
        },
        1000);

    [Fact]
    public void A_second_count_replaces_the_first() => Gen.Select(Any, AnyCount, AnyInstalled).Holds(
        (first, count, installed) =>
        {
            var second = first with { Count = count, Installed = installed };
            var change = Counting.Replace(first.Moves, second.Moves);

            first.Start.Post(first.Moves).Post(change).Balances.Should().BeEquivalentTo(first.Start.Post(second.Moves).Balances);
            change.Select(m => (Math.Min((int)m.From.Kind, (int)m.To.Kind), Math.Max((int)m.From.Kind, (int)m.To.Kind)))
                .Should().OnlyHaveUniqueItems("there is one net move for each pair of places");
        },
        1000);

    [Fact]
    public void The_same_count_again_moves_nothing() => Any.Holds(counted =>
        Counting.Replace(counted.Moves, counted.Moves).Should().BeEmpty());

    [Fact]
    public void As_booked_moves_nothing()
    {
        var before = new Holding(2, 5);
        Counting.Moves(Tiny.B1, Tiny.Lamp, before, LeftoverCount.AsBooked(before), null).Should().BeEmpty();
    }
}
