namespace Closeout.Cardboard;

/// <summary>When the container will have reached the filling at which the hauler is called.</summary>
/// <param name="Days">Working days to it at the mean daily volume; 0: it is there.</param>
/// <param name="On">The working day that is.</param>
/// <param name="Earliest">The day by which it may be full once in twenty times.</param>
/// <param name="Latest">The day by which it is full nineteen times in twenty; null: the days vary too much to say.</param>
public sealed record FullDate(double Days, DateOnly On, DateOnly Earliest, DateOnly? Latest);

/// <summary>The cardboard container: what is in it, how full it is, and when it will be full.</summary>
/// <remarks>
/// Volumes rest on one density, and published densities of loose flattened corrugated run from 40 to 150 lb a cubic yard:
/// filling is good to a factor of about two. One weighed container calibrates it.
/// </remarks>
public static class Container
{
    /// <summary>Working days that the forecast looks back on.</summary>
    public const int ForecastDays = 20;

    /// <summary>Fewer days than this say nothing of tomorrow.</summary>
    public const int LeastDays = 5;

    /// <summary>The normal quantile at 95 %: the range leaves out one time in twenty at each end.</summary>
    private const double Z95 = 1.6449;

    /// <summary>Pounds of cardboard in the container by the book: carried and tonight's, less what the hauler took.</summary>
    public static double LoadedLb(Depot depot) => Math.Max(
        0,
        depot.Yard.Carried.ContainerLb + CardboardTotals.Rows(depot).Sum(r => r.WeightLb) - depot.Yard.Emptied.Sum(e => e.BookLb));

    /// <summary>Volume in cubic yards of what is in it.</summary>
    public static double LoadedCuYd(Depot depot) => CardboardTotals.VolumeCuYd(depot.Setup.Depot, LoadedLb(depot));

    /// <summary>How full it is, in percent of its size; may pass 100.</summary>
    public static double FullPercent(Depot depot) => 100 * LoadedCuYd(depot) / depot.Setup.Depot.ContainerCuYd;

    /// <summary>Whether the hauler must be asked to come.</summary>
    public static bool AsksForHauler(Depot depot) => FullPercent(depot) >= depot.Setup.Depot.ContainerFullPercent;

    /// <summary>When it was last emptied; null: not in this book.</summary>
    public static DateOnly? EmptiedOn(Depot depot) => depot.Yard.Emptied.IsEmpty ? depot.Yard.Carried.EmptiedOn : depot.Date;

    /// <summary>The last working days, tonight among them once anything was flattened or any van is closed.</summary>
    public static IReadOnlyList<BoxDay> Days(Depot depot)
    {
        var rows = CardboardTotals.Rows(depot);
        var sum = CardboardTotals.Sum(depot.Setup.Depot, rows);
        var worked = sum.Flattened > 0 || depot.Shifts.Values.Any(s => s.IsClosed);
        return [.. depot.Yard.Carried.BoxDays
            .Concat(worked ? [new BoxDay(depot.Date, sum.Expected, sum.Flattened, sum.WeightLb)] : [])
            .TakeLast(ForecastDays)];
    }

    /// <summary>When it will be full, from the mean volume of the last working days; null: too few days, or nothing is flattened.</summary>
    /// <remarks>
    /// With mean m and sample standard deviation s of the daily volume and R yet to fill, n days bring n*m, give or take
    /// z*s*sqrt(n). Setting n*m +- z*s*sqrt(n) = R and solving for sqrt(n) gives the two ends of the range.
    /// </remarks>
    public static FullDate? Full(Depot depot)
    {
        var volumes = Days(depot).Select(d => CardboardTotals.VolumeCuYd(depot.Setup.Depot, d.WeightLb)).ToList();
        if (volumes.Count < LeastDays || volumes.Average() is not (> 0 and var mean))
            return null;

        var spread = Math.Sqrt(volumes.Sum(v => (v - mean) * (v - mean)) / (volumes.Count - 1));
        var settings = depot.Setup.Depot;
        var left = Math.Max(0, settings.ContainerCuYd * settings.ContainerFullPercent / 100 - LoadedCuYd(depot));
        var (days, sure) = (left / mean, Z95 * spread);
        var root = Math.Sqrt(sure * sure + 4 * mean * left);
        var (early, late) = (Square((root - sure) / (2 * mean)), Square((root + sure) / (2 * mean)));
        return new(days, Workday(depot, days), Workday(depot, early), late > MostDays ? null : Workday(depot, late));
    }

    /// <summary>
    /// Pounds a cubic yard that one pickup shows: what was weighed, over the part of the container that was full. Null: not weighed, or not
    /// looked at.
    /// </summary>
    public static double? LbPerCuYd(DepotSettings depot, ContainerEmptied pickup) =>
        pickup is { WeighedLb: { } lb, FullPercent: { } percent }
        ? lb / (depot.ContainerCuYd * percent / 100)
        : null;

    /// <summary>Beyond this many working days a date says nothing.</summary>
    private const double MostDays = 1_000;

    /// <summary>
    /// The working day after so many: a part of a day counts as one. The crew's rostered days; without any, Monday to Friday.
    /// </summary>
    private static DateOnly Workday(Depot depot, double days)
    {
        var workdays = depot.Setup.Crew.SelectMany(t => t.Workdays).ToHashSet();
        if (workdays.Count == 0)
            workdays = [DayOfWeek.Monday, DayOfWeek.Tuesday, DayOfWeek.Wednesday, DayOfWeek.Thursday, DayOfWeek.Friday];

        var date = depot.Date;
        for (var left = Math.Min(MostDays, Math.Ceiling(days)); left > 0;)
        {
            date = date.AddDays(1);
            left -= workdays.Contains(date.DayOfWeek) ? 1 : 0;
        }

        return date;
    }

    private static double Square(double x) => x * x;
}
