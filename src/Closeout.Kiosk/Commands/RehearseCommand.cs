using Closeout.Files;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Commands;

/// <summary><c>rehearse FOLDER --out DIR</c>: a whole evening on a fresh book, without a screen.</summary>
public static class RehearseCommand
{
    /// <param name="date">The date named on the command line; another than the folder's is refused.</param>
    /// <param name="book">The book named on the command line; null: DIR/book, replaced when it is a rehearsal's.</param>
    /// <param name="progress">Null: standard error's.</param>
    public static int Run(string folder, string outDir, string? book, DateOnly? date, bool final, Progress? progress = null)
    {
        using var shown = progress ?? Progress.Of(TimeProvider.System);
        var day = ReadingProgress.Read(shown, folder);
        var target = BookFolder.At(book ?? Path.Combine(outDir, "book"));
        if (LoadCommand.Given(day, date) is not { } given || Refuses(target, named: book is not null))
            return ExitCode.BadInput;

        Output.RefuseInBook(outDir, [.. Output.Rehearsed.Select(f => f + ".csv"), Path.Combine("morning", "morning.txt")]);
        Output.MakeFolder(outDir);
        return BookException.Telling(
            () =>
            {
                using var fresh = new RehearsedBook(target);
                return Play(day, given, fresh, target, outDir, final, shown);
            },
            e => T($"{outDir} cannot be written: {e.Message} Name a folder that is writable."));
    }

    private static int Play(
        DayFolder day, DayGiven given, RehearsedBook fresh, BookFolder target, string outDir, bool final, Progress shown)
    {
        Language.OfDepot(given.Setup.Depot);
        var clock = new AnswerClock(given.BusinessDate, given.Setup.Depot.ShiftEnd);
        shown.Tell(() => T("Writing the book."));
        var desk = new Desk(Book.New(fresh.Folder, given.FirstPage(rehearsal: true), clock.GetLocalNow()), clock);
        Say.NotKnown(desk.Depot);
        var faults = new Findings();
        var played = new Rehearsal(desk, new Attachments(fresh.Folder), clock).Play(Told(EveningAnswers.Of(day.Evening), shown));
        foreach (var fault in played.Take(CsvLimits.MostTold + 1))
            faults.Fault(fault.File, fault.Line, fault.Column, fault.Text);

        shown.Erase();
        if (faults.AreFaults)
            return Say.Faults(faults.Problems, T("the evening was not rehearsed and nothing was written."));

        if (final && Say.NotFinal(desk.Depot))
            return ExitCode.No;

        new Archive(fresh.Folder).CatchUp();
        Disk.WriteWhole(fresh.Folder.RehearsalMark, "A rehearsal's book: rehearse replaces it. Nobody stood at a van.\n"u8, own: true);
        fresh.Keep();
        foreach (var (done, name) in Output.Rehearsed.Index())
        {
            shown.Tell(() => T($"Writing {name}.csv, file {done + 1} of {Output.Rehearsed.Count}."));
            Output.Write(Path.Combine(outDir, name + ".csv"), Output.Files[name](desk.Depot, new Archive(target)));
        }

        shown.Erase();
        MorningCommand.Run(desk.Tonight, Path.Combine(outDir, "morning"));
        Console.Out.Write(WallText.Of(desk.Tonight));
        return ExitCode.Done;
    }

    private static IEnumerable<EveningAnswer> Told(IReadOnlyList<EveningAnswer> answers, Progress shown)
    {
        foreach (var (done, answer) in answers.Index())
        {
            shown.Tell(() => T($"Playing the evening: answer {done + 1} of {answers.Count}."));
            yield return answer;
        }
    }

    private static bool Refuses(BookFolder target, bool named)
    {
        Output.RefuseInBook(target.Path, named ? "--book" : "--out");
        if (!Path.Exists(target.Path) || (!named && File.Exists(target.RehearsalMark)))
            return false;

        Say.Wrong(named
            ? T($"The book {target.Path} exists, and a rehearsal needs a fresh one. Name another with --book, or leave --book away.")
            : T($"{target.Path} is not a rehearsal's book, so it is not replaced. Name another folder with --out."));
        return true;
    }
}
