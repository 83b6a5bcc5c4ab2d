using System.Text;
using Closeout.Html;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>
/// The commands that write a page for each of something into a folder: <c>stow</c>, <c>incident</c>, <c>weekly</c>, <c>labels</c>.
/// </summary>
public static class PagesCommand
{
    /// <summary>A stow card for every van.</summary>
    public static int Stow(Depot depot, string outDir) => Write(
        outDir, (T("stow card"), T("stow cards")),
        [.. depot.Setup.Vans.Select(v => ($"stow-{v.Code}.html", Sound(() => StowCard.Html(depot, v))))]);

    /// <summary>A sheet of labels for each kind of thing.</summary>
    public static int Labels(Depot depot, string outDir) => Write(
        outDir, (T("sheet of labels"), T("sheets of labels")),
        [
            .. Html.Labels.Sheets.Select(s => (
                $"labels-{s.Name}.html", Sound(() => Html.Labels.Html(depot, s.Name, s.Labels(depot.Setup))))),
        ]);

    /// <summary>A report for every incident that was reported by the date, whatever has become of it.</summary>
    public static int Incidents(BookFolder folder, DateOnly? date, string outDir, TimeProvider clock)
    {
        var depot = Book.Open(folder, date).Depot;
        Language.OfDepot(depot.Setup.Depot);
        var archive = ArchiveCommand.Of(folder, clock);
        var photos = archive.Photos().ToLookup(p => (p.Date, p.Photo.Van), p => p.Photo);
        var attachments = new Attachments(folder);
        return Write(outDir, (T("incident report"), T("incident reports")),
        [
            .. archive.Incidents().Where(i => i.Incident.Since <= depot.Date).Select(i => (
                $"incident-{i.Incident.Number}.html",
                (Func<(string, IReadOnlyList<string>)>)(() =>
                    IncidentReport.Of(depot, i, [.. photos[(i.Incident.Since, i.Van)]], attachments.Read)))),
        ]);
    }

    /// <summary>A report of the date's ISO week for every van.</summary>
    public static int Weekly(BookFolder folder, DateOnly? date, string outDir)
    {
        var last = Book.Open(folder, date).Depot;
        Language.OfDepot(last.Setup.Depot);
        List<Depot> days =
        [
            .. folder.Dates.Where(d => d >= IsoWeek.Monday(last.Date) && d < last.Date).Select(d => Book.Open(folder, d).Depot), last,
        ];
        var attachments = new Attachments(folder);
        return Write(outDir, (T("weekly report"), T("weekly reports")),
            [
                .. last.Setup.Vans.Select(v => (
                    $"weekly-{v.Code}.html", (Func<(string, IReadOnlyList<string>)>)(() => WeeklyReport.Of(days, v, attachments.Read)))),
            ]);
    }

    /// <summary>Each page is made when it is written: photos of many need not be in memory at once.</summary>
    /// <returns>1: all are written, and the book has lost photos, which is told.</returns>
    private static int Write(
        string folder, (string One, string Many) what,
        IReadOnlyList<(string Name, Func<(string Html, IReadOnlyList<string> Faults)> Make)> pages)
    {
        Output.MakeFolder(folder);
        Output.RefuseInBook(folder, pages.Select(p => p.Name));
        var code = ExitCode.Done;
        foreach (var (name, make) in pages)
        {
            var (html, faults) = make();
            Output.Write(System.IO.Path.Combine(folder, name), Encoding.UTF8.GetBytes(html));
            foreach (var fault in faults)
                code = Say.Wrong($"{name}: {fault}");
        }

        Say.Done(T($"{Say.Count(pages.Count, what.One, what.Many)} written."));
        return code;
    }

    private static Func<(string, IReadOnlyList<string>)> Sound(Func<string> html) => () => (html(), []);
}
