using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>Visits of one kind booked for a van on a date.</summary>
public sealed record Booking(DateOnly Date, Code<Van> Van, Code<VisitKind> Kind, int Visits);

/// <summary>Cartons on order from a supplier.</summary>
/// <param name="Cartons">Still to come.</param>
/// <param name="OrderedOn">Null: not said.</param>
/// <param name="Supplier">Null: the item's own.</param>
/// <param name="Arrived">Cartons of the line that came already: its delay and fill are on record.</param>
public sealed record Order(
    Code<Item> Item, int Cartons, DateOnly Due,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] DateOnly? OrderedOn = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] Code<Supplier>? Supplier = null,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] int Arrived = 0);

/// <summary>What all visits of one kind on one date used. Sums are enough for the plan, and short enough to carry forward.</summary>
/// <param name="Visits">How many visits of the kind there were, those that used nothing among them.</param>
public sealed record DailyUse(DateOnly Date, Code<VisitKind> Kind, int Visits, IReadOnlyList<ItemUse> Items);

/// <summary>Sum and sum of squares, over the visits, of the units of an item that each used.</summary>
public sealed record ItemUse(Code<Item> Item, long Sum, long SumOfSquares);

/// <summary>What the visits of one van on one date report as installed; items not listed: none.</summary>
/// <param name="Visits">How many visits of each kind there were.</param>
public sealed record VanUse(DateOnly Date, Code<Van> Van, IReadOnlyList<ItemUnits> Items, IReadOnlyList<KindVisits> Visits);

/// <summary>Visits that a van made on a date before the business date.</summary>
public sealed record VanVisits(DateOnly Date, Code<Van> Van, IReadOnlyList<KindVisits> Visits);

/// <summary>So many visits of a kind.</summary>
public readonly record struct KindVisits(Code<VisitKind> Kind, int Visits);

/// <summary>A van on a date.</summary>
public readonly record struct VanDay(DateOnly Date, Code<Van> Van);

/// <summary>Units of an item.</summary>
public readonly record struct ItemUnits(Code<Item> Item, int Units);
