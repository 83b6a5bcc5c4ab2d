using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Shifts;

/// <summary>What comes home besides cardboard, van by van, and the depot's collecting boxes.</summary>
public sealed class StreamStories
{
    private static readonly Code<WasteStream> Lamps = new("lamps");
    private static readonly Code<WasteStream> Film = new("film");

    private static readonly Setup Collects = Tiny.Setup with { Depot = Tiny.Settings with { Streams = [Lamps, Film] } };

    private static readonly Depot Evening = Tiny.Opened(setup: Collects).At(Tiny.B1, Step.Cardboard).At(Tiny.B2, Step.Cardboard);

    [Fact]
    public void What_all_vans_bring_lies_in_one_box_that_is_as_old_as_the_first_thing_in_it()
    {
        var depot = Evening.Did(new CountStream(Tiny.B1, Lamps, 4), new CountStream(Tiny.B2, Lamps, 2));
        depot.Yard.Collecting[Lamps].Should().Be(new CollectingBox(Lamps, Tiny.Wednesday, 6));

        var later = depot.Next(Tiny.Friday).At(Tiny.B1, Step.Cardboard).Did(new CountStream(Tiny.B1, Lamps, 1));
        later.Yard.Collecting[Lamps].Should().Be(new CollectingBox(Lamps, Tiny.Wednesday, 7));
    }

    [Theory]
    [InlineData(9, 11)]
    [InlineData(1, 3)]
    [InlineData(0, 2)]
    public void A_second_count_replaces_the_first_up_and_down(int again, int inBox)
    {
        var depot = Evening.Did(new CountStream(Tiny.B1, Lamps, 4), new CountStream(Tiny.B2, Lamps, 2), new CountStream(Tiny.B1, Lamps, again));

        depot.Yard.AmountOf(Lamps).Should().Be(inBox);
        depot.Shift(Tiny.B1)!.StreamOf(Lamps).Should().Be(again);
    }

    [Fact]
    public void A_box_counted_down_to_nothing_is_no_box_and_the_next_begins_with_its_own_date()
    {
        var none = Evening.Did(new CountStream(Tiny.B1, Lamps, 4), new CountStream(Tiny.B1, Lamps, 0));
        none.Yard.Collecting.Should().BeEmpty();

        none.Next(Tiny.Friday).At(Tiny.B2, Step.Cardboard).Did(new CountStream(Tiny.B2, Lamps, 1)).Yard.Collecting[Lamps].StartedOn.Should().Be(Tiny.Friday);
    }

    [Fact]
    public void After_the_box_was_shipped_a_count_may_go_up_but_not_take_back_what_is_gone()
    {
        var shipped = Evening.Did(new CountStream(Tiny.B1, Lamps, 4)).Did(new ShipCollected(Lamps, "recycler, slip 7", Tiny.T1));
        shipped.Yard.Shipped.Should().ContainSingle().Which.Should().Be(new CollectingBoxShipped(Lamps, Tiny.Wednesday, 4, "recycler, slip 7", Tiny.T1));
        shipped.Yard.Collecting.Should().BeEmpty();

        shipped.Refuses(new CountStream(Tiny.B1, Lamps, 3)).Text.Should().Contain("holds 0").And.Contain("takes 1 out");
        shipped.Did(new CountStream(Tiny.B1, Lamps, 4)).Yard.AmountOf(Lamps).Should().Be(0, "the same count again changes nothing");

        var more = shipped.Did(new CountStream(Tiny.B1, Lamps, 6));
        more.Yard.AmountOf(Lamps).Should().Be(2);
        more.Refuses(new CountStream(Tiny.B1, Lamps, 3)).Text.Should().Contain("holds 2").And.Contain("takes 3 out");
        more.Did(new CountStream(Tiny.B1, Lamps, 5)).Yard.AmountOf(Lamps).Should().Be(1);
    }

    [Theory]
    [InlineData("batteries")]    // there is such a stream, and the depot has it not switched on
    [InlineData("paint")]
    public void A_stream_that_is_not_switched_on_is_refused_with_those_that_are(string stream) =>
        Evening.Refuses(new CountStream(Tiny.B1, new(stream), 1)).Text.Should().Contain($"{stream} is not counted").And.Contain("counted are lamps, film");

    [Fact]
    public void A_stream_switched_off_later_can_still_be_shipped()
    {
        var off = Evening.Did(new CountStream(Tiny.B1, Film, 2.5m));
        off = off.Take(new DayFolderLoaded(Tiny.Setup, [], [], [], [], [], [], null));

        off.Refuses(new CountStream(Tiny.B1, Film, 3)).Code.Should().Be("stream-is-off");
        off.Did(new ShipCollected(Film, "recycler, slip 8", Tiny.T1)).Yard.Collecting.Should().BeEmpty();
    }

    [Theory]
    [InlineData(0.01, true)]
    [InlineData(12.345, true)]
    [InlineData(2_000, true)]
    [InlineData(2_000.5, false)]
    [InlineData(-0.1, false)]
    public void What_is_weighed_may_have_a_fraction(double pounds, bool taken) => new CountStream(Tiny.B1, Film, (decimal)pounds).Decide(Evening).Entry.Should().Match(e => (e != null) == taken);

    [Fact]
    public void Pieces_are_whole() => Evening.Refuses(new CountStream(Tiny.B1, Lamps, 1.5m)).Code.Should().Be("out-of-range");

    [Fact]
    public void It_may_be_changed_until_the_sign_off_and_not_after()
    {
        var signOff = Evening.Did(new CountStream(Tiny.B1, Lamps, 4)).At(Tiny.B1, Step.SignOff);
        signOff.Did(new CountStream(Tiny.B1, Lamps, 5)).Shift(Tiny.B1)!.Step.Should().Be(Step.SignOff);
        signOff.At(Tiny.B1, Step.Closed).Refuses(new CountStream(Tiny.B1, Lamps, 5)).Code.Should().Be("already-closed");
    }

    [Theory]
    [InlineData(1, "2.20")]       // 1 kg
    [InlineData(45.4, "100.09")]  // 45.4 kg
    public void Kilograms_typed_are_kept_in_pounds_and_shown_as_they_were_typed(double kg, string lb)
    {
        // NIST SP 811 (2008), Appendix B: 1 lb is 0.45359237 kg exactly.
        var units = new UnitSystem(Metric: true);
        var pounds = units.Pounds((decimal)kg);

        pounds.Should().Be(decimal.Parse(lb));
        units.Amount(pounds).Should().Be(((decimal)kg).ToString());
    }
}
