using Closeout.Screens;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>No command: the kiosk.</summary>
public static class KioskCommand
{
    /// <summary>How long a kiosk that is left waits for the day's backup to be finished.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    public static int Run(BookFolder folder, DateOnly? date, TimeProvider clock, DailyBackup daily, Pins pins)
    {
        if (!KioskTerminal.IsThere)
        {
            Console.Error.WriteLine("The kiosk needs a terminal, and there is none here. For an evening without one: closeout rehearse FOLDER --out DIR");
            return ExitCode.BadInput;
        }

        var book = Book.Open(folder, date);
        if (book.Date != folder.Dates[^1])
        {
            Console.Error.WriteLine($"The page of {book.Date:yyyy-MM-dd} is closed: the open business date is {folder.Dates[^1]:yyyy-MM-dd}. Leave --date away; to look back use: closeout --date {book.Date:yyyy-MM-dd} wall");
            return ExitCode.BadInput;
        }

        using var seats = new VanSeats(folder, $"{Environment.MachineName}, program {Environment.ProcessId},");
        var code = KioskTerminal.Run(new KioskSession(new Desk(book, clock), new Archive(folder), new Attachments(folder), seats, daily, pins));
        daily.Finish(Patience);
        return code;
    }
}
