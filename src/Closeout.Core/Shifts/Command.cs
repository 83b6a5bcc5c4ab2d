using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Shifts;

/// <summary>What somebody asks to have recorded of a van. It becomes an entry, or a refusal.</summary>
public abstract record Command(Code<Van> Van);

/// <summary>The van is back.</summary>
public sealed record ComeIn(Code<Van> Van, Code<Technician> Technician) : Command(Van);

/// <summary>Count one item.</summary>
/// <param name="Sealed">Cartons still sealed aboard; null: as the book says.</param>
/// <param name="Installed">What visits report; null: what the loaded visit reports say, if any.</param>
/// <param name="Sure">Record a count above the book without asking again.</param>
public sealed record CountLeftover(Code<Van> Van, Code<Item> Item, int? Sealed, int Bin, int Kept, int? Installed = null, bool Sure = false) : Command(Van);

/// <summary>The leftovers are done.</summary>
public sealed record ConfirmLeftovers(Code<Van> Van) : Command(Van);

/// <summary>Count the flattened boxes of one item.</summary>
public sealed record CountBoxes(Code<Van> Van, Code<Item> Item, int Flattened) : Command(Van);

/// <summary>The cardboard is done; what was not counted is as expected.</summary>
public sealed record ConfirmCardboard(Code<Van> Van) : Command(Van);

/// <summary>Log the odometer.</summary>
/// <param name="EndMi">The reading in miles; null: as read before tonight, else the start, for a van that did not move.</param>
/// <param name="Sure">Record it although it lies below the start or implausibly far.</param>
public sealed record LogMileage(Code<Van> Van, decimal? EndMi, decimal? FuelGal = null, string? FuelGrade = null, bool Sure = false) : Command(Van);

/// <summary>Report a damage.</summary>
public sealed record ReportDamage(Code<Van> Van, string Zone, Severity Severity, string What) : Command(Van);

/// <summary>The walk round is done.</summary>
/// <param name="None">No damage at all: what this close-out reported before is withdrawn.</param>
public sealed record ConfirmDamage(Code<Van> Van, bool None) : Command(Van);

/// <summary>Count a kit piece.</summary>
/// <param name="Count">Null: as required.</param>
/// <param name="Expires">The date on it; null: not read.</param>
public sealed record CountKit(Code<Van> Van, Code<KitPiece> Piece, int? Count, DateOnly? Expires = null) : Command(Van);

/// <summary>The kit is done; what was not counted is all there.</summary>
public sealed record ConfirmKit(Code<Van> Van) : Command(Van);

/// <summary>The longer check of the week.</summary>
public sealed record CheckWeekly(Code<Van> Van, DateOnly? OilChangedOn, int Photos, bool Clean) : Command(Van);

/// <summary>A lead lifts all holds of the van.</summary>
public sealed record LiftHolds(Code<Van> Van, string Why, Code<Technician> Lead) : Command(Van);

/// <summary>Sign the close-out.</summary>
public sealed record Sign(Code<Van> Van, Code<Technician> Technician) : Command(Van);
