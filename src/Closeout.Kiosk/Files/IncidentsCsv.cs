using System.Globalization;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>incidents.csv: every incident of the book and what has become of it, by number.</summary>
public static class IncidentsCsv
{
    public static byte[] Write(IEnumerable<LoggedIncident> incidents)
    {
        using var csv = new CsvText(
            "incident", "van", "reported_on", "reported_at", "technician", "zone", "severity", "drivable", "what", "told", "told_at",
            "holds", "status", "closed_on", "closed_by", "why");
        foreach (var logged in incidents)
        {
            var i = logged.Incident;
            csv.Number(i.Number).Text(logged.Van.Text).Date(i.Since)
                .Text(i.By is null ? "" : i.At.ToString("HH:mm", CultureInfo.InvariantCulture)).Text(i.By?.Text)
                .Text(i.Zone).Text(i.Severity.ToString().ToLowerInvariant()).Text(i.Drivable ? "yes" : "no").Text(i.What).Text(i.Told)
                .Text(i.ToldAt?.ToString("HH:mm", CultureInfo.InvariantCulture))
                .Text(logged.State == IncidentState.Open && i.Holds ? "yes" : "no")
                .Text(IncidentLog.Words(logged.State)).Date(logged.ClosedOn).Text(logged.ClosedBy?.Text).Text(logged.Why).EndRow();
        }

        return csv.Bytes();
    }
}
