using System.Text.RegularExpressions;
using Closeout.Faults.Machine;
using Closeout.Screens;
using Closeout.Store;

namespace Closeout.Faults.Kill;

/// <summary>
/// The kiosk as it should be: the same keys on a copy of the book, in this process. When the terminal shows what it
/// shows, the person has seen the screen move on, and all that it recorded by then is acknowledged.
/// </summary>
/// <param name="other">A van that another program works on; the lines that name it are not compared.</param>
internal sealed partial class Shadow(BookFolder copy, string? other)
{
    private readonly List<(string Screen, int Entries)> moments = [];

    public KioskSession Kiosk { get; } = new(new Desk(Book.Open(copy), TimeProvider.System), new Archive(copy), new Attachments(copy));

    /// <summary>All entries that the keys so far come to.</summary>
    public List<string> Entries => Books.Entries(copy);

    /// <summary>Presses keys, and remembers each screen on the way.</summary>
    public void Press(IEnumerable<Keystroke> keys)
    {
        moments.Clear();
        Remember();
        PressOn(keys);
    }

    /// <summary>Presses more keys that are typed with the last ones.</summary>
    public void PressOn(IEnumerable<Keystroke> keys)
    {
        foreach (var key in keys)
        {
            Kiosk.Press(key);
            Remember();
        }
    }

    /// <summary>Says of what is on a terminal whether it is what this kiosk shows now.</summary>
    public Func<string, bool> IsShown()
    {
        var shown = Comparable(Kiosk.Show(80, 24).ToString());
        return seen => Comparable(seen) == shown;
    }

    /// <summary>How many entries a person who sees this must take for recorded; null: the screen is none of those since the last keys.</summary>
    public int? Acknowledged(string seen)
    {
        var shown = moments.Where(m => m.Screen == Comparable(seen)).Select(m => (int?)m.Entries);
        return shown.Min();
    }

    private void Remember() => moments.Add((Comparable(Kiosk.Show(80, 24).ToString()), Kiosk.Desk.Depot.Number));

    /// <summary>A screen without the times of day and the other van's lines.</summary>
    private string Comparable(string screen) => string.Join('\n', TimePattern().Replace(screen.ReplaceLineEndings("\n"), "--:--").Split('\n')
        .Select(l => l.TrimEnd())
        .Where(l => other is null || !l.Contains(other, StringComparison.Ordinal))).TrimEnd();

    [GeneratedRegex("[0-9]{2}:[0-9]{2}")]
    private static partial Regex TimePattern();
}
