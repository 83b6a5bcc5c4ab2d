namespace Closeout.Restock;

/// <summary>What one van gets of one item for tomorrow, and why.</summary>
/// <param name="Aboard">Units aboard by the book after the close-out.</param>
/// <param name="Booked">The bookings that drive the demand.</param>
/// <param name="Demand">The demand that follows from them.</param>
/// <param name="Q">Quantile of the demand at the promised service, in units.</param>
/// <param name="Need">Units lacking to the target.</param>
/// <param name="Sealed">Sealed cartons to load.</param>
/// <param name="FromBin">Loose units out of the leftovers bin.</param>
/// <param name="FromOpened">Loose units out of cartons opened at the depot.</param>
/// <param name="Short">Need that the depot cannot fill.</param>
/// <param name="Overrides">What a lead changed of it.</param>
/// <param name="Provisional">The van is not closed: aboard is what the book says, and nobody counted.</param>
public sealed record RestockLine(
    Van Van, Item Item, int Aboard, int Low, int High, BookedDemand Booked, Demand Demand, int Q, Target Target, int Need,
    int Sealed, int FromBin, int FromOpened, int Short, bool Provisional, IReadOnlyList<Standing> Overrides)
{
    /// <summary>What was taken off it because of the van's payload; null: nothing.</summary>
    public PayloadCut? Cut { get; init; }

    /// <summary>Units left out because of the van's payload; 0: nothing was cut.</summary>
    public int CutUnits => Cut is { } cut ? cut.Units - Units : 0;

    /// <summary>The most units aboard: the van's high, or less by its payload.</summary>
    public int Most => Cut is { } cut ? Math.Min(High, cut.Most) : High;

    /// <summary>All that is loaded, in units; above need where a carton was rounded up.</summary>
    public int Units => Sealed * Item.UnitsPerCarton + FromBin + FromOpened;

    /// <summary>Chance that demand exceeds what will be aboard.</summary>
    public double MissChance => ChanceAbove(Aboard + Units);

    /// <summary>The chance that so many units aboard do not suffice; a one-off need is needed for certain, whatever else is.</summary>
    public double ChanceAbove(int units)
    {
        var extra = Overrides.Where(o => o.Change.Kind == OverrideKind.Extra).Sum(o => o.Change.Units);
        return extra == 0 ? Demand.Above(units) : units < extra ? 1 : Demand.Above(units - extra);
    }

    /// <summary>Whether a lead left the van out of the plan.</summary>
    public bool IsExcluded => Overrides.Any(o => o.Change.Kind == OverrideKind.Exclude);

    /// <summary>Units by which the booked demand's quantile exceeds the most that the van carries, for a mid-day top-up; 0: none.</summary>
    public int AboveHigh => Math.Max(0, Q - High);
}

/// <summary>What the plan does to the depot's own stock of one item. Cartons on the shelf, units in the bin.</summary>
public sealed record ShelfLine(
    Item Item, int ShelfBefore, int BinBefore, int SealedOut, int Opened, int LooseOut, int ShelfAfter, int BinAfter, int Short,
    int OnOrder, Reorder Order);

/// <summary>What the plan rests on beside bookings and stock.</summary>
public sealed record PlanSources(VisitHistory History, BookingsKept Kept, WorkingDays Working, Suppliers Suppliers);
