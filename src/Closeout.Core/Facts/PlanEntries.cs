using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry that changes what tomorrow's plan is made from.</summary>
[JsonDerivedType(typeof(PlanOverridden), "plan-overridden/1")]
[JsonDerivedType(typeof(OverrideWithdrawn), "override-withdrawn/1")]
[JsonDerivedType(typeof(BookingsMoved), "bookings-moved/1")]
public abstract record PlanEntry : Entry;

/// <summary>What a lead may change of the plan for a date.</summary>
public enum OverrideKind
{
    /// <summary>The van's target of the item is set to so many units.</summary>
    Target,

    /// <summary>The van needs so many units more than the plan says, once.</summary>
    Extra,

    /// <summary>The van gets nothing: it does not go out.</summary>
    Exclude,
}

/// <summary>A lead changed the plan of a date. It stands until the date is over or it is withdrawn.</summary>
/// <param name="Item">Null when the van is excluded.</param>
/// <param name="Units">The target, or the units more; 0 when the van is excluded.</param>
public sealed record PlanOverridden(
    OverrideKind Kind, Code<Van> Van, Code<Item>? Item, DateOnly Date, int Units, string Reason, Code<Technician> Lead) : PlanEntry
{
    public override Names Names => new(Van, Lead) { Items = Item is { } item ? [item] : [] };
}

/// <summary>A lead took a change of the plan back.</summary>
/// <param name="Number">The entry that is withdrawn.</param>
public sealed record OverrideWithdrawn(int Number, string Reason, Code<Technician> Lead) : PlanEntry
{
    public override Names Names => new(By: Lead);
}

/// <summary>A change of the plan that stands, and the entry that made it.</summary>
public sealed record Standing(int Number, PlanOverridden Change);

/// <summary>A lead moved booked visits from one van to another.</summary>
/// <param name="Visits">Each above 0.</param>
public sealed record BookingsMoved(
    DateOnly Date, Code<Van> From, Code<Van> To, IReadOnlyList<KindVisits> Visits, string Why, Code<Technician> Lead) : PlanEntry
{
    public override Names Names => new(From, Lead) { OtherVan = To };
}
