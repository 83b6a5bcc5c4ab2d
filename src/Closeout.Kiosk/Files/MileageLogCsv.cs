using System.Globalization;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>mileage-log.csv: what a tax log of a vehicle asks for, day by day, and each van's miles of the year.</summary>
/// <remarks>
/// 26 CFR 1.274-5T(b)(6): the miles of each business use and the total, the date, the business purpose; the homes stand in the visit
/// reports.
/// </remarks>
public static class MileageLogCsv
{
    /// <param name="depot">Its name and vans; the log is of the whole book.</param>
    public static byte[] Write(Depot depot, IReadOnlyList<LoggedMiles> miles)
    {
        using var csv = new CsvText("date", "van", "technician", "start_mi", "end_mi", "business_mi", "from_and_to", "visits",
            "business_purpose", "fuel_gal", "fuel_grade", "note");
        foreach (var m in miles)
        {
            csv.Date(m.Date).Text(m.Van.Text).Text(m.Technician.Text).Number(m.StartMi).Number(m.EndMi).Number(m.DistanceMi)
                .Text(Places(depot, m)).Number((decimal?)m.Visits).Text(m.Purpose).Number(m.FuelGal).Text(m.FuelGrade)
                .Text(m.EndMi < m.StartMi ? "odometer below the start, confirmed as read" : "").EndRow();
        }

        foreach (var year in miles.GroupBy(m => (m.Date.Year, m.Van)).OrderBy(g => g.Key.Year).ThenBy(g => g.Key.Van))
        {
            csv.Text(year.Key.Year.ToString("0000", CultureInfo.InvariantCulture)).Text(year.Key.Van.Text).Text(null)
                .Number(year.First().StartMi).Number(year.Last().EndMi)
                .Number(year.Sum(m => m.DistanceMi)).Text(null)
                .Number((decimal?)(year.Any(m => m.Visits is not null) ? year.Sum(m => m.Visits ?? 0) : null))
                .Text("total of the year, as logged")
                .Number(year.Any(m => m.FuelGal is not null) ? year.Sum(m => m.FuelGal ?? 0) : null).Text(null).Text(null).EndRow();
        }

        return csv.Bytes();
    }

    private static string Places(Depot depot, LoggedMiles m) => m.DistanceMi == 0
        ? depot.Setup.Depot.Name
        : $"{depot.Setup.Depot.Name}, homes of the visits, and back";
}
