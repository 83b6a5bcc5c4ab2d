using System.Text.RegularExpressions;

namespace Closeout.Rules;

/// <summary>Finds what looks like a United States social-security number in a text, so that it is not kept.</summary>
/// <remarks>
/// Three, two and four digits with hyphens, blanks or dots between. Never issued, so no such number: area 000, 666 and 900 to
/// 999, group 00, serial 0000 (20 CFR 422.103; Social Security Administration, "Randomization FAQ", 2011; from memory).
/// Nine digits in a row are not looked for: slips and serial numbers have as many.
/// </remarks>
public static partial class SocialSecurityNumber
{
    public static bool IsIn(string text) => Number().IsMatch(text);

    [GeneratedRegex("(?<![0-9]|[0-9][-. ])(?!000|666|9)[0-9]{3}([-. ])(?!00)[0-9]{2}\\1(?!0000)[0-9]{4}(?![0-9]|[-. ][0-9])")]
    private static partial Regex Number();
}
