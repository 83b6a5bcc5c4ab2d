namespace Closeout.Words;

/// <summary>
/// Text from outside, made fit for a terminal: what could steer it, make a line read otherwise than it is, or has no width of its own and
/// shifts the columns, becomes a visible dot.
/// </summary>
public static class Harmless
{
    /// <summary>Fit for one line: control characters, line breaks and direction marks become dots.</summary>
    public static string Line(string text) => Without(text, (_, _) => false);

    /// <summary>
    /// Fit for a field of a CSV file, which may hold line breaks of its own: LF and CRLF stay, a CR alone would write over the line.
    /// </summary>
    public static string Field(string text) =>
        Without(text, (t, at) => t[at] == '\n' || (t[at] == '\r' && at + 1 < t.Length && t[at + 1] == '\n'));

    private static string Without(string text, Func<string, int, bool> stays) =>
        text.Any(IsHarmful) ? string.Concat(text.Select((c, at) => IsHarmful(c) && !stays(text, at) ? '·' : c)) : text;

    private static bool IsHarmful(char c) =>
        char.IsControl(c)
        || c is '\u2028' or '\u2029' or (>= '\u202a' and <= '\u202e') or (>= '\u2066' and <= '\u2069')
        || c is '\ufeff' or '\u200e' or '\u200f' or '\u061c'
        || c is '\u00ad' or '\u180e' or '\u200b' or (>= '\u2060' and <= '\u2064');
}
