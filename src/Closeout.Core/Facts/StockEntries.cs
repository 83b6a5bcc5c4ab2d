using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of the depot's stock: loading, deliveries, corrected counts.</summary>
[JsonDerivedType(typeof(VanLoaded), "van-loaded/1")]
[JsonDerivedType(typeof(DeliveryReceived), "delivery-received/1")]
[JsonDerivedType(typeof(CountCorrected), "count-corrected/1")]
[JsonDerivedType(typeof(StockTakenBack), "stock-taken-back/1")]
[JsonDerivedType(typeof(StockMoved), "stock-moved/1")]
[JsonDerivedType(typeof(StockGiven), "stock-given/1")]
[JsonDerivedType(typeof(GiftAnswered), "gift-answered/1")]
public abstract record StockEntry : Entry;

/// <summary>What was really taken for a van, item by item. Only this moves stock out of the depot.</summary>
public sealed record VanLoaded(
    Code<Van> Van, IReadOnlyList<LoadedLine> Lines, IReadOnlyList<Move> Change, Code<Technician>? By) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(Van, By) { Items = [.. Lines.Select(l => l.Item)] };
}

/// <summary>One item loaded.</summary>
/// <param name="Sealed">Sealed cartons.</param>
/// <param name="Loose">Loose units.</param>
/// <param name="Opened">Cartons opened for it: boxes to flatten at the depot.</param>
/// <param name="Planned">Units that the plan had.</param>
public sealed record LoadedLine(Code<Item> Item, int Sealed, int Loose, int Opened, int Planned);

/// <summary>Cartons came from a supplier onto the shelf.</summary>
/// <param name="Ordered">Cartons of them that were on order; fewer than came: the rest was not ordered.</param>
/// <param name="NotComing">Cartons of the order that will not come any more.</param>
public sealed record DeliveryReceived(
    Code<Item> Item, int Cartons, int Ordered, IReadOnlyList<Move> Change, Code<Technician> By,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] int NotComing = 0) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(By: By) { Items = [Item] };
}

/// <summary>Somebody counted a place, and the book follows.</summary>
/// <param name="Book">What the book said, in units.</param>
/// <param name="Counted">What was there, in units.</param>
public sealed record CountCorrected(
    Place Place, Code<Item> Item, int Book, int Counted, string Reason, IReadOnlyList<Move> Change, Code<Technician> By) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(Place.Van == default ? null : Place.Van, By) { Items = [Item] };
}

/// <summary>A load of an item, or a delivery, was recorded by mistake and is taken back.</summary>
/// <param name="Entry">The number of the entry that is taken back.</param>
/// <param name="Item">Of a load: which of its items.</param>
public sealed record StockTakenBack(
    int Entry, Code<Item> Item, IReadOnlyList<Move> Change, string Why, Code<Technician> By) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(By: By) { Items = [Item] };
}

/// <summary>Stock was moved at the depot from one van to another, or back to shelf and bin.</summary>
/// <param name="To">Null: the depot.</param>
/// <param name="Sealed">Sealed cartons.</param>
/// <param name="Loose">Loose units.</param>
/// <param name="Opened">Sealed cartons of the van opened for it: boxes to flatten at the depot.</param>
public sealed record StockMoved(
    Code<Van> From, Code<Van>? To, Code<Item> Item, int Sealed, int Loose, int Opened, string Why, IReadOnlyList<Move> Change,
    Code<Technician> By) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(From, By) { OtherVan = To, Items = [Item] };
}

/// <summary>A technician said in the close-out that stock was handed to another van on the road.</summary>
/// <param name="Opened">Sealed cartons opened for it on the road: boxes that the van brings home.</param>
/// <param name="Change">The stock itself; and, where the item was counted in a van already, what the count then means.</param>
public sealed record StockGiven(
    Code<Van> From, Code<Van> To, Code<Item> Item, int Sealed, int Loose, int Opened, IReadOnlyList<Move> Change, Code<Technician> By)
    : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(From, By) { OtherVan = To, Items = [Item] };
}

/// <summary>Whoever has the other van, or a lead, said whether the stock came.</summary>
/// <param name="Entry">The number of the entry that says it was given.</param>
/// <param name="Came">False: it did not, and nobody knows where it is.</param>
public sealed record GiftAnswered(
    int Entry, Code<Van> Van, Code<Item> Item, bool Came, IReadOnlyList<Move> Change, Code<Technician> By) : StockEntry
{
    public override IReadOnlyList<Move> Moves => Change;

    public override Names Names => new(Van, By) { Items = [Item] };
}
