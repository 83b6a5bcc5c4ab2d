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
        Kiosks: []));

    /// <summary>The entry that brings the open page up to this folder.</summary>
    public DayFolderLoaded Loaded() => new(
        Setup,
        BookingDates: Booked.Dates,
        Bookings: Booked.Bookings,
        UseDates: Used.Dates,
        Use: Used.Use,
        ByVan: Used.ByVan,
        Reported: Used.Reported,
        Orders: Orders);
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
public sealed record GivenUse(
    IReadOnlyList<DateOnly> Dates, IReadOnlyList<DailyUse> Use, IReadOnlyList<VanUse> ByVan, IReadOnlyList<VanDay> Reported)
{
    public static readonly GivenUse None = new([], [], [], []);
}
