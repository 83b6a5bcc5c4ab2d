using Closeout.Files;
using Closeout.Screens;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Commands;

/// <summary><c>rehearse FOLDER --out DIR</c>: a whole evening on a fresh book, without a screen.</summary>
public static class RehearseCommand
{
    /// <param name="date">The date named on the command line; another than the folder's is refused.</param>
    /// <param name="book">The book named on the command line; null: DIR/book, replaced when it is a rehearsal's.</param>
    public static int Run(string folder, string outDir, string? book, DateOnly? date, bool final)
    {
        var day = DayFolder.Read(folder);
        Output.Notes(day.Findings);
        if (day.Given is not { } given)
        {
            return Output.Faults(day.Findings.Problems, "nothing was loaded.");
        }

        Output.RefuseOtherDate(date, given);
        var target = BookFolder.At(book ?? Path.Combine(outDir, "book"));
        if (Refuses(target, named: book is not null))
        {
            return ExitCode.BadInput;
        }

        foreach (var name in Output.Rehearsed.Select(f => f + ".csv").Append(Path.Combine("morning", "morning.txt")))
        {
            Output.RefuseInBook(Path.Combine(outDir, name));
        }

        Output.MakeFolder(outDir);
        try
        {
            using var fresh = new RehearsedBook(target);
            return Play(day, given, fresh, target, outDir, final);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"{outDir} cannot be written: {e.Message} Name a folder that is writable.", e);
        }
    }

    private static int Play(DayFolder day, DayGiven given, RehearsedBook fresh, BookFolder target, string outDir, bool final)
    {
        var clock = Rehearsal.Clock(given.BusinessDate, given.Setup.Depot.ShiftEnd);
        var desk = new Desk(Book.OpenPage(fresh.Folder, null, given.FirstPage(rehearsal: true), clock.GetLocalNow()), clock);
        var faults = new Findings();
        foreach (var fault in Rehearsal.Play(desk, new Attachments(fresh.Folder), EveningAnswers.Of(day.Evening)).Take(CsvLimits.MostTold + 1))
        {
            faults.Fault(fault.File, fault.Line, fault.Column, fault.Text);
        }

        if (faults.AreFaults)
        {
            return Output.Faults(faults.Problems, "the evening was not rehearsed and nothing was written.");
        }

        if (final && Output.RefusesFinal(desk.Depot))
        {
            return ExitCode.No;
        }

        new Archive(fresh.Folder).CatchUp();
        Disk.WriteWhole(fresh.Folder.RehearsalMark, "A rehearsal's book: rehearse replaces it. Nobody stood at a van.\n"u8, own: true);
        fresh.Keep();
        foreach (var name in Output.Rehearsed)
        {
            Output.Write(Path.Combine(outDir, name + ".csv"), Output.Files[name](desk.Depot, new Archive(target)));
        }

        MorningCommand.Run(desk.Depot, Path.Combine(outDir, "morning"));
        Console.Out.Write(WallText.Of(desk.Depot, desk.Plan));
        return ExitCode.Done;
    }

    private static bool Refuses(BookFolder target, bool named)
    {
        Output.RefuseInBook(target.Path, named ? "--book" : "--out");
        if (!Directory.Exists(target.Path) && !File.Exists(target.Path))
        {
            return false;
        }

        if (named)
        {
            Say.Wrong($"The book {target.Path} exists, and a rehearsal needs a fresh one. Name another with --book, or leave --book away.");
            return true;
        }

        if (File.Exists(target.RehearsalMark))
        {
            return false;
        }

        Say.Wrong($"{target.Path} is not a rehearsal's book, so it is not replaced. Name another folder with --out.");
        return true;
    }
}
