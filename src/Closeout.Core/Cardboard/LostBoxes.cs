namespace Closeout.Cardboard;

/// <summary>
/// Boxes that should have been flattened and were not found: carried from evening to evening until found or written off by a lead.
/// </summary>
public static class LostBoxes
{
    /// <summary>Boxes of a van not found so far, by item: carried, and tonight's once its cardboard is confirmed. Never below 0.</summary>
    public static IEnumerable<MissingBoxes> Of(Depot depot, Code<Van> van)
    {
        var tonight = depot.Shift(van) is { } shift && shift.Answered.Contains(Step.Cardboard) ? CardboardTotals.Rows(depot, van) : [];
        return Net(depot, van, depot.Van(van).MissingBoxes, tonight);
    }

    /// <summary>Boxes opened at the depot and not found so far, by item. Tonight's count from the moment the carton is opened.</summary>
    public static IEnumerable<MissingBoxes> OfDepot(Depot depot) =>
        Net(depot, null, depot.Yard.Carried.DepotBoxes, CardboardTotals.DepotRows(depot));

    /// <summary>Whether they were missing on an earlier evening already: the wall names them.</summary>
    public static bool IsOld(Depot depot, MissingBoxes boxes) => boxes.Since < depot.Date;

    /// <summary>
    /// The boxes in the words of the wall: how many, and of which items since when where an earlier evening missed them too.
    /// </summary>
    public static string? Words(Depot depot, IReadOnlyList<MissingBoxes> boxes)
    {
        if (boxes.Count == 0)
            return null;

        var sum = boxes.Sum(b => b.Boxes);
        var old = boxes.Where(b => IsOld(depot, b))
            .Select(b => T($"{b.Item}{(b.Boxes > 1 ? $" {b.Boxes}" : "")} since {b.Since:yyyy-MM-dd}"))
            .ToList();
        return (sum == 1 ? T("1 box missing") : T($"{sum} boxes missing")) + (old.Count == 0 ? "" : $" ({string.Join(", ", old)})");
    }

    private static IEnumerable<MissingBoxes> Net(
        Depot depot, Code<Van>? van, IEnumerable<MissingBoxes> carried, IEnumerable<BoxRow> tonight) => carried
        .Concat(tonight.Select(r => new MissingBoxes(r.Item, r.Missing, depot.Date)))
        .Concat(depot.Yard.WrittenOff.Where(w => w.Van == van).Select(w => new MissingBoxes(w.Item, -w.Boxes, depot.Date)))
        .GroupBy(m => m.Item)
        .Select(g => new MissingBoxes(g.Key, g.Sum(m => m.Boxes), g.Min(m => m.Since)))
        .Where(m => m.Boxes > 0)
        .OrderBy(m => m.Item);
}
