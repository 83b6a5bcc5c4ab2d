namespace Closeout.Screens.Parts;

/// <summary>The keys that the screens know besides characters.</summary>
public enum Press
{
    Character,
    Enter,
    Escape,
    Up,
    Down,
    Tab,
    Left,
    Right,
    WordLeft,
    WordRight,
    Backspace,
    Delete,
    PageUp,
    PageDown,
    Home,
    End,
    F1,
    F2,
    F3,
    F4,
    F5,
    F6,
    F7,
    F8,
    F9,
    Quit,

    /// <summary>A character above U+FFFF, which no field takes: an emoji, for one.</summary>
    Beyond,
}

/// <summary>One key. A scanner is a fast typist whose last key is Enter.</summary>
public readonly record struct Keystroke(Press Press, char Character = '\0')
{
    /// <summary>Characters of a paste that are typed: more than any field holds, and soon done.</summary>
    private const int MostPasted = 512;

    /// <summary>Pasted text as keys: an end of line within becomes a blank, and no Enter is pressed.</summary>
    public static IEnumerable<Keystroke> Pasted(string text)
    {
        var typed = string.Join(
            ' ', string.Concat(text.Select(c => char.IsControl(c) ? '\n' : c)).Split('\n', StringSplitOptions.RemoveEmptyEntries));
        return typed.Where(c => !char.IsSurrogate(c)).Take(MostPasted).Select(c => new Keystroke(Press.Character, c))
            .Concat(typed.Any(char.IsSurrogate) ? [new(Press.Beyond)] : []);
    }

    /// <summary>Keys as tests and docs write them: characters as they are, others in braces, e.g. <c>12{Enter}{PageUp}</c>.</summary>
    public static IEnumerable<Keystroke> Parse(string keys)
    {
        for (var at = 0; at < keys.Length; at++)
        {
            if (keys[at] != '{')
            {
                yield return new(Press.Character, keys[at]);
                continue;
            }

            var end = keys.IndexOf('}', at);
            yield return new(Enum.Parse<Press>(keys[(at + 1)..end]));
            at = end;
        }
    }
}
