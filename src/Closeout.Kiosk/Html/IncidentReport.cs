using Closeout.Files;
using Closeout.Vans;

namespace Closeout.Html;

/// <summary>One incident and what has become of it, on a page to print, sign and file.</summary>
public static class IncidentReport
{
    /// <param name="photos">Those of the van's close-out on the evening of the report.</param>
    /// <param name="read">Gives the bytes of a photo.</param>
    /// <returns>The page, and sentences about photos that the book has lost.</returns>
    public static (string Html, IReadOnlyList<string> Faults) Of(
        Depot depot, LoggedIncident logged, IReadOnlyList<PhotoAttached> photos, Func<string, byte[]> read)
    {
        var (i, name) = (logged.Incident, depot.Setup.Depot.Name);
        var page = new HtmlPage($"{name}, incident {i.Number}", ReportParts.Style, $"\n{Tones.Head}");
        page.Add($"<section>\n<h1><b>{HtmlPage.Safe(logged.Van.Text)}</b> incident {i.Number} "
            + $"{State(logged)}{Tones.Rehearsal(depot)}</h1>");
        page.Add($"<p>{HtmlPage.Safe(name)}; written as of {Spell.Day(depot.Date)}. {ReportParts.Caution}</p>");
        page.Table("", Rows(depot, logged).Select(ReportParts.Row));
        page.Add(ReportParts.Sign("Repaired by, date", "Looked at by, date"));
        if (photos.Count > 0)
        {
            page.Add("<h2>Photos of that evening</h2>");
            page.Add($"<p>All that were attached to the close-out of {HtmlPage.Safe(logged.Van.Text)}.</p>");
        }

        var faults = PagePhotos.Add(page, photos, read);
        page.Add("</section>");
        return (page.End(), faults);
    }

    private static IEnumerable<(string Word, string Sentence)> Rows(Depot depot, LoggedIncident logged)
    {
        var i = logged.Incident;
        yield return ("Van", depot.Setup.Find(logged.Van) is { } van
            ? $"{van.Code} {van.Name}, bay {van.Bay}"
            : $"{logged.Van}, no longer here");
        yield return ("Reported", i.By is { } by
            ? $"{Spell.Day(i.Since)} at {Spell.Clock(i.At)} by {ReportParts.Who(depot, by)}"
            : $"{Spell.Day(i.Since)}, in records older than this book");
        yield return ("Where", i.Zone);
        yield return ("What", i.What);
        yield return ("How bad", Readiness.SeverityWords(i.Severity));
        yield return ("Drivable", i.Drivable ? "yes, said whoever reported it" : "no, said whoever reported it");
        yield return ("Told", Incidents.ToldWords(i));
        yield return ("Hold", Hold(logged));
        yield return ("Status", IncidentLog.Words(logged.State));
        if (logged.ClosedOn is { } on)
            yield return ("Closed", $"{Spell.Day(on)} by {ReportParts.Who(depot, logged.ClosedBy!.Value)}: {logged.Why}");
    }

    private static string Hold(LoggedIncident logged) => logged switch
    {
        { State: not IncidentState.Open } => "none",
        { Incident.Holds: true } => "it holds the van until a lead lifts the hold",
        { Incident.Lifted: true } => "a lead lifted the hold; the incident stays open",
        _ => "none",
    };

    private static string State(LoggedIncident logged) => logged switch
    {
        { State: IncidentState.Closed } => Tones.Badge(Tone.Good, "CLOSED"),
        { State: IncidentState.Withdrawn } => Tones.Badge(Tone.Quiet, "WITHDRAWN"),
        { Incident.Holds: true } => Tones.Badge(Tone.Stop, "HELD"),
        { State: IncidentState.Open } => Tones.Badge(Tone.Note, "OPEN"),
        _ => throw new InvalidOperationException($"no such state: {logged.State}"),
    };
}
