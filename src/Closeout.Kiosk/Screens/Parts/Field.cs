using System.Globalization;

namespace Closeout.Screens.Parts;

/// <summary>What may be typed in a field.</summary>
public enum FieldKind
{
    /// <summary>Whole numbers of at most five digits.</summary>
    Count,

    /// <summary>Digits and a decimal mark, a point or a comma.</summary>
    Number,

    /// <summary>YYYY-MM-DD.</summary>
    Date,

    /// <summary>HH:MM, or the digits alone.</summary>
    Clock,

    /// <summary>A code, typed or scanned.</summary>
    Code,

    /// <summary>One letter of a few.</summary>
    Letter,

    /// <summary>A few words.</summary>
    Words,
}

/// <summary>One field of a question.</summary>
/// <param name="Name">What the answer calls it.</param>
/// <param name="Shown">The answer most likely right: Enter accepts it. Empty: somebody must know.</param>
/// <param name="Typed">What was typed instead; null: nothing.</param>
/// <param name="IsOffered">Whether the program put it there, or refused it: the first character typed replaces it.</param>
public sealed record Field(
    string Name, string Label, FieldKind Kind, string Shown, string After = "", string? Typed = null, bool IsOffered = false)
{
    /// <summary>What is said where it is left empty; null: it may be.</summary>
    public string? Needed { get; init; }

    /// <summary>Tells what is wrong with what stands there, in a sentence; null: only the whole tells.</summary>
    public Func<Depot, Field, string?>? Check { get; init; }

    /// <summary>Whether it is asked at all, by what else was typed; null: always. Enter passes over one that is not.</summary>
    public Func<Depot, Form, bool>? Applies { get; init; }

    /// <summary>What there is to choose; null: nothing is offered.</summary>
    public Func<Depot, IEnumerable<Choice>>? Choices { get; init; }

    /// <summary>Of a number: the most digits after the decimal mark. So a mark between thousands is told at once.</summary>
    public int Decimals { get; init; } = 3;

    /// <summary>Whether a character was refused since it was typed in: what stands there may not be what was meant.</summary>
    public bool IsSpoiled { get; init; }

    /// <summary>Graphemes before the caret; null: behind what was typed, and before what the next character replaces.</summary>
    public int? Caret { get; init; }

    /// <summary>Whether the first character typed replaces what stands there.</summary>
    private bool IsReplaced => Caret is null && (Typed is null || IsOffered);

    /// <summary>What stands there, with its caret.</summary>
    public TextLine Line => Caret is { } caret ? new(Text, caret) : IsReplaced ? new(Text, 0) : TextLine.Behind(Text);

    public string Text => Typed ?? Shown;

    /// <summary>The whole number that it holds; null: none.</summary>
    public int? Whole => WholeOf(Text);

    /// <summary>The whole number that was typed; null: none was.</summary>
    public int? TypedWhole => WholeOf(Typed);

    /// <summary>The number that it holds, with a point or a comma as its decimal mark; null: none.</summary>
    public decimal? Number =>
        decimal.TryParse(Text.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;

    public DateOnly? Date => IsoDate.Parse(Text);

    /// <summary>The time of day that it holds; null: none.</summary>
    public TimeOnly? Clock => Text.Replace(":", "") is { Length: 3 or 4 } digits
        && TimeOnly.TryParseExact(digits.PadLeft(4, '0'), "HHmm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var at)
            ? at
            : null;

    /// <summary>
    /// The letter that it holds, as a capital; empty: none. Yes is a Y, whatever its letter in the language that is spoken.
    /// </summary>
    public string Letter => Text.ToUpperInvariant() is var letter && letter == T("Y") ? "Y" : letter;

    /// <summary>A field of a whole number.</summary>
    public static Field Count(string name, string label, int number, string after = "") =>
        new(name, label, FieldKind.Count, number.ToString(CultureInfo.InvariantCulture), after);

    /// <summary>A field of a date.</summary>
    public static Field OfDate(string name, string label, DateOnly? date, string after = "") =>
        new(name, label, FieldKind.Date, date is { } on ? IsoDate.Text(on) : "", after);

    /// <summary>Columns that the field takes.</summary>
    public int Width => Kind switch
    {
        FieldKind.Count => 5,
        FieldKind.Number => 9,
        FieldKind.Date => 10,
        FieldKind.Clock => 5,
        FieldKind.Code => 24,
        FieldKind.Letter => 1,
        FieldKind.Words => 38,
        _ => throw new InvalidOperationException($"no such kind of field: {Kind}"),
    };

    /// <summary>What is wrong with it; null: nothing that it could tell by itself.</summary>
    public string? Wrong(Depot depot) => IsSpoiled ? Spoiled : Text.Trim().Length == 0 ? Needed : Check?.Invoke(depot, this);

    private static int? WholeOf(string? text) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var number)
        ? number
        : null;

    /// <summary>What is said of a number or a date with a part refused.</summary>
    public string Spoiled => T($"Part of what you typed was refused, and \"{Text}\" is left. Type all of it again.");

    /// <summary>
    /// The field after a character was refused in it: a number or a date must be typed again, of a text the rest is left out.
    /// </summary>
    public Field Refused() => Kind is FieldKind.Count or FieldKind.Number or FieldKind.Date or FieldKind.Clock
        && Typed is { Length: > 0 } && !IsOffered
        ? this with { IsSpoiled = true }
        : this;

    /// <summary>Why a character has no place here, in a sentence with what has.</summary>
    public string Refuses(char c) => Kind switch
    {
        FieldKind.Words when char.IsControl(c) => T("That key has no place in a text."),
        _ when (IsReplaced ? "" : Text).Length >= Most => T($"\"{Label.Trim()}\" takes at most {Most} characters: the rest is left out."),
        FieldKind.Count => T($"\"{c}\" is not a digit. Type a whole number."),
        FieldKind.Number when char.IsAsciiDigit(c) => Decimals == 0
            ? T(
                "Type a whole number.") : T(
                    $"At most {Spell.Count(Decimals, T("digit"), T("digits"))} after the decimal mark. Type thousands "
                + $"without a mark."),
        FieldKind.Number => T($"\"{c}\" does not fit in this number. Type digits, with . or , before the decimals."),
        FieldKind.Date => T($"\"{c}\" does not fit in a date. Type it as YYYY-MM-DD."),
        FieldKind.Clock => T($"\"{c}\" does not fit in a time. Type it as 16:30 or 1630."),
        FieldKind.Code => T($"\"{c}\" is not part of a code. Codes have letters, digits, point, hyphen and underscore."),
        FieldKind.Letter => T($"\"{c}\" is not a letter."),
        FieldKind.Words => T($"\"{c}\" has no place here."),
        _ => throw new InvalidOperationException($"no rule for {Kind}"),
    };

    private int Most => Kind == FieldKind.Words ? Refusal.MostWords : Width;

    /// <summary>The field after a character; null: it has no place here.</summary>
    public Field? Takes(char c)
    {
        var line = Kind == FieldKind.Letter || IsReplaced ? default : Line;
        var typed = line.Text ?? "";
        var fits = typed.Length < Most && Kind switch
        {
            FieldKind.Count => char.IsAsciiDigit(c),
            FieldKind.Number => IsNumber(new TextLine(typed, line.Caret).Insert(c).Text),
            FieldKind.Date => char.IsAsciiDigit(c) || c == '-',
            FieldKind.Clock => char.IsAsciiDigit(c) || c == ':',
            FieldKind.Code => char.IsAsciiLetterOrDigit(c) || c is '.' or '_' or '-',
            FieldKind.Letter => char.IsAsciiLetter(c),
            FieldKind.Words => !char.IsControl(c),
            _ => throw new InvalidOperationException($"no rule for {Kind}"),
        };
        return fits ? Holding(new TextLine(typed, line.Caret).Insert(c)) : null;
    }

    /// <summary>The field after a key that moves its caret or takes something away; null: it is no such key.</summary>
    public Field? On(Press press) => (press, IsReplaced) switch
    {
        // From behind: what stands there is taken back as if it had been typed. Delete takes all of it.
        (Press.Backspace, true) => Emptied(TextLine.Behind(Text).On(press)!.Value),
        (Press.Delete, true) => Emptied(default(TextLine) with { Text = "" }),
        (Press.Backspace or Press.Delete, false) => Emptied(Line.On(press)!.Value),
        (Press.Left or Press.WordLeft, true) when TextLine.Behind(Text).On(press) is { } moved =>
            this with { Caret = moved.Caret, IsOffered = false },
        _ => Line.On(press) is { } moved ? this with { Caret = moved.Caret, IsOffered = false } : null,
    };

    private Field Holding(TextLine line) => this with { Typed = line.Text, IsOffered = false, IsSpoiled = false, Caret = Behind(line) };

    /// <summary>A field that is emptied stays empty until something is typed in it.</summary>
    private Field Emptied(TextLine line) =>
        this with { Typed = line.Text.Length > 0 || Shown.Length > 0 ? line.Text : null, IsOffered = false, IsSpoiled = false,
            Caret = Behind(line) };

    /// <summary>Whether it can become a number: digits, and one mark with no more decimals than there may be.</summary>
    private bool IsNumber(string text) => text.IndexOfAny(['.', ',']) is var mark
        && text.Where((c, i) => i != mark).All(char.IsAsciiDigit)
        && (mark < 0 || (Decimals > 0 && text.Length - mark - 1 <= Decimals));

    private static int? Behind(TextLine line) => line == TextLine.Behind(line.Text) ? null : line.Caret;
}
