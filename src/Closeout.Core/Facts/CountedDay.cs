namespace Closeout.Facts;

/// <summary>What a van used on a date by its close-out's counts, where no visit report tells: one visit of kind <c>day</c>.</summary>
/// <param name="Used">Units above 0; items not listed: none used.</param>
public sealed record CountedDay(DateOnly Date, Code<Van> Van, IReadOnlyList<ItemUnits> Used)
{
    /// <summary>The visit kind that such a day counts as, and that bookings of whole days name.</summary>
    public static readonly Code<VisitKind> Kind = new("day");
}
