using System.Globalization;

namespace Closeout.Words;

/// <summary>Dates, times and numbers of things as people say them.</summary>
public static class Spell
{
    /// <summary>A date as people say it: <c>Wed 18 Nov 2026</c>.</summary>
    public static string Day(DateOnly date) => date.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>The same without its year: <c>Wed 18 Nov</c>.</summary>
    public static string ShortDay(DateOnly date) => date.ToString("ddd d MMM", CultureInfo.InvariantCulture);

    public static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The words for a number of things.</summary>
    public static string Count(int number, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many)}");
}
