using System.CommandLine;
using System.Text;
using Closeout.Html;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>The commands that write pages for a browser or a printer.</summary>
public sealed partial class CommandLine
{
    /// <summary>Files out that are charts too, and how the page is made.</summary>
    private static readonly IReadOnlyDictionary<string, Func<Depot, Archive, string>> Paged =
        new Dictionary<string, Func<Depot, Archive, string>>
        {
            ["recycling"] = (depot, archive) => RecyclingPage.Html(depot, archive.Boxes(DateOnly.MinValue, depot.Date)),
            ["accuracy"] = (depot, _) => AccuracyPage.Html(new(depot)),
        };

    private void AddPages()
    {
        var html = new Option<string?>("--html")
        {
            Description = T("Write it as a page into this file; - is standard output."), HelpName = "FILE",
        };
        var every = new Option<int?>("--every")
        {
            Description = T($"Write it anew so often until the program is ended, {WallCommand.LeastSeconds} to {WallCommand.MostSeconds}."),
            HelpName = "SECONDS",
        };
        Add(new("wall", T("Prints the bay wall, or writes it as a page for a big display or a phone.")) { html, every, final },
            p => (Path(p, html), p.GetValue(every), p.GetValue(final)) switch
            {
                (null, null, var last) => Wall(DepotOf(p), last, depot => Console.Out.Write(WallText.Of(new(depot)))),
                ({ } file, null, var last) => Wall(DepotOf(p), last, depot => WallCommand.Once(depot, file, clock)),
                ({ } file, { } seconds, false) when DateOf(p) is null => WallCommand.Every(FolderOf(p), file, seconds, clock),
                (null, _, _) => throw new UsageException(T("--every needs --html: found nothing, allowed the name of a file.")),
                _ => throw new UsageException(T("--every shows tonight until it is ended. Leave --date and --final away.")),
            });
        AddCharts(html);
        var dir = Out("DIR", T("The folder for the pages."));
        Add(new("stow", T("Writes a stow card for every van: what lies where, low and high, with a picture of the places.")) { dir },
            p => PagesCommand.Stow(DepotOf(p), Path(p, dir)!));
        Add(new("incident", T("Writes a report for every incident, with the photos of its evening.")) { dir },
            p => PagesCommand.Incidents(FolderOf(p), DateOf(p), Path(p, dir)!, clock));
        Add(new("weekly", T("Writes a report of the week for every van, with its photos.")) { dir },
            p => PagesCommand.Weekly(FolderOf(p), DateOf(p), Path(p, dir)!));
        Add(new("labels", T("Writes labels to print for carton boxes, bins, shelf places, vans and badges.")) { dir },
            p => PagesCommand.Labels(DepotOf(p), Path(p, dir)!));
    }

    /// <summary>A file, a page of charts, or both.</summary>
    private void AddCharts(Option<string?> html)
    {
        foreach (var (name, page) in Paged)
        {
            var file = Out("FILE", T("The file to write; - is standard output."), required: false);
            Add(new(name, T($"Writes {name}.csv, or a page of charts with the same numbers.")) { file, html, final }, p =>
            {
                var (csv, charts) = (Path(p, file), Path(p, html));
                if (csv is null && charts is null)
                    throw new UsageException(T($"{name} needs --out or --html: found nothing, allowed the name of a file."));

                var depot = DepotOf(p);
                if (p.GetValue(final) && Say.NotFinal(depot))
                    return ExitCode.No;

                var archive = ArchiveCommand.Of(FolderOf(p), clock);
                return Math.Max(
                    csv is null ? ExitCode.Done : Output.Write(csv, Output.Files[name](depot, archive)),
                    charts is null ? ExitCode.Done : Output.Write(charts, Encoding.UTF8.GetBytes(page(depot, archive)), html.Name));
            });
        }
    }

    private static int Wall(Depot depot, bool last, Action<Depot> write)
    {
        write(depot);
        return last && Say.NotFinal(depot) ? ExitCode.No : ExitCode.Done;
    }
}
