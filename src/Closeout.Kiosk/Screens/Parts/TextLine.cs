namespace Closeout.Screens.Parts;

/// <summary>One line being typed, and where its caret stands: by graphemes, what one person sees as one character.</summary>
/// <param name="Caret">Graphemes before the caret, from 0 to all of them.</param>
public readonly record struct TextLine(string Text, int Caret)
{
    /// <summary>The text with the caret behind it.</summary>
    public static TextLine Behind(string text) => new(text, Cells.Graphemes(text).Count());

    /// <summary>A text without its last grapheme; empty as it is.</summary>
    public static string WithoutLast(string text) => Behind(text).On(Press.Backspace)!.Value.Text;

    private List<string> Pieces => [.. Cells.Graphemes(Text)];

    /// <summary>The line after a character typed at the caret.</summary>
    public TextLine Insert(char character)
    {
        var pieces = Pieces;
        var before = string.Concat(pieces.Take(Caret)) + character;
        return Behind(before) with { Text = before + string.Concat(pieces.Skip(Caret)) };
    }

    /// <summary>The line after a key that moves the caret or takes a grapheme away; null: it is no such key.</summary>
    public TextLine? On(Press press) => press switch
    {
        Press.Left => this with { Caret = Math.Max(0, Caret - 1) },
        Press.Right => this with { Caret = Math.Min(Pieces.Count, Caret + 1) },
        Press.WordLeft => this with { Caret = WordBefore() },
        Press.WordRight => this with { Caret = WordAfter() },
        Press.Home => this with { Caret = 0 },
        Press.End => Behind(Text),
        Press.Backspace => Caret > 0 ? Without(Caret - 1) : this,
        Press.Delete => Caret < Pieces.Count ? Without(Caret) : this,
        _ => null,
    };

    /// <summary>
    /// The line in so many columns, filled with blanks, and the column of the caret in it. Of a longer one that part in which the caret
    /// stands.
    /// </summary>
    public (string Shown, int Column) In(int columns)
    {
        var pieces = Pieces;
        var (start, seen) = (Math.Min(Caret, Math.Max(0, pieces.Count - 1)), 0);
        for (var at = start; at >= 0 && (seen += Cells.Count(pieces.ElementAtOrDefault(at) ?? "")) <= columns; at--)
            start = at;

        if (pieces.Sum(Cells.Count) <= columns)
            start = 0;

        var (shown, width) = ("", 0);
        foreach (var piece in pieces.Skip(start).TakeWhile(p => width + Cells.Count(p) <= columns))
            (shown, width) = (shown + piece, width + Cells.Count(piece));

        var before = pieces.Take(Caret).Skip(start).Sum(Cells.Count);
        return (shown + new string(' ', columns - width), Math.Clamp(before, 0, Math.Max(0, columns - 1)));
    }

    private TextLine Without(int piece)
    {
        var pieces = Pieces;
        return Behind(string.Concat(pieces.Take(piece))) with { Text = string.Concat(pieces.Take(piece).Concat(pieces.Skip(piece + 1))) };
    }

    private int WordBefore()
    {
        var (pieces, at) = (Pieces, Caret);
        while (at > 0 && pieces[at - 1] == " ")
            at--;

        while (at > 0 && pieces[at - 1] != " ")
            at--;

        return at;
    }

    private int WordAfter()
    {
        var (pieces, at) = (Pieces, Caret);
        while (at < pieces.Count && pieces[at] != " ")
            at++;

        while (at < pieces.Count && pieces[at] == " ")
            at++;

        return at;
    }
}
