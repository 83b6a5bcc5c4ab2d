using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry by which a lead decides on a van, whatever its close-out.</summary>
[JsonDerivedType(typeof(HoldsLifted), "holds-lifted/1")]
[JsonDerivedType(typeof(HoldPlaced), "hold-placed/1")]
[JsonDerivedType(typeof(IncidentClosed), "incident-closed/1")]
[JsonDerivedType(typeof(VanExplained), "van-explained/1")]
[JsonDerivedType(typeof(OdometerCorrected), "odometer-corrected/1")]
public abstract record HoldEntry : Entry;

/// <summary>A lead lifted holds of a van. It says that somebody decided, and why; it does not say that the van is safe.</summary>
/// <param name="Reasons">The holds lifted, in the words of the wall.</param>
public sealed record HoldsLifted(Code<Van> Van, IReadOnlyList<string> Reasons, string Why, Code<Technician> Lead) : HoldEntry
{
    public override Names Names => new(Van, Lead);
}

/// <summary>A lead put a van on hold.</summary>
public sealed record HoldPlaced(Code<Van> Van, string Reason, Code<Technician> Lead) : HoldEntry
{
    public override Names Names => new(Van, Lead);
}

/// <summary>A lead closed an incident: it was seen to, or it needs nothing. What it held is free again.</summary>
public sealed record IncidentClosed(Code<Van> Van, int Number, string Why, Code<Technician> Lead) : HoldEntry
{
    public override Names Names => new(Van, Lead);
}

/// <summary>A lead explained why a van is not closed out, so that the day can end without it.</summary>
/// <param name="StayedIn">
/// True: it never went out, so what is on record is aboard. False: out, or left half way; nobody counted it.
/// </param>
public sealed record VanExplained(Code<Van> Van, bool StayedIn, string Why, Code<Technician> Lead) : HoldEntry
{
    public override Names Names => new(Van, Lead);
}

/// <summary>A lead corrected the reading from which the van's next day is counted.</summary>
/// <param name="FromMi">As it was on record.</param>
/// <param name="Mi">As the lead read it.</param>
public sealed record OdometerCorrected(Code<Van> Van, decimal FromMi, decimal Mi, string Why, Code<Technician> Lead) : HoldEntry
{
    public override Names Names => new(Van, Lead);
}
