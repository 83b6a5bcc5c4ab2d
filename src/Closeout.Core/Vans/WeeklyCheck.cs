namespace Closeout.Vans;

/// <summary>When the longer check of the week is due.</summary>
public static class WeeklyCheck
{
    /// <summary>
    /// Due on or after the technician's last rostered day of the ISO week while the van has no check in that week, and
    /// whenever the whole week before went by without one. A van never checked in this book is not overdue: nobody knows.
    /// </summary>
    public static bool IsDue(IReadOnlyList<DayOfWeek> workdays, DateOnly date, DateOnly? lastCheckedOn)
    {
        var monday = IsoWeek.Monday(date);
        if (lastCheckedOn >= monday)
            return false;

        var lastWorkday = workdays.Count == 0 ? int.MaxValue : workdays.Max(IsoWeek.Index);
        return IsoWeek.Index(date.DayOfWeek) >= lastWorkday || IsOverdue(date, lastCheckedOn);
    }

    /// <summary>Whether all of the ISO week before the date's went by without a check.</summary>
    public static bool IsOverdue(DateOnly date, DateOnly? lastCheckedOn) => lastCheckedOn < IsoWeek.Monday(date).AddDays(-7);
}
