using Closeout.Cardboard;
using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

/// <summary>Blank length 2L + 2W + 1.5, blank width W + D, in thousands of square feet.</summary>
public class BoxBlankTests
{
    [Theory]
    [InlineData(20, 10, 10, 61.5 * 20 / 144 / 1000)]       // 61.5 in by 20 in: 8.54 square feet
    [InlineData(12, 9, 6, 43.5 * 15 / 144 / 1000)]
    [InlineData(10, 10, 0, 41.5 * 10 / 144 / 1000)]        // a flat sleeve of flaps
    [InlineData(0, 0, 0, 0)]                               // no box recorded, no board
    public void The_area_is_blank_length_by_blank_width(double length, double width, double depth, double msf) =>
        BoxBlank.AreaMsf(new(length, width, depth, "32ECT-C")).Should().BeApproximately(msf, 1e-15);

    [Fact]
    public void The_weight_is_the_area_by_the_boards_weight() =>
        BoxBlank.WeightLb(Tiny.Lamp.Box, 105).Should().BeApproximately(61.5 * 20 / 144000 * 105, 1e-12).And.BeApproximately(0.896875, 1e-12);

    [Fact]
    public void The_depots_own_board_goes_before_the_typical_one()
    {
        var own = Tiny.Setup with { Boards = [new Board("32ect-c", 210)] };
        BoxBlank.WeightLb(own, Tiny.Lamp).Should().BeApproximately(2 * BoxBlank.WeightLb(Tiny.Setup, Tiny.Lamp), 1e-12);
    }

    [Fact]
    public void A_board_that_nobody_knows_throws_and_is_named() =>
        FluentActions.Invoking(() => BoxBlank.WeightLb(Tiny.Setup, Tiny.Lamp with { Box = new(1, 1, 1, "PLAIN") }))
            .Should().Throw<InvalidOperationException>().WithMessage("*PLAIN*LAMP*");

    [Fact]
    public void A_larger_box_never_weighs_less() =>
        Gen.Select(Gen.Double[0, 60], Gen.Double[0, 60], Gen.Double[0, 60]).Holds((l, w, d) =>
        {
            var area = BoxBlank.AreaMsf(new(l, w, d, "32ECT-C"));
            BoxBlank.AreaMsf(new(l + 1, w, d, "32ECT-C")).Should().BeGreaterThanOrEqualTo(area);
            BoxBlank.AreaMsf(new(l, w + 1, d, "32ECT-C")).Should().BeGreaterThan(area);
            BoxBlank.AreaMsf(new(l, w, d + 1, "32ECT-C")).Should().BeGreaterThan(area);
        });

    // The handbook's scoring allowances of 3/16, 3/16 and 3/8 in are left out: on a carton of 20 x 10 x 10 in that is
    // 62.25 x 20.5625 in against 61.5 x 20 in.
    [Fact]
    public void Leaving_out_the_scoring_allowances_costs_four_percent_of_a_carton_of_lamps() =>
        (62.25 * 20.5625 / 144000 / BoxBlank.AreaMsf(Tiny.Lamp.Box)).Should().BeApproximately(1.041, 0.0005);
}
