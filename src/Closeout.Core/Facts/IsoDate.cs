using System.Globalization;

namespace Closeout.Facts;

/// <summary>A date as files, arguments and sentences have it, YYYY-MM-DD of ISO 8601. In a sentence <c>{date:O}</c> is the same.</summary>
public static class IsoDate
{
    /// <summary>Characters of it.</summary>
    public const int Length = 10;

    private const string Format = "yyyy-MM-dd";

    public static string Text(DateOnly date) => date.ToString(Format, CultureInfo.InvariantCulture);

    /// <exception cref="FormatException">It is no such date.</exception>
    public static DateOnly Parse(ReadOnlySpan<char> text) => DateOnly.ParseExact(text, Format, CultureInfo.InvariantCulture);

    /// <summary>Whether it is such a date and nothing else: no blanks around it, no digit too few.</summary>
    public static bool TryParse(ReadOnlySpan<char> text, out DateOnly date) =>
        DateOnly.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out date);
}
