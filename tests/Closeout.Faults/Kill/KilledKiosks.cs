using System.Diagnostics;
using Closeout.Faults.Machine;
using Closeout.Screens.Parts;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Kill;

/// <summary>
/// Evenings at the real kiosk, killed (SIGKILL) at a random moment of each round and started again on the same book.
/// Acknowledged is what the screen moved on from.
/// </summary>
public static class KilledKiosks
{
    private const string Other = "B6";
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <param name="withWriter">Whether a second program writes to the book all the while.</param>
    public static Figure Run(int rounds, int seed, bool withWriter)
    {
        using var temp = new TempFolder();
        var (faults, random, tally) = (new FaultList(), new Random(seed), new Tally());
        BookFolder? book = null;
        for (var round = 0; round < rounds; round++)
        {
            var typist = new Typist(new Random(Numbers.Mix(seed, round)), withWriter ? ["B1", "B2", "B3", "B4", "B5"] : null);
            if (book is null || typist.IsDone(Book.Open(book).Depot))
            {
                book = new BookFolder(temp[$"book-{round}"]);
                Books.New(book);
                tally.Evenings++;
            }

            try
            {
                Round(book, new BookFolder(temp[$"shadow-{round}"]), typist, random, withWriter, tally, faults, round);
            }
            catch (TimeoutException e)
            {
                faults.Add($"round {round}: {e.Message}");
                book = null;
            }
        }

        var text = withWriter ? "kill (kiosk, with a second writer)" : "kill (kiosk)";
        return Figure.Of(
            text, faults.All,
            $"{rounds} kills over {tally.Evenings} evenings, {tally.Answers} answers typed, {tally.Acknowledged} entries acknowledged{(withWriter ? $" and {tally.Others} of the other program" : "")}; acknowledged and lost {faults.All.Count(f => f.Contains("LOST"))}, wrong or doubled {faults.All.Count(f => f.Contains("WRONG"))}, not openable {faults.All.Count(f => f.Contains("NOT OPENABLE"))}; killed before the first screen {tally.AtStart}, with an entry on disk that nobody had seen {tally.Unseen}",
            ("rounds", rounds), ("answers", tally.Answers), ("acknowledged", tally.Acknowledged), ("others", tally.Others), ("unseen", tally.Unseen));
    }

    private static void Round(BookFolder book, BookFolder copy, Typist typist, Random random, bool withWriter, Tally tally, FaultList faults, int round)
    {
        var before = Books.Entries(book);
        Books.Copy(book.Path, copy.Path);
        var shadow = new Shadow(copy, withWriter ? Other : null);
        using var writer = withWriter ? new SecondWriter(book, Other) : null;
        writer?.AwaitFirst();
        int acknowledged;
        using (var terminal = new KioskInTerminal(book.Path))
        {
            acknowledged = TypeUntilKilled(terminal, shadow, typist, random, tally);
        }

        writer?.Kill();
        if (Books.WhyNotGood(book) is { } bad)
        {
            faults.Add($"round {round}: NOT OPENABLE {bad}");
            throw new TimeoutException("the book is given up");
        }

        var (mine, others) = SecondWriter.Apart(Books.Entries(book), withWriter ? Other : null);
        var (asked, _) = SecondWriter.Apart(shadow.Entries, withWriter ? Other : null);
        var (had, _) = SecondWriter.Apart(before, withWriter ? Other : null);
        tally.Acknowledged += acknowledged - before.Count;
        tally.Unseen += mine.Count - had.Count > acknowledged - before.Count ? 1 : 0;
        if (Books.WhyNotKept(mine, asked, had.Count + acknowledged - before.Count) is { } gone)
        {
            faults.Add($"round {round}: {gone}");
        }

        tally.Others += writer?.Said ?? 0;
        if (writer?.WhyNotKept(others) is { } theirs)
        {
            faults.Add($"round {round}: {theirs}");
        }

        Directory.Delete(copy.Path, recursive: true);
    }

    /// <returns>How many entries of the shadow's book were acknowledged.</returns>
    private static int TypeUntilKilled(KioskInTerminal terminal, Shadow shadow, Typist typist, Random random, Tally tally)
    {
        var acknowledged = shadow.Kiosk.Desk.Depot.Number;
        if (random.Next(12) == 0)
        {
            Pause(random, 600);
            terminal.Kill();
            tally.AtStart++;
            return acknowledged;
        }

        Await(terminal, shadow);
        for (var left = random.Next(1, 12); left > 0 && !typist.IsDone(shadow.Kiosk.Desk.Depot); left--)
        {
            var keys = Keystroke.Parse(typist.Next(shadow.Kiosk)).ToList();
            shadow.Press(keys);

            // The last answers are typed at once, as by a scanner, and the kiosk dies somewhere among them.
            for (var more = left == 1 ? random.Next(3) : 0; more > 0 && !typist.IsDone(shadow.Kiosk.Desk.Depot); more--)
            {
                var next = Keystroke.Parse(typist.Next(shadow.Kiosk)).ToList();
                keys.AddRange(next);
                tally.Answers++;
                shadow.PressOn(next);
            }

            tally.Answers++;
            terminal.Type(TerminalKeys.Of(keys));
            if (left > 1)
            {
                Await(terminal, shadow);
                acknowledged = shadow.Kiosk.Desk.Depot.Number;
            }
        }

        Pause(random, 120);
        terminal.Kill();
        return shadow.Acknowledged(terminal.Seen) ?? acknowledged;
    }

    private static void Await(KioskInTerminal terminal, Shadow shadow)
    {
        if (!terminal.Await(shadow.IsShown(), Patience))
        {
            throw new TimeoutException($"the screen did not move on to\n{shadow.Kiosk.Show(80, 24)}\nbut stands at\n{terminal.Seen}");
        }
    }

    /// <summary>A moment, to the microsecond.</summary>
    private static void Pause(Random random, int mostMilliseconds)
    {
        var until = TimeSpan.FromMilliseconds(random.NextDouble() * mostMilliseconds);
        var waited = Stopwatch.StartNew();
        while (waited.Elapsed < until)
        {
            Thread.Sleep(until - waited.Elapsed > TimeSpan.FromMilliseconds(2) ? 1 : 0);
        }
    }

    private sealed class Tally
    {
        public int Evenings { get; set; }

        public int Answers { get; set; }

        public int Acknowledged { get; set; }

        public int Others { get; set; }

        public int AtStart { get; set; }

        public int Unseen { get; set; }
    }
}
