using System.Globalization;
using System.Text;
using Terminal.Gui.Text;

namespace Closeout.Words;

/// <summary>
/// Text measured in the columns of a terminal, by graphemes: what one person sees as one character, one or two columns wide.
/// </summary>
public static class Cells
{
    /// <summary>Most of what is written is ASCII: its characters need not be made anew for each cell.</summary>
    private static readonly string[] Ascii = [.. Enumerable.Range(0, 128).Select(c => ((char)c).ToString())];

    /// <summary>Columns that a text takes, made harmless.</summary>
    public static int Count(string text) => Graphemes(Harmless.Line(text)).Sum(Width);

    /// <summary>Columns of one grapheme: at least 1.</summary>
    public static int Width(string grapheme) => grapheme.Length == 1 && char.IsAscii(grapheme[0]) ? 1 : Math.Max(1, grapheme.GetColumns());

    /// <summary>The text in at most so many columns: what is longer ends with an ellipsis.</summary>
    public static string Cut(string text, int columns)
    {
        if (Count(text) <= columns)
            return text;

        var (cut, left) = (new StringBuilder(), columns - 1);
        foreach (var grapheme in Graphemes(Harmless.Line(text)).TakeWhile(g => (left -= Count(g)) >= 0))
            cut.Append(grapheme);

        return columns > 0 ? cut.Append('…').ToString() : "";
    }

    /// <summary>
    /// The text in at most so many columns where its end decides: what is longer loses its middle, <c>LED lamp A19, 9 W…2700 K</c>.
    /// </summary>
    public static string Middle(string text, int columns)
    {
        const int End = 8;
        if (Count(text) <= columns || columns < 2 * End)
            return Cut(text, columns);

        var end = string.Concat(Graphemes(Harmless.Line(text)).TakeLast(End)).TrimStart(' ', ',');
        return Cut(text, columns - Count(end)) + end;
    }

    /// <summary>
    /// Breaks a sentence into lines of at most so many columns, between words; within one only where it is longer than a line.
    /// </summary>
    /// <param name="most">The rest of a longer text is left out.</param>
    public static IReadOnlyList<string> Wrap(string text, int columns, int most = int.MaxValue) => [.. Lines(text, columns).Take(most)];

    public static IEnumerable<string> Graphemes(string text)
    {
        for (var at = 0; at < text.Length;)
        {
            // An ASCII character before another, or at the end, stands alone; only CR LF, which no line holds, would not.
            var alone = char.IsAscii(text[at]) && (at + 1 == text.Length || char.IsAscii(text[at + 1])) && text[at] != '\r';
            var grapheme = alone ? Ascii[text[at]] : StringInfo.GetNextTextElement(text, at);
            yield return grapheme;
            at += grapheme.Length;
        }
    }

    private static IEnumerable<string> Lines(string text, int columns)
    {
        var (line, width) = ("", 0);
        foreach (var word in text.Split(' ').SelectMany(w => Pieces(w, columns)))
        {
            var own = word.GetColumns();
            if (line.Length > 0 && width + 1 + own > columns)
            {
                yield return line;
                line = "";
            }

            (line, width) = line.Length == 0 ? (word, own) : (line + " " + word, width + 1 + own);
        }

        yield return line;
    }

    private static IReadOnlyList<string> Pieces(string word, int columns)
    {
        if (columns < 2 || Count(word) <= columns)
            return [word];

        var pieces = new List<string> { "" };
        foreach (var grapheme in Graphemes(word))
        {
            if (Count(pieces[^1]) + Count(grapheme) > columns)
                pieces.Add("");

            pieces[^1] += grapheme;
        }

        return pieces;
    }
}
