using Closeout.Vans;

namespace Closeout.Files;

/// <summary>mileage.csv: the vans whose odometer was read. Service due as an odometer reading and as a date.</summary>
public static class MileageCsv
{
    public static byte[] Write(Depot depot)
    {
        using var csv = new CsvText(
            "date", "van", "technician", "start_mi", "end_mi", "distance_mi", "fuel_gal", "service_due_mi", "service_due_on", "note");
        foreach (var van in depot.Setup.Vans)
        {
            if (depot.Shift(van.Code)?.Mileage is { } read)
            {
                var service = Service.Of(van);
                csv.Date(depot.Date).Text(van.Code.Text).Text(read.Technician.Text)
                    .Number(read.StartMi).Number(read.EndMi).Number(read.DistanceMi).Number(read.FuelGal)
                    .Number(service.DueMi).Date(service.DueOn).Text(Note(depot, van, read)).EndRow();
            }
        }

        return csv.Bytes();
    }

    private static string Note(Depot depot, Van van, MileageLogged read)
    {
        var odd = (read.Sure, read.EndMi < read.StartMi) switch
        {
            (true, true) => "odometer below the start, confirmed as read",
            (true, false) => "far for one day, confirmed as read",
            _ => null,
        };
        return string.Join("; ",
            new[] { odd, Readiness.OtherFuel(van, read),
                Service.Of(van).Note(read.EndMi, depot.Date, depot.InFileUnits.Setup.Units) }.Where(n => n is not null));
    }
}
