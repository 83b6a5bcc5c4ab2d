using System.Text;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// The elements of a vehicle's record by 26 CFR 1.274-5T(b)(6), seen as the US Tax Court states them (Xiong, T.C. Summary
/// Opinion, 2007; Schubert, 2008): the amount; the mileage of each business use and the total mileage; the date; the business
/// purpose. IRS Publication 463, chapter 5, seen as yourtaxcare.com quotes it: date, miles, destination, purpose, and the
/// year's totals; a weekly log is timely.
/// </summary>
public sealed class MileageLogReferenceTests
{
    private static readonly LoggedMiles[] TwoYears =
    [
        Miles("2026-12-30", "B1", 1000, 1062.5m, 12.5m, 3, "home visits: install 3"),
        Miles("2026-12-30", "B2", 2000, 2040, null, null, "home visits booked: install 2"),
        Miles("2026-12-31", "B1", 1062.5m, 1062.5m, null, null, "not said"),
        Miles("2027-01-01", "B1", 1062.5m, 1100, 3, 1, "home visits: install 1"),
        Miles("2027-01-02", "B1", 1100, 1090, null, 2, "home visits: install 2"),
    ];

    private static readonly string[][] Rows = [.. Encoding.UTF8.GetString(MileageLogCsv.Write(Tiny.Opened(), TwoYears)).Split("\r\n")[..^1].Select(Fields)];

    [Fact]
    public void Each_use_has_its_date_its_miles_its_place_and_its_purpose_and_the_fuel_is_the_amount()
    {
        var uses = Rows[1..(TwoYears.Length + 1)];
        uses.Select(r => r[Column("date")]).Should().Equal(TwoYears.Select(m => $"{m.Date:yyyy-MM-dd}"));
        uses.Select(r => r[Column("business_mi")]).Should().Equal("62.5", "40", "0", "37.5", "0");
        uses.Should().OnlyContain(r => r[Column("from_and_to")].StartsWith("Tiny Row", StringComparison.Ordinal) && r[Column("business_purpose")].Length > 0);
        uses.Select(r => r[Column("fuel_gal")]).Should().Equal("12.5", "", "", "3", "");
        uses[4][Column("note")].Should().Be("odometer below the start, confirmed as read");
    }

    [Fact]
    public void The_year_of_each_van_has_its_total_of_miles_visits_and_fuel() =>
        Rows[(TwoYears.Length + 1)..].Select(r => string.Join(",", r)).Should().Equal(
            "2026,B1,,1000,1062.5,62.5,,3,total of the year, as logged,12.5,,",
            "2026,B2,,2000,2040,40,,,total of the year, as logged,,,",
            "2027,B1,,1062.5,1090,37.5,,3,total of the year, as logged,3,,");

    /// <summary>Worked entry at taxabletalk.com/?p=7560, 2015, seen: 40315 to 40350 are 35 miles.</summary>
    [Fact]
    public void From_40315_to_40350_is_35_business_miles() => Miles("2026-03-02", "B1", 40315, 40350, null, 1, "x").DistanceMi.Should().Be(35);

    [Fact]
    public void The_log_of_an_evening_takes_visits_before_bookings_and_says_when_nobody_said()
    {
        var depot = Tiny.Opened().At(Tiny.B1, Step.Damage).At(Tiny.B2, Step.Damage).At(Tiny.B3, Step.Damage).Planned(p => p with { Bookings = [new Booking(Tiny.Wednesday, Tiny.B1, new("install"), 9), new Booking(Tiny.Wednesday, Tiny.B2, new("audit"), 2), new Booking(Tiny.Friday, Tiny.B3, new("audit"), 2)], ByVan = Tiny.Opened().Planning.ByVan.Add((Tiny.Wednesday, Tiny.B1), new VanUse(Tiny.Wednesday, Tiny.B1, [], [new(new("audit"), 1), new(new("install"), 3)])) });

        MileageLog.Of(depot).Select(m => (m.Van.Text, m.Visits, m.Purpose)).Should().Equal(
            ("B1", 4, "home visits: audit 1, install 3"), ("B2", null, "home visits booked: audit 2"), ("B3", null, "not said"));
    }

    private static LoggedMiles Miles(string date, string van, decimal start, decimal end, decimal? fuel, int? visits, string purpose) =>
        new(DateOnly.Parse(date), new Code<Van>(van), Tiny.T1, start, end, fuel, fuel is null ? "" : "regular", visits, purpose);

    private static int Column(string name) => Array.IndexOf(Rows[0], name) is var at and >= 0 ? at : throw new ArgumentException(name);

    /// <summary>Fields of a row whose quoted ones hold no quotes.</summary>
    private static string[] Fields(string line)
    {
        var parts = line.Split('"');
        return [.. string.Concat(parts.Select((p, n) => n % 2 == 0 ? p.Replace(',', '\t') : p)).Split('\t')];
    }
}
