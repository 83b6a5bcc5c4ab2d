namespace Closeout.Facts;

/// <summary>What older records can say of a day before a book began.</summary>
public enum PastKind
{
    /// <summary>A van's odometer at the end of the day, in miles.</summary>
    Odometer,

    /// <summary>US gallons filled into a van.</summary>
    Fuel,

    /// <summary>A van had its weekly check.</summary>
    Weekly,

    /// <summary>A van's oil was changed.</summary>
    OilChange,

    /// <summary>The date after which a kit piece is no longer good, as read that day.</summary>
    Expires,

    /// <summary>The date on which an instrument was last tested, as read that day.</summary>
    Tested,

    /// <summary>A damage that is still open.</summary>
    Damage,

    /// <summary>Boxes flattened at the depot.</summary>
    Flattened,

    /// <summary>Boxes missing since that evening.</summary>
    Missing,

    /// <summary>The hauler emptied the container.</summary>
    Emptied,

    /// <summary>Pieces or pounds put into a collecting box.</summary>
    Collected,

    /// <summary>Visits of a kind that were booked for a van.</summary>
    Booked,

    /// <summary>The first delivery of an order, in cartons.</summary>
    Received,
}

/// <summary>One line of a depot's older records.</summary>
/// <param name="Van">Null where it is the depot's.</param>
/// <param name="Code">Of an item, kit piece, waste stream or visit kind; for a damage its severity; else empty.</param>
/// <param name="Amount">The number, where the kind has one; else 0.</param>
/// <param name="On">The date told, where the kind has one; of a delivery when it was due.</param>
/// <param name="Text">Of a damage: where and what.</param>
/// <param name="Ordered">Of a delivery: cartons ordered; else 0.</param>
/// <param name="Supplier">Of a delivery: who brought it; null: the item's own supplier.</param>
public sealed record PastRecord(
    DateOnly Date, PastKind Kind, Code<Van>? Van, string Code, decimal Amount, DateOnly? On, string Text, int Ordered = 0,
    Code<Supplier>? Supplier = null);
