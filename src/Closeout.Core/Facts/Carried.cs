using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>All that a new page takes over, so that opening a screen reads one page however old the book is.</summary>
/// <param name="Balances">Units by place and item; they sum to zero for every item.</param>
/// <param name="Counted">Days of vans without visit reports, in the planning window.</param>
/// <param name="Overrides">Changes of the plan for dates to come.</param>
/// <param name="SpotCounts">The last blind count of each item in each van.</param>
/// <param name="Promises">What the plan promised for this date.</param>
/// <param name="Kept">How the promises of the planning window's dates were kept.</param>
/// <param name="Use">Visit history of the planning window.</param>
/// <param name="Incidents">Number of the last incident; 0: none yet.</param>
/// <param name="People">PINs, and wrong ones in a row.</param>
/// <param name="Kiosks">Kiosks at which wrong PINs were typed.</param>
/// <param name="Learned">What plan and orders learned; null: nothing yet.</param>
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
    IReadOnlyList<KeptPromises> Kept,
    YardCarried Yard,
    int Incidents,
    IReadOnlyList<PersonPin> People,
    IReadOnlyList<KioskTries> Kiosks,
    [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] Learned? Learned = null);

/// <summary>What is carried forward of one van.</summary>
/// <param name="MissingBoxes">Boxes that should have been flattened and were not found yet, by item; never 0.</param>
/// <param name="KitShort">Kit pieces short when last counted.</param>
/// <param name="Incidents">Incidents that no lead closed, the oldest first.</param>
/// <param name="Holds">Holds that no lead lifted, but for those of open incidents, which say it themselves.</param>
/// <param name="WeeklyCheckedOn">The last weekly check; null: none in this book.</param>
/// <param name="Driven">Its last days with an odometer reading, the oldest first.</param>
public sealed record VanCarried(
    Code<Van> Van,
    decimal OdometerMi,
    DateOnly? WeeklyCheckedOn,
    DateOnly? OilChangedOn,
    IReadOnlyList<MissingBoxes> MissingBoxes,
    IReadOnlyList<KitDate> KitDates,
    IReadOnlyList<KitThere> KitShort,
    IReadOnlyList<Incident> Incidents,
    IReadOnlyList<Hold> Holds,
    IReadOnlyList<DrivenDay> Driven)
{
    /// <summary>A van that no page knows yet.</summary>
    public static VanCarried New(Van van) => new(van.Code, van.OdometerMi, null, null, [], [], [], [], [], []);
}

/// <summary>Boxes of an item that were not found yet, and the evening since which the oldest of them is missing.</summary>
public readonly record struct MissingBoxes(Code<Item> Item, int Boxes, DateOnly Since);

/// <summary>The dates read on a kit piece: good until, and last tested on.</summary>
public readonly record struct KitDate(Code<KitPiece> Piece, DateOnly? Expires, DateOnly? TestedOn);

/// <summary>A kit piece that was short when last counted, and how many were there.</summary>
public readonly record struct KitThere(Code<KitPiece> Piece, int There);

/// <summary>A van may not go out until a lead lifts it.</summary>
/// <param name="Since">The business date on which it began.</param>
public sealed record Hold(DateOnly Since, string Reason)
{
    /// <summary>The reason in the language that was spoken when it was asked for.</summary>
    [JsonIgnore]
    public string Said { get; init; } = Reason;
}

/// <summary>A damage or mishap that was reported and not closed.</summary>
/// <param name="Since">The business date of the report.</param>
/// <param name="At">The moment of the report.</param>
/// <param name="By">Who reported it; null: an older record, and nobody knows the hour either.</param>
/// <param name="Lifted">Whether a lead lifted the hold that it was: the van may go out, and the incident stays open.</param>
public sealed record Incident(
    int Number, DateOnly Since, DateTimeOffset At, Code<Technician>? By, string Zone, Severity Severity, string What, bool Drivable,
    string Told, TimeOnly? ToldAt, bool Lifted)
{
    /// <summary>Whether it keeps the van in.</summary>
    public bool Holds => !Lifted && (Severity == Severity.Unsafe || !Drivable);
}

/// <summary>One evening's reading of an odometer.</summary>
/// <param name="StartMi">The reading before, in miles.</param>
/// <param name="FuelGal">US gallons filled; null: none.</param>
public readonly record struct DrivenDay(DateOnly Date, decimal StartMi, decimal EndMi, decimal? FuelGal)
{
    /// <summary>Miles driven; 0 where the reading lies below the start.</summary>
    public decimal DistanceMi => Math.Max(0, EndMi - StartMi);
}

/// <summary>What is carried forward of the depot's yard: cardboard and other waste.</summary>
/// <param name="ContainerLb">Pounds of cardboard in the container.</param>
/// <param name="EmptiedOn">When the hauler last came; null: not in this book.</param>
/// <param name="DepotBoxes">Boxes of cartons opened at the depot that were not found yet.</param>
/// <param name="BoxDays">The last working days' boxes, the oldest first, for the forecast.</param>
/// <param name="Collecting">Collecting boxes with something in them.</param>
public sealed record YardCarried(
    double ContainerLb, DateOnly? EmptiedOn,
    IReadOnlyList<MissingBoxes> DepotBoxes, IReadOnlyList<BoxDay> BoxDays, IReadOnlyList<CollectingBox> Collecting)
{
    public static readonly YardCarried Empty = new(0, null, [], [], []);
}

/// <summary>Boxes of one business date, van and depot alike, and the weight of the flattened in pounds.</summary>
public sealed record BoxDay(DateOnly Date, int Expected, int Flattened, double WeightLb);

/// <summary>A box in which a waste stream is collected.</summary>
/// <param name="StartedOn">The date of the first thing in it: the earliest date of all in it.</param>
/// <param name="Amount">Pieces or pounds; above 0.</param>
public sealed record CollectingBox(Code<WasteStream> Stream, DateOnly StartedOn, decimal Amount);
