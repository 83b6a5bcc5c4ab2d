using Closeout.Cardboard;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>The files that outsiders read, by name, and how they are written.</summary>
public static class Output
{
    /// <summary>Every file out, and how it is made from the depot and, where it looks back, from the archive.</summary>
    public static readonly IReadOnlyDictionary<string, Func<Depot, Archive, byte[]>> Files =
        new Dictionary<string, Func<Depot, Archive, byte[]>>
        {
            ["restock"] = (depot, _) => English(() => RestockCsv.Write(RestockPlan.For(depot))),
            ["shelf"] = (depot, _) => English(() => ShelfCsv.Write(RestockPlan.For(depot))),
            ["moves"] = (depot, _) => English(() => MovesCsv.Write(RestockPlan.For(depot))),
            ["cardboard"] = (depot, _) => English(() => CardboardCsv.Write(depot)),
            ["mileage"] = (depot, _) => English(() => MileageCsv.Write(depot)),
            ["wall"] = (depot, _) => English(() => WallCsv.Write(depot)),
            ["accuracy"] = (depot, _) => English(() => AccuracyCsv.Write(depot)),
            ["recycling-weeks"] = (depot, archive) => English(() => RecyclingCsv.Weeks(depot.Setup.Depot, Boxes(depot, archive))),
            ["recycling"] = (depot, archive) => English(() => RecyclingCsv.Totals(depot.Setup.Depot, Boxes(depot, archive))),
            ["waste"] = (depot, archive) => English(() => WasteCsv.Write(depot, archive.Streams(DateOnly.MinValue, depot.Date))),
            ["incidents"] = (depot, archive) =>
                English(() => IncidentsCsv.Write(archive.Incidents().Where(i => i.Incident.Since <= depot.Date))),
            ["mileage-log"] = (depot, archive) => English(() => MileageLogCsv.Write(depot, archive.Miles(DateOnly.MinValue, depot.Date))),
            ["kit"] = (depot, _) => English(() => KitCsv.Write(depot)),
        };

    /// <summary>The files that a rehearsal writes: the five of the contract first.</summary>
    public static readonly IReadOnlyList<string> Rehearsed =
        ["restock", "shelf", "cardboard", "mileage", "wall", "recycling-weeks", "waste", "incidents", "mileage-log", "kit", "moves"];

    /// <summary>Writes a file whole or not at all; <c>-</c> is standard output.</summary>
    /// <param name="option">The option that named the place.</param>
    /// <exception cref="BookException">It cannot be written.</exception>
    /// <exception cref="UsageException">It would be written into a book.</exception>
    public static int Write(string path, byte[] bytes, string option = "--out")
    {
        if (path == "-")
        {
            using var output = Console.OpenStandardOutput();
            output.Write(bytes);
            return ExitCode.Done;
        }

        return BookException.Telling(
            () =>
            {
                // A name that stands for another place stays one; a device or a pipe is no file that could be replaced.
                RefuseInBook(path, option);
                var place = RealPath.Of(path);
                if (File.Exists(place))
                    PlainFile.Refuse(place);

                Disk.WriteWhole(place, bytes, own: false);
                return ExitCode.Done;
            },
            e => T($"{path} cannot be written: {e.Message} Nothing was written there; name a folder that exists and is writable."));
    }

    /// <summary>Writes texts into a folder, which is made if it is not there. None is written when one would get into a book.</summary>
    public static int WriteAll(string folder, IReadOnlyList<(string Name, string Text)> files)
    {
        MakeFolder(folder);
        RefuseInBook(folder, files.Select(f => f.Name));
        return files.Select(f => Write(Path.Combine(folder, f.Name), System.Text.Encoding.UTF8.GetBytes(f.Text))).Max();
    }

    /// <summary>What a command writes never takes the place of a book's own, nor lies among it, whatever links lead there.</summary>
    /// <param name="option">The option that named the place.</param>
    /// <exception cref="UsageException">It would.</exception>
    public static void RefuseInBook(string path, string option = "--out") => Refuse(BookFolder.Around(path), path, option);

    private static void Refuse(string? book, string path, string option)
    {
        if (book is not null)
        {
            var allowed = T("Allowed is any place outside; only the program's own writing goes there.");
            throw new UsageException(T($"{option} is inside a book: found {path}, and {book} is one. {allowed}"));
        }
    }

    /// <summary>The same of files in a folder.</summary>
    public static void RefuseInBook(string folder, IEnumerable<string> names)
    {
        foreach (var name in names)
            RefuseInBook(Path.Combine(folder, name));
    }

    /// <summary>Makes a folder for files out.</summary>
    /// <exception cref="BookException">It cannot be made.</exception>
    /// <exception cref="UsageException">It would be one inside a book.</exception>
    public static void MakeFolder(string path) => BookException.Telling(
        () =>
        {
            Refuse(BookFolder.Around(Path.Combine(path, "file")), path, "--out");
            return Directory.CreateDirectory(RealPath.Of(path));
        },
        e => T($"{path} cannot be made: {e.Message} Name a folder that can be written."));

    private static IReadOnlyList<DatedBoxes> Boxes(Depot depot, Archive archive) => archive.Boxes(DateOnly.MinValue, depot.Date);
}
