using System.Diagnostics;
using System.Globalization;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Store;

namespace Closeout.Faults.Processes;

/// <summary>What a process of its own does: appends counts of one item of one van, timing each, or holds the lock.</summary>
internal static class Appending
{
    /// <summary>Says <c>ready</c>, waits for a line, appends, and says how long each took, in milliseconds.</summary>
    public static void Play(string book, string van, int times)
    {
        var desk = new Desk(Book.Open(new BookFolder(book)), TimeProvider.System);
        Tell(desk, new ComeIn(new(van), desk.Depot.Setup.Crew[0].Code));
        Console.WriteLine("ready");
        Console.ReadLine();
        var took = new List<double>(times);
        for (var n = 1; n <= times; n++)
        {
            var begun = Stopwatch.GetTimestamp();
            Tell(desk, new CountLeftover(new(van), desk.Depot.Setup.Items[0].Code, Sealed: null, Bin: 0, Kept: n, Installed: 0, Sure: true));
            took.Add(Stopwatch.GetElapsedTime(begun).TotalMilliseconds);
        }

        Console.WriteLine(string.Join(' ', took.Select(t => t.ToString("0.####", CultureInfo.InvariantCulture))));
    }

    /// <summary>Takes the lock, says <c>held</c>, and keeps it until a line comes.</summary>
    public static void Hold(string book)
    {
        using var held = BookLock.Take(new BookFolder(book).Lock);
        Console.WriteLine("held");
        Console.ReadLine();
    }

    private static void Tell(Desk desk, ICommand command)
    {
        if (desk.Record(command) is { } refusal)
        {
            throw new InvalidOperationException(refusal.Text);
        }
    }
}
