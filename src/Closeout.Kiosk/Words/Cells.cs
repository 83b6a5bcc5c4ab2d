using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace Closeout.Words;

/// <summary>Text measured in the columns of a terminal, by graphemes: what one person sees as one character, one or two columns wide.</summary>
public static class Cells
{
    /// <summary>Columns that a text takes, made harmless.</summary>
    public static int Count(string text) => Graphemes(Harmless.Line(text)).Sum(Width);

    /// <summary>Columns of one grapheme: at least 1.</summary>
    public static int Width(string grapheme) => Math.Max(1, grapheme.GetColumns());

    /// <summary>The text in at most so many columns: what is longer ends with an ellipsis.</summary>
    public static string Cut(string text, int columns)
    {
        if (Count(text) <= columns)
        {
            return text;
        }

        var (cut, left) = (new StringBuilder(), columns - 1);
        foreach (var grapheme in Graphemes(Harmless.Line(text)).TakeWhile(g => (left -= Count(g)) >= 0))
        {
            cut.Append(grapheme);
        }

        return columns > 0 ? cut.Append('…').ToString() : "";
    }

    /// <summary>Breaks a sentence into lines of at most so many columns, between words; within one only where it is longer than a line.</summary>
    public static IReadOnlyList<string> Wrap(string text, int columns)
    {
        var lines = new List<string>();
        var line = "";
        foreach (var word in text.Split(' ').SelectMany(w => Pieces(w, columns)))
        {
            if (line.Length > 0 && line.GetColumns() + 1 + word.GetColumns() > columns)
            {
                lines.Add(line);
                line = "";
            }

            line = line.Length == 0 ? word : line + " " + word;
        }

        lines.Add(line);
        return lines;
    }

    public static IEnumerable<string> Graphemes(string text)
    {
        var graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            yield return graphemes.GetTextElement();
        }
    }

    private static IReadOnlyList<string> Pieces(string word, int columns)
    {
        if (columns < 2 || Count(word) <= columns)
        {
            return [word];
        }

        var pieces = new List<string> { "" };
        foreach (var grapheme in Graphemes(word))
        {
            if (Count(pieces[^1]) + Count(grapheme) > columns)
            {
                pieces.Add("");
            }

            pieces[^1] += grapheme;
        }

        return pieces;
    }
}
