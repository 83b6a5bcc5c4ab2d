namespace Closeout.Vans;

/// <summary>How far a van usually goes in a day, by its own last days.</summary>
/// <param name="MedianMi">Median of the miles of days on which it moved.</param>
/// <param name="SpreadMi">1.4826 times the median of the distances from the median: for normal data the standard deviation.</param>
/// <param name="Days">Days that it rests on.</param>
/// <remarks>
/// Median and median absolute deviation, because one slip must not spoil the measure by which the next is found (Rousseeuw
/// &amp; Croux, Alternatives to the Median Absolute Deviation, 1993; the factor 1.4826 makes it agree with the standard
/// deviation of a normal).
/// </remarks>
public sealed record DrivingHabit(decimal MedianMi, decimal SpreadMi, int Days)
{
    /// <summary>Days that a page carries of each van.</summary>
    public const int DaysKept = 40;

    /// <summary>Fewer days on which it moved than this are no habit.</summary>
    public const int LeastDays = 8;

    /// <summary>
    /// Without a habit, farther than this in a day is asked again, in miles. Common practice: a day's route of home visits is far shorter.
    /// </summary>
    public const decimal FarWithoutHabitMi = 300m;

    /// <summary>
    /// So many spreads above the median are far. Common practice for outliers is 3 to 3.5; a question too many each week teaches people not
    /// to read.
    /// </summary>
    private const decimal Spreads = 6m;

    /// <summary>The least that a spread is taken to be, in miles: some vans do the same round every day.</summary>
    private const decimal LeastSpreadMi = 10m;

    /// <summary>The van's habit; null: too few days.</summary>
    public static DrivingHabit? Of(Depot depot, Code<Van> van)
    {
        var miles = depot.Van(van).Driven.Select(d => d.DistanceMi).Where(d => d > 0).ToList();
        if (miles.Count < LeastDays)
            return null;

        var median = Median(miles);
        return new(median, 1.4826m * Median([.. miles.Select(m => Math.Abs(m - median))]), miles.Count);
    }

    /// <summary>Miles in one day beyond which a reading is asked again: at least twice the median.</summary>
    public decimal FarMi => Math.Max(2 * MedianMi, MedianMi + Spreads * Math.Max(SpreadMi, LeastSpreadMi));

    /// <summary>Miles in one day beyond which a reading of the van is asked again.</summary>
    public static decimal FarOf(Depot depot, Code<Van> van) => Of(depot, van)?.FarMi ?? FarWithoutHabitMi;

    /// <summary>Miles on a calendar day, over the days that the book knows, days off among them; null: too few days.</summary>
    public static decimal? PaceMi(Depot depot, Code<Van> van)
    {
        var days = Known(depot, van);
        if (days.Count < LeastDays)
            return null;

        // From the evening before the first day to the evening of the last.
        var calendar = days[^1].Date.DayNumber - days[0].Date.DayNumber + 1;
        return days.Sum(d => d.DistanceMi) / calendar;
    }

    /// <summary>The van's days, tonight's reading among them.</summary>
    public static IReadOnlyList<DrivenDay> Known(Depot depot, Code<Van> van) =>
        [.. depot.Van(van).Driven.Concat(Tonight(depot, van) is { } day ? [day] : Array.Empty<DrivenDay>()).TakeLast(DaysKept)];

    private static DrivenDay? Tonight(Depot depot, Code<Van> van) =>
        depot.Shift(van)?.Mileage is { } read ? new DrivenDay(depot.Date, read.StartMi, read.EndMi, read.FuelGal) : null;

    private static decimal Median(IReadOnlyList<decimal> numbers)
    {
        var sorted = numbers.Order().ToList();
        return (sorted[(sorted.Count - 1) / 2] + sorted[sorted.Count / 2]) / 2;
    }
}
