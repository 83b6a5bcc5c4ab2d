using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

public class CardboardTotalsTests
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly double LampLb = BoxBlank.WeightLb(Tiny.Setup, Tiny.Lamp);
    private static readonly double ShowerLb = BoxBlank.WeightLb(Tiny.Setup, Tiny.Shower);

    /// <summary>Two lamp boxes to flatten in B1 and one of showerheads in B2, both vans at cardboard.</summary>
    private static readonly Depot AtCardboard = Tiny.Opened("B1: 2+0 LAMP; B2: 1+0 SHOWER")
        .At(Tiny.B1, Step.Leftovers).At(Tiny.B2, Step.Leftovers)
        .Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0), new CountLeftover(Tiny.B2, Tiny.Shower.Code, 0, 0, 0))
        .At(Tiny.B1, Step.Cardboard).At(Tiny.B2, Step.Cardboard);

    private static Depot Carrying(int boxes) => Tiny.Opened("B1: 2+0 LAMP", carried: v => v with { MissingBoxes = v.Van == Tiny.B1 ? [new(Lamp, boxes, Tiny.Monday)] : [] });

    [Fact]
    public void Expected_before_the_cardboard_is_confirmed_and_flattened_after()
    {
        CardboardTotals.Rows(AtCardboard, Tiny.B1).Should().Equal(new BoxRow(Tiny.B1, Lamp, 2, 0, 0));
        CardboardTotals.Rows(AtCardboard.Did(new ConfirmCardboard(Tiny.B1)), Tiny.B1).Should().Equal(new BoxRow(Tiny.B1, Lamp, 2, 2, 2 * LampLb));
    }

    [Fact]
    public void Boxes_counted_go_before_boxes_expected_and_a_second_count_replaces_the_first()
    {
        var counted = AtCardboard.Did(new CountBoxes(Tiny.B1, Lamp, 5), new CountBoxes(Tiny.B1, Lamp, 1), new ConfirmCardboard(Tiny.B1));
        CardboardTotals.Rows(counted, Tiny.B1).Should().ContainSingle().Which.Missing.Should().Be(1);
    }

    [Fact]
    public void A_box_of_nothing_expected_is_a_row_and_none_of_nothing_is_not()
    {
        var counted = AtCardboard.Did(new CountBoxes(Tiny.B1, Tiny.Wrap.Code, 3), new CountBoxes(Tiny.B1, Tiny.Shower.Code, 0));
        CardboardTotals.Rows(counted, Tiny.B1).Select(r => (r.Item.Text, r.Expected, r.Flattened, r.Missing))
            .Should().Equal(("LAMP", 2, 0, 2), ("WRAP", 0, 3, -3));
    }

    [Fact]
    public void A_van_on_the_road_has_no_rows() => CardboardTotals.Rows(AtCardboard, Tiny.B3).Should().BeEmpty();

    [Fact]
    public void The_total_adds_boxes_weights_and_volumes_of_all_vans_in_bay_order()
    {
        var depot = AtCardboard.Did(new ConfirmCardboard(Tiny.B2), new ConfirmCardboard(Tiny.B1));
        var rows = CardboardTotals.Rows(depot);
        rows.Select(r => r.Van.Text).Should().Equal("B1", "B2");

        var sum = CardboardTotals.Sum(Tiny.Settings, rows);
        (sum.Expected, sum.Flattened, sum.Missing).Should().Be((3, 3, 0));
        sum.WeightLb.Should().BeApproximately(2 * LampLb + ShowerLb, 1e-12);
        sum.VolumeCuYd.Should().BeApproximately((2 * LampLb + ShowerLb) / 106, 1e-12);
        CardboardTotals.Sum(Tiny.Settings, []).Should().Be(default(BoxSum));
    }

    [Fact]
    public void The_container_fills_by_its_size_and_the_depots_own_density()
    {
        CardboardTotals.VolumeCuYd(Tiny.Settings with { CardboardLbPerCuYd = 50 }, 100).Should().Be(2);
        Container.FullPercent(Tiny.Opened(yard: YardCarried.Empty with { ContainerLb = 6 * 106 })).Should().BeApproximately(75, 1e-9, "it holds 8 cubic yards");
    }

    [Theory]
    [InlineData(2, 1)]    // as expected tonight: the one carried is still missing
    [InlineData(1, 2)]    // one more missing
    [InlineData(3, 0)]    // found again
    [InlineData(9, 0)]    // never below none
    public void A_missing_box_is_carried_until_it_is_found(int flattened, int missing)
    {
        var depot = Carrying(1).At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0), new ConfirmLeftovers(Tiny.B1));
        LostBoxes.Of(depot, Tiny.B1).Should().Equal([new MissingBoxes(Lamp, 1, Tiny.Monday)], "tonight counts once the cardboard is confirmed");

        var confirmed = depot.Did(new CountBoxes(Tiny.B1, Lamp, flattened), new ConfirmCardboard(Tiny.B1));
        LostBoxes.Of(confirmed, Tiny.B1).Sum(m => m.Boxes).Should().Be(missing);
    }

    [Fact]
    public void What_is_missing_of_one_item_is_not_found_in_another()
    {
        var depot = Carrying(2).At(Tiny.B1, Step.Cardboard).Did(new CountBoxes(Tiny.B1, Tiny.Wrap.Code, 2), new ConfirmCardboard(Tiny.B1));
        LostBoxes.Of(depot, Tiny.B1).Should().Equal(new MissingBoxes(Lamp, 2, Tiny.Monday));
    }
}
