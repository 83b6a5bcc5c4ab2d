namespace Closeout.Restock;

/// <summary>The depot as it would be had nothing been loaded tonight; all else that was recorded stands.</summary>
internal static class BeforeLoading
{
    public static Depot Of(Depot depot)
    {
        var ledger = depot.Stock.Ledger.Post(
            depot.Stock.Loaded.SelectMany(l => depot.Setup.Find(l.Key.Item2) is { } item
                ? Back(l.Key.Item1, l.Value, item.UnitsPerCarton)
                : []));

        // Counts corrected since may leave a place with less than was taken: then it had that much.
        var made = ledger.BelowZero.Select(b => new Move(b.Item, -b.Units, Place.Unexplained, b.Place)).ToList();
        return depot with { Stock = depot.Stock with { Ledger = ledger.Post(made), Loaded = depot.Stock.Loaded.Clear() } };
    }

    private static IEnumerable<Move> Back(Code<Van> van, LoadedLine line, int c) =>
    [
        .. Move.Signed(line.Item, line.Sealed * c, Place.Sealed(van), Place.Shelf),
        .. Move.Signed(line.Item, line.Loose, Place.Loose(van), Place.Bin),
        .. Move.Signed(line.Item, line.Opened * c, Place.Bin, Place.Shelf),
    ];
}
