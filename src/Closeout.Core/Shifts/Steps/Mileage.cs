using System.Globalization;
using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>Log the odometer.</summary>
/// <param name="EndMi">The reading in miles; null: as read before tonight, else the start, for a van that did not move.</param>
/// <param name="FuelGal">US gallons filled; null or 0: none.</param>
/// <param name="Sure">Record it although it was doubted.</param>
public sealed record LogMileage(Code<Van> Van, decimal? EndMi, decimal? FuelGal = null, string? FuelGrade = null, bool Sure = false)
    : CloseoutCommand(Van), IAskedAgain
{
    public override Step? Step => DayBook.Step.Mileage;

    public ICommand Surely() => this with { Sure = true };

    protected override Decision Decide(Depot depot, Shift shift)
    {
        var (start, units) = (depot.Van(shift.Van).OdometerMi, depot.Setup.Units);
        var end = EndMi ?? shift.Mileage?.EndMi ?? start;
        if ((Given.Range(T("The odometer"), end, 0, Refusal.MostMiles, "odometer") ?? NoFill() ?? NoGrade()) is { } refused)
            return refused;

        if (units.Metric && units.Distance(end) == units.Distance(start))
        {
            // The same kilometre as this morning: the van did not move, whatever the rounding to miles says.
            end = start;
        }

        if (end - start > Refusal.MostMilesADay)
        {
            return MileageRefusal.TooFarForADay(units.Distance(end), units.Distance(start), units.Distance(Refusal.MostMilesADay))
                with { About = "odometer" };
        }

        var fuel = FuelGal is 0 ? null : FuelGal;
        return !Sure && MileageDoubts.Of(depot, shift, new(start, end, fuel, FuelGrade)) is { } doubt
            ? doubt
            : new MileageLogged(shift.Van, shift.Technician, start, end, fuel, FuelGrade, Odometer.IsOdd(depot, shift.Van, start, end));
    }

    private Refusal? NoFill() => FuelGal is { } fuel && fuel is < 0 or > Refusal.MostGallons
        ? Refusal.OutOfRange(T("Fuel in gallons"), FuelGal!.Value, 0, Refusal.MostGallons) with { About = "fuel" }
        : null;

    private Refusal? NoGrade() => FuelGrade is { Length: > 0 } grade ? Given.Words(T("the fuel grade"), grade, "grade") : null;
}

/// <summary>What makes a reading look wrong.</summary>
public static class Odometer
{
    /// <summary>Whether a reading lies below the start, or beyond what the van ever does in a day.</summary>
    public static bool IsOdd(Depot depot, Code<Van> van, decimal start, decimal end) =>
        end < start || end - start > DrivingHabit.FarOf(depot, van);

    /// <summary>
    /// The readings that two neighbouring digits swapped make of it, in whole units of the screen, that would not be odd; of
    /// several the one nearest to the van's usual day. Null: none.
    /// </summary>
    public static decimal? Swapped(Depot depot, Code<Van> van, decimal start, decimal end)
    {
        var units = depot.Setup.Units;
        var typed = units.Distance(end).Split(' ')[0].ToCharArray();
        var usual = start + (DrivingHabit.Of(depot, van)?.MedianMi ?? 0);
        return Enumerable.Range(0, Math.Max(0, typed.Length - 1))
            .Where(i => typed[i] != typed[i + 1])
            .Select(i =>
                units.Miles(
                    decimal.Parse(new string([.. typed[..i], typed[i + 1], typed[i], .. typed[(i + 2)..]]), CultureInfo.InvariantCulture)))
            .Where(mi => !IsOdd(depot, van, start, mi) && mi <= Refusal.MostMiles)
            .OrderBy(mi => Math.Abs(mi - usual))
            .Select(mi => (decimal?)mi)
            .FirstOrDefault();
    }
}
