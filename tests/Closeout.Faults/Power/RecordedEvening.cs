using System.Globalization;
using Closeout.Faults.Machine;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using Closeout.Turning;

namespace Closeout.Faults.Power;

/// <summary>
/// The evening that is recorded: a book is set up, vans are closed out by keys, the archive is asked in between, a day folder
/// is loaded, a writer breaks off in the middle of a line, the next business date is opened, and it goes on. After each
/// thing that is confirmed it says <c>ack</c> and the number of the last entry.
/// </summary>
internal static class RecordedEvening
{
    public static void Play(string parent, int seed, int answers)
    {
        var folder = new BookFolder(Path.Combine(parent, "book"));
        Say(Books.New(folder).Depot.Number);
        Type(folder, new Random(seed), answers);
        BreakOff(folder);
        Type(folder, new Random(seed + 1), answers);
        var book = Book.Open(folder);
        if (book.Record(d => Books.Day.Loaded(d), TimeProvider.System.GetLocalNow()) is { } refusal)
        {
            throw new InvalidOperationException(refusal.Text);
        }

        Say(book.Depot.Number);
        book.Record(d => NextPage.After(d, d.Date.AddDays(1)), TimeProvider.System.GetLocalNow());
        Say(book.Depot.Number);
        Type(folder, new Random(seed + 2), answers);
    }

    private static void Type(BookFolder folder, Random random, int answers)
    {
        var kiosk = new KioskSession(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder), new Attachments(folder));
        var typist = new Typist(random);
        for (var given = 0; given < answers && !typist.IsDone(kiosk.Desk.Depot); given++)
        {
            foreach (var key in Keystroke.Parse(given % 15 == 14 && kiosk.Model.Screen is WallScreen ? "{F3}{Escape}" : typist.Next(kiosk)))
            {
                var before = kiosk.Desk.Depot.Number;
                kiosk.Press(key);
                if (kiosk.Desk.Depot.Number > before)
                {
                    Say(kiosk.Desk.Depot.Number);
                }
            }

            if (given % 25 == 24)
            {
                new Archive(folder).CatchUp();
            }
        }
    }

    /// <summary>Another program begins a line and is gone: never confirmed, and set aside by the next writer.</summary>
    private static void BreakOff(BookFolder folder)
    {
        using var page = new FileStream(folder.Page(folder.Dates[^1]), FileMode.Append, FileAccess.Write, FileShare.ReadWrite);
        page.Write("{\"n\":99,\"at\":\"2026-"u8);
    }

    private static void Say(int number)
    {
        Console.Out.Write(string.Create(CultureInfo.InvariantCulture, $"ack {number}\n"));
        Console.Out.Flush();
    }
}
