using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Cardboard;

/// <summary>Boxes of one van and item on one evening.</summary>
/// <param name="Expected">Boxes that must exist: cartons emptied.</param>
/// <param name="Flattened">Boxes broken down and counted.</param>
/// <param name="WeightLb">Of the flattened ones, in pounds.</param>
public readonly record struct BoxRow(Code<Van> Van, Code<Item> Item, int Expected, int Flattened, double WeightLb)
{
    /// <summary>Positive: boxes that should be there; negative: more than expected, some found again.</summary>
    public int Missing => Expected - Flattened;
}

/// <summary>Boxes, weight and volume of a set of rows.</summary>
public readonly record struct BoxSum(int Expected, int Flattened, double WeightLb, double VolumeCuYd)
{
    public int Missing => Expected - Flattened;

    public static BoxSum operator +(BoxSum a, BoxSum b) =>
        new(a.Expected + b.Expected, a.Flattened + b.Flattened, a.WeightLb + b.WeightLb, a.VolumeCuYd + b.VolumeCuYd);
}

/// <summary>The depot's recycling totals.</summary>
public static class CardboardTotals
{
    /// <summary>The rows of one van with anything expected or flattened, in item order.</summary>
    public static IEnumerable<BoxRow> Rows(Depot depot, Code<Van> van)
    {
        if (depot.Shift(van) is not { } shift)
        {
            return [];
        }

        return shift.Expected.Select(e => e.Item)
            .Concat(shift.Boxes.Keys)
            .Distinct()
            .Select(code => (Item: depot.Setup.Item(code), Expected: shift.ExpectedOf(code), Flattened: shift.FlattenedOf(code)))
            .Where(b => b.Expected > 0 || b.Flattened > 0)
            .OrderBy(b => b.Item.Code)
            .Select(b => new BoxRow(van, b.Item.Code, b.Expected, b.Flattened, b.Flattened * BoxBlank.WeightLb(depot.Setup, b.Item)));
    }

    /// <summary>Boxes of a van not found so far, by item: carried from earlier evenings, and tonight's once its cardboard is confirmed. Never below 0.</summary>
    public static IEnumerable<MissingBoxes> MissingOf(Depot depot, Code<Van> van)
    {
        var tonight = depot.Shift(van) is { } shift && shift.Answered.Contains(Step.Cardboard) ? Rows(depot, van) : [];
        return depot.Van(van).MissingBoxes
            .Concat(tonight.Select(r => new MissingBoxes(r.Item, r.Missing)))
            .GroupBy(m => m.Item)
            .Select(g => new MissingBoxes(g.Key, g.Sum(m => m.Boxes)))
            .Where(m => m.Boxes > 0)
            .OrderBy(m => m.Item);
    }

    /// <summary>All rows of the evening, in bay order, then item order.</summary>
    public static IReadOnlyList<BoxRow> Rows(Depot depot) => [.. depot.Setup.Vans.SelectMany(v => Rows(depot, v.Code))];

    /// <summary>The rows added up.</summary>
    public static BoxSum Sum(DepotSettings depot, IEnumerable<BoxRow> rows) =>
        rows.Aggregate(default(BoxSum), (sum, r) => sum + new BoxSum(r.Expected, r.Flattened, r.WeightLb, VolumeCuYd(depot, r.WeightLb)));

    /// <summary>Volume in cubic yards of flattened boxes of that weight, by the depot's own density. Good to a factor of about two.</summary>
    public static double VolumeCuYd(DepotSettings depot, double weightLb) => weightLb / depot.CardboardLbPerCuYd;

    /// <summary>How full the container is after this volume, in percent of its size.</summary>
    public static double FullPercent(DepotSettings depot, double volumeCuYd) => 100 * volumeCuYd / depot.ContainerCuYd;
}
