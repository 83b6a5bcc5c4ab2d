using Closeout.Facts;

namespace Closeout.Turning;

/// <summary>What a day folder says, read and found without fault.</summary>
/// <param name="Stock">Opening balances of stock.csv; the supplier stands against them, so that they sum to zero.</param>
/// <param name="BookingDates">Dates that bookings.csv contains.</param>
/// <param name="UseDates">Dates that usage.csv contains.</param>
/// <param name="Reported">Vans and dates that usage.csv tells of.</param>
/// <param name="Orders">Null: there is no orders.csv.</param>
/// <param name="Past">What older records say; it goes into a new book only.</param>
public sealed record DayGiven(
    DateOnly BusinessDate,
    Setup Setup,
    IReadOnlyList<Balance> Stock,
    IReadOnlyList<DateOnly> BookingDates,
    IReadOnlyList<Booking> Bookings,
    IReadOnlyList<DateOnly> UseDates,
    IReadOnlyList<DailyUse> Use,
    IReadOnlyList<VanUse> ByVan,
    IReadOnlyList<VanDay> Reported,
    IReadOnlyList<Order>? Orders,
    IReadOnlyList<PastRecord> Past)
{
    /// <summary>The first page of a new book.</summary>
    public PageOpened FirstPage(bool rehearsal) => new(BusinessDate, rehearsal, new Carried(
        Setup, Stock, [.. Setup.Vans.Select(v => Earlier.Of(v, Past))], Bookings, Orders ?? [], Use, ByVan, [], [], [], [], [],
        Earlier.Yard(Setup, Past), Past.Count(p => p.Kind == PastKind.Damage), [], []));

    /// <summary>The entry that brings the open page up to this folder.</summary>
    public DayFolderLoaded Loaded() => new(Setup, BookingDates, Bookings, UseDates, Use, ByVan, Reported, Orders);
}
