using Closeout.Facts;

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

/// <summary>Count what came home of a waste stream, in its unit.</summary>
public sealed record CountStream(Code<Van> Van, Code<WasteStream> Stream, decimal Amount) : Command(Van);

/// <summary>The cardboard is done; what was not counted is as expected.</summary>
public sealed record ConfirmCardboard(Code<Van> Van) : Command(Van);

/// <summary>Log the odometer.</summary>
/// <param name="EndMi">The reading in miles; null: as read before tonight, else the start, for a van that did not move.</param>
/// <param name="Sure">Record it although it lies below the start or implausibly far.</param>
public sealed record LogMileage(Code<Van> Van, decimal? EndMi, decimal? FuelGal = null, string? FuelGrade = null, bool Sure = false) : Command(Van);

/// <summary>Report a damage or a mishap.</summary>
/// <param name="Drivable">Null: as its severity says, unsafe is not.</param>
/// <param name="Told">Who was told; empty: nobody yet.</param>
public sealed record ReportDamage(
    Code<Van> Van, string Zone, Severity Severity, string What, bool? Drivable = null, string Told = "", TimeOnly? ToldAt = null) : Command(Van);

/// <summary>The walk round is done.</summary>
/// <param name="None">No damage at all: what this close-out reported before is withdrawn.</param>
public sealed record ConfirmDamage(Code<Van> Van, bool None) : Command(Van);

/// <summary>Count a kit piece.</summary>
/// <param name="Count">Null: as required.</param>
/// <param name="Expires">The date after which it is no longer good; null: not read.</param>
/// <param name="TestedOn">When it was last calibrated or bump-tested; null: not read.</param>
public sealed record CountKit(Code<Van> Van, Code<KitPiece> Piece, int? Count, DateOnly? Expires = null, DateOnly? TestedOn = null) : Command(Van);

/// <summary>The kit is done; what was not counted is all there.</summary>
public sealed record ConfirmKit(Code<Van> Van) : Command(Van);

/// <summary>The longer check of the week.</summary>
/// <param name="NotInOrder">Parts that were not in order; each must have been reported as a damage there. Null: those that were.</param>
public sealed record CheckWeekly(Code<Van> Van, DateOnly? OilChangedOn, int Photos, bool Clean, IReadOnlyList<string>? NotInOrder = null) : Command(Van);

/// <summary>Put a picture beside the close-out. Its file is in the book already.</summary>
public sealed record AttachPhoto(Code<Van> Van, string Sha256, string Name, long Bytes) : Command(Van);

/// <summary>Sign the close-out.</summary>
public sealed record Sign(Code<Van> Van, Code<Technician> Technician) : Command(Van);
