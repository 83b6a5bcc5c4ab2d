using System.Globalization;

namespace Closeout.Vans;

/// <summary>When the longer check of the week is due. Weeks are ISO 8601: Monday to Sunday, week 1 holds the year's first Thursday.</summary>
public static class WeeklyCheck
{
    /// <summary>
    /// Due on or after the technician's last rostered day of the ISO week while the van has no check in that week, and
    /// whenever the whole week before went by without one. A van never checked in this book is not overdue: nobody knows.
    /// </summary>
    public static bool IsDue(IReadOnlyList<DayOfWeek> workdays, DateOnly date, DateOnly? lastCheckedOn)
    {
        var monday = Monday(date);
        if (lastCheckedOn >= monday)
        {
            return false;
        }

        var lastWorkday = workdays.Count == 0 ? int.MaxValue : workdays.Max(Index);
        return Index(date.DayOfWeek) >= lastWorkday || IsOverdue(date, lastCheckedOn);
    }

    /// <summary>Whether all of the ISO week before the date's went by without a check.</summary>
    public static bool IsOverdue(DateOnly date, DateOnly? lastCheckedOn) => lastCheckedOn < Monday(date).AddDays(-7);

    /// <summary>The Monday of the date's ISO week.</summary>
    public static DateOnly Monday(DateOnly date) => date.AddDays(-Index(date.DayOfWeek));

    /// <summary>The ISO week as <c>2026-W47</c>; the year is the week's, not always the calendar's.</summary>
    public static string Name(DateOnly date)
    {
        var day = date.ToDateTime(TimeOnly.MinValue);
        return string.Create(CultureInfo.InvariantCulture, $"{ISOWeek.GetYear(day):0000}-W{ISOWeek.GetWeekOfYear(day):00}");
    }

    private static int Index(DayOfWeek day) => ((int)day + 6) % 7;
}
