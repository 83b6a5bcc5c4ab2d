using System.Text;

namespace Closeout.Words;

/// <summary>The bay wall as text of 80 columns, for print and for <c>wall</c>.</summary>
public static class WallText
{
    private const int Columns = 80;
    private const int MorningAt = 49;

    public static string Of(Tonight t)
    {
        var (depot, vans) = (t.Depot, t.Vans);
        var text = new StringBuilder();
        var head = T($"{depot.Setup.Depot.Name}   {Spell.Day(depot.Date)}   BAY WALL{(depot.Rehearsal ? T("   REHEARSAL") : "")}");
        Line(text, head.PadRight(Columns - 15) + WallWords.Closed(vans).PadLeft(15));
        Line(text, T("bay van            with  where it stands         morning"));
        foreach (var state in vans)
        {
            var left = $"{state.Van.Bay,3} {Name(state.Van).PadRight(14)} {(state.With?.Text ?? "-").PadRight(5)} "
                + $"{WallWords.Where(depot, state, null).PadRight(23)} ";
            Hanging(text, left, MorningAt, WallWords.Morning(state));
        }

        Line(text, "");
        foreach (var (word, sentence) in t.Totals)
            Hanging(text, word.PadRight(11), 11, sentence);

        return text.ToString();
    }

    private static string Name(Van van) => $"{van.Code} {van.Name}";

    private static void Hanging(StringBuilder text, string first, int indent, string sentence)
    {
        var begin = first;
        foreach (var line in Cells.Wrap(sentence, Columns - indent))
        {
            Line(text, begin + line);
            begin = new string(' ', indent);
        }
    }

    private static void Line(StringBuilder text, string line) => text.Append(Harmless.Line(line).TrimEnd()).Append('\n');
}
