using System.Globalization;
using System.Text.RegularExpressions;
using FluentAssertions;

namespace Closeout.Tests.Html;

/// <summary>Contrast as WCAG 2.2 defines it.</summary>
/// <remarks>
/// Web Content Accessibility Guidelines (WCAG) 2.2, W3C Recommendation, definitions of "relative luminance" and "contrast ratio":
/// https://www.w3.org/TR/WCAG22/#dfn-relative-luminance, https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio.
/// </remarks>
internal static partial class Wcag
{
    /// <summary>What success criterion 1.4.3 asks of text that is not large.</summary>
    public const double Text = 4.5;

    /// <summary>The contrast of two colours, 1 to 21, written <c>#rrggbb</c>.</summary>
    public static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    /// <summary>Every colour that a page names, in a style or an attribute.</summary>
    public static IEnumerable<string> ColoursOf(string html) => Colour().Matches(html).Select(m => Long(m.Value)).Distinct();

    /// <summary><c>#rgb</c> is <c>#rrggbb</c>.</summary>
    private static string Long(string colour) => colour.Length == 4 ? $"#{colour[1]}{colour[1]}{colour[2]}{colour[2]}{colour[3]}{colour[3]}" : colour;

    private static double Luminance(string colour)
    {
        colour.Should().MatchRegex("^#[0-9a-f]{6}$");
        var parts = new[] { 1, 3, 5 }.Select(at => int.Parse(colour.AsSpan(at, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture) / 255.0)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToList();
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    [GeneratedRegex(@"#[0-9a-fA-F]{3,8}\b|rgba?\([^)]*\)|hsla?\([^)]*\)|oklch\([^)]*\)")]
    private static partial Regex Colour();
}
