using Closeout.Stock;

namespace Closeout.DayBook;

/// <summary>All that a new page takes over, so that opening a screen reads one page however old the book is.</summary>
/// <param name="Balances">Units by place and item; they sum to zero for every item.</param>
/// <param name="Counted">Days of vans without visit reports, in the planning window.</param>
/// <param name="Overrides">Changes of the plan for dates to come.</param>
/// <param name="SpotCounts">The last blind count of each item in each van.</param>
/// <param name="Promises">What the plan promised for this date.</param>
/// <param name="Kept">How the promises of the planning window's dates were kept.</param>
/// <param name="Use">Visit history of the planning window.</param>
public sealed record Carried(
    Setup Setup,
    IReadOnlyList<Balance> Balances,
    IReadOnlyList<VanCarried> Vans,
    IReadOnlyList<Booking> Bookings,
    IReadOnlyList<Order> Orders,
    IReadOnlyList<DailyUse> Use,
    IReadOnlyList<VanUse> ByVan,
    IReadOnlyList<CountedDay> Counted,
    IReadOnlyList<Standing> Overrides,
    IReadOnlyList<SpotCounted> SpotCounts,
    IReadOnlyList<Promise> Promises,
    IReadOnlyList<KeptPromises> Kept);

/// <summary>What is carried forward of one van.</summary>
/// <param name="MissingBoxes">Boxes that should have been flattened and were not found yet, by item; never 0.</param>
/// <param name="KitShort">Kit pieces short when last counted.</param>
/// <param name="Damages">Damages of earlier days, note and repair; the unsafe ones are holds.</param>
/// <param name="WeeklyCheckedOn">The last weekly check; null: none in this book.</param>
public sealed record VanCarried(
    Code<Van> Van,
    decimal OdometerMi,
    DateOnly? WeeklyCheckedOn,
    DateOnly? OilChangedOn,
    IReadOnlyList<MissingBoxes> MissingBoxes,
    IReadOnlyList<KitDate> KitDates,
    IReadOnlyList<KitThere> KitShort,
    IReadOnlyList<OpenDamage> Damages,
    IReadOnlyList<Hold> Holds)
{
    /// <summary>A van that no page knows yet.</summary>
    public static VanCarried New(Van van) => new(van.Code, van.OdometerMi, null, null, [], [], [], [], []);
}

/// <summary>Boxes of an item that were not found yet.</summary>
public readonly record struct MissingBoxes(Code<Item> Item, int Boxes);

/// <summary>The date read on a kit piece.</summary>
public readonly record struct KitDate(Code<KitPiece> Piece, DateOnly Expires);

/// <summary>A kit piece that was short when last counted, and how many were there.</summary>
public readonly record struct KitThere(Code<KitPiece> Piece, int There);

/// <summary>A damage that was reported and not closed.</summary>
public sealed record OpenDamage(DateOnly Since, string Zone, Severity Severity, string What);

/// <summary>A van may not go out until a lead lifts it.</summary>
/// <param name="Since">The business date on which it began.</param>
public sealed record Hold(DateOnly Since, string Reason);
