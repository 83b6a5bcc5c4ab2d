using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of one van's close-out.</summary>
[JsonDerivedType(typeof(VanCameIn), "van-came-in/1")]
[JsonDerivedType(typeof(VanSentBack), "van-sent-back/1")]
[JsonDerivedType(typeof(LeftoverCounted), "leftover-counted/1")]
[JsonDerivedType(typeof(LeftoversConfirmed), "leftovers-confirmed/1")]
[JsonDerivedType(typeof(BoxesCounted), "boxes-counted/1")]
[JsonDerivedType(typeof(StreamCounted), "stream-counted/1")]
[JsonDerivedType(typeof(CardboardConfirmed), "cardboard-confirmed/1")]
[JsonDerivedType(typeof(MileageLogged), "mileage-logged/1")]
[JsonDerivedType(typeof(DamageFound), "damage-found/2")]
[JsonDerivedType(typeof(DamageConfirmed), "damage-confirmed/1")]
[JsonDerivedType(typeof(KitCounted), "kit-counted/2")]
[JsonDerivedType(typeof(KitConfirmed), "kit-confirmed/1")]
[JsonDerivedType(typeof(WeeklyChecked), "weekly-checked/2")]
[JsonDerivedType(typeof(HandoverAnswered), "handover-answered/1")]
[JsonDerivedType(typeof(PhotoAttached), "photo-attached/1")]
[JsonDerivedType(typeof(Signed), "signed/2")]
[JsonDerivedType(typeof(SignedFor), "signed-for/1")]
[JsonDerivedType(typeof(CloseoutChecked), "closeout-checked/1")]
[JsonDerivedType(typeof(CloseoutReopened), "closeout-reopened/1")]
public abstract record VanEntry(Code<Van> Van) : Entry
{
    public override Names Names => new(Van);
}

/// <summary>The van is back, and this technician closes it out.</summary>
/// <param name="WeeklyDue">Whether the longer check is due this evening.</param>
/// <param name="SpotItems">Items to be counted blind: the book's figure is not shown.</param>
/// <param name="HandoverDue">Whether the depot's own questions are asked; books written before there were any do not say so.</param>
public sealed record VanCameIn(
    Code<Van> Van, Code<Technician> Technician, bool WeeklyDue, IReadOnlyList<Code<Item>> SpotItems,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingDefault)] bool HandoverDue = false) : VanEntry(Van)
{
    public override Names Names => new(Van, Technician) { Items = SpotItems };
}

/// <summary>The depot's own questions were answered.</summary>
/// <param name="Answers">Empty: nobody was asked, as where somebody else signs.</param>
public sealed record HandoverAnswered(Code<Van> Van, IReadOnlyList<HandoverAnswer> Answers) : VanEntry(Van);

/// <summary>One question answered.</summary>
/// <param name="Question">As it was asked.</param>
/// <param name="Why">What is not as it should be; empty where the answer is yes.</param>
public sealed record HandoverAnswer(Code<HandoverQuestion> Code, string Question, bool Yes, string Why);

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

    public override Names Names => new(Van) { Items = [Item] };
}

/// <summary>The leftovers are done; items not counted are as booked.</summary>
public sealed record LeftoversConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>Boxes of an item were flattened and counted.</summary>
public sealed record BoxesCounted(Code<Van> Van, Code<Item> Item, int Expected, int Flattened) : VanEntry(Van)
{
    public override Names Names => new(Van) { Items = [Item] };
}

/// <summary>What a van brought home of a waste stream was counted. A second count replaces the first.</summary>
/// <param name="Amount">Pieces or pounds, as the stream is counted; at least 0.</param>
public sealed record StreamCounted(Code<Van> Van, Code<WasteStream> Stream, decimal Amount) : VanEntry(Van)
{
    public override Names Names => new(Van) { Stream = Stream };
}

