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
        var page = new HtmlPage(T($"{name}, incident {i.Number}"), ReportParts.Style, $"\n{Tones.Head}");
        page.Add(
            $"<section>\n<h1><b>{HtmlPage.Safe(logged.Van.Text)}</b> {T("incident")} {i.Number} "
                + $"{State(logged)}{Tones.Rehearsal(depot)}</h1>");
        page.Paragraph(T($"{name}; written as of {Spell.Day(depot.Date)}. {ReportParts.Caution}"));
        page.Table("", Rows(depot, logged).Select(ReportParts.Row));
        page.Add(ReportParts.Sign(T("Repaired by, date"), T("Looked at by, date")));
        if (photos.Count > 0)
        {
            page.Heading(T("Photos of that evening"));
            page.Paragraph(T($"All that were attached to the close-out of {logged.Van.Text}."));
        }

        var faults = PagePhotos.Add(page, photos, read);
        page.Add("</section>");
        return (page.End(), faults);
    }

    private static IEnumerable<(string Word, string Sentence)> Rows(Depot depot, LoggedIncident logged)
    {
        var i = logged.Incident;
        yield return (T("Van"), depot.Setup.Find(logged.Van) is { } van
            ? T($"{van.Code} {van.Name}, bay {van.Bay}")
            : T($"{logged.Van}, no longer here"));
        yield return (T("Reported"), i.By is { } by
            ? T($"{Spell.Day(i.Since)} at {Spell.Clock(i.At)} by {ReportParts.Who(depot, by)}")
            : T($"{Spell.Day(i.Since)}, in records older than this book"));
        yield return (T("Where"), T(i.Zone));
        yield return (T("What"), i.What);
        yield return (T("How bad"), Readiness.SeverityWords(i.Severity));
        yield return (T("Drivable"), i.Drivable ? T("yes, said whoever reported it") : T("no, said whoever reported it"));
        yield return (T("Told"), Incidents.ToldWords(i));
        yield return (T("Hold"), Hold(logged));
        yield return (T("Status"), IncidentLog.Words(logged.State));
        if (logged.ClosedOn is { } on)
            yield return (T("Closed"), T($"{Spell.Day(on)} by {ReportParts.Who(depot, logged.ClosedBy!.Value)}: {logged.Why}"));
    }

    private static string Hold(LoggedIncident logged) => logged switch
    {
        { State: not IncidentState.Open } => T("none"),
        { Incident.Holds: true } => T("it holds the van until a lead lifts the hold"),
        { Incident.Lifted: true } => T("a lead lifted the hold; the incident stays open"),
        _ => T("none"),
    };

    private static string State(LoggedIncident logged) => logged switch
    {
        { State: IncidentState.Closed } => Tones.Badge(Tone.Good, T("CLOSED")),
        { State: IncidentState.Withdrawn } => Tones.Badge(Tone.Quiet, T("WITHDRAWN")),
        { Incident.Holds: true } => Tones.Badge(Tone.Stop, T("HELD")),
        { State: IncidentState.Open } => Tones.Badge(Tone.Note, T("OPEN")),
        _ => throw new InvalidOperationException($"no such state: {logged.State}"),
    };
}
