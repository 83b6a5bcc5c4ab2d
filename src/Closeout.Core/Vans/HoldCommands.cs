namespace Closeout.Vans;

/// <summary>
/// What a lead asks to have recorded of a van, whatever its close-out. The book says that a lead decided, and why; it does
/// not say that the van is safe.
/// </summary>
public abstract record HoldCommand(Code<Van> Van, Code<Technician> Lead) : ICommand
{
    /// <summary>What a lead does by it, as part of a sentence.</summary>
    protected abstract string Does { get; }

    public Decision Decide(Depot depot) =>
        depot.Setup.Find(Van) is not { } van ? Refusal.NoSuchVan(Van)
        : Given.Lead(depot.Setup, Lead, Does) is { } refused ? refused
        : Decide(depot, van, depot.Setup.Find(Lead)!.Code);

    protected abstract Decision Decide(Depot depot, Van van, Code<Technician> lead);
}

/// <summary>Lift all holds of the van; open incidents stay open.</summary>
public sealed record LiftHolds(Code<Van> Van, string Why, Code<Technician> Lead) : HoldCommand(Van, Lead)
{
    protected override string Does => "lifts a hold";

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead) =>
        Readiness.Standing(depot, van.Code) is not { Count: > 0 } holds ? Refusal.NotHeld(van)
        : Given.Words("why the hold is lifted", Why) is { } silent ? silent
        : new HoldsLifted(van.Code, [.. holds.Select(h => h.Reason)], Why.Trim(), lead);
}

/// <summary>Put the van on hold.</summary>
public sealed record PlaceHold(Code<Van> Van, string Reason, Code<Technician> Lead) : HoldCommand(Van, Lead)
{
    protected override string Does => "puts a van on hold";

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead) =>
        Given.Words("why the van is held", Reason) is { } silent ? silent
        : Readiness.Standing(depot, van.Code).Any(h => h.Reason == Reason.Trim())
            ? Refusal.HeldAlready(van, Reason.Trim()) with { About = "reason" }
        : new HoldPlaced(van.Code, Reason.Trim(), lead);
}

/// <summary>Close an incident of the van.</summary>
public sealed record CloseIncident(Code<Van> Van, int Number, string Why, Code<Technician> Lead) : HoldCommand(Van, Lead)
{
    protected override string Does => "closes an incident";

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead)
    {
        var open = Incidents.Open(depot, van.Code).Select(i => i.Number).ToList();
        return !open.Contains(Number) ? Refusal.NoSuchIncident(van, Number, open) with { About = "number" }
            : Given.Words("why it is closed", Why) is { } silent ? silent
            : new IncidentClosed(van.Code, Number, Why.Trim(), lead);
    }
}
