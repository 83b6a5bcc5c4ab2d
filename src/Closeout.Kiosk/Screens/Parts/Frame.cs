namespace Closeout.Screens.Parts;

/// <summary>What stands around every screen: the first line, and sentences to the person.</summary>
public static class Frame
{
    private const int Narrow = 100;

    /// <summary>
    /// The line on top: depot, date, what is shown, and the time. A depot's name is what gives way when it is long, then a
    /// van's in the title.
    /// </summary>
    /// <param name="counts">Words with their tones, before what stands at the right.</param>
    public static void Head(Sheet sheet, Depot depot, string title, string right, params IReadOnlyList<(string Word, Look Tone)> counts)
    {
        right = sheet.Known is not { } known ? right
            : T($"{known.Person} {known.Minutes} min") + (right.Length > 0 ? $"  {right}" : "");
        var rehearsal = depot.Rehearsal ? T(" REHEARSAL ") : "";
        var badges = counts.Sum(c => Cells.Count(c.Word) + 3);

        // Beside counts there may be no room for the year, and a depot's name says more.
        var date = $"   {(counts.Count > 0 && sheet.Width < Narrow ? Spell.ShortDay(depot.Date) : Spell.Day(depot.Date))}";
        var taken = Cells.Count(date) + rehearsal.Length + 2;
        var room = sheet.Width - 2 - taken - badges - (right.Length > 0 ? Cells.Count(right) + 2 : 0);
        var shown = Cells.Cut(title, room);
        var column = sheet.Write(0, 1, Cells.Cut(depot.Setup.Depot.Name, room - Cells.Count(shown)) + date + " ", Look.Strong);
        column = sheet.Write(0, column, rehearsal, Look.Note);
        sheet.Write(0, column + 1, shown, Look.Strong);
        column = sheet.Width - 1 - (right.Length > 0 ? Cells.Count(right) + 1 : 0) - badges;
        foreach (var (word, tone) in counts)
            column = sheet.Badge(0, column, word, tone) + 1;

        sheet.WriteRight(0, right, Look.Strong);
    }

    /// <summary>A word and a sentence, the sentence hanging beside it.</summary>
    public static IEnumerable<(string Word, string Text)> Hanging(IEnumerable<(string Word, string Sentence)> lines, int columns) =>
        lines.SelectMany(l => Cells.Wrap(l.Sentence, columns).Select((text, i) => (i == 0 ? l.Word : "", text)));

    /// <summary>A sentence to the person, above the keys and over whatever stands there.</summary>
    /// <param name="isDone">Whether it says that something was done.</param>
    public static void Say(Sheet sheet, string said, bool isDone)
    {
        if (said.Length == 0)
            return;

        var lines = Cells.Wrap(said, sheet.Width - 7);
        for (var i = 0; i < lines.Count; i++)
        {
            var row = sheet.Height - 2 - lines.Count + i;
            sheet.Write(row, 0, new string(' ', sheet.Width));
            sheet.Write(row, 5, lines[i], Look.Strong);
            if (i == 0)
                sheet.Badge(row, 0, isDone ? T("OK") : "!!", isDone ? Look.Good : Look.Stop);
        }
    }
}
