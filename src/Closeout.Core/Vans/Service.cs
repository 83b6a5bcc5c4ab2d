namespace Closeout.Vans;

/// <summary>When a van is due in the workshop: by distance or by date, whichever comes first.</summary>
/// <param name="DueMi">Odometer reading in miles; null: none by distance.</param>
/// <param name="DueOn">Date; null: none by date.</param>
public readonly record struct Service(decimal? DueMi, DateOnly? DueOn)
{
    /// <summary>From this many miles before, the wall says so. Common practice.</summary>
    public const decimal WarnMi = 500;

    /// <summary>From this many days before, the wall says so. Common practice.</summary>
    public const int WarnDays = 14;

    /// <summary>Farther ahead than this many days an expected date says nothing.</summary>
    private const int MostDaysAhead = 3_650;

    public static Service Of(Van van) => new(
        van.ServiceEveryMi > 0 ? van.LastServiceMi + van.ServiceEveryMi : null,
        van.ServiceEveryMonths > 0 ? van.LastServiceOn.AddMonths(van.ServiceEveryMonths) : null);

    /// <summary>
    /// The date on which it will be due: by its date, or by distance at the van's own pace, whichever comes first. Null: nobody can say.
    /// </summary>
    /// <param name="paceMi">Miles on a calendar day; null: not known.</param>
    public DateOnly? Expected(decimal odometerMi, DateOnly today, decimal? paceMi)
    {
        var byDistance = (DueMi - odometerMi) switch
        {
            null => (DateOnly?)null,
            <= 0 => today,
            var left when paceMi is > 0 and var pace && left <= MostDaysAhead * pace => today.AddDays((int)Math.Ceiling(left.Value / pace)),
            _ => null,
        };
        return (byDistance, DueOn) switch
        {
            (null, var on) => on,
            (var on, null) => on,
            var (a, b) => a < b ? a : b,
        };
    }

    /// <summary>What to say of it at this reading and date; null: nothing yet.</summary>
    /// <param name="paceMi">Miles on a calendar day, to say when the miles will be used up; null: not known.</param>
    public string? Note(decimal odometerMi, DateOnly today, UnitSystem units, decimal? paceMi = null)
    {
        var left = DueMi - odometerMi;
        var days = DueOn?.DayNumber - today.DayNumber;
        return (left, days) switch
        {
            ( < 0, _) => T($"service overdue by {units.Distance(-left.Value)}"),
            (_, < 0) => T($"service overdue since {DueOn:yyyy-MM-dd}"),
            ( <= WarnMi, _) =>
                T($"service in {units.Distance(left.Value)}")
                    + (paceMi is > 0 && Expected(odometerMi, today, paceMi) is { } about ? T($", about {about:yyyy-MM-dd}") : ""),
            (_, <= WarnDays) => T($"service by {DueOn:yyyy-MM-dd}"),
            _ => null,
        };
    }

    /// <summary>What to say of the van as it stands.</summary>
    public static string? NoteOf(Depot depot, Van van, UnitSystem units) =>
        Of(van).Note(Readiness.OdometerMi(depot, van.Code), depot.Date, units, DrivingHabit.PaceMi(depot, van.Code));

    /// <summary>When the van is expected to be due.</summary>
    public static DateOnly? ExpectedOf(Depot depot, Van van) =>
        Of(van).Expected(Readiness.OdometerMi(depot, van.Code), depot.Date, DrivingHabit.PaceMi(depot, van.Code));
}
