namespace Closeout.Facts;

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
    OverrideKind Kind, Code<Van> Van, Code<Item>? Item, DateOnly Date, int Units, string Reason, Code<Technician> Lead) : Entry;

/// <summary>A lead took a change of the plan back.</summary>
/// <param name="Number">The entry that is withdrawn.</param>
public sealed record OverrideWithdrawn(int Number, string Reason, Code<Technician> Lead) : Entry;

/// <summary>A change of the plan that stands, and the entry that made it.</summary>
public sealed record Standing(int Number, PlanOverridden Change);

/// <summary>What was really taken for a van, item by item. Only this moves stock out of the depot.</summary>
public sealed record VanLoaded(Code<Van> Van, IReadOnlyList<LoadedLine> Lines, IReadOnlyList<Move> Change, Code<Technician>? By) : Entry
{
    public override IReadOnlyList<Move> Moves => Change;
}

/// <summary>One item loaded.</summary>
/// <param name="Sealed">Sealed cartons.</param>
/// <param name="Loose">Loose units.</param>
/// <param name="Opened">Cartons opened for it: boxes to flatten at the depot.</param>
/// <param name="Planned">Units that the plan had.</param>
public sealed record LoadedLine(Code<Item> Item, int Sealed, int Loose, int Opened, int Planned);

/// <summary>Cartons came from a supplier onto the shelf.</summary>
/// <param name="Ordered">Cartons of them that were on order; fewer than came: the rest was not ordered.</param>
public sealed record DeliveryReceived(Code<Item> Item, int Cartons, int Ordered, IReadOnlyList<Move> Change, Code<Technician> By) : Entry
{
    public override IReadOnlyList<Move> Moves => Change;
}

/// <summary>Somebody counted a place, and the book follows.</summary>
/// <param name="Book">What the book said, in units.</param>
/// <param name="Counted">What was there, in units.</param>
public sealed record CountCorrected(Place Place, Code<Item> Item, int Book, int Counted, string Reason, IReadOnlyList<Move> Change, Code<Technician> By) : Entry
{
    public override IReadOnlyList<Move> Moves => Change;
}

/// <summary>Entries of this page were lost by damage, and the rest was saved into this book.</summary>
/// <param name="Lost">Entries lost here, or between this page and the next.</param>
/// <param name="Change">To and from unexplained: what brings the balances to those that the next page carried forward, or, where nothing tells them, to what was last counted and not below nothing.</param>
public sealed record BookSalvaged(int Lost, IReadOnlyList<Move> Change) : Entry
{
    public override IReadOnlyList<Move> Moves => Change;
}
