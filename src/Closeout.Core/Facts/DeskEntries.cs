namespace Closeout.Facts;

/// <summary>A lead lifted holds of a van. It says that somebody decided, and why; it does not say that the van is safe.</summary>
/// <param name="Reasons">The holds lifted, in the words of the wall.</param>
public sealed record HoldsLifted(Code<Van> Van, IReadOnlyList<string> Reasons, string Why, Code<Technician> Lead) : Entry;

/// <summary>A lead put a van on hold.</summary>
public sealed record HoldPlaced(Code<Van> Van, string Reason, Code<Technician> Lead) : Entry;

/// <summary>A lead closed an incident: it was seen to, or it needs nothing. What it held is free again.</summary>
public sealed record IncidentClosed(Code<Van> Van, int Number, string Why, Code<Technician> Lead) : Entry;

/// <summary>The boxes of cartons opened at the depot were flattened and counted. A second count of the day replaces the first.</summary>
/// <param name="Expected">Boxes that must have existed by then.</param>
public sealed record DepotBoxesCounted(Code<Item> Item, int Expected, int Flattened, Code<Technician> By) : Entry;

/// <summary>A lead wrote off boxes that nobody found.</summary>
/// <param name="Van">Whose boxes they were; null: opened at the depot.</param>
/// <param name="Boxes">Above 0.</param>
public sealed record BoxesWrittenOff(Code<Van>? Van, Code<Item> Item, int Boxes, string Why, Code<Technician> Lead) : Entry;

/// <summary>The hauler emptied the cardboard container.</summary>
/// <param name="BookLb">Pounds that the book had in it: what is loaded afterwards counts from there.</param>
/// <param name="FullPercent">How full it was by eye, above 0; null: not said.</param>
/// <param name="WeighedLb">Pounds on the hauler's slip; null: not weighed.</param>
public sealed record ContainerEmptied(double BookLb, double? FullPercent, double? WeighedLb, Code<Technician> By) : Entry;

/// <summary>A collecting box went to a recycler or handler.</summary>
/// <param name="StartedOn">Its earliest date.</param>
/// <param name="Amount">Pieces or pounds in it.</param>
/// <param name="To">Who took it, and the slip.</param>
public sealed record CollectingBoxShipped(Code<WasteStream> Stream, DateOnly StartedOn, decimal Amount, string To, Code<Technician> By) : Entry;
