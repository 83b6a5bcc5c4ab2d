namespace Closeout.Files;

/// <summary>Text from outside, made fit for a terminal line: control characters, line breaks and direction marks become a visible dot.</summary>
public static class Harmless
{
    public static string Line(string text) =>
        text.Any(IsHarmful) ? string.Concat(text.Select(c => IsHarmful(c) ? '·' : c)) : text;

    private static bool IsHarmful(char c) =>
        char.IsControl(c) || c is '\u2028' or '\u2029' or (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069') or '\ufeff' or '\u200e' or '\u200f';
}
