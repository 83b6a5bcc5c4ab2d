using Closeout.Faults.Machine;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Faults.Full;

/// <summary>Something that must not come of a full disk.</summary>
internal sealed class FullException(string message) : Exception(message);

/// <summary>Two vans' close-outs by keys, once undisturbed, and then again and again with the disk full before one of the writes.</summary>
internal sealed class FullEvening
{
    private static readonly string[] Vans = ["B3", "B4"];

    private readonly int seed;
    private readonly string fresh;
    private readonly List<string> asked;
    private readonly List<int> lengths;

    /// <param name="folder">Where the undisturbed book goes.</param>
    public FullEvening(string folder, int seed)
    {
        (this.seed, fresh) = (seed, folder + "-fresh");
        Books.New(new BookFolder(fresh));
        Books.Copy(fresh, folder);
        var book = new BookFolder(folder);
        Play(Session(book), _ => { });
        asked = Books.Entries(book);
        lengths = [.. File.ReadLines(book.Page(book.Dates[^1])).Skip(1).Select(l => System.Text.Encoding.UTF8.GetByteCount(l) + 1)];
    }

    /// <summary>Entries written at the kiosk.</summary>
    public int Writes => lengths.Count;

    /// <summary>Bytes of the line of a write.</summary>
    public int Length(int write) => lengths[write];

    /// <returns>How many keys could not be recorded.</returns>
    public int Disturbed(BookFolder folder, IRoom room, int write, int spare)
    {
        Books.Copy(fresh, folder.Path);
        var (kiosk, failed, full) = (Session(folder), 0, false);
        var page = folder.Page(folder.Dates[^1]);
        Play(kiosk, key =>
        {
            if (kiosk.Desk.Depot.Number > write && !full && failed == 0)
            {
                room.Take(page, spare);
                full = true;
                AskArchive(folder);
            }

            if (!full || !IsNotRecorded(kiosk))
            {
                return;
            }

            failed++;
            Refused(kiosk, folder, key);
            room.Give();
            full = false;
            kiosk.Press(key);
            if (IsNotRecorded(kiosk))
            {
                throw new FullException($"there is room again, and it says: {kiosk.Model.Said}");
            }
        });
        room.Give();
        if (Books.WhyNotGood(folder) is { } bad)
        {
            throw new FullException(bad);
        }

        return !Books.Entries(folder).SequenceEqual(asked)
            ? throw new FullException($"LOST or doubled: the book has {Books.Entries(folder).Count} entries, the undisturbed one {asked.Count}")
            : failed;
    }

    /// <summary>While the disk is full: the screen says it, nothing acknowledged is gone, another try says the same.</summary>
    private static void Refused(KioskSession kiosk, BookFolder folder, Keystroke key)
    {
        for (var times = 0; times < 2; times++)
        {
            if (!kiosk.Show(80, 24).ToString().Contains("NOT recorded", StringComparison.Ordinal))
            {
                throw new FullException($"the screen does not say that it is not recorded: {kiosk.Model.Said}");
            }

            var again = Book.Open(folder);
            if (again.Depot.Number != kiosk.Desk.Depot.Number)
            {
                throw new FullException($"LOST or doubled: the screen knows {kiosk.Desk.Depot.Number} entries, the book opens with {again.Depot.Number}");
            }

            kiosk.Press(key);
        }
    }

    /// <summary>The archive may not do without room; it must say so as the book does.</summary>
    private static void AskArchive(BookFolder folder)
    {
        try
        {
            new Archive(folder).CatchUp();
        }
        catch (BookException)
        {
            // Said, as it should be.
        }
    }

    private void Play(KioskSession kiosk, Action<Keystroke> pressed)
    {
        var typist = new Typist(new Random(seed), Vans);
        while (!typist.IsDone(kiosk.Desk.Depot))
        {
            foreach (var key in Keystroke.Parse(typist.Next(kiosk)))
            {
                kiosk.Press(key);
                pressed(key);
            }
        }
    }

    private static bool IsNotRecorded(KioskSession kiosk) => kiosk.Model.Said.Contains("NOT recorded", StringComparison.Ordinal);

    private static KioskSession Session(BookFolder folder) => new(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder), new Attachments(folder));
}
