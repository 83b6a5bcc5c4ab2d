using System.Globalization;

namespace Closeout.Vans;

/// <summary>Damages and mishaps of a van: open until a lead closes them.</summary>
public static class Incidents
{
    /// <summary>The van's open incidents, the oldest first: carried ones, and tonight's.</summary>
    public static IReadOnlyList<Incident> Open(Depot depot, Code<Van> van)
    {
        var closed = depot.Vans.Closed.Select(c => c.Entry.Number).ToHashSet();
        return [.. All(depot, van).Where(i => !closed.Contains(i.Number))];
    }

    /// <summary>The van's incidents that this page knows of, those closed tonight among them.</summary>
    public static IEnumerable<Incident> All(Depot depot, Code<Van> van)
    {
        var lifted = Readiness.Lifted(depot, van);
        var shift = depot.Shift(van);
        var tonight = shift is null ? [] : shift.Damages.Select(d => new Incident(
            d.Number, depot.Date, shift.Story.First(e => ReferenceEquals(e.Entry, d)).At, d.By, d.Zone, d.Severity, d.What, d.Drivable,
            d.Told, d.ToldAt, false));
        return depot.Van(van).Incidents.Concat(tonight)
            .Select(i => i.Lifted || !lifted.Contains(English(() => Words(i))) ? i : i with { Lifted = true });
    }

    /// <summary>An incident in the words of the wall.</summary>
    public static string Words(Incident i)
    {
        var drive = !i.Drivable && i.Severity != Severity.Unsafe ? T(", not drivable") : "";
        return T($"{T(i.Zone)}, {Readiness.SeverityWords(i.Severity)}{drive}: {i.What} (incident {i.Number})");
    }

    /// <summary>Who was told and when, for the lead.</summary>
    public static string ToldWords(Incident i) => i.Told.Length == 0
        ? T("nobody told yet")
        : T($"told {i.Told}{(i.ToldAt is { } at ? T(" at ") + at.ToString("HH:mm", CultureInfo.InvariantCulture) : "")}");
}
