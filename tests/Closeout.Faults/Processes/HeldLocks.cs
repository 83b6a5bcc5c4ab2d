using System.Diagnostics;
using Closeout.Faults.Machine;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using Closeout.Tests;

namespace Closeout.Faults.Processes;

/// <summary>A process that is stopped or killed while it holds the lock, in the middle of an append or just sitting there.</summary>
public static class HeldLocks
{
    /// <summary>What a refusal may take beyond the patience, on a busy machine.</summary>
    private static readonly TimeSpan Slack = TimeSpan.FromSeconds(3);

    /// <param name="first">Rounds go through sitting and killed, in an append and killed, sitting and continued, in an append and continued.</param>
    public static Figure Run(int rounds, int seed, int first = 0)
    {
        var (faults, random, refused, freed, resumed) = (new FaultList(), new Random(seed), new List<double>(), new List<double>(), 0);
        for (var round = first; round < first + rounds; round++)
        {
            using var temp = new TempFolder();
            var folder = new BookFolder(temp["book"]);
            Books.New(folder);
            using var holder = round % 2 == 0 ? Sitting(folder) : InAnAppend(folder, random);
            try
            {
                var kiosk = new KioskSession(new Desk(Book.Open(folder), TimeProvider.System), new Archive(folder), new Attachments(folder));
                Press(kiosk, "B3{Enter}T07");
                var before = kiosk.Desk.Depot.Number;
                refused.Add(Timed(() => Press(kiosk, "{Enter}")));
                if (kiosk.Desk.Depot.Number != before || !Shown(kiosk).Contains($"{folder.Path} is in use: another program has held it for 5 seconds. Nothing was recorded", StringComparison.Ordinal) || refused[^1] > (BookLock.Patience + Slack).TotalMilliseconds)
                {
                    faults.Add($"round {round}: while the lock was held, after {refused[^1]:0} ms: {kiosk.Model.Said}");
                }

                // Every other pair of rounds it goes on by itself, else it is killed.
                var kill = round % 4 < 2;
                LetGo(holder, kill, faults, round);
                freed.Add(Timed(() => Press(kiosk, "{Enter}")));
                resumed += kill ? 0 : 1;
                if (kiosk.Model.Screen is not CloseoutScreen)
                {
                    faults.Add($"round {round}: the lock was freed, and after {freed[^1]:0} ms: {kiosk.Model.Said}");
                }

                holder.Kill();
                holder.WaitForExit();
                if (Books.WhyNotGood(folder) is { } bad)
                {
                    faults.Add($"round {round}: NOT OPENABLE {bad}");
                }
            }
            finally
            {
                holder.Kill();
                holder.WaitForExit();
            }
        }

        return Figure.Of(
            "locks", faults.All,
            $"{rounds} locks held by a stopped process; the kiosk refused after {refused.Min():0} to {refused.Max():0} ms and said so; {resumed} continued, {rounds - resumed} killed, and the next answer was taken within {freed.Max():0} ms (median {Numbers.Median(freed):0.0}); faults {faults.All.Count}",
            ("rounds", rounds), ("freed", freed.Max()), ("refused", refused.Max()));
    }

    private static void LetGo(Process holder, bool kill, FaultList faults, int round)
    {
        if (kill)
        {
            Signals.Kill(holder.Id);
            holder.WaitForExit();
            return;
        }

        Signals.Continue(holder);
        holder.StandardInput.WriteLine();
        if (holder.HasExited && holder.ExitCode != 0)
        {
            faults.Add($"round {round}: the one that was stopped failed afterwards: {holder.StandardError.ReadToEnd()}");
        }
    }

    private static Process Sitting(BookFolder folder)
    {
        var holder = Child.Part("hold", folder.Path);
        holder.StandardOutput.ReadLine();
        Signals.Stop(holder);
        return holder;
    }

    /// <summary>Stopped at random moments until one of them lies within the lock.</summary>
    private static Process InAnAppend(BookFolder folder, Random random)
    {
        var holder = Child.Part("append", folder.Path, "B1", "9000");
        holder.StandardOutput.ReadLine();
        holder.StandardInput.WriteLine();
        while (true)
        {
            Thread.Sleep(random.Next(1, 20));
            Signals.Stop(holder);
            if (IsHeld(folder))
            {
                return holder;
            }

            Signals.Continue(holder);
        }
    }

    private static bool IsHeld(BookFolder folder)
    {
        try
        {
            using var free = new FileStream(folder.Lock, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None);
            return false;
        }
        catch (IOException)
        {
            return true;
        }
    }

    /// <summary>The screen in one line, as a person reads a sentence that is broken over several.</summary>
    private static string Shown(KioskSession kiosk) => string.Join(' ', kiosk.Show(120, 40).ToString().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    private static double Timed(Action action)
    {
        var begun = Stopwatch.GetTimestamp();
        action();
        return Stopwatch.GetElapsedTime(begun).TotalMilliseconds;
    }

    private static void Press(KioskSession kiosk, string keys)
    {
        foreach (var key in Keystroke.Parse(keys))
        {
            kiosk.Press(key);
        }
    }
}
