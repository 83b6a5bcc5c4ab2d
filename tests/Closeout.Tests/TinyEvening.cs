using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Turning;
using FluentAssertions;

namespace Closeout.Tests;

/// <summary>Plays commands and entries on a depot, with a clock that moves a minute with each entry.</summary>
public static class TinyEvening
{
    /// <summary>The depot after one more entry, whatever the rules say of it.</summary>
    public static Depot Take(this Depot depot, Entry entry)
    {
        var number = depot.Number + 1;
        return depot.Apply(new Recorded(number, Tiny.FiveOClock.AddMinutes(number), entry));
    }

    /// <summary>The depot after these commands, each of which must be accepted.</summary>
    public static Depot Did(this Depot depot, params ICommand[] commands) =>
        commands.Aggregate(depot, (now, command) => now.Take(now.Accepts(command)));

    /// <summary>The entry that the command becomes.</summary>
    public static Entry Accepts(this Depot depot, ICommand command)
    {
        var decision = command.Decide(depot);
        decision.Refusal.Should().BeNull($"{command} is lawful");
        return decision.Entry!;
    }

    /// <summary>The refusal that the command meets.</summary>
    public static Refusal Refuses(this Depot depot, ICommand command)
    {
        var decision = command.Decide(depot);
        decision.Entry.Should().BeNull($"{command} is not lawful");
        return decision.Refusal!;
    }

    /// <summary>The command that answers the step at which the van stands, as booked and with nothing found.</summary>
    public static ICommand Answer(this Depot depot, Code<Van> van) => depot.Shift(van)?.Step switch
    {
        null => new ComeIn(van, Tiny.T1),
        Step.Leftovers => new ConfirmLeftovers(van),
        Step.Cardboard => new ConfirmCardboard(van),
        Step.Mileage => new LogMileage(van, depot.Van(van).OdometerMi + 40, Sure: true),
        Step.Damage => new ConfirmDamage(van, true),
        Step.Kit => new ConfirmKit(van),
        Step.Weekly => new CheckWeekly(van, null, 4, true),
        Step.SignOff or Step.Closed => new Sign(van, Tiny.T1),
        var step => throw new InvalidOperationException($"nothing answers {step}"),
    };

    /// <summary>The depot with the van come in and every step before this one answered as booked.</summary>
    public static Depot At(this Depot depot, Code<Van> van, Step step)
    {
        while (depot.Shift(van) is not { } shift || shift.Step < step)
        {
            depot = depot.Did(depot.Answer(van));
        }

        return depot;
    }

    /// <summary>The depot with other things to plan from.</summary>
    public static Depot Planned(this Depot depot, Func<PlanningState, PlanningState> change) => depot with { Planning = change(depot.Planning) };

    /// <summary>The depot with another stock.</summary>
    public static Depot Stocked(this Depot depot, Func<StockState, StockState> change) => depot with { Stock = change(depot.Stock) };

    /// <summary>The depot of the page that follows, on the next day unless said.</summary>
    public static Depot NextDay(this Depot depot, DateOnly? date = null) =>
        Depot.Open(new Recorded(depot.Number + 1, Tiny.FiveOClock, NextPage.After(depot, date ?? depot.Date.AddDays(1))));
}
