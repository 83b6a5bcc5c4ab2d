namespace Closeout.Facts;

/// <summary>The weekdays on which the depot works: those on which anybody is rostered; without a roster Monday to Friday.</summary>
public sealed class WorkingWeek
{
    private static readonly DayOfWeek[] Usual =
        [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

    private readonly HashSet<DayOfWeek> days;

    public WorkingWeek(Setup setup)
    {
        days = [.. setup.Crew.SelectMany(t => t.Workdays)];
        if (days.Count == 0)
            days.UnionWith(Usual);
    }

    /// <summary>Working days after the first date, up to the second; 0 where the second is no later.</summary>
    public int Between(DateOnly from, DateOnly to)
    {
        var whole = Math.Max(0, to.DayNumber - from.DayNumber);
        var rest = Enumerable.Range(1, whole % 7).Count(d => days.Contains(from.AddDays(d).DayOfWeek));
        return whole / 7 * days.Count + rest;
    }
}
