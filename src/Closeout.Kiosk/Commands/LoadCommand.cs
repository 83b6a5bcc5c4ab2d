using Closeout.DayBook;
using Closeout.Files;
using Closeout.Rules;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Commands;

/// <summary><c>load FOLDER</c>: sets up a book, or brings it up to a day folder; all or nothing.</summary>
public static class LoadCommand
{
    /// <param name="daily">The day's backup, made when a page is opened.</param>
    public static int Run(string folder, BookFolder target, DateOnly? date, TimeProvider clock, DailyBackup daily, Pins pins)
    {
        var day = DayFolder.Read(folder);
        Output.Notes(day.Findings);
        if (day.Given is not { } given)
        {
            return Output.Faults(day.Findings.Problems, "nothing was loaded.");
        }

        Output.RefuseOtherDate(date, given);
        if (!target.HasPages)
        {
            var fresh = Book.OpenPage(target, null, given.FirstPage(rehearsal: false), clock.GetLocalNow());
            Say.Done($"Set up {given.Setup.Depot.Name} for {given.BusinessDate:O}: {given.Setup.Vans.Count} vans, {given.Setup.Items.Count} items.");
            FirstPinCommand.AtSetUp(fresh, pins, clock);
            return Opened(target, daily, clock);
        }

        var book = Book.Open(target);
        var kept = Loading.KeepSpelling(book.Depot, given);
        var faults = Loading.Faults(book.Depot, kept).ToList();
        if (faults.Count > 0)
        {
            return Output.Faults(faults.Select(f => new Problem(f.File, 1, 1, f.Text)), "nothing was loaded.");
        }

        if (given.BusinessDate > book.Date)
        {
            Book.OpenPage(target, book, Loading.NextPageWith(book.Depot, kept), clock.GetLocalNow());
            Say.Done($"Opened {given.BusinessDate:O}: balances, odometers, holds and what was left open on {book.Depot.Date:O} are carried forward. stock.csv was not read again.");
            return Opened(target, daily, clock);
        }

        // Others may have written meanwhile: the rules are asked once more on what they wrote.
        Decision Decide(Depot depot) => Loading.Faults(depot, kept).Any()
            ? new Refusal("book-moved-on", "The book changed while the folder was read. Load it again.")
            : kept.Loaded();
        if (book.Record(Decide, clock.GetLocalNow()) is { } refusal)
        {
            Say.Wrong(refusal.Text);
            return ExitCode.NoBook;
        }

        Say.Done($"Updated {kept.Setup.Depot.Name} for {book.Date:O}. stock.csv was not read again: stock changes by counts and deliveries only.");
        return CaughtUp(target, clock);
    }

    private static int Opened(BookFolder target, DailyBackup daily, TimeProvider clock)
    {
        daily.Begin();
        try
        {
            return CaughtUp(target, clock);
        }
        finally
        {
            // Also where the archive cannot be brought up: the day's backup would end with the program.
            daily.Finish(Timeout.InfiniteTimeSpan);
            if (daily.Failure() is { Length: > 0 } failure)
            {
                Say.Wrong(failure);
            }
        }
    }

    private static int CaughtUp(BookFolder target, TimeProvider clock)
    {
        ArchiveCommand.Of(target, clock).CatchUp();
        return ExitCode.Done;
    }
}
