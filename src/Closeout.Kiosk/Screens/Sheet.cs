using System.Globalization;
using System.Text;
using Closeout.Words;
using Terminal.Gui.Text;

namespace Closeout.Screens;

/// <summary>How a piece of a sheet is set. Never by colour: a mark has a word or a shape beside it.</summary>
public enum Look
{
    Plain,
    Strong,
    Faint,
    Field,
}

/// <summary>A screen as paper: cells with one grapheme each, and perhaps a caret.</summary>
public sealed class Sheet
{
    private readonly string[,] cells;
    private readonly Look[,] looks;

    public Sheet(int width, int height)
    {
        (Width, Height) = (Math.Max(1, width), Math.Max(1, height));
        (cells, looks) = (new string[Height, Width], new Look[Height, Width]);
        for (var row = 0; row < Height; row++)
        {
            for (var column = 0; column < Width; column++)
            {
                cells[row, column] = " ";
            }
        }
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Where the next character goes; null: nothing is typed here.</summary>
    public (int Row, int Column)? Caret { get; set; }

    /// <summary>Writes text, cut at <paramref name="most"/> columns or the edge. What could steer a terminal is made harmless. Off the sheet it does nothing.</summary>
    /// <returns>The column behind the text.</returns>
    public int Write(int row, int column, string text, Look look = Look.Plain, int most = int.MaxValue)
    {
        var edge = (int)Math.Min(Width, (long)column + most);
        if (row < 0 || row >= Height)
        {
            return column;
        }

        foreach (var grapheme in Graphemes(Harmless.Line(text)))
        {
            var columns = Columns(grapheme);
            if (column + columns > edge)
            {
                break;
            }

            for (var cell = 0; cell < columns && column >= 0; cell++)
            {
                cells[row, column + cell] = cell == 0 ? grapheme : "";
                looks[row, column + cell] = look;
            }

            column += columns;
        }

        return column;
    }

    /// <summary>Writes text that ends at the right edge.</summary>
    public void WriteRight(int row, string text, Look look = Look.Plain) => Write(row, Width - 1 - Columns(text), text, look);

    /// <summary>Runs of one look in a row, for drawing.</summary>
    public IEnumerable<(int Column, string Text, Look Look)> Runs(int row)
    {
        for (var start = 0; start < Width;)
        {
            var text = new StringBuilder();
            var at = start;
            for (; at < Width && looks[row, at] == looks[row, start]; at++)
            {
                text.Append(cells[row, at]);
            }

            yield return (start, text.ToString(), looks[row, start]);
            start = at;
        }
    }

    /// <summary>The sheet as plain text, without blanks at line ends: what a golden file holds.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        for (var row = 0; row < Height; row++)
        {
            text.Append(string.Concat(Runs(row).Select(r => r.Text)).TrimEnd()).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Columns that a text takes here.</summary>
    public static int Columns(string text) => Graphemes(Harmless.Line(text)).Sum(g => Math.Max(1, g.GetColumns()));

    /// <summary>The text in at most so many columns: what is longer ends with an ellipsis.</summary>
    public static string Cut(string text, int columns)
    {
        if (Columns(text) <= columns)
        {
            return text;
        }

        var (cut, left) = (new StringBuilder(), columns - 1);
        foreach (var grapheme in Graphemes(Harmless.Line(text)).TakeWhile(g => (left -= Columns(g)) >= 0))
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

    private static IEnumerable<string> Pieces(string word, int columns)
    {
        if (columns < 2 || Columns(word) <= columns)
        {
            return [word];
        }

        var pieces = new List<string> { "" };
        foreach (var grapheme in Graphemes(word))
        {
            if (Columns(pieces[^1]) + Columns(grapheme) > columns)
            {
                pieces.Add("");
            }

            pieces[^1] += grapheme;
        }

        return pieces;
    }

    private static IEnumerable<string> Graphemes(string text)
    {
        var graphemes = StringInfo.GetTextElementEnumerator(text);
        while (graphemes.MoveNext())
        {
            yield return graphemes.GetTextElement();
        }
    }
}
