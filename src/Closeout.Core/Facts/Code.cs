using System.Buffers;

namespace Closeout.Facts;

/// <summary>A code by which the depot names a thing of kind <typeparamref name="T"/>: <c>LED-A19-27</c>, <c>B3</c>, <c>T07</c>.</summary>
/// <remarks>
/// Letters, digits, dot, underscore and hyphen, 1 to 24 of them. Two codes are the same when they differ by case alone;
/// the spelling kept is the one first written. Order is ordinal, by that spelling.
/// </remarks>
public readonly record struct Code<T>(string Text) : IComparable<Code<T>>
{
    public bool Equals(Code<T> other) => string.Equals(Text, other.Text, StringComparison.OrdinalIgnoreCase);

    public override int GetHashCode() => Text is null ? 0 : StringComparer.OrdinalIgnoreCase.GetHashCode(Text);

    public int CompareTo(Code<T> other) => string.CompareOrdinal(Text, other.Text);

    public override string ToString() => Text ?? "";

    /// <summary>Whether <paramref name="text"/> may stand as a code.</summary>
    public static bool IsValid(string text) =>
        text.Length is >= 1 and <= CodeText.Most && !text.AsSpan().ContainsAnyExcept(CodeText.Allowed);

    /// <summary>The code written so.</summary>
    /// <exception cref="ArgumentException">The text cannot be a code.</exception>
    public static Code<T> Of(string text) =>
        IsValid(text) ? new(text) : throw new ArgumentException($"'{text}' is not a code", nameof(text));
}

/// <summary>What all codes are written with.</summary>
internal static class CodeText
{
    public const int Most = 24;

    public static readonly SearchValues<char> Allowed =
        SearchValues.Create("ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789._-");
}
