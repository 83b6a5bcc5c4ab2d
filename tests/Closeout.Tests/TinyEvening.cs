using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts;
using Closeout.Turning;
using Closeout.Vans;
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
    public static Depot Did(this Depot depot, params Command[] commands) =>
        commands.Aggregate(depot, (now, command) => now.Take(now.Accepts(command)));

    /// <summary>The entry that the command becomes.</summary>
    public static Entry Accepts(this Depot depot, Command command)
    {
        var decision = Decider.Decide(depot, command);
        decision.Refusal.Should().BeNull($"{command} is lawful");
        return decision.Entry!;
    }

    /// <summary>The refusal that the command meets.</summary>
    public static Refusal Refuses(this Depot depot, Command command)
    {
        var decision = Decider.Decide(depot, command);
        decision.Entry.Should().BeNull($"{command} is not lawful");
        return decision.Refusal!;
    }

    /// <summary>The command that answers the step at which the van stands, as booked and with nothing found.</summary>
    public static Command Answer(this Depot depot, Code<Van> van) => depot.Shift(van)?.Step switch
    {
        null => new ComeIn(van, Tiny.T1),
        Step.Leftovers => new ConfirmLeftovers(van),
        Step.Cardboard => new ConfirmCardboard(van),
        Step.Mileage => new LogMileage(van, depot.Van(van).OdometerMi + 40),
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

    /// <summary>The depot of the page that follows, on the next day unless said.</summary>
    public static Depot NextDay(this Depot depot, DateOnly? date = null) =>
        Depot.Open(new Recorded(depot.Number + 1, Tiny.FiveOClock, NextPage.After(depot, date ?? depot.Date.AddDays(1))));

    /// <summary>The depot after a lead's commands of a van, each of which must be accepted.</summary>
    public static Depot Did(this Depot depot, params VanCommand[] commands) =>
        commands.Aggregate(depot, (now, command) => now.Take(Accepted(command, VanDesk.Decide(now, command))));

    /// <summary>The depot after commands of the yard, each of which must be accepted.</summary>
    public static Depot Did(this Depot depot, params YardCommand[] commands) =>
        commands.Aggregate(depot, (now, command) => now.Take(Accepted(command, YardDecider.Decide(now, command))));

    /// <summary>The depot after a lead's commands, each of which must be accepted.</summary>
    public static Depot Did(this Depot depot, params LeadCommand[] commands) =>
        commands.Aggregate(depot, (now, command) => now.Take(Accepted(command, LeadDecider.Decide(now, command))));

    /// <summary>What any command comes to, whichever decider it is for.</summary>
    public static Decision Decides(this Depot depot, object command) => command switch
    {
        Command c => Decider.Decide(depot, c),
        StockCommand c => StockDecider.Decide(depot, c),
        YardCommand c => YardDecider.Decide(depot, c),
        VanCommand c => VanDesk.Decide(depot, c),
        LeadCommand c => LeadDecider.Decide(depot, c),
        _ => throw new InvalidOperationException($"no decider for {command}"),
    };

    private static Entry Accepted(object command, Decision decision)
    {
        decision.Refusal.Should().BeNull($"{command} is lawful");
        return decision.Entry!;
    }
}
