namespace Closeout.Restock;

/// <summary>Move stock at the depot out of a van: into another one, or back to shelf and bin. Both are closed out.</summary>
/// <param name="To">Null: the depot.</param>
/// <param name="Loose">Loose units; where the van has fewer, cartons are opened for them.</param>
public sealed record MoveStock(
    Code<Van> From, Code<Van>? To, Code<Item> Item, int Sealed, int Loose, string Why, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(From) is not { } from)
            return Refusal.NoSuchVan(From) with { About = "from" };

        var to = To is { } code ? depot.Setup.Find(code) : null;
        if (To is { } missing && to is null)
            return Refusal.NoSuchVan(missing) with { About = "to" };

        if (to == from)
            return StockRefusal.SameVan(from) with { About = "to" };

        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item) with { About = "item" };

        if (depot.Setup.Find(By) is not { } by)
            return Refusal.NoSuchTechnician(By) with { About = "by" };

        if (!depot.IsDone(from.Code))
            return StockRefusal.NotClosedYet(from) with { About = "from" };

        if (to is not null && !depot.IsDone(to.Code))
            return StockRefusal.NotClosedYet(to) with { About = "to" };

        if ((Given.Words(T("the reason"), Why) ?? Between.NotPossible(depot, from, item, Sealed, Loose)) is { } refused)
            return refused;

        var opened = Between.Opened(depot, from, item, Loose);
        return new StockMoved(
            from.Code, to?.Code, item.Code, Sealed, Loose, opened, Why.Trim(), [.. Between.Moves(from, to, item, Sealed, Loose, opened)],
            by.Code);
    }
}

/// <summary>The rules and moves of stock that goes from one van to another, or to the depot.</summary>
public static class Between
{
    /// <summary>Cartons of the van that must be opened where it has fewer loose units.</summary>
    public static int Opened(Depot depot, Van from, Item item, int loose)
    {
        var held = Math.Max(0, depot.Stock.Ledger.Aboard(from.Code, item).Loose);
        return (int)Math.Max(0, ((long)loose - held + item.UnitsPerCarton - 1) / item.UnitsPerCarton);
    }

    /// <summary>Why so much cannot leave the van; null: it can.</summary>
    public static Refusal? NotPossible(Depot depot, Van from, Item item, int boxed, int loose)
    {
        var held = depot.Stock.Ledger.Aboard(from.Code, item);
        return Given.Range(T("Sealed cartons"), boxed, 0, Refusal.MostAtOnce / item.UnitsPerCarton, "sealed")
            ?? Given.Range(T("Loose units"), loose, 0, Refusal.MostAtOnce, "loose")
            ?? (boxed + loose == 0 ? StockRefusal.NothingMoved(from) with { About = "sealed" } : null)
            ?? (boxed + Opened(depot, from, item, loose) > held.Sealed
                ? StockRefusal.NotAboard(from, item, boxed, loose, held) with { About = boxed > held.Sealed ? "sealed" : "loose" }
                : null);
    }

    /// <param name="to">Null: the depot.</param>
    public static IEnumerable<Move> Moves(Van from, Van? to, Item item, int boxed, int loose, int opened)
    {
        var (c, code) = (item.UnitsPerCarton, item.Code);
        return
        [
            .. Move.Signed(code, opened * c, Place.Sealed(from.Code), Place.Loose(from.Code)),
            .. Move.Signed(code, boxed * c, Place.Sealed(from.Code), to is null ? Place.Shelf : Place.Sealed(to.Code)),
            .. Move.Signed(code, loose, Place.Loose(from.Code), to is null ? Place.Bin : Place.Loose(to.Code)),
        ];
    }
}
