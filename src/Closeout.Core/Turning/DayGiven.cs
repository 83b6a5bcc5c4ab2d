namespace Closeout.Turning;

/// <summary>What a day folder says, read and found without fault.</summary>
/// <param name="Stock">Opening balances of stock.csv; the supplier stands against them, so that they sum to zero.</param>
/// <param name="Orders">Null: there is no orders.csv.</param>
/// <param name="Past">What older records say; it goes into a new book only.</param>
public sealed record DayGiven(
    DateOnly BusinessDate,
    Setup Setup,
    IReadOnlyList<Balance> Stock,
    GivenBookings Booked,
    GivenUse Used,
    IReadOnlyList<Order>? Orders,
    IReadOnlyList<PastRecord> Past)
{
    /// <summary>The first page of a new book.</summary>
    public PageOpened FirstPage(bool rehearsal) => new(BusinessDate, rehearsal, new Carried(
        Setup,
        Balances: Stock,
        Vans: [.. Setup.Vans.Select(v => Earlier.Of(v, Past))],
        Bookings: Booked.Bookings,
        Orders: Orders ?? [],
        Use: Used.Use,
        ByVan: Used.ByVan,
        Counted: [],
        Overrides: [],
        SpotCounts: [],
        Promises: [],
        Kept: [],
        Yard: Earlier.Yard(Setup, Past),
        Incidents: Past.Count(p => p.Kind == PastKind.Damage),
        People: [],
        Kiosks: [],
        Learned: Learning.Of(this)));

    /// <summary>The entry that brings the open page up to this folder.</summary>
    /// <param name="depot">As it is before: of visits that were made only those are kept whose bookings it knows.</param>
    public DayFolderLoaded Loaded(Depot depot) => new(
        Setup,
        BookingDates: Booked.Dates,
        Bookings: Booked.Bookings,
        UseDates: Used.Dates,
        Use: Used.Use,
        ByVan: Used.ByVan,
        Reported: Used.Reported,
        Orders: Orders,
        Made: Made(depot.Planning.Booked.Select(b => b.Date).ToHashSet()));

    private IReadOnlyList<VanVisits>? Made(HashSet<DateOnly> dates)
    {
        List<VanVisits> made = [.. Used.Made.Where(m => dates.Contains(m.Date))];
        return made.Count > 0 ? made : null;
    }
}

/// <summary>What bookings.csv says.</summary>
/// <param name="Dates">Dates that it contains: their bookings are replaced.</param>
public sealed record GivenBookings(IReadOnlyList<DateOnly> Dates, IReadOnlyList<Booking> Bookings)
{
    public static readonly GivenBookings None = new([], []);
}

/// <summary>What usage.csv says.</summary>
/// <param name="Dates">Dates that it contains: their visit reports are replaced.</param>
/// <param name="Reported">Vans and dates that it tells of.</param>
/// <param name="Made">The visits of vans on dates before the business date.</param>
public sealed record GivenUse(
    IReadOnlyList<DateOnly> Dates, IReadOnlyList<DailyUse> Use, IReadOnlyList<VanUse> ByVan, IReadOnlyList<VanDay> Reported,
    IReadOnlyList<VanVisits> Made)
{
    public static readonly GivenUse None = new([], [], [], [], []);
}
