using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary>No command: the kiosk.</summary>
public static class KioskCommand
{
    /// <summary>How long a kiosk that is left waits for the day's backup to be finished.</summary>
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);

    public static int Run(BookFolder folder, DateOnly? date, TimeProvider clock, DailyBackup daily, Pins pins, bool noColor)
    {
        if (!KioskTerminal.IsThere)
        {
            return Say.Wrong(
                T("The kiosk needs a terminal, and there is none here. For an evening without one: closeout rehearse FOLDER --out DIR"),
                ExitCode.BadInput);
        }

        var book = Book.Open(folder, date);
        Language.OfDepot(book.Depot.Setup.Depot);
        if (book.Date != folder.Dates[^1])
        {
            return Say.Wrong(
                T(
                    $"The page of {book.Date:O} is closed: the open business date is {folder.Dates[^1]:O}. Leave --date away; to look "
                        + $"back use: closeout --date {book.Date:O} wall"),
                ExitCode.BadInput);
        }

        using var seats = new VanSeats(folder, T($"{Environment.MachineName}, program {Environment.ProcessId},"));
        KioskSession? session = null;
        var archive = new Archive(folder, new ArchiveProgress(clock, said => session!.Working(said)).Told);
        session = new KioskSession(new Desk(book, clock), archive, new Attachments(folder), seats, daily, pins);
        var code = KioskTerminal.Run(
            session,
            new Paint(
                Paint.Wanted(noColor, Environment.GetEnvironmentVariable("NO_COLOR"), Environment.GetEnvironmentVariable("TERM")),
                OperatingSystem.IsWindows() || Shapes.AreShown(
                    Environment.GetEnvironmentVariable("LC_ALL"), Environment.GetEnvironmentVariable("LC_CTYPE"),
                    Environment.GetEnvironmentVariable("LANG"))));
        daily.Finish(Patience);
        return code;
    }
}
