namespace Closeout.Restock;

/// <summary>Cartons came from a supplier.</summary>
/// <param name="RestComes">Whether what they leave open of an order still comes; if not, it is no longer on order.</param>
public sealed record ReceiveDelivery(Code<Item> Item, int Cartons, Code<Technician> By, bool RestComes = true) : ICommand
{
    /// <summary>The most cartons of one delivery.</summary>
    public const int MostCartons = 10_000;

    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item) with { About = "item" };

        if (depot.Setup.Find(By) is not { } by)
            return Refusal.NoSuchTechnician(By) with { About = "by" };

        var c = item.UnitsPerCarton;
        if (Given.Range(T("Cartons delivered"), Cartons, 1, Math.Min(MostCartons, Refusal.MostAtOnce / c), "cartons") is { } refused)
            return refused;

        var ordered = Math.Min(Cartons, depot.Stock.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons));
        return new DeliveryReceived(
            item.Code, Cartons, ordered, [new Move(item.Code, Cartons * c, Place.Supplier, Place.Shelf)], by.Code,
            RestComes ? 0 : Rest(depot, item, Cartons));
    }

    /// <summary>Cartons that so many leave open of the order line that they fill last; 0: none is open, or nothing is on order.</summary>
    public static int Rest(Depot depot, Item item, int cartons)
    {
        var left = Math.Max(0, cartons);
        foreach (var order in depot.Stock.Orders.Where(o => o.Item == item.Code).OrderBy(o => o.Due).TakeWhile(_ => left > 0))
        {
            if (order.Cartons > left)
                return order.Cartons - left;

            left -= order.Cartons;
        }

        return 0;
    }
}

/// <summary>Somebody counted the shelf, the bin, or an item in a van.</summary>
/// <param name="Counted">Cartons where they are sealed, else units.</param>
public sealed record CorrectCount(Place Place, Code<Item> Item, int Counted, string Reason, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot)
    {
        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item) with { About = "item" };

        var van = Place.Van == default ? null : depot.Setup.Find(Place.Van);
        if (Place.Van != default && van is null)
            return Refusal.NoSuchVan(Place.Van) with { About = "place" };

        if (van is not null && depot.Shift(van.Code) is { IsClosed: false })
            return StockRefusal.BeingClosedOut(van) with { About = "place" };

        if (!Place.IsPhysical)
            throw new InvalidOperationException($"nobody can count at {Place}");

        if (depot.Setup.Find(By) is not { } by)
            return Refusal.NoSuchTechnician(By) with { About = "by" };

        var each = Place.IsSealed ? item.UnitsPerCarton : 1;
        var (what, field) = Place.IsSealed ? (T("Cartons counted"), "sealed") : (T("Units counted"), "loose");
        if ((Given.Words(T("the reason"), Reason) ?? Given.Range(what, Counted, 0, Refusal.MostAtOnce / each, field)) is { } refused)
            return refused;

        var place = Place with { Van = van?.Code ?? default };
        var (book, counted) = (depot.Stock.Ledger.Units(place, item.Code), Counted * each);
        return new CountCorrected(
            place, item.Code, book, counted, Reason.Trim(), [.. Move.Signed(item.Code, counted - book, Place.Unexplained, place)], by.Code);
    }
}
