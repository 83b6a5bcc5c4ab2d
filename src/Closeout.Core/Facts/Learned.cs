using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>What plan and orders learned, carried from page to page.</summary>
/// <param name="Booked">What was booked and made on earlier dates, the oldest first.</param>
/// <param name="Receipts">First deliveries of orders, the oldest first.</param>
/// <param name="Returned">Units put into the bin on the last evenings and not loaded into the same van again.</param>
/// <param name="Handled">The work of the evenings of the planning window, the oldest first.</param>
/// <param name="Given">Stock handed from van to van that nobody answered for yet, by the number of the entry.</param>
/// <param name="NotAboard">Items that no van had on dates of the planning window: that none was used says nothing; null: none.</param>
public sealed record Learned(
    IReadOnlyList<BookedVan> Booked, IReadOnlyList<Receipt> Receipts, IReadOnlyList<ReturnedUnits> Returned,
    IReadOnlyList<Handled> Handled, IReadOnlyList<OpenGift> Given,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<NotAboard>? NotAboard = null)
{
    public static readonly Learned Nothing = new([], [], [], [], []);

    [JsonIgnore]
    public bool IsNothing => Booked.Count + Receipts.Count + Returned.Count + Handled.Count + Given.Count == 0 && NotAboard is null;
}

/// <summary>A van's day: what was booked when the date's page was opened, and what visits report.</summary>
/// <param name="Closed">Whether it was closed out.</param>
/// <param name="Made">Null: no visit reports of the van for the date.</param>
public sealed record BookedVan(
    DateOnly Date, Code<Van> Van, bool Closed, IReadOnlyList<KindVisits> Booked, IReadOnlyList<KindVisits>? Made);

/// <summary>The first delivery of an order line.</summary>
/// <param name="Ordered">Cartons that were on order, above 0.</param>
/// <param name="Came">Cartons of them that came.</param>
/// <param name="Supplier">Null: the depot's one supplier.</param>
public sealed record Receipt(DateOnly On, Code<Supplier>? Supplier, Code<Item> Item, int Ordered, int Came, DateOnly Due);

/// <summary>Loose units that a van gave back.</summary>
/// <param name="Evenings">Evenings since: 0 tonight.</param>
public sealed record ReturnedUnits(Code<Van> Van, Code<Item> Item, int Units, int Evenings);

/// <summary>What an evening's restock was to do by hand.</summary>
/// <param name="Lines">Items loaded into vans, or moved between them.</param>
/// <param name="Cartons">Sealed cartons carried, and cartons opened.</param>
/// <param name="Loose">Loose units carried.</param>
/// <param name="Shuffled">Of them, units that the same van had given back within three evenings.</param>
public sealed record Handled(DateOnly Date, int Lines, int Cartons, long Loose, long Shuffled);

/// <summary>Stock handed from van to van, and nobody of the other van said yet whether it came.</summary>
public sealed record OpenGift(int Number, StockGiven Gift);

/// <summary>Items that no van had aboard on the morning of a date.</summary>
public sealed record NotAboard(DateOnly Date, IReadOnlyList<Code<Item>> Items);
