using System.Globalization;

namespace Closeout.People;

/// <summary>Which PINs are good enough.</summary>
/// <remarks>
/// Lengths and the kinds of PIN refused: NIST SP 800-63B (revision 3), 5.1.1.1 and 5.1.1.2: a secret of one's own has at
/// least 8 characters, one drawn at random at least 6, which may be digits alone. Revision 4 is stricter (docs/methods.md).
/// </remarks>
public static class PinRules
{
    /// <summary>The least characters of a PIN that somebody chose.</summary>
    public const int LeastOwn = 8;

    /// <summary>The most; 5.1.1.2 wants at least 64 to be taken.</summary>
    public const int MostOwn = 64;

    /// <summary>Digits of a PIN that the kiosk drew.</summary>
    public const int IssuedDigits = 6;

    /// <summary>Numbers that an issued PIN is drawn from: 0 up to this, without it.</summary>
    public const int IssuedBelow = 1_000_000;

    /// <summary>The longest pattern whose repetition is refused, in characters.</summary>
    private const int LongestPattern = 4;

    /// <summary>The shortest run (up or down by one, or along a row of keys) that a PIN must not be made of.</summary>
    private const int ShortestRun = 4;

    /// <summary>The least different characters.</summary>
    private const int LeastDifferent = 3;

