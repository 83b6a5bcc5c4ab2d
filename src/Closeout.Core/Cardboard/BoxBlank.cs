namespace Closeout.Cardboard;

/// <summary>The flat sheet that a regular slotted container (FEFCO 0201) is cut from, and what it weighs.</summary>
/// <remarks>
/// Blank length 2L + 2W + glue lap, blank width W + D: the outer flaps meet in the middle, and are each half of W.
/// Scoring allowances (3/16 in on length and width, 3/8 in on depth in one maker's handbook) are left out; docs/methods.md
/// says what that costs.
/// </remarks>
public static class BoxBlank
{
    /// <summary>Glue lap in inches; practice runs from 1.25 to 2.</summary>
    public const double GlueLapIn = 1.5;

    /// <summary>Area of the blank in thousands of square feet; 0 for a box with neither width nor depth.</summary>
    public static double AreaMsf(CartonBox box) =>
        (2 * box.LengthIn + 2 * box.WidthIn + GlueLapIn) * (box.WidthIn + box.DepthIn) / 144 / 1000;

    /// <summary>Weight of one flattened box in pounds, of a board of so many pounds per thousand square feet.</summary>
    public static double WeightLb(CartonBox box, double boardLbPerMsf) => AreaMsf(box) * boardLbPerMsf;

    /// <summary>Weight of one flattened box of the item, by the depot's board weights.</summary>
    public static double WeightLb(Setup setup, Item item) =>
        WeightLb(item.Box, Boards.Find(setup.Boards, item.Box.Board)?.WeightLbPerMsf
            ?? throw new InvalidOperationException($"no weight for board {item.Box.Board} of item {item.Code}"));
}
