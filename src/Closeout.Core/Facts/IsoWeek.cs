using System.Globalization;

namespace Closeout.Facts;

/// <summary>Weeks of ISO 8601: Monday to Sunday, week 1 holds the year's first Thursday.</summary>
public static class IsoWeek
{
    /// <summary>The Monday of the date's ISO week.</summary>
    public static DateOnly Monday(DateOnly date) => date.AddDays(-Index(date.DayOfWeek));

    /// <summary>The ISO week as <c>2026-W47</c>; the year is the week's, not always the calendar's.</summary>
    public static string Name(DateOnly date)
    {
        var day = date.ToDateTime(TimeOnly.MinValue);
        return string.Create(CultureInfo.InvariantCulture, $"{ISOWeek.GetYear(day):0000}-W{ISOWeek.GetWeekOfYear(day):00}");
    }

    /// <summary>0 for Monday to 6 for Sunday.</summary>
    public static int Index(DayOfWeek day) => ((int)day + 6) % 7;
}
