using Closeout.Facts;

namespace Closeout.Cardboard;

/// <summary>What somebody asks to have recorded of the depot's yard: cardboard and other waste.</summary>
public abstract record YardCommand;

/// <summary>Count the flattened boxes of an item that was opened at the depot.</summary>
public sealed record CountDepotBoxes(Code<Item> Item, int Flattened, Code<Technician> By) : YardCommand;

/// <summary>A lead writes off boxes that nobody found.</summary>
/// <param name="Van">Null: opened at the depot.</param>
/// <param name="Boxes">Null: all that are missing.</param>
public sealed record WriteOffBoxes(Code<Van>? Van, Code<Item> Item, int? Boxes, string Why, Code<Technician> Lead) : YardCommand;

/// <summary>The hauler emptied the container.</summary>
/// <param name="FullPercent">How full it was by eye; null: not said.</param>
/// <param name="WeighedLb">Pounds on the hauler's slip; null: not weighed.</param>
public sealed record EmptyContainer(double? FullPercent, double? WeighedLb, Code<Technician> By) : YardCommand;

/// <summary>A collecting box goes to a recycler or handler.</summary>
public sealed record ShipCollected(Code<WasteStream> Stream, string To, Code<Technician> By) : YardCommand;
