using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of the depot's stock: loading, deliveries, corrected counts.</summary>
[JsonDerivedType(typeof(VanLoaded), "van-loaded/1")]
[JsonDerivedType(typeof(DeliveryReceived), "delivery-received/1")]
[JsonDerivedType(typeof(CountCorrected), "count-corrected/1")]
[JsonDerivedType(typeof(StockTakenBack), "stock-taken-back/1")]
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
public sealed record DeliveryReceived(
    Code<Item> Item, int Cartons, int Ordered, IReadOnlyList<Move> Change, Code<Technician> By) : StockEntry
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
