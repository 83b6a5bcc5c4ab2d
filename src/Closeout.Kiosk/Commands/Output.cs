using Closeout.DayBook;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Store;
using Closeout.Turning;
using Closeout.Words;

namespace Closeout.Commands;

/// <summary>The files that outsiders read, by name.</summary>
public static class Output
{
    /// <summary>Every file out, and how it is made from the depot and, where it looks back, from the archive.</summary>
    public static readonly IReadOnlyDictionary<string, Func<Depot, Archive, byte[]>> Files = new Dictionary<string, Func<Depot, Archive, byte[]>>
    {
        ["restock"] = (depot, _) => RestockCsv.Write(RestockPlan.For(depot)),
        ["shelf"] = (depot, _) => ShelfCsv.Write(RestockPlan.For(depot)),
        ["cardboard"] = (depot, _) => CardboardCsv.Write(depot),
        ["mileage"] = (depot, _) => MileageCsv.Write(depot),
        ["wall"] = (depot, _) => WallCsv.Write(depot),
        ["accuracy"] = (depot, _) => AccuracyCsv.Write(depot),
        ["recycling-weeks"] = (depot, archive) => RecyclingCsv.Weeks(depot.Setup.Depot, archive.Boxes(DateOnly.MinValue, depot.Date)),
        ["recycling"] = (depot, archive) => RecyclingCsv.Totals(depot.Setup.Depot, archive.Boxes(DateOnly.MinValue, depot.Date)),
        ["waste"] = (depot, archive) => WasteCsv.Write(depot, archive.Streams(DateOnly.MinValue, depot.Date)),
        ["incidents"] = (depot, archive) => IncidentsCsv.Write(archive.Incidents().Where(i => i.Incident.Since <= depot.Date)),
        ["mileage-log"] = (depot, archive) => MileageLogCsv.Write(depot, archive.Miles(DateOnly.MinValue, depot.Date)),
        ["kit"] = (depot, _) => KitCsv.Write(depot),
    };

    /// <summary>The files that a rehearsal writes: the five of the contract first.</summary>
    public static readonly IReadOnlyList<string> Rehearsed =
        ["restock", "shelf", "cardboard", "mileage", "wall", "recycling-weeks", "waste", "incidents", "mileage-log", "kit"];

    /// <summary>Writes a file whole or not at all; <c>-</c> is standard output.</summary>
    /// <exception cref="BookException">It cannot be written.</exception>
    public static void Write(string path, byte[] bytes)
    {
        if (path == "-")
        {
            using var output = Console.OpenStandardOutput();
            output.Write(bytes);
            return;
        }

        try
        {
            // A name that stands for another place stays one; a device or a pipe is no file that could be replaced.
            RefuseInBook(path);
            var place = RealPath.Of(path);
            if (File.Exists(place))
            {
                PlainFile.Refuse(place);
            }

            Disk.WriteWhole(place, bytes, own: false);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{path} cannot be written: {e.Message} Nothing was written there; name a folder that exists and is writable.", e);
        }
    }

    /// <summary>What a command writes never takes the place of a book's own, nor lies among it, whatever links lead there.</summary>
    /// <param name="option">The option that named the place.</param>
    /// <exception cref="UsageException">It would.</exception>
    public static void RefuseInBook(string path, string option = "--out")
    {
        if (BookFolder.Around(path) is { } book)
        {
            throw new UsageException($"{option} is inside a book: found {path}, and {book} is one. Allowed is any place outside; only the program's own writing goes there.");
        }
    }

    /// <summary>Makes a folder for files out.</summary>
    /// <exception cref="BookException">It cannot be made.</exception>
    public static void MakeFolder(string path)
    {
        try
        {
            RefuseInBook(Path.Combine(path, "file"));
            Directory.CreateDirectory(RealPath.Of(path));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{path} cannot be made: {e.Message} Name a folder that can be written.", e);
        }
    }

    /// <summary>Mostly standard output that cannot take more; whatever else the system refuses, it is no fault of ours to be told as one.</summary>
    public static int CannotSay(Exception e)
    {
        Say.Wrong($"This could not be read or written: {e.Message} Free some room or name another place, then run it again.");
        return ExitCode.NoBook;
    }

    /// <summary>Every fault on a line of its own, and what became of it.</summary>
    public static int Faults(IEnumerable<Problem> problems, string became)
    {
        var count = 0;
        foreach (var problem in problems)
        {
            Say.Wrong(problem.ToString());
            count++;
        }

        Say.Wrong($"{count} {(count == 1 ? "fault" : "faults")}; {became}");
        return ExitCode.BadInput;
    }

    /// <summary>A date on the command line that is not the folder's is a slip that would go into the wrong day.</summary>
    public static void RefuseOtherDate(DateOnly? date, DayGiven given)
    {
        if (date is { } named && named != given.BusinessDate)
        {
            throw new UsageException($"--date is not the folder's: found {named:O}, and depot.csv says business_date {given.BusinessDate:O}. Leave --date away, or name that date.");
        }
    }

    public static void Notes(Findings findings)
    {
        foreach (var note in findings.Notes)
        {
            Say.Wrong($"note: {note}");
        }
    }

    /// <summary>Under --final: a van that is not closed is named, and nothing is written.</summary>
    public static bool RefusesFinal(Depot depot)
    {
        var open = depot.Setup.Vans.Where(v => !depot.IsDone(v.Code)).ToList();
        foreach (var van in open)
        {
            Say.Wrong($"{van.Code} {van.Name} is not closed: {(depot.Shift(van.Code) is { } shift ? $"it is at {StepWords.Name(shift.Step)}" : "it is on the road")}. Close it out, or leave --final away.");
        }

        return open.Count > 0;
    }
}
