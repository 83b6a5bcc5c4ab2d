namespace Closeout.Cardboard;

/// <summary>Boxes of one van and item on one evening.</summary>
/// <param name="Van">Default: opened at the depot.</param>
/// <param name="Expected">Boxes that must exist: cartons emptied, or opened at the depot.</param>
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

/// <summary>The depot's recycling totals of an evening.</summary>
public static class CardboardTotals
{
    /// <summary>The rows of one van with anything expected or flattened, in item order.</summary>
    public static IEnumerable<BoxRow> Rows(Depot depot, Code<Van> van) => depot.Shift(van) is not { } shift
        ? []
        : shift.Expected.Select(e => e.Item)
            .Concat(shift.Boxes.Keys)
            .Distinct()
            .Select(code => Row(depot, van, code, shift.ExpectedOf(code), shift.FlattenedOf(code)))
            .Where(r => r.Expected > 0 || r.Flattened > 0)
            .OrderBy(r => r.Item);

    /// <summary>The rows of the cartons opened at the depot, in item order. Nothing is flattened there until somebody counts it.</summary>
    public static IEnumerable<BoxRow> DepotRows(Depot depot) => depot.Stock.Loaded.Values
        .Where(l => l.Opened > 0)
        .Select(l => l.Item)
        .Concat(depot.Stock.OpenedBack.Keys)
        .Concat(depot.Yard.DepotBoxes.Keys)
        .Distinct()
        .Select(code =>
            Row(depot, default, code, OpenedAtDepot(depot, code), depot.Yard.DepotBoxes.GetValueOrDefault(code)?.Flattened ?? 0))
        .Where(r => r.Expected > 0 || r.Flattened > 0)
        .OrderBy(r => r.Item);

    /// <summary>Cartons of the item opened at the depot tonight.</summary>
    public static int OpenedAtDepot(Depot depot, Code<Item> item) =>
        depot.Stock.Loaded.Values.Where(l => l.Item == item).Sum(l => l.Opened) + depot.Stock.OpenedBack.GetValueOrDefault(item);

    /// <summary>All rows of the evening, vans in bay order, then the depot's own, each in item order.</summary>
    public static IReadOnlyList<BoxRow> Rows(Depot depot) =>
        [.. depot.Setup.Vans.SelectMany(v => Rows(depot, v.Code)), .. DepotRows(depot)];

    /// <summary>The rows added up.</summary>
    public static BoxSum Sum(DepotSettings depot, IEnumerable<BoxRow> rows) =>
        rows.Aggregate(default(BoxSum), (sum, r) => sum + new BoxSum(r.Expected, r.Flattened, r.WeightLb, VolumeCuYd(depot, r.WeightLb)));

    /// <summary>
    /// Volume in cubic yards of flattened boxes of that weight, by the depot's own density. Good to a factor of about two.
    /// </summary>
    public static double VolumeCuYd(DepotSettings depot, double weightLb) => weightLb / depot.CardboardLbPerCuYd;

    private static BoxRow Row(Depot depot, Code<Van> van, Code<Item> item, int expected, int flattened) =>
        new(van, item, expected, flattened, flattened * BoxBlank.WeightLb(depot.Setup, depot.Setup.Item(item)));
}
