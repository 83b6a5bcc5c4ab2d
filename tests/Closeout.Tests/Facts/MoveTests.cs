using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public class MoveTests
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(int.MinValue)]
    public void A_move_of_nothing_or_less_is_refused(int units) =>
        FluentActions.Invoking(() => new Move(Lamp, units, Place.Shelf, Place.Bin)).Should().Throw<ArgumentException>();

    [Fact]
    public void A_move_from_a_place_to_itself_is_refused()
    {
        FluentActions.Invoking(() => new Move(Lamp, 1, Place.Shelf, Place.Shelf)).Should().Throw<ArgumentException>();
        FluentActions.Invoking(() => new Move(Lamp, 1, Place.Loose(new("B1")), Place.Loose(new("b1")))).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void From_the_sealed_cartons_of_a_van_to_its_extras_box_is_a_move()
    {
        var opened = new Move(Lamp, 10, Place.Sealed(Tiny.B1), Place.Loose(Tiny.B1));
        opened.ToString().Should().Be("10 LAMP B1 sealed -> B1 loose");
    }

    [Fact]
    public void A_move_taken_back_goes_the_other_way() =>
        new Move(Lamp, 3, Place.Bin, Place.Homes).Back().Should().Be(new Move(Lamp, 3, Place.Homes, Place.Bin));

    [Fact]
    public void Signed_units_above_zero_go_forward_below_zero_back_and_zero_nowhere()
    {
        Move.Signed(Lamp, 4, Place.Bin, Place.Homes).Should().Equal(new Move(Lamp, 4, Place.Bin, Place.Homes));
        Move.Signed(Lamp, -4, Place.Bin, Place.Homes).Should().Equal(new Move(Lamp, 4, Place.Homes, Place.Bin));
        Move.Signed(Lamp, 0, Place.Bin, Place.Homes).Should().BeEmpty();
    }
}
