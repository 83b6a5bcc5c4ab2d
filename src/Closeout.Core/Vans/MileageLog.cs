using System.Globalization;

namespace Closeout.Vans;

/// <summary>One van's day in the mileage log.</summary>
/// <param name="FuelGal">US gallons; null: none filled.</param>
/// <param name="Visits">Home visits reported; null: no reports.</param>
/// <param name="Purpose">The business purpose in words.</param>
/// <remarks>
/// A tax log of a vehicle asks for the date, the miles, the place and the business purpose, written at or near the time, and
/// the year's totals: 26 CFR 1.274-5T(b)(6); IRS Publication 463, chapter 5 (a weekly log is timely). Homes are not named
/// here: the visit reports do that, and the log points to them.
/// </remarks>
public sealed record LoggedMiles(DateOnly Date, Code<Van> Van, Code<Technician> Technician, decimal StartMi, decimal EndMi,
    decimal? FuelGal, string FuelGrade, int? Visits, string Purpose)
{
    /// <summary>Miles driven; 0 when the reading lies below the start.</summary>
    public decimal DistanceMi => Math.Max(0, EndMi - StartMi);
}

/// <summary>The evening's lines of the mileage log.</summary>
public static class MileageLog
{
    /// <summary>The vans whose odometer was read, in bay order.</summary>
    public static IEnumerable<LoggedMiles> Of(Depot depot) =>
        from van in depot.Setup.Vans
        let read = depot.Shift(van.Code)?.Mileage
        where read is not null
        let visits = depot.Planning.ByVan.GetValueOrDefault((depot.Date, van.Code))?.Visits
        select new LoggedMiles(
            depot.Date, van.Code, read.Technician, read.StartMi, read.EndMi, read.FuelGal, read.FuelGrade ?? "", visits?.Sum(v => v.Visits),
            Purpose(depot, van.Code, visits));

    private static string Purpose(Depot depot, Code<Van> van, IReadOnlyList<KindVisits>? visits)
    {
        if (visits is { Count: > 0 })
            return T("home visits: ") + Kinds(visits.Select(v => (v.Kind, v.Visits)));

        var booked = depot.Planning.Bookings.Where(b => b.Date == depot.Date && b.Van == van && b.Visits > 0)
            .Select(b => (b.Kind, b.Visits)).ToList();
        return booked.Count > 0 ? T("home visits booked: ") + Kinds(booked) : T("not said");
    }

    private static string Kinds(IEnumerable<(Code<VisitKind> Kind, int Visits)> visits) =>
        string.Join(", ", visits.Select(v => string.Create(CultureInfo.InvariantCulture, $"{v.Kind} {v.Visits}")));
}
