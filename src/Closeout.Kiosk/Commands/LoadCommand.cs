using Closeout.Files;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Commands;

/// <summary><c>load FOLDER</c>: sets up a book, or brings it up to a day folder; all or nothing.</summary>
public static class LoadCommand
{
    /// <param name="daily">The day's backup, made when a page is opened.</param>
    /// <param name="progress">Null: standard error's.</param>
    public static int Run(
        string folder, BookFolder target, DateOnly? date, TimeProvider clock, DailyBackup daily, Pins pins, Progress? progress = null)
    {
        using var shown = progress ?? Progress.Of(clock);
        if (Given(ReadingProgress.Read(shown, folder), date) is not { } given)
            return ExitCode.BadInput;

        Language.OfDepot(given.Setup.Depot);
        if (!target.HasPages)
        {
            shown.Tell(() => T("Writing the book."));
            var fresh = Book.New(target, given.FirstPage(rehearsal: false), clock.GetLocalNow());
            shown.Erase();
            var (vans, items) = (given.Setup.Vans.Count, given.Setup.Items.Count);
            Say.Done(
                T(
                    $"Set up {given.Setup.Depot.Name} for {given.BusinessDate:O}: {Spell.Count(vans, T("van"), T("vans"))}, "
                        + $"{Spell.Count(items, T("item"), T("items"))}."));
            FirstPinCommand.AtSetUp(fresh, pins, clock);
            Say.NotKnown(fresh.Depot);
            return Opened(target, daily, clock);
        }

        var book = Book.Open(target);
        var kept = Loading.KeepSpelling(book.Depot, given);
        var faults = Loading.Faults(book.Depot, kept).ToList();
        if (faults.Count > 0)
            return Say.Faults([.. faults.Select(f => new Problem(f.File, 1, 1, f.Text))], T("nothing was loaded."));

        var before = book.Date;
        if (book.Record(new LoadFolder(kept).Decide, clock.GetLocalNow()) is { } refusal)
            return Say.Wrong(refusal.Text, ExitCode.NoBook);

        Say.NotKnown(book.Depot);
        if (book.Date > before)
        {
            Say.Done(
                T(
                    $"Opened {book.Date:O}: balances, odometers, holds and what was left open on {before:O} are carried forward. "
                        + $"stock.csv was not read again."));
            return Opened(target, daily, clock);
        }

        var only = T("stock.csv was not read again: stock changes by counts and deliveries only.");
        Say.Done(T($"Updated {kept.Setup.Depot.Name} for {book.Date:O}. {only}"));
        ArchiveCommand.Of(target, clock).CatchUp();
        return ExitCode.Done;
    }

    /// <summary>What a day folder gives; null: it has faults, and they were told.</summary>
    /// <param name="date">As named on the command line. One that is not the folder's is a slip that would go into the wrong day.</param>
    /// <exception cref="UsageException">It is such a one.</exception>
    public static DayGiven? Given(DayFolder day, DateOnly? date)
    {
        Say.Notes(day.Findings);
        if (day.Given is not { } given)
        {
            Say.Faults(day.Findings.Problems, T("nothing was loaded."));
            return null;
        }

        return date is null || date == given.BusinessDate
            ? given
            : throw new UsageException(
                T(
                    $"--date is not the folder's: found {date:O}, and depot.csv says business_date {given.BusinessDate:O}. Leave --date "
                        + $"away, or name that date."));
    }

    private static int Opened(BookFolder target, DailyBackup daily, TimeProvider clock)
    {
        daily.Begin();
        try
        {
            ArchiveCommand.Of(target, clock).CatchUp();
            return ExitCode.Done;
        }
        finally
        {
            // Also where the archive cannot be brought up: the day's backup would end with the program.
            daily.Finish(Timeout.InfiniteTimeSpan);
            if (daily.Failure() is { Length: > 0 } failure)
                Say.Wrong(failure);
        }
    }
}
