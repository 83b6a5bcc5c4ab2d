namespace Closeout.Facts;

/// <summary>How far the plan looks back, and how far ahead a page may therefore be.</summary>
public static class PlanningWindow
{
    /// <summary>History that the plan looks back on, in calendar days.</summary>
    public const int Days = 60;

    /// <summary>A page further ahead would carry none of that history: its date is taken for mistyped.</summary>
    public const int MostDaysAhead = Days;
}
