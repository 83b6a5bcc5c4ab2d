using Closeout.Files;
using Closeout.Screens;
using Closeout.Store;

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

        Output.MakeFolder(outDir);
        var fresh = new BookFolder($"{target.Path}.{Guid.NewGuid():N}");
        var old = new BookFolder($"{fresh.Path}.old");
        try
        {
            var clock = Rehearsal.Clock(given.BusinessDate, given.Setup.Depot.ShiftEnd);
            var desk = new Desk(Book.OpenPage(fresh, null, given.FirstPage(rehearsal: true), clock.GetLocalNow()), clock);
            var faults = Rehearsal.Play(desk, new Attachments(fresh), EveningAnswers.Of(day.Evening)).ToList();
            if (faults.Count > 0)
            {
                return Output.Faults(faults, "the evening was not rehearsed and nothing was written.");
            }

            if (final && Output.RefusesFinal(desk.Depot))
            {
                return ExitCode.No;
            }

            new Archive(fresh).CatchUp();
            Disk.WriteWhole(fresh.RehearsalMark, "A rehearsal's book: rehearse replaces it. Nobody stood at a van.\n"u8, own: true);

            // Out of the way first, and removed afterwards: a book half removed has perhaps lost its mark already, and is no rehearsal's any more.
            if (Directory.Exists(target.Path))
            {
                Directory.Move(target.Path, old.Path);
            }

            Directory.Move(fresh.Path, target.Path);
            foreach (var name in Output.Rehearsed)
            {
                Output.Write(Path.Combine(outDir, name + ".csv"), Output.Files[name](desk.Depot, new Archive(target)));
            }

            MorningCommand.Run(desk.Depot, Path.Combine(outDir, "morning"));
            Console.Out.Write(WallText.Of(desk.Depot, desk.Plan));
            return ExitCode.Done;
        }
        catch (IOException e)
        {
            throw new BookException($"{outDir} cannot be written: {e.Message} Name a folder that is writable.", e);
        }
        finally
        {
            Remove(fresh);
            Remove(old);
        }
    }

    private static bool Refuses(BookFolder target, bool named)
    {
        if (!Directory.Exists(target.Path) && !File.Exists(target.Path))
        {
            return false;
        }

        if (named)
        {
            Console.Error.WriteLine($"The book {target.Path} exists, and a rehearsal needs a fresh one. Name another with --book, or leave --book away.");
            return true;
        }

        if (File.Exists(target.RehearsalMark))
        {
            return false;
        }

        Console.Error.WriteLine($"{target.Path} is not a rehearsal's book, so it is not replaced. Name another folder with --out.");
        return true;
    }

    private static void Remove(BookFolder folder)
    {
        if (Directory.Exists(folder.Path))
        {
            Directory.Delete(folder.Path, recursive: true);
        }
    }
}
