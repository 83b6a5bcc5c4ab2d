using Closeout.DayBook;

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

    public static Service Of(Van van) => new(
        van.ServiceEveryMi > 0 ? van.LastServiceMi + van.ServiceEveryMi : null,
        van.ServiceEveryMonths > 0 ? van.LastServiceOn.AddMonths(van.ServiceEveryMonths) : null);

    /// <summary>What to say of it at this reading and date; null: nothing yet.</summary>
    public string? Note(decimal odometerMi, DateOnly today, UnitSystem units)
    {
        var left = DueMi - odometerMi;
        var days = DueOn?.DayNumber - today.DayNumber;
        return (left, days) switch
        {
            ( < 0, _) => $"service overdue by {units.Distance(-left.Value)}",
            (_, < 0) => $"service overdue since {DueOn:yyyy-MM-dd}",
            ( <= WarnMi, _) => $"service in {units.Distance(left.Value)}",
            (_, <= WarnDays) => $"service by {DueOn:yyyy-MM-dd}",
            _ => null,
        };
    }
}
