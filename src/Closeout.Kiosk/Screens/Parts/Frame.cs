namespace Closeout.Screens.Parts;

/// <summary>What stands around every screen: the first line, and sentences to the person.</summary>
public static class Frame
{
    /// <summary>
    /// The line on top: depot, date, what is shown, and the time. A depot's name is what gives way when it is long, then a
    /// van's in the title.
    /// </summary>
    public static void Head(Sheet sheet, Depot depot, string title, string right)
    {
        var when = $"   {Spell.Day(depot.Date)}{(depot.Rehearsal ? "  REHEARSAL" : "")}  ";
        var room = sheet.Width - 2 - Cells.Count(when) - (right.Length > 0 ? Cells.Count(right) + 2 : 0);
        var shown = Cells.Cut(title, room);
        sheet.Write(0, 1, Cells.Cut(depot.Setup.Depot.Name, room - Cells.Count(shown)) + when + shown, Look.Strong);
        sheet.WriteRight(0, right, Look.Strong);
    }

    /// <summary>A word and a sentence, the sentence hanging beside it.</summary>
    public static IEnumerable<(string Word, string Text)> Hanging(IEnumerable<(string Word, string Sentence)> lines, int columns) =>
        lines.SelectMany(l => Cells.Wrap(l.Sentence, columns).Select((text, i) => (i == 0 ? l.Word : "", text)));

    /// <summary>A sentence to the person, above the keys and over whatever stands there.</summary>
    public static void Say(Sheet sheet, string said)
    {
        if (said.Length == 0)
            return;

        var lines = Cells.Wrap(said, sheet.Width - 6);
        for (var i = 0; i < lines.Count; i++)
        {
            var row = sheet.Height - 2 - lines.Count + i;
            sheet.Write(row, 0, new string(' ', sheet.Width));
            sheet.Write(row, 1, (i == 0 ? "!! " : "   ") + lines[i], Look.Strong);
        }
    }
}
