using Closeout.Cardboard;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Weight by the box's own geometry against weight by EPA's pounds a cubic yard, for every box of the sample. Which volume is
/// meant decides: a flat stack's own is the least that the boxes can take, the outer volume of whole boxes the most.
/// docs/methods.md explains the bands.
/// </summary>
/// <remarks>
/// Sources. 106 lb per cubic yard, corrugated containers: EPA, Volume-to-Weight Conversion Factors, April 2016, seen as EPA's
/// own ENERGY STAR help centre quotes it, article 30185741619867. 74 for whole boxes, same paper: from memory. Calipers B 1/8 in
/// and C 5/32 in: packagewarehouse.com/measure-box, seen, and a grade guide citing the Fibre Box Association, seen; double wall
/// as the sum of its two: common practice. Outside is inside and 2 calipers on length and width, 4 on depth:
/// homesteady.com/how-10063949, seen (12 x 14 x 16 at 1/8 in is 12 1/4 x 14 1/4 x 16 1/2).
/// </remarks>
public sealed class BoxVolumeCrossCheck
{
    private const double EpaFlattenedLb = DepotSettings.DefaultCardboardLbPerCuYd;
    private const double EpaWholeLb = 74;
    private const double CubicInchesPerCuYd = 36.0 * 36 * 36;

    private static readonly Setup Sample = SampleDay.Given.Setup;

    private static readonly Dictionary<string, double> CaliperIn = new() { ["B"] = 1 / 8.0, ["C"] = 5 / 32.0, ["BC"] = 1 / 8.0 + 5 / 32.0 };

    public static TheoryData<string> Boxes => [.. Sample.Items.Select(i => i.Code.Text)];

    /// <summary>Pressed together without any air, boxes weigh 2 to 3 times what EPA's loose cubic yard says.</summary>
    [Theory]
    [MemberData(nameof(Boxes))]
    public void A_flat_stack_holds_two_to_three_times_epas_loose_pounds(string item) =>
        (WeightLb(item) / (EpaFlattenedLb * StackCuYd(item))).Should().BeInRange(2, 3);

    /// <summary>Standing whole, one beside the other, they weigh a quarter to six tenths of what the remembered 74 says.</summary>
    [Theory]
    [MemberData(nameof(Boxes))]
    public void Whole_boxes_hold_a_quarter_to_six_tenths_of_the_remembered_pounds(string item) =>
        (WeightLb(item) / (EpaWholeLb * WholeCuYd(item))).Should().BeInRange(0.25, 0.6);

    /// <summary>
    /// So every box's weight lies between the two weights that EPA's figures give, and no figure of ours is off by a factor of
    /// three.
    /// </summary>
    [Theory]
    [MemberData(nameof(Boxes))]
    public void Our_weight_lies_between_epas_for_the_stack_and_epas_for_the_whole_box(string item) =>
        WeightLb(item).Should().BeInRange(EpaFlattenedLb * StackCuYd(item), EpaWholeLb * WholeCuYd(item));

    /// <summary>
    /// Densities of a solid stack, lb per cubic yard, against published ones, all seen: above loose corrugated (at most 150:
    /// Nebraska DEQ, Measuring and Tracking Recyclables and Organics, June 1996; 50 to 150: EPA/530-K-92-004, 1993, Appendix D),
    /// below baled (700 to 1,100, the same appendix, where the flutes are crushed), and about the 222 of a town that says 9
    /// cubic yards of landfill a ton (Weston, Massachusetts, westonma.gov/1268).
    /// </summary>
    [Theory]
    [InlineData("32ECT-B", 264)]
    [InlineData("32ECT-C", 218)]
    [InlineData("44ECT-C", 313)]
    [InlineData("51ECT-BC", 222)]
    public void A_solid_stack_is_denser_than_anything_loose_and_lighter_than_a_bale(string board, double lbPerCuYd)
    {
        var density = Boards.Find([], board)!.WeightLbPerMsf / (1000 * 144 * Caliper(board) / CubicInchesPerCuYd);
        density.Should().BeApproximately(lbPerCuYd, 0.5).And.BeInRange(150, 700);
        (density / (2000.0 / 9)).Should().BeInRange(0.9, 1.5);
    }

    /// <summary>The boxes of the sample evening: what methods.md prints.</summary>
    [Fact]
    public void The_sample_evening_is_as_the_methods_page_says()
    {
        var boxes = File.ReadAllLines(Path.Combine(Repository.SampleDay, "expected", "cardboard.csv"))[1..^1].Select(l => l.Split(',')).Select(f => (Item: f[2], Boxes: int.Parse(f[4]))).ToList();
        boxes.Sum(b => b.Boxes).Should().Be(18);
        boxes.Sum(b => b.Boxes * WeightLb(b.Item)).Should().BeApproximately(14.54, 0.005);
        boxes.Sum(b => b.Boxes * StackCuYd(b.Item)).Should().BeApproximately(0.0542, 0.00005);
        boxes.Sum(b => b.Boxes * WholeCuYd(b.Item)).Should().BeApproximately(0.5781, 0.00005);
    }

    private static double WeightLb(string item) => BoxBlank.WeightLb(Sample, Of(item));

    /// <summary>The board itself: a flattened box is two layers on half the blank, so its volume is the blank's.</summary>
    private static double StackCuYd(string item) => BoxBlank.AreaMsf(Of(item).Box) * 1000 * 144 * Caliper(Of(item).Box.Board) / CubicInchesPerCuYd;

    private static double WholeCuYd(string item)
    {
        var (length, width, depth) = Outside(Of(item).Box);
        return length * width * depth / CubicInchesPerCuYd;
    }

    private static (double Length, double Width, double Depth) Outside(CartonBox box)
    {
        var caliper = Caliper(box.Board);
        return (box.LengthIn + 2 * caliper, box.WidthIn + 2 * caliper, box.DepthIn + 4 * caliper);
    }

    private static double Caliper(string board) => CaliperIn[board.Split('-')[1]];

    private static Item Of(string item) => Sample.Item(new(item));
}