/// <summary>The cardboard is done; items not counted are as expected.</summary>
public sealed record CardboardConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>The odometer was read.</summary>
/// <param name="FuelGal">US gallons filled, above 0; null: not fuelled.</param>
/// <param name="Sure">Whether the figure looked wrong and was confirmed all the same.</param>
public sealed record MileageLogged(
    Code<Van> Van, Code<Technician> Technician, decimal StartMi, decimal EndMi, decimal? FuelGal, string? FuelGrade, bool Sure)
    : VanEntry(Van)
{
    public override Names Names => new(Van, Technician);

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
    Code<Van> Van, int Number, Code<Technician> By, string Zone, Severity Severity, string What, bool Drivable, string Told,
    TimeOnly? ToldAt)
    : VanEntry(Van)
{
    public override Names Names => new(Van, By);
}

/// <summary>The van was opened by mistake: it is on the road again, as if it had not come in.</summary>
public sealed record VanSentBack(Code<Van> Van) : VanEntry(Van);

/// <summary>The walk round is done.</summary>
/// <param name="None">True: no new damage, and what this close-out reported before is withdrawn.</param>
/// <param name="Known">Open incidents of earlier days that were seen to be still there; null: none was pointed at.</param>
public sealed record DamageConfirmed(
    Code<Van> Van, bool None, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] IReadOnlyList<int>? Known = null)
    : VanEntry(Van);

/// <summary>A kit piece was counted, and its dates read where it bears any.</summary>
/// <param name="Expires">The date after which it is no longer good.</param>
/// <param name="TestedOn">Of an instrument: when it was last calibrated or bump-tested.</param>
public sealed record KitCounted(Code<Van> Van, Code<KitPiece> Piece, int Count, DateOnly? Expires, DateOnly? TestedOn) : VanEntry(Van)
{
    public override Names Names => new(Van) { Piece = Piece };
}

/// <summary>The kit is done; pieces not counted are all there.</summary>
public sealed record KitConfirmed(Code<Van> Van) : VanEntry(Van);

/// <summary>The longer check of the week was done.</summary>
/// <param name="OilChangedOn">Date of the last oil change as the sticker says it; null: not read.</param>
/// <param name="NotInOrder">
/// Parts of the walk-round that were not in order, each with an incident of its own; the others were looked at and seen in order.
/// </param>
public sealed record WeeklyChecked(Code<Van> Van, DateOnly? OilChangedOn, int Photos, bool Clean, IReadOnlyList<string> NotInOrder)
    : VanEntry(Van);

/// <summary>A picture was put beside the close-out. The file lies in the book under its SHA-256.</summary>
/// <param name="Sha256">Lower-case hex.</param>
/// <param name="Name">As it was called where it came from.</param>
public sealed record PhotoAttached(Code<Van> Van, string Sha256, string Name, long Bytes) : VanEntry(Van);

/// <summary>How a signature is known to be the signer's. It proves who confirmed, not that the van is safe.</summary>
public enum Proof
{
    /// <summary>The signer's PIN was typed.</summary>
    Pin,

    /// <summary>None was asked: a rehearsal.</summary>
    Rehearsal,
}

/// <summary>The close-out was signed. It says that a person confirmed the above, not that the van is safe.</summary>
/// <param name="Proof">How it is known that it was this person.</param>
public sealed record Signed(Code<Van> Van, Code<Technician> Technician, Proof Proof) : VanEntry(Van)
{
    public override Names Names => new(Van, Technician);
}

/// <summary>A lead signed a close-out for somebody who could not.</summary>
/// <param name="For">Whose close-out it is.</param>
public sealed record SignedFor(Code<Van> Van, Code<Technician> For, string Why, Code<Technician> Lead) : VanEntry(Van)
{
    public override Names Names => new(Van, Lead) { About = For };
}

/// <summary>A lead looked over a signed close-out. Four eyes: never the one who signed it or brought the van in.</summary>
public sealed record CloseoutChecked(Code<Van> Van, Code<Technician> Lead) : VanEntry(Van)
{
    public override Names Names => new(Van, Lead);
}

/// <summary>A lead opened a signed close-out again: it stands at its sign-off, and every answer may be changed.</summary>
public sealed record CloseoutReopened(Code<Van> Van, string Why, Code<Technician> Lead) : VanEntry(Van)
{
    public override Names Names => new(Van, Lead);
}
