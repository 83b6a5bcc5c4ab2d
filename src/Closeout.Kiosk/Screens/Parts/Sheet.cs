using System.Text;

namespace Closeout.Screens.Parts;

/// <summary>How a piece of a sheet is set. A tone is never the only sign: it is the ground of a word.</summary>
public enum Look
{
    Plain,
    Strong,

    /// <summary>Labels, keys, hints.</summary>
    Faint,

    /// <summary>What is typed in, and the row that is chosen.</summary>
    Field,

    /// <summary>Done, ready, recorded.</summary>
    Good,

    /// <summary>Look at this before you drive; a rehearsal.</summary>
    Note,

    /// <summary>Held, refused, missing, overdue.</summary>
    Stop,
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
                cells[row, column] = " ";
        }
    }

    public int Width { get; }

    public int Height { get; }

    /// <summary>Who is known, for the first line; null: nobody.</summary>
    public Known? Known { get; init; }

    /// <summary>What a tap does.</summary>
    public Taps Taps { get; } = new();

    /// <summary>Where the next character goes; null: nothing is typed here.</summary>
    public (int Row, int Column)? Caret { get; set; }

    /// <summary>
    /// Writes text, cut at <paramref name="most"/> columns or the edge. What could steer a terminal is made harmless. Off the sheet it does
    /// nothing.
    /// </summary>
    /// <returns>The column behind the text.</returns>
    public int Write(int row, int column, string text, Look look = Look.Plain, int most = int.MaxValue)
    {
        var edge = (int)Math.Min(Width, (long)column + most);
        if (row < 0 || row >= Height)
            return column;

        foreach (var grapheme in Cells.Graphemes(Harmless.Line(text)))
        {
            var columns = Cells.Width(grapheme);
            if (column + columns > edge)
                break;

            for (var cell = 0; cell < columns && column >= 0; cell++)
            {
                cells[row, column + cell] = cell == 0 ? grapheme : "";
                looks[row, column + cell] = look;
            }

            column += columns;
        }

        return column;
    }

    /// <summary>A word on the ground of its tone, with a blank on either side.</summary>
    /// <returns>The column behind it.</returns>
    public int Badge(int row, int column, string word, Look tone) => Write(row, column, $" {word} ", tone);

    /// <summary>Writes text that ends at the right edge.</summary>
    public void WriteRight(int row, string text, Look look = Look.Plain) => Write(row, Width - 1 - Cells.Count(text), text, look);

    /// <summary>Runs of one look in a row, for drawing.</summary>
    public IEnumerable<(int Column, string Text, Look Look)> Runs(int row)
    {
        for (var start = 0; start < Width;)
        {
            var text = new StringBuilder();
            var at = start;
            for (; at < Width && looks[row, at] == looks[row, start]; at++)
                text.Append(cells[row, at]);

            yield return (start, text.ToString(), looks[row, start]);
            start = at;
        }
    }

    /// <summary>The sheet as plain text, without blanks at line ends: what a golden file holds.</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        for (var row = 0; row < Height; row++)
            text.Append(string.Concat(Runs(row).Select(r => r.Text)).TrimEnd()).Append('\n');

        return text.ToString();
    }
}
