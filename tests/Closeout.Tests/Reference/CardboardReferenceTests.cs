using Closeout.Cardboard;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Boxes, boards and densities against published figures. "Seen" means in a copy of the source or in a text that quotes it.
/// </summary>
public class CardboardReferenceTests
{
    private const double Mm = 25.4;

    /// <summary>
    /// "Calculating sheet size required for creating a cubic corrugated box", Mathematics Stack Exchange, answer 1, seen at
    /// spark.fundegar.com: a box of 254 x 225 x 150 mm is cut from a sheet of 1015 x 407 mm.
    /// </summary>
    /// <remarks>
    /// That sheet allows 3 mm for each score, a joint of 25 mm and a trim of 20 mm on either side; the trim is cut off and
    /// never is in the box. Ours has no scores, no trim and a lap of 1.5 in: taking the ones off and putting the other on
    /// must give the same sheet. What remains is 3 percent less board than that box has without its trim.
    /// </remarks>
    [Fact]
    public void The_worked_sheet_less_its_allowances_is_our_blank()
    {
        var length = 1015 - 4 * 3 - 25 - 20 + BoxBlank.GlueLapIn * Mm;
        var width = 407 - 2 * 3 - 6 - 20;
        SquareMm(254, 225, 150).Should().BeApproximately(length * width, 1e-6);
        (SquareMm(254, 225, 150) / ((1015 - 20) * (407 - 20))).Should().BeApproximately(0.970, 0.0005);
    }

    /// <summary>
    /// Area = (2(L + W) + trim allowance) x (W + H), seen at costcalculator.calculator.city/?p=53253. Our trim allowance is the
    /// glue lap.
    /// </summary>
    [Fact]
    public void The_area_is_the_published_formula_with_the_lap_as_allowance() =>
        BoxBlank.AreaMsf(new(16, 12, 10, "")).Should().BeApproximately((2 * (16 + 12) + 1.5) * (12 + 10) / 144 / 1000, 1e-15);

    /// <summary>
    /// National Motor Freight Classification, Item 222, seen as a packaging supplier quotes it: a glued joint overlaps by at
    /// least 1 1/4 in.
    /// </summary>
    [Fact]
    public void The_glue_lap_is_no_less_than_the_carriers_ask() => BoxBlank.GlueLapIn.Should().BeGreaterThanOrEqualTo(1.25);

    /// <summary>
    /// Liner + medium x take-up + liner + adhesive. Take-up of C 1.43: AICC, Ask Ralph, "Global Percent of Medium", 6 March
    /// 2018, askralph-aiccbox.org/category/corrugating, seen; of B 1.32: from memory (a paper-type wiki prints 1.30).
    /// Furnishes and adhesive: typical, from memory.
    /// </summary>
    [Theory]
    [InlineData("32ECT-B", 35 + 23 * 1.32 + 35 + 2)]
    [InlineData("32ECT-C", 35 + 23 * 1.43 + 35 + 2)]
    [InlineData("44ECT-C", 56 + 26 * 1.43 + 56 + 2)]
    [InlineData("51ECT-BC", 42 + 26 * 1.32 + 33 + 26 * 1.43 + 42 + 4)]
    public void A_typical_board_is_its_furnish_in_whole_pounds(string board, double lbPerMsf) =>
        Boards.Find([], board)!.WeightLbPerMsf.Should().Be(Math.Round(lbPerMsf, MidpointRounding.AwayFromZero));

    /// <summary>
    /// R. Chappell, "Paper 101: Basis Weight", studylib.net/doc/18745481, seen: a short ton of 42-pound liner is 47.62 thousand
    /// square feet, of 35-pound liner 57.14.
    /// </summary>
    [Theory]
    [InlineData(42, 47.62)]
    [InlineData(35, 57.14)]
    public void A_short_ton_of_liner_has_its_published_area(double lbPerMsf, double msf)
    {
        // A box whose blank is 12 x 12 ft, 0.144 MSF: so many of them as make the published area weigh a short ton.
        var one = BoxBlank.WeightLb(new CartonBox((144 - BoxBlank.GlueLapIn) / 2, 0, 144, ""), lbPerMsf);
        (msf / 0.144 * one).Should().BeApproximately(GreenhouseGas.LbPerShortTon, 0.3);
    }

    /// <summary>
    /// EPA, Volume-to-Weight Conversion Factors, April 2016, corrugated containers: 106 lb per cubic yard, seen as EPA's own
    /// ENERGY STAR help centre quotes it, article 30185741619867.
    /// </summary>
    [Fact]
    public void A_cubic_yard_of_boxes_weighs_106_pounds_by_default()
    {
        DepotSettings.DefaultCardboardLbPerCuYd.Should().Be(106);
        CardboardTotals.VolumeCuYd(Tiny.Settings, 106).Should().Be(1);
    }

    /// <summary>
    /// Loose corrugated, lb per cubic yard, all seen. 50 to 150: EPA, Business Guide for Reducing Solid Waste,
    /// EPA/530-K-92-004, 1993, Appendix D. 150, flattened and unbaled: Nebraska DEQ, Measuring and Tracking Recyclables and
    /// Organics, June 1996, wastecaplnk.org/weights_measures.html. 2000 lb in a 40-yard roll-off, flattened loose: a state's
    /// Volume-To-Weight Conversion Factors, docslib.org/doc/3794651. 40, uncompacted: New Jersey, Solid and Hazardous Waste
    /// Management Program, Conversion Table (online.documentine.com).
    /// </summary>
    [Theory]
    [InlineData(50)]
    [InlineData(150)]
    [InlineData(2000.0 / 40)]
    [InlineData(40)]
    public void Published_densities_lie_within_a_factor_of_three_of_the_default(double lbPerCuYd)
    {
        var factor = DepotSettings.DefaultCardboardLbPerCuYd / lbPerCuYd;
        factor.Should().BeInRange(1 / 3.0, 3, "of about two for most: the screens say so");
    }

    private static double SquareMm(double length, double width, double depth) =>
        BoxBlank.AreaMsf(new CartonBox(length / Mm, width / Mm, depth / Mm, "")) * 144_000 * Mm * Mm;
}