    private static readonly string[] KeyRows = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];

    private static readonly char[] Marks = ['-', '/', '.', ' '];

    private const int FirstYear = 1900;
    private const int LastYear = 2099;

    /// <summary>Why somebody's own choice will not do. Null: it will.</summary>
    public static Refusal? Own(string pin, Technician person) => pin switch
    {
        { Length: < LeastOwn } => PinRefusal.TooShort(pin.Length),
        { Length: > MostOwn } => PinRefusal.TooLong(pin.Length),
        _ when CardNumber.IsIn(pin) => PinRefusal.IsACardNumber(),
        _ when IsSocialSecurityNumber(pin) => PinRefusal.IsASocialSecurityNumber(),
        _ => Guessed(pin, person),
    };

    /// <summary>Why a PIN is too easily guessed, whatever its length. Null: it is not.</summary>
    public static Refusal? Guessed(string pin, Technician person) => pin switch
    {
        _ when Repeats(pin) => PinRefusal.Repeats(),
        _ when Runs(pin) => PinRefusal.Runs(),
        _ when IsDate(pin) => PinRefusal.IsADate(),
        _ when Names(person).FirstOrDefault(n => pin.Contains(n, StringComparison.OrdinalIgnoreCase)) is { } name =>
            PinRefusal.HasYourName(name),
        _ => null,
    };

    /// <summary>The PIN that comes of a number drawn; null: draw again, it is too easily guessed.</summary>
    /// <param name="drawn">At least 0, below <see cref="IssuedBelow"/>, every one as likely as any other.</param>
    public static string? Issued(int drawn, Technician person)
    {
        if (drawn is < 0 or >= IssuedBelow)
            throw new ArgumentOutOfRangeException(nameof(drawn));

        var pin = drawn.ToString("D6", CultureInfo.InvariantCulture);
        return Guessed(pin, person) is null ? pin : null;
    }

    /// <summary>
    /// A social-security number in it, as it is written, or nothing but nine digits that would be one: as a PIN they are somebody's sooner
    /// than a slip's.
    /// </summary>
    public static bool IsSocialSecurityNumber(string pin) =>
        SocialSecurityNumber.IsIn(pin)
            || (pin.Length == 9 && pin.All(char.IsAsciiDigit) && SocialSecurityNumber.IsIn($"{pin[..3]}-{pin[3..5]}-{pin[5..]}"));

    /// <summary>
    /// Fewer than three different characters, or a pattern of up to four said at least twice: <c>aaaaaaab</c>, <c>12341234</c>,
    /// <c>abcabcab</c>.
    /// </summary>
    public static bool Repeats(string pin) =>
        (pin.Length > 0 && pin.Select(Small).Distinct().Count() < LeastDifferent) || Enumerable.Range(1, LongestPattern)
        .Any(length => pin.Length >= 2 * length
            && Enumerable.Range(length, pin.Length - length).All(i => Small(pin[i]) == Small(pin[i - length])));

    /// <summary>
    /// Nothing but runs of at least four: digits or letters up or down by one, 0 after 9, or letters along a row of keys:
    /// <c>123456</c>, <c>1234567890</c>, <c>hgfedcba</c>, <c>1234abcd</c>, <c>qwertyui</c>, <c>lkjhasdf</c>.
    /// </summary>
    public static bool Runs(string pin)
    {
        // Where a run ends is not plain, for f, g, h are neighbours in both ways: every end that a run may have is tried.
        var ends = new bool[pin.Length + 1];
        ends[0] = true;
        for (var start = 0; start < pin.Length; start++)
        {
            foreach (var way in ends[start] ? Ways : [])
            {
                for (var end = start + 1; end < pin.Length && way(pin[end - 1], pin[end]); end++)
                    ends[end + 1] |= end + 1 - start >= ShortestRun;
            }
        }

        return pin.Length > 0 && ends[pin.Length];
    }

    /// <summary>
    /// A day or month of the years 1900 to 2099 in any usual order, with or without marks between: <c>19900412</c>, <c>4/12/1990</c>,
    /// <c>900412</c>, <c>041990</c>.
    /// </summary>
    public static bool IsDate(string pin)
    {
        var parts = pin.Split(Marks, StringSplitOptions.RemoveEmptyEntries);
        var digits = string.Concat(parts);
        if (!digits.All(char.IsAsciiDigit))
            return false;

        if (parts.Length == 3 && parts.All(p => p.Length is 1 or 2 or 4)
            && AreDay([.. parts.Select(p => int.Parse(p, CultureInfo.InvariantCulture))]))
        {
            return true;
        }

        int N(int at, int length) => int.Parse(digits.AsSpan(at, length), NumberStyles.None, CultureInfo.InvariantCulture);
        return digits.Length switch
        {
            8 =>
                IsDay(N(0, 4), N(4, 2), N(6, 2)) || IsDay(N(0, 4), N(6, 2), N(4, 2)) || IsDay(N(4, 4), N(2, 2), N(0, 2))
                    || IsDay(N(4, 4), N(0, 2), N(2, 2)),
            6 => new[] { 1900, 2000 }.Any(century =>
                    IsDay(century + N(0, 2), N(2, 2), N(4, 2)) || IsDay(century + N(0, 2), N(4, 2), N(2, 2))
                    || IsDay(century + N(4, 2), N(2, 2), N(0, 2)) || IsDay(century + N(4, 2), N(0, 2), N(2, 2)))
                || IsDay(N(0, 4), N(4, 2), 1) || IsDay(N(2, 4), N(0, 2), 1),
            _ => false,
        };
    }

    /// <summary>Three numbers as day, month and year in any usual order; a year of two digits is of either century.</summary>
    private static bool AreDay(int[] n) => new[] { (n[0], n[1], n[2]), (n[0], n[2], n[1]), (n[2], n[1], n[0]), (n[2], n[0], n[1]) }
        .Any(d => IsDay(d.Item1, d.Item2, d.Item3)
            || (d.Item1 < 100 && (IsDay(1900 + d.Item1, d.Item2, d.Item3) || IsDay(2000 + d.Item1, d.Item2, d.Item3))));

    private static bool IsDay(int year, int month, int day) =>
        year is >= FirstYear and <= LastYear && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month);

    /// <summary>The ways in which one character follows another: up, down, and along a row of keys to the right and to the left.</summary>
    private static readonly Func<char, char, bool>[] Ways =
        [IsNext, (before, after) => IsNext(after, before), IsBeside, (before, after) => IsBeside(after, before)];

    private static bool IsNext(char before, char after) =>
        (before, after) == ('9', '0')
            || (char.IsAsciiLetterOrDigit(before) && char.IsAsciiLetterOrDigit(after) && Small(after) - Small(before) == 1);

    private static bool IsBeside(char before, char after) =>
        KeyRows.Any(r => r.IndexOf(Small(before)) is >= 0 and var at && at + 1 < r.Length && r[at + 1] == Small(after));

    private static char Small(char c) => char.ToLowerInvariant(c);

    /// <summary>The code and the parts of the name, of two characters or more: a single one says nothing of a person.</summary>
    private static IEnumerable<string> Names(Technician person)
    {
        var letters = string.Concat(person.Name.Select(c => char.IsLetterOrDigit(c) ? c : ' '));
        return letters.Split(' ').Prepend(person.Code.Text).Where(n => n.Length >= 2);
    }
}
