using Closeout.DayBook;

namespace Closeout.Shifts;

/// <summary>The rules of reading the odometer and the fuel slip.</summary>
public static class Odometer
{
    public static Decision Read(Depot depot, Shift shift, LogMileage command)
    {
        var start = depot.Van(shift.Van).OdometerMi;
        var end = command.EndMi ?? shift.Mileage?.EndMi ?? start;
        if (end is < 0 or > Refusal.MostMiles)
        {
            return Refusal.OutOfRange("The odometer", end, 0, Refusal.MostMiles);
        }

        if (command.FuelGal is { } fuel && fuel is <= 0 or > Refusal.MostGallons)
        {
            return Refusal.OutOfRange("Fuel in gallons", command.FuelGal!.Value, 0.001m, Refusal.MostGallons);
        }

        if (command.FuelGrade is { } grade && grade.Length > Refusal.MostWords)
        {
            return Refusal.TooManyWords("the fuel grade", grade.Length);
        }

        var units = depot.Setup.Units;
        if (units.Metric && units.Distance(end) == units.Distance(start))
        {
            // The same kilometre as this morning: the van did not move, whatever the rounding to miles says.
            end = start;
        }

        var odd = end < start || end - start > Refusal.FarMiles;
        if (odd && !command.Sure)
        {
            return end < start
                ? Refusal.BelowStart(units.Distance(end), units.Distance(start))
                : Refusal.TooFar(units.Distance(end), units.Distance(start), units.Distance(end - start));
        }

        return new MileageLogged(shift.Van, shift.Technician, start, end, command.FuelGal, command.FuelGrade, odd);
    }
}
