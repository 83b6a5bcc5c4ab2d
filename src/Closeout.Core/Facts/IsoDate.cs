using System.Globalization;

namespace Closeout.Facts;

/// <summary>Dates as files, lines and fields hold them: <c>YYYY-MM-DD</c> (ISO 8601).</summary>
public static class IsoDate
{
    public const string Format = "yyyy-MM-dd";

    public static string Text(DateOnly date) => date.ToString(Format, CultureInfo.InvariantCulture);

    /// <summary>The date that a text is; null: it is none.</summary>
    public static DateOnly? Parse(ReadOnlySpan<char> text) =>
        DateOnly.TryParseExact(text, Format, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date) ? date : null;
}
