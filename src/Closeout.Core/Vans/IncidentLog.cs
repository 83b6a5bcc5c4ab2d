namespace Closeout.Vans;

/// <summary>What has become of an incident.</summary>
public enum IncidentState
{
    Open,

    /// <summary>A lead closed it.</summary>
    Closed,

    /// <summary>The close-out that reported it took it back before it was signed.</summary>
    Withdrawn,
}

/// <summary>An incident and what has become of it.</summary>
/// <param name="ClosedOn">Business date; null: not closed.</param>
public sealed record LoggedIncident(
    Code<Van> Van, Incident Incident, IncidentState State, DateOnly? ClosedOn, Code<Technician>? ClosedBy, string Why);

/// <summary>The incidents that a page knows of, for the archive and for incidents.csv.</summary>
public static class IncidentLog
{
    /// <summary>Carried ones and tonight's, those closed or withdrawn tonight among them, by number.</summary>
    public static IReadOnlyList<LoggedIncident> Of(Depot depot)
    {
        var closed = depot.Vans.Closed.ToDictionary(c => c.Entry.Number, c => c.Entry);
        var logged = depot.Setup.Vans.SelectMany(v => Incidents.All(depot, v.Code).Select(i => (v.Code, Incident: i)))
            .Select(i => closed.TryGetValue(i.Incident.Number, out var by)
                ? new LoggedIncident(i.Code, i.Incident, IncidentState.Closed, depot.Date, by.Lead, by.Why)
                : new LoggedIncident(i.Code, i.Incident, IncidentState.Open, null, null, ""));
        var withdrawn = from shift in depot.Shifts.Values
                        from told in shift.Story
                        where told.Entry is DamageFound found && !shift.Damages.Contains(found)
                        let d = (DamageFound)told.Entry
                        select new LoggedIncident(
                            shift.Van,
                            new Incident(
                                d.Number, depot.Date, told.At, d.By, d.Zone, d.Severity, d.What, d.Drivable, d.Told, d.ToldAt, false),
                            IncidentState.Withdrawn, null, null, "");
        return [.. logged.Concat(withdrawn).OrderBy(i => i.Incident.Number)];
    }

    public static string Words(IncidentState state) => state switch
    {
        IncidentState.Open => T("open"),
        IncidentState.Closed => T("closed"),
        IncidentState.Withdrawn => T("withdrawn"),
        _ => throw new InvalidOperationException($"no such state: {state}"),
    };
}
