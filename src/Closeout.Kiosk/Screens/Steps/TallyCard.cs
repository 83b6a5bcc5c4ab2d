using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>The growing slip at the side of the close-out: what has been confirmed so far, in the order in which it was.</summary>
public static class TallyCard
{
    /// <summary>Lines that one key scrolls.</summary>
    public const int Page = 10;

    /// <summary>Columns and lines of the card at 80 x 24.</summary>
    private const int LeastInside = 28;
    private const int LeastRoom = 14;

    /// <summary>Whether the card is longer than the smallest screen shows.</summary>
    public static bool IsLong(Depot depot, Shift shift) => Wrapped(depot, shift, LeastInside).Count > LeastRoom;

    public static void Draw(Sheet sheet, int column, int bottom, Depot depot, Shift shift, int up = 0)
    {
        var inside = sheet.Width - column - 4;
        if (inside < 12 || bottom < 7)
        {
            // No room for a card; the question goes before it.
            return;
        }

        var edge = new string('─', inside + 2);
        sheet.Write(2, column, $"┌{edge}┐");
        for (var row = 3; row < bottom; row++)
        {
            sheet.Write(row, column, "│");
            sheet.Write(row, column + inside + 3, "│");
        }

        sheet.Write(bottom, column, $"└{edge}┘");
        sheet.Write(3, column + 2, T("TALLY CARD"), Look.Strong);
        var van = $"{shift.Van} {depot.Setup.Van(shift.Van).Name}";
        sheet.Write(3, column + 2 + Math.Max(11, inside - van.Length), van, Look.Strong, Math.Min(inside - 11, van.Length));

        var boxes = shift.Expected.Sum(e => e.Boxes);
        var foot = shift.Answered.Contains(Step.Cardboard)
            ? T($"boxes flattened {shift.Expected.Sum(e => shift.FlattenedOf(e.Item))} of {boxes}")
            : T($"boxes to flatten {boxes,4}");
        sheet.Write(bottom - 1, column + 2, foot, Look.Strong, inside);
        var lines = Wrapped(depot, shift, inside);
        var room = bottom - 1 - 5;

        // Beyond its beginning the card starts again at its end: one key shows all of it.
        var pages = Math.Max(1, (int)Math.Ceiling((lines.Count - room) / (double)Page) + 1);
        var top = Math.Max(0, lines.Count - room - (up / Page % pages * Page));
        List<string> shown = [.. lines.Skip(top).Take(room)];
        if (top > 0)
            shown[0] = T($"... {top + 1} lines above");

        if (top + room < lines.Count)
            shown[^1] = T($"... {lines.Count - top - room + 1} lines below");

        foreach (var (i, line) in shown.Index())
            sheet.Write(4 + i, column + 2, line, Look.Plain, inside);
    }

    private static List<string> Wrapped(Depot depot, Shift shift, int inside) =>
        [.. Lines(depot, shift).SelectMany(l => Cells.Wrap(l.Text, inside - l.Indent).Select(w => new string(' ', l.Indent) + w))];

    /// <summary>The slip line by line. What was answered twice stands where it was answered last.</summary>
    public static IEnumerable<(int Indent, string Text)> Lines(Depot depot, Shift shift) => shift.Story.Index()
        .Where(e => e.Item.Entry is VanEntry and not VanCameIn)
        .GroupBy(e => Subject((VanEntry)e.Item.Entry))
        .Select(g => g.Last())
        .OrderBy(e => e.Index)
        .SelectMany(e => Told(depot, shift, (VanEntry)e.Item.Entry))
        .Prepend((0, T($"in at {Spell.Clock(shift.CameInAt)} with {shift.Technician}")));

    private static IEnumerable<(int, string)> Told(Depot depot, Shift shift, VanEntry entry) => entry is PhotoAttached photo
        ? [(0, T($"photo {photo.Name}"))]
        : StepPages.All.Select(p => p.Tally(depot, shift, entry)).FirstOrDefault(t => t is not null)
            ?? throw new InvalidOperationException($"no step tells {entry.GetType().Name} on the card");

    /// <summary>What an entry is about: of two with the same, the later tells.</summary>
    private static object Subject(VanEntry entry) => entry is PhotoAttached
        ? entry
        : (entry.GetType(), StepPages.All.Select(p => p.Subject(entry)).FirstOrDefault(s => s is not null));
}
