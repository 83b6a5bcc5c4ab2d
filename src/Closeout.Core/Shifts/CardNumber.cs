namespace Closeout.Shifts;

/// <summary>Finds what looks like a payment or fuel card's number in a text, so that it is not kept.</summary>
/// <remarks>13 to 19 digits, perhaps with blanks or hyphens between, whose check digit fits: ISO/IEC 7812-1, annex B (Luhn).</remarks>
public static class CardNumber
{
    private const int Least = 13;
    private const int Most = 19;

    public static bool IsIn(string text)
    {
        var digits = new List<int>();
        foreach (var c in text + "\n")
        {
            if (char.IsAsciiDigit(c))
            {
                digits.Add(c - '0');
            }
            else if (c is not (' ' or '-'))
            {
                if (digits.Count is >= Least and <= Most && Fits(digits))
                {
                    return true;
                }

                digits.Clear();
            }
        }

        return false;
    }

    /// <summary>Whether the last digit checks the others: every second digit from the right doubled, its digits added, the sum a multiple of ten.</summary>
    public static bool Fits(IReadOnlyList<int> digits) =>
        digits.Reverse().Select((d, i) => i % 2 == 0 ? d : 2 * d > 9 ? 2 * d - 9 : 2 * d).Sum() % 10 == 0;
}
