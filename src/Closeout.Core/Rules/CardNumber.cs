using System.Text.RegularExpressions;

namespace Closeout.Rules;

/// <summary>Finds what looks like a payment or fuel card's number in a text, so that it is not kept.</summary>
/// <remarks>
/// 13 to 19 digits, perhaps with blanks, hyphens or dots between, whose check digit fits: ISO/IEC 7812-1, annex B (Luhn). Other
/// digits may stand before or behind the number's groups, such as the month and year to which the card is good.
/// </remarks>
public static partial class CardNumber
{
    private const int Least = 13;
    private const int Most = 19;

    /// <summary>Shorter groups end a number, or are none of it: two telephone numbers side by side are no card.</summary>
    private const int LeastInGroup = 4;

    public static bool IsIn(string text) =>
        Runs().Matches(text).Any(run => IsIn(run.Value.Split([' ', '-', '.'], StringSplitOptions.RemoveEmptyEntries)));

    /// <summary>
    /// Whether the last digit checks the others: every second digit from the right doubled, its digits added, the sum a multiple of ten.
    /// </summary>
    public static bool Fits(IReadOnlyList<int> digits) =>
        digits.Reverse().Select((d, i) => i % 2 == 0 ? d : 2 * d > 9 ? 2 * d - 9 : 2 * d).Sum() % 10 == 0;

    /// <summary>All groups together, or any that follow each other.</summary>
    private static bool IsIn(string[] groups) => Is(groups) || Enumerable.Range(0, groups.Length).Any(first =>
        Enumerable.Range(first, groups.Length - first)
            .Any(last => groups[first..last].All(g => g.Length >= LeastInGroup) && Is(groups[first..(last + 1)])));

    private static bool Is(string[] groups)
    {
        var digits = string.Concat(groups);
        return digits.Length is >= Least and <= Most && Fits([.. digits.Select(c => c - '0')]);
    }

    [GeneratedRegex("[0-9]+(?:[ .-]+[0-9]+)*")]
    private static partial Regex Runs();
}
