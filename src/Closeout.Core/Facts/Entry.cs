namespace Closeout.Facts;

/// <summary>One fact that somebody confirmed, in the past tense. Never edited: a correction is a new entry.</summary>
/// <remarks>The hierarchy is closed: its kinds are listed in the store's codec, and a fold that meets another throws.</remarks>
public abstract record Entry
{
    private protected Entry()
    {
    }

    /// <summary>What the entry does to stock.</summary>
    public virtual IReadOnlyList<Move> Moves => [];
}

/// <summary>An entry as it stands in the book.</summary>
/// <param name="Number">From 1, without holes, over all pages.</param>
/// <param name="At">When it was confirmed, with the local offset of that moment.</param>
public sealed record Recorded(int Number, DateTimeOffset At, Entry Entry);

/// <summary>The first entry of a page: the business date, and all that is carried forward into it.</summary>
/// <param name="Rehearsal">Whether the book is a rehearsal's: nobody stood at a van.</param>
/// <param name="EndedBy">The lead who ended the business date before; null: a day folder of a later date was loaded, or it is the first page.</param>
public sealed record PageOpened(DateOnly Date, bool Rehearsal, Carried Carried, Code<Technician>? EndedBy = null) : Entry;

/// <summary>A day folder was loaded into the open page: the set-up is replaced, and so are the dates that the folder names.</summary>
/// <param name="BookingDates">Dates whose bookings were replaced.</param>
/// <param name="UseDates">Dates whose visit reports were replaced.</param>
/// <param name="Reported">Vans and dates that have reports: what was only counted of them no longer counts.</param>
/// <param name="Orders">All open orders; null: the folder says nothing of orders.</param>
public sealed record DayFolderLoaded(
    Setup Setup,
    IReadOnlyList<DateOnly> BookingDates,
    IReadOnlyList<Booking> Bookings,
    IReadOnlyList<DateOnly> UseDates,
    IReadOnlyList<DailyUse> Use,
    IReadOnlyList<VanUse> ByVan,
    IReadOnlyList<VanDay> Reported,
    IReadOnlyList<Order>? Orders) : Entry;

/// <summary>An entry of one van's close-out.</summary>
public abstract record VanEntry(Code<Van> Van) : Entry;

/// <summary>The van is back, and this technician closes it out.</summary>
/// <param name="WeeklyDue">Whether the longer check is due this evening.</param>
/// <param name="SpotItems">Items to be counted blind: the book's figure is not shown.</param>
public sealed record VanCameIn(Code<Van> Van, Code<Technician> Technician, bool WeeklyDue, IReadOnlyList<Code<Item>> SpotItems) : VanEntry(Van);

/// <summary>One item was counted. A second count of it replaces the first, and its moves say only the difference.</summary>
/// <param name="Installed">What visits report of it; null: not known.</param>
/// <param name="Used">Units used; below zero: the count is above the book.</param>
/// <param name="Gap">Book minus count, in units; positive: more in the book.</param>
/// <param name="Emptied">Cartons emptied: boxes to flatten.</param>
public sealed record LeftoverCounted(
    Code<Van> Van, Code<Item> Item, LeftoverCount Count, int? Installed, int Used, int Gap, int Emptied, IReadOnlyList<Move> Change)
    : VanEntry(Van)
{
    public override IReadOnlyList<Move> Moves => Change;
}

/// <summary>The leftovers are done; items not counted are as booked.</summary>
public sealed record LeftoversConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>Boxes of an item were flattened and counted.</summary>
public sealed record BoxesCounted(Code<Van> Van, Code<Item> Item, int Expected, int Flattened) : VanEntry(Van);

/// <summary>What a van brought home of a waste stream was counted. A second count replaces the first.</summary>
/// <param name="Amount">Pieces or pounds, as the stream is counted; at least 0.</param>
public sealed record StreamCounted(Code<Van> Van, Code<WasteStream> Stream, decimal Amount) : VanEntry(Van);

/// <summary>The cardboard is done; items not counted are as expected.</summary>
public sealed record CardboardConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>The odometer was read.</summary>
/// <param name="FuelGal">US gallons filled, above 0; null: not fuelled.</param>
/// <param name="Sure">Whether the figure looked wrong and was confirmed all the same.</param>
public sealed record MileageLogged(
    Code<Van> Van, Code<Technician> Technician, decimal StartMi, decimal EndMi, decimal? FuelGal, string? FuelGrade, bool Sure) : VanEntry(Van)
{
    /// <summary>Miles driven; 0 when a confirmed reading lies below the start, for then nobody knows.</summary>
    public decimal DistanceMi => Math.Max(0, EndMi - StartMi);
}

/// <summary>How bad a damage is. Unsafe puts the van on hold.</summary>
public enum Severity
{
    Note,
    Repair,
    Unsafe,
}

/// <summary>A damage or a mishap was found or told: an incident, open until a lead closes it.</summary>
/// <param name="Number">Of the incident, from 1, over the whole book.</param>
/// <param name="By">Who reported it.</param>
/// <param name="Drivable">Whether whoever reported it would drive it. Not drivable holds the van, as unsafe does.</param>
/// <param name="Told">Who was told; empty: nobody yet.</param>
/// <param name="ToldAt">When, local time; null: not said.</param>
public sealed record DamageFound(
    Code<Van> Van, int Number, Code<Technician> By, string Zone, Severity Severity, string What, bool Drivable, string Told, TimeOnly? ToldAt) : VanEntry(Van);

/// <summary>The walk round is done.</summary>
/// <param name="None">True: no damage, and what this close-out reported before is withdrawn.</param>
public sealed record DamageConfirmed(Code<Van> Van, bool None) : VanEntry(Van);

/// <summary>A kit piece was counted, and its dates read where it bears any.</summary>
/// <param name="Expires">The date after which it is no longer good.</param>
/// <param name="TestedOn">Of an instrument: when it was last calibrated or bump-tested.</param>
public sealed record KitCounted(Code<Van> Van, Code<KitPiece> Piece, int Count, DateOnly? Expires, DateOnly? TestedOn) : VanEntry(Van);

/// <summary>The kit is done; pieces not counted are all there.</summary>
public sealed record KitConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>The longer check of the week was done.</summary>
/// <param name="OilChangedOn">Date of the last oil change as the sticker says it; null: not read.</param>
/// <param name="NotInOrder">Parts of the walk-round that were not in order, each with an incident of its own; the others were looked at and seen in order.</param>
public sealed record WeeklyChecked(Code<Van> Van, DateOnly? OilChangedOn, int Photos, bool Clean, IReadOnlyList<string> NotInOrder) : VanEntry(Van);

/// <summary>A picture was put beside the close-out. The file lies in the book under its SHA-256.</summary>
/// <param name="Sha256">Lower-case hex.</param>
/// <param name="Name">As it was called where it came from.</param>
public sealed record PhotoAttached(Code<Van> Van, string Sha256, string Name, long Bytes) : VanEntry(Van);

/// <summary>The close-out was signed. It says that a person confirmed the above, not that the van is safe.</summary>
/// <param name="Proof">How it is known that it was this person.</param>
public sealed record Signed(Code<Van> Van, Code<Technician> Technician, Proof Proof) : VanEntry(Van);
