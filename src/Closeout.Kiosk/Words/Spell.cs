using System.Globalization;

namespace Closeout.Words;

/// <summary>Dates, times and numbers of things as people say them.</summary>
public static class Spell
{
    /// <summary>A date as people say it: <c>Wed 18 Nov 2026</c>.</summary>
    public static string Day(DateOnly date) => $"{ShortDay(date)} {date.Year}";

    /// <summary>The same without its year: <c>Wed 18 Nov</c>.</summary>
    public static string ShortDay(DateOnly date) => $"{Days[(int)date.DayOfWeek]} {DayOfMonth(date)}";

    /// <summary>Without its weekday: <c>18 Nov</c>.</summary>
    public static string DayOfMonth(DateOnly date) => $"{date.Day} {Months[date.Month - 1]}";

    /// <summary>The day of the week: <c>Wed</c>.</summary>
    public static string Weekday(DateTimeOffset at) => Days[(int)at.DayOfWeek];

    private static string[] Days => [T("Sun"), T("Mon"), T("Tue"), T("Wed"), T("Thu"), T("Fri"), T("Sat")];

    private static string[] Months =>
        [T("Jan"), T("Feb"), T("Mar"), T("Apr"), T("May"), T("Jun"), T("Jul"), T("Aug"), T("Sep"), T("Oct"), T("Nov"), T("Dec")];

    public static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    /// <summary>The words for a number of things.</summary>
    public static string Count(int number, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{number} {(number == 1 ? one : many)}");
}
