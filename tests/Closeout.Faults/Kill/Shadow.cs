using System.Text.RegularExpressions;
using Closeout.Faults.Machine;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Faults.Kill;

/// <summary>
/// The kiosk as it should be: the same keys on a copy of the book, in this process. When the terminal shows what it
/// shows, the person has seen the screen move on, and all that it recorded by then is acknowledged.
/// </summary>
/// <param name="other">A van that another program works on; the lines that name it are not compared.</param>
internal sealed partial class Shadow(BookFolder copy, string? other)
{
    /// <summary>How a line of the wall's totals begins that goes on with the one above.</summary>
    private const string Continued = "            ";

    /// <summary>Totals of the depot, which the other van's entries change without naming it.</summary>
    private static readonly string[] Totals = [" Tomorrow ", " Cardboard ", " Gaps "];

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

    /// <summary>A screen without the times of day and without what the other van's entries change: sentences may wrap over several lines.</summary>
    private string Comparable(string screen)
    {
        var sentences = new List<string>();
        foreach (var line in TimePattern().Replace(screen.ReplaceLineEndings("\n"), "--:--").Split('\n').Select(l => l.TrimEnd()))
        {
            if (other is not null && sentences.Count > 0 && line.StartsWith(Continued, StringComparison.Ordinal))
            {
                sentences[^1] += "\n" + line;
            }
            else
            {
                sentences.Add(line);
            }
        }

        // Empty lines fill the wall up: the more the other van's entries say there, the fewer they are.
        return string.Join('\n', sentences.Where(s => other is null || (s.Length > 0 && !IsOthers(s)))).TrimEnd();
    }

    private bool IsOthers(string sentence) =>
        sentence.Contains(other!, StringComparison.Ordinal) || Totals.Any(t => sentence.StartsWith(t, StringComparison.Ordinal));

    [GeneratedRegex("[0-9]{2}:[0-9]{2}")]
    private static partial Regex TimePattern();
}
