using System.Globalization;

namespace Closeout.Facts;

/// <summary>A date as files, arguments and sentences have it, YYYY-MM-DD of ISO 8601. In a sentence <c>{date:O}</c> is the same.</summary>
public static class IsoDate
{
    /// <summary>Characters of it.</summary>
    public const int Length = 10;

    private const string Format = "yyyy-MM-dd";

    public static string Text(DateOnly date) => date.ToString(Format, CultureInfo.InvariantCulture);

    /// <summary>The date that a text is, with no blanks around it and no digit too few; null: it is none.</summary>
    public static DateOnly? Parse(ReadOnlySpan<char> text) =>
        DateOnly.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;
}
