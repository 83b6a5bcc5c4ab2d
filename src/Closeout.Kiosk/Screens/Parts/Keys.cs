namespace Closeout.Screens.Parts;

/// <summary>Which keystrokes a binding answers, and what people call them.</summary>
/// <param name="Name">As it stands in the key line: <c>Enter</c>, <c>Up/Down</c>, <c>L</c>.</param>
public readonly record struct Keys(string Name, Func<Keystroke, bool> Fit)
{
    /// <summary>Every key that a person could press but letters of other alphabets.</summary>
    private static readonly Keystroke[] All =
    [
        .. Enum.GetValues<Press>().Where(p => p is not (Press.Character or Press.Beyond)).Select(p => new Keystroke(p)),
        .. "=*/!ABCDEFGHIJKLMNOPQRSTUVWXYZ".Select(c => new Keystroke(Press.Character, c)),
    ];

    /// <summary>The keystroke that is meant; null: any of several characters, as where somebody types.</summary>
    public Keystroke? Stroke
    {
        get
        {
            var fit = Fit;
            var fitting = All.Where(fit).ToList();
            return fitting.Count(k => k.Press == Press.Character) > 1 || fitting.Count == 0 ? null : fitting[0];
        }
    }

    public static readonly Keys Enter = Of("Enter", Press.Enter);
    public static readonly Keys Escape = Of("Esc", Press.Escape);
    public static readonly Keys Tab = Of("Tab", Press.Tab);
    public static Keys Up => Of(T("Up"), Press.Up);
    public static Keys Down => Of(T("Down"), Press.Down);
    public static Keys Backspace => Of(T("Backspace"), Press.Backspace, Press.Delete);
    public static Keys PageUp => Of(T("PgUp"), Press.PageUp);
    public static Keys PageDown => Of(T("PgDn"), Press.PageDown);

    /// <summary>The keys that go through a list.</summary>
    public static Keys Arrows => Of(T("Up/Down"), Press.Up, Press.Down, Press.PageUp, Press.PageDown, Press.Home, Press.End);

    /// <summary>Any character.</summary>
    public static Keys Typing => new(T("type"), key => key.Press == Press.Character);

    /// <summary>The keys of a field: characters, and those that move its caret or take something away.</summary>
    public static Keys Editing => new(T("type"), key => key.Press is Press.Character or Press.Backspace or Press.Delete
        or Press.Left or Press.Right or Press.WordLeft or Press.WordRight or Press.Home or Press.End);

    public static Keys Any => new(T("any key"), _ => true);

    public static Keys Of(string name, params Press[] presses) => new(name, key => presses.Contains(key.Press));

    /// <summary>A function key, 1 to 9.</summary>
    public static Keys F(int number) => number is >= 1 and <= 9
        ? Of($"F{number}", Press.F1 + (number - 1))
        : throw new ArgumentOutOfRangeException(nameof(number), number, "the terminal's F10 opens menus");

    /// <summary>A letter, whatever its case.</summary>
    public static Keys Letter(char letter) =>
        new(letter.ToString(), key => key.Press == Press.Character && char.ToUpperInvariant(key.Character) == letter);

    /// <summary>The same keys under another name.</summary>
    public Keys As(string name) => this with { Name = name };
}
