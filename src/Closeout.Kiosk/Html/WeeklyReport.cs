using System.Globalization;
using Closeout.Cardboard;
using Closeout.Files;
using Closeout.Vans;

namespace Closeout.Html;

/// <summary>
/// One van's ISO week: its days, its weekly check, what was damaged, what it lacks and what is due, with the week's photos.
/// </summary>
public static class WeeklyReport
{
    private static string Heads =>
        HtmlPage.Heads(T("Day"), T("With"), T("Close-out")) + HtmlPage.NumberHeads(T("Odometer"), T("Driven"), T("Fuel"),
            T("Boxes")) + HtmlPage.Heads(T("Gaps"));

    /// <param name="days">The book's days of the week, oldest first, as each ended; at least one.</param>
    /// <param name="read">Gives the bytes of a photo.</param>
    /// <returns>The page, and sentences about photos that the book has lost.</returns>
    public static (string Html, IReadOnlyList<string> Faults) Of(IReadOnlyList<Depot> days, Van van, Func<string, byte[]> read)
    {
        var depot = days[^1];
        var (name, week) = (depot.Setup.Depot.Name, IsoWeek.Name(depot.Date));
        var page = new HtmlPage(T($"{name}, {van.Code} in {week}"), ReportParts.Style, $"\n{Tones.Head}");
        var (tone, word) = WallPage.Morning(Readiness.Of(depot, van));
        page.Add($"<section>\n<h1><b>{HtmlPage.Safe(van.Code.Text)}</b> {HtmlPage.Safe(T($"{van.Name}, bay {van.Bay}"))} "
            + $"{Tones.Badge(tone, word)}{Tones.Rehearsal(depot)}</h1>");
        page.Paragraph(T($"{name}: week {week} up to {Spell.Day(depot.Date)}. {ReportParts.Caution}"));
        Days(page, days, van);
        Section(page, T("Weekly check"), Check(days, van));
        Section(page, T("Holds and notes"), [.. Standing(depot, van)]);
        Section(page, T("Incidents of the week, and those still open"), [.. OfWeek(days, van)]);
        Section(page, T("Kit to bring or buy"),
            [.. KitCheck.MissingOf(depot, van.Code).Select(m => (T("Missing"), $"{m.Missing} {m.Piece.Description}")),
                .. VanWords.ToBuy(depot, van).Select(b => (T("Buy"), b))]);
        Section(page, T("Due"), [.. VanWords.WhatIsDue(depot, van).Select(d => (T("Due"), d))]);
        page.Add(ReportParts.Sign(T("Looked at by, date"), T("Lead, date")));
        var photos = days.SelectMany(d => d.Shift(van.Code)?.Photos ?? []).ToList();
        if (photos.Count > 0)
            page.Heading(T("Photos of the week"));

        var faults = PagePhotos.Add(page, photos, read);
        page.Add("</section>");
        return (page.End(), faults);
    }

    private static void Section(HtmlPage page, string title, IReadOnlyList<(string Word, string Sentence)> rows)
    {
        page.Heading(title);
        if (rows.Count == 0)
            page.Paragraph(T("none"));
        else
            page.Table("", rows.Select(ReportParts.Row));
    }

    private static void Days(HtmlPage page, IReadOnlyList<Depot> days, Van van)
    {
        var units = days[^1].Setup.Units;
        page.Add("<div class=\"wide\">");
        page.Table(Heads, days.Where(d => d.Setup.Find(van.Code) is not null).Select(d => Day(d, van, units)));
        page.Add("</div>");
        var read = days.Select(d => d.Shift(van.Code)?.Mileage).OfType<MileageLogged>().ToList();
        var fuel = read.Sum(m => m.FuelGal ?? 0);
        page.Paragraph(T($"Driven in the week: {units.Distance(read.Sum(m => m.DistanceMi))}; fuel: "
            + $"{(fuel == 0 ? T("none") : $"{units.Fuel(fuel)} {units.FuelUnit}")}."));
    }

    private static string Day(Depot day, Van van, UnitSystem units)
    {
        var shift = day.Shift(van.Code);
        var rows = CardboardTotals.Rows(day, van.Code).ToList();
        var gaps = Readiness.Gaps(shift).Select(g => string.Create(CultureInfo.InvariantCulture, $"{g.Item} {g.Gap}"));
        string[] words =
        [
            Spell.Day(day.Date), shift is null ? "" : ReportParts.Who(day, shift.Technician),
            WallWords.Where(day, Readiness.Of(day, van), null),
        ];
        string[] numbers =
        [
            shift?.Mileage is { } read ? units.Distance(read.EndMi) : "",
            shift?.Mileage is { } driven ? units.Distance(driven.DistanceMi) : "",
            shift?.Mileage?.FuelGal is { } gal ? $"{units.Fuel(gal)} {units.FuelUnit}" : "",
            rows.Count == 0 ? "" : T($"{rows.Sum(r => r.Flattened)} of {rows.Sum(r => r.Expected)}"),
        ];
        return string.Concat(words.Select(w => $"<td>{HtmlPage.Safe(w)}</td>"))
            + string.Concat(numbers.Select(n => $"<td class=\"n\">{HtmlPage.Safe(n)}</td>"))
            + $"<td>{HtmlPage.Safe(string.Join(", ", gaps))}</td>";
    }

    private static IReadOnlyList<(string Word, string Sentence)> Check(IReadOnlyList<Depot> days, Van van)
    {
        var on = days.LastOrDefault(d => d.Shift(van.Code)?.Weekly is not null);
        if (on?.Shift(van.Code) is not { Weekly: { } check } shift)
        {
            var last = Readiness.WeeklyCheckedOn(days[^1], van.Code);
            return [(T("Done"), last is null ? T("none in this book") : T($"not this week; last {last:O}"))];
        }

        return
        [
            (T("Done"), T($"{Spell.Day(on.Date)} by {ReportParts.Who(on, shift.Technician)}")),
            (T("Not in order"), check.NotInOrder.Count == 0 ? T("nothing, as looked at") : string.Join(", ", check.NotInOrder.Select(T))),
            (T("Oil change"), check.OilChangedOn is { } oil ? T($"{oil:O}, as the sticker says") : T("not read")),
            (T("Clean"), check.Clean ? T("yes") : T("no, to be cleaned")),
            (T("Photos"), check.Photos.ToString(CultureInfo.InvariantCulture)),
        ];
    }

    private static IEnumerable<(string Word, string Sentence)> Standing(Depot depot, Van van) =>
        Readiness.Standing(depot, van.Code).Select(h => (T("HELD"), T($"{h.Said}, since {h.Since:O}")))
            .Concat(Readiness.Of(depot, van).Notes.Select(n => (T("Watch"), n)));

    /// <summary>Each as the last day of the week tells it.</summary>
    private static IEnumerable<(string Word, string Sentence)> OfWeek(IReadOnlyList<Depot> days, Van van) =>
        from logged in days.SelectMany(IncidentLog.Of).Where(l => l.Van == van.Code).GroupBy(l => l.Incident.Number).Select(g => g.Last())
        orderby logged.Incident.Number
        select (IncidentLog.Words(logged.State), T($"{Incidents.Words(logged.Incident)}, since {logged.Incident.Since:O}; ")
            + Incidents.ToldWords(logged.Incident));
}
