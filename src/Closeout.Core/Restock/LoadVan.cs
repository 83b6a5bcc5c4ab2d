namespace Closeout.Restock;

/// <summary>What was taken of an item: sealed cartons and loose units.</summary>
public sealed record Taken(Code<Item> Item, int Sealed, int Loose);

/// <summary>Load a van with what was really taken: only that leaves the shelf and the bin.</summary>
public sealed record LoadVan(Code<Van> Van, IReadOnlyList<Taken> Lines, Code<Technician>? By) : ICommand
{
    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(Van) is not { } van)
            return Refusal.NoSuchVan(Van);

        if (!depot.IsDone(van.Code))
            return StockRefusal.NotClosedYet(van);

        if (By is { } by && depot.Setup.Find(by) is null)
            return Refusal.NoSuchTechnician(by);

        if (Lines.Count == 0)
            return StockRefusal.NothingTaken(van);

        var plan = RestockPlan.For(depot);
        var (lines, moves) = (new List<LoadedLine>(), new List<Move>());
        foreach (var taken in Lines)
        {
            if (depot.Setup.Find(taken.Item) is not { } item)
                return Refusal.NoSuchItem(taken.Item);

            var opened = Opened(depot, item, taken);
            if ((Twice(depot, van, item, lines) ?? NotPossible(item, taken) ?? NotOnTheShelf(depot, item, taken, opened)) is { } refused)
                return refused with { About = item.Code.Text };

            var planned = plan.Lines.FirstOrDefault(l => l.Van.Code == van.Code && l.Item.Code == item.Code)?.Units ?? 0;
            lines.Add(new(item.Code, taken.Sealed, taken.Loose, opened, planned));
            moves.AddRange(Moves(van, item, taken, opened));
        }

        return new VanLoaded(van.Code, lines, moves, By is { } who ? depot.Setup.Find(who)!.Code : null);
    }

    private static Refusal? NotPossible(Item item, Taken taken) =>
        Given.Range(T("Sealed cartons"), taken.Sealed, 0, Refusal.MostAtOnce / item.UnitsPerCarton)
        ?? Given.Range(T("Loose units"), taken.Loose, 0, Refusal.MostAtOnce);

    /// <summary>Cartons that must be opened where the bin does not hold the loose units.</summary>
    private static int Opened(Depot depot, Item item, Taken taken)
    {
        var (c, bin) = (item.UnitsPerCarton, Math.Max(0, depot.Stock.Ledger.Units(Place.Bin, item.Code)));
        return (int)Math.Max(0, ((long)taken.Loose - bin + c - 1) / c);
    }

    private static Refusal? Twice(Depot depot, Van van, Item item, List<LoadedLine> before) =>
        depot.Stock.Loaded.ContainsKey((van.Code, item.Code)) || before.Any(l => l.Item == item.Code)
            ? StockRefusal.LoadedAlready(van, item)
            : null;

    private static Refusal? NotOnTheShelf(Depot depot, Item item, Taken taken, int opened)
    {
        var shelf = depot.Stock.Ledger.Units(Place.Shelf, item.Code) / item.UnitsPerCarton;
        return taken.Sealed + opened > shelf ? StockRefusal.NotOnTheShelf(item, taken.Sealed, opened, shelf) : null;
    }

    private static IEnumerable<Move> Moves(Van van, Item item, Taken taken, int opened) =>
    [
        .. Move.Signed(item.Code, taken.Sealed * item.UnitsPerCarton, Place.Shelf, Place.Sealed(van.Code)),
        .. Move.Signed(item.Code, opened * item.UnitsPerCarton, Place.Shelf, Place.Bin),
        .. Move.Signed(item.Code, taken.Loose, Place.Bin, Place.Loose(van.Code)),
    ];
}
