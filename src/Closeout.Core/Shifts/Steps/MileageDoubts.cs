using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>What was read and filled tonight, in miles and US gallons.</summary>
/// <param name="FuelGal">Null: none was filled.</param>
public readonly record struct Reading(decimal StartMi, decimal EndMi, decimal? FuelGal, string? Grade)
{
    public decimal DistanceMi => EndMi - StartMi;
}

/// <summary>
/// Everything that looks wrong with a reading, in one question: one answer confirms all of it. What contradicts an earlier step of the
/// same evening is asked too.
/// </summary>
public static class MileageDoubts
{
    /// <summary>A fill that is so many times better or worse than the van's own economy is asked. Partial fills do not reach it.</summary>
    private const decimal Absurd = 3m;

    /// <summary>Miles below which a fill says nothing of the economy.</summary>
    private const decimal LeastMi = 20m;

    /// <summary>The least that a pump shows.</summary>
    private const decimal LeastGallons = 0.001m;

    /// <summary>The doubts in one; null: none.</summary>
    public static Refusal? Of(Depot depot, Shift shift, Reading read)
    {
        var van = depot.Setup.Van(shift.Van);
        Refusal?[] all = [Odd(depot, van, read), OtherSteps(depot, shift, read), Fuel(depot, van, read), Grade(van, read.Grade)];
        var doubts = all.OfType<Refusal>().ToList();
        return doubts.Count == 0 ? null : doubts[0] with { Text = string.Join(' ', doubts.Select(d => d.Text)) };
    }

    private static Refusal? Odd(Depot depot, Van van, Reading read)
    {
        var (units, start, end) = (depot.Setup.Units, read.StartMi, read.EndMi);
        if (!Odometer.IsOdd(depot, van.Code, start, end))
            return null;

        var instead = Odometer.Swapped(depot, van.Code, start, end) is { } mi ? (units.Distance(mi), mi) : ((string, decimal)?)null;
        var usual = DrivingHabit.Of(depot, van.Code) is { } habit ? units.Distance(habit.MedianMi) : null;
        return (end < start
            ? MileageRefusal.BelowStart(units.Distance(end), units.Distance(start), instead)
            : MileageRefusal.TooFar(units.Distance(end), units.Distance(start), units.Distance(read.DistanceMi), usual, instead))
            with { About = "odometer" };
    }

    private static Refusal? OtherSteps(Depot depot, Shift shift, Reading read)
    {
        var units = depot.Setup.Units;
        var used = shift.Counts.Values.Sum(c => Math.Max(0, c.Used));
        var visits = depot.Planning.Bookings.Where(b => b.Date == depot.Date && b.Van == shift.Van).Sum(b => b.Visits);
        return read.DistanceMi == 0 && used > 0 ? MileageRefusal.UsedNotDriven(used) with { About = "odometer" }
            : read.DistanceMi == 0 && read.FuelGal is { } fuel
                ? MileageRefusal.FueledNotDriven($"{units.Fuel(fuel)} {units.FuelUnit}") with { About = "odometer" }
            : read.DistanceMi >= 1 && used == 0 && visits > 0 ? MileageRefusal.DrivenNotUsed(units.Distance(read.DistanceMi), visits)
            : null;
    }

    private static Refusal? Fuel(Depot depot, Van van, Reading read)
    {
        if (read.FuelGal is not { } gal)
            return null;

        var units = depot.Setup.Units;
        var shown = $"{units.Fuel(gal)} {units.FuelUnit}";
        if (van.TankGal is { } tank && gal > tank)
            return MileageRefusal.MoreThanTheTank(shown, $"{units.Fuel(tank)} {units.FuelUnit}") with { About = "fuel" };

        var days = depot.Van(van.Code).Driven;
        if (FuelEconomy.Of(days) is not { Fills: >= FuelEconomy.FewFills } usual)
            return null;

        var distance = read.EndMi - days.Last(d => d.FuelGal > 0).EndMi;
        var economy = distance / Math.Max(gal, LeastGallons);
        return distance < LeastMi ? null : economy > Absurd * usual.MilesPerGallon || economy < usual.MilesPerGallon / Absurd
            ? MileageRefusal.OddEconomy(shown, units.Economy(economy), units.Economy(usual.MilesPerGallon)) with { About = "fuel" }
            : null;
    }

    private static Refusal? Grade(Van van, string? grade) => FuelGrade.Of(van.Fuel, grade) == FuelMatch.Fits ? null
        : MileageRefusal.WrongFuel(van, grade!) with { About = "grade" };
}
