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

    /// <summary>The same of a text in UTF-8.</summary>
    public static DateOnly? Parse(ReadOnlySpan<byte> text)
    {
        if (text.Length != Length || text[4] != '-' || text[7] != '-')
            return null;

        var (year, month, day) = (Number(text[..4]), Number(text[5..7]), Number(text[8..]));
        return year >= 1 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month) ? new(year, month, day) : null;
    }

    /// <summary>What the digits make; -1: there is something else among them.</summary>
    private static int Number(ReadOnlySpan<byte> digits)
    {
        var number = 0;
        foreach (var digit in digits)
        {
            if (digit is < (byte)'0' or > (byte)'9')
                return -1;

            number = (10 * number) + digit - '0';
        }

        return number;
    }
}
