namespace Closeout.Files;

/// <summary>One line of the morning sheet: a heading, a word with a sentence, or a line to tick off.</summary>
/// <param name="Word">What the sentence is of; empty: the same as above.</param>
/// <param name="Tick">Whether it is ticked off on paper.</param>
/// <param name="Part">Where it is set apart from the others.</param>
public sealed record SheetLine(
    string Word, string Sentence, bool IsHeading = false, bool Tick = false, SheetPart Part = SheetPart.Plain);

/// <summary>How a line of the sheet is set apart.</summary>
public enum SheetPart
{
    Plain,

    /// <summary>The van's code, large, and what it is called.</summary>
    Van,

    /// <summary>In the frame on top.</summary>
    Held,

    /// <summary>To load, with room for what was taken.</summary>
    Take,

    /// <summary>Room for the names of who loaded and who checked.</summary>
    Sign,
}
