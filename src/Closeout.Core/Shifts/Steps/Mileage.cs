using System.Globalization;
using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>Log the odometer.</summary>
/// <param name="EndMi">The reading in miles; null: as read before tonight, else the start, for a van that did not move.</param>
/// <param name="Sure">Record it although it lies below the start or implausibly far.</param>
public sealed record LogMileage(Code<Van> Van, decimal? EndMi, decimal? FuelGal = null, string? FuelGrade = null, bool Sure = false)
    : CloseoutCommand(Van), IAskedAgain
{
    /// <summary>The least that a pump shows, in US gallons.</summary>
    private const decimal LeastGallons = 0.001m;

    public override Step? Step => DayBook.Step.Mileage;

    public ICommand Surely() => this with { Sure = true };

    protected override Decision Decide(Depot depot, Shift shift)
    {
        var (start, units) = (depot.Van(shift.Van).OdometerMi, depot.Setup.Units);
        var end = EndMi ?? shift.Mileage?.EndMi ?? start;
        if ((Given.Range("The odometer", end, 0, Refusal.MostMiles, "odometer") ?? NoFill() ?? NoGrade()) is { } refused)
            return refused;

        if (units.Metric && units.Distance(end) == units.Distance(start))
        {
            // The same kilometre as this morning: the van did not move, whatever the rounding to miles says.
            end = start;
        }

        return !Sure && Odometer.Doubt(depot, depot.Setup.Van(shift.Van), start, end, FuelGrade) is { } doubt
            ? doubt
            : new MileageLogged(shift.Van, shift.Technician, start, end, FuelGal, FuelGrade, Odometer.IsOdd(depot, shift.Van, start, end));
    }

    private Refusal? NoFill() => FuelGal is { } fuel && fuel is <= 0 or > Refusal.MostGallons
        ? Refusal.OutOfRange("Fuel in gallons", FuelGal!.Value, LeastGallons, Refusal.MostGallons) with { About = "fuel" }
        : null;

    private Refusal? NoGrade() => FuelGrade is { Length: > 0 } grade ? Given.Words("the fuel grade", grade, "grade") : null;
}

/// <summary>What makes a reading or a fuel slip look wrong.</summary>
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

    /// <summary>Everything that looks wrong, in one question: one answer confirms all of it.</summary>
    public static Refusal? Doubt(Depot depot, Van van, decimal start, decimal end, string? grade)
    {
        var units = depot.Setup.Units;
        Refusal? odd = null;
        if (IsOdd(depot, van.Code, start, end))
        {
            var instead = Swapped(depot, van.Code, start, end) is { } mi ? (units.Distance(mi), mi) : ((string, decimal)?)null;
            var (from, to) = (units.Distance(start), units.Distance(end));
            var usual = DrivingHabit.Of(depot, van.Code) is { } habit ? units.Distance(habit.MedianMi) : null;
            odd = end < start
                ? Refusal.BelowStart(to, from, instead)
                : Refusal.TooFar(to, from, units.Distance(end - start), usual, instead);
            odd = odd with { About = "odometer" };
        }

        var wrong = FuelGrade.Of(van.Fuel, grade) == FuelMatch.Fits ? null : Refusal.WrongFuel(van, grade!) with { About = "grade" };
        return (odd, wrong) switch
        {
            ({ } o, { } w) => o with { Text = o.Text + " " + w.Text },
            var (o, w) => o ?? w,
        };
    }
}
