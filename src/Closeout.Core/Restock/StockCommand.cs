using Closeout.Facts;

namespace Closeout.Restock;

/// <summary>What somebody asks to have recorded of the depot's stock or plan.</summary>
public abstract record StockCommand;

/// <summary>A lead changes the plan of a date.</summary>
public sealed record ChangePlan(
    OverrideKind Kind, Code<Van> Van, Code<Item>? Item, DateOnly Date, int Units, string Reason, Code<Technician> Lead) : StockCommand;

/// <summary>A lead takes a change back.</summary>
/// <param name="Number">The entry of the change.</param>
public sealed record WithdrawChange(int Number, string Reason, Code<Technician> Lead) : StockCommand;

/// <summary>Load a van with what was really taken.</summary>
public sealed record LoadVan(Code<Van> Van, IReadOnlyList<Taken> Lines, Code<Technician>? By) : StockCommand;

/// <summary>What was taken of an item: sealed cartons and loose units.</summary>
public sealed record Taken(Code<Item> Item, int Sealed, int Loose);

/// <summary>Cartons came from a supplier.</summary>
public sealed record ReceiveDelivery(Code<Item> Item, int Cartons, Code<Technician> By) : StockCommand;

/// <summary>Somebody counted the shelf, the bin, or an item in a van.</summary>
/// <param name="Counted">Cartons where they are sealed, else units.</param>
public sealed record CorrectCount(Place Place, Code<Item> Item, int Counted, string Reason, Code<Technician> By) : StockCommand;
