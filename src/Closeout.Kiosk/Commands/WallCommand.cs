using System.Runtime.InteropServices;
using System.Text;
using Closeout.Html;
using Closeout.Store;

namespace Closeout.Commands;

/// <summary><c>wall --html FILE</c>: the bay wall as a page, once, or again and again until the program is ended.</summary>
public static class WallCommand
{
    public const int LeastSeconds = 2;
    public const int MostSeconds = 3600;

    private const string Option = "--html";

    /// <summary>Writes it once.</summary>
    public static int Once(Depot depot, string file, TimeProvider clock) => Write(file, new(depot), new(clock.GetLocalNow()));

    /// <summary>Writes it until a signal ends the program; the last one says that it has ended.</summary>
    /// <exception cref="UsageException">The seconds are out of bounds, or the place is no file.</exception>
    public static int Every(BookFolder folder, string file, int seconds, TimeProvider clock)
    {
        using var ended = new ManualResetEventSlim();
        using var interrupted = PosixSignalRegistration.Create(PosixSignal.SIGINT, End);
        using var terminated = PosixSignalRegistration.Create(PosixSignal.SIGTERM, End);
        using var hungUp = PosixSignalRegistration.Create(PosixSignal.SIGHUP, End);
        return Every(folder, file, seconds, clock, time => !ended.Wait(time));

        void End(PosixSignalContext context)
        {
            context.Cancel = true;
            ended.Set();
        }
    }

    /// <param name="goesOn">Waits so long; false: it is ended.</param>
    public static int Every(BookFolder folder, string file, int seconds, TimeProvider clock, Func<TimeSpan, bool> goesOn)
    {
        if (seconds is < LeastSeconds or > MostSeconds)
            throw new UsageException(T($"--every is out of bounds: found {seconds}, allowed {LeastSeconds} to {MostSeconds} seconds."));

        if (file == "-")
            throw new UsageException(T("--every writes a file again and again: found -, allowed the name of a file."));

        Output.RefuseInBook(file, Option);
        var book = Book.Open(folder);
        Language.OfDepot(book.Depot.Setup.Depot);
        var t = new Tonight(book.Depot);
        var told = "";
        do
        {
            // A place or a book that is away for a while, as on a network, comes back.
            var fault = Trying(() =>
            {
                if (book.Refresh())
                    t = new(book.Depot);

                Write(file, t, new(clock.GetLocalNow(), seconds));
            });
            if (fault.Length > 0 && fault != told)
                Say.Wrong(T($"{fault} It is tried again every {seconds} s."));

            told = fault;
        }
        while (goesOn(TimeSpan.FromSeconds(seconds)));

        var last = Trying(() => Write(file, t, new(clock.GetLocalNow(), seconds, Ended: true)));
        return last.Length == 0 ? ExitCode.Done : Say.Wrong(last, ExitCode.NoBook);
    }

    /// <returns>Why it could not be done; empty: it was.</returns>
    private static string Trying(Action act)
    {
        try
        {
            act();
            return "";
        }
        catch (BookException e)
        {
            return e.Message;
        }
    }

    private static int Write(string file, Tonight t, WallMoment moment) =>
        Output.Write(file, Encoding.UTF8.GetBytes(WallPage.Html(t, moment)), Option);
}
