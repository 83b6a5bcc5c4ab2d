using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Vans;

/// <summary>The rules of holding a van, lifting a hold, and closing an incident. The book says that a lead decided, and why; it does not say that the van is safe.</summary>
public static class VanDesk
{
    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, VanCommand command)
    {
        if (depot.Setup.Find(command.Van) is not { } van)
        {
            return Refusal.NoSuchVan(command.Van);
        }

        var (does, what, why) = command switch
        {
            LiftHolds c => ("lifts a hold", "why the hold is lifted", c.Why),
            PlaceHold c => ("puts a van on hold", "why the van is held", c.Reason),
            CloseIncident c => ("closes an incident", "why it is closed", c.Why),
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
        if (Given.Lead(depot.Setup, command.Lead, does) is { } refused)
        {
            return refused;
        }

        var lead = depot.Setup.Find(command.Lead)!.Code;
        IReadOnlyList<string> holds = [.. Readiness.Standing(depot, van.Code).Select(h => h.Reason)];
        if (command is LiftHolds && holds.Count == 0)
        {
            return Refusal.NotHeld(van);
        }

        if (command is CloseIncident { Number: var number } && Incidents.Open(depot, van.Code).All(i => i.Number != number))
        {
            return Refusal.NoSuchIncident(van, number, [.. Incidents.Open(depot, van.Code).Select(i => i.Number)]) with { About = "number" };
        }

        if (Given.Words(what, why) is { } silent)
        {
            return silent;
        }

        if (command is PlaceHold && holds.Contains(why.Trim()))
        {
            return Refusal.HeldAlready(van, why.Trim()) with { About = "reason" };
        }

        return command switch
        {
            LiftHolds => new HoldsLifted(van.Code, holds, why.Trim(), lead),
            PlaceHold => new HoldPlaced(van.Code, why.Trim(), lead),
            CloseIncident c => new IncidentClosed(van.Code, c.Number, why.Trim(), lead),
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
    }
}
