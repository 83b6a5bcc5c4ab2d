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

/// <summary>Lift a hold of the van, or all; open incidents stay open.</summary>
/// <param name="Number">Which, from 1, in the order in which they stand; null: all.</param>
/// <param name="Sure">Lift several for one reason without asking again.</param>
public sealed record LiftHolds(Code<Van> Van, string Why, Code<Technician> Lead, int? Number = null, bool Sure = false)
    : HoldCommand(Van, Lead), IAskedAgain
{
    protected override string Does => T("lifts a hold");

    public ICommand Surely() => this with { Sure = true };

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead)
    {
        var holds = Readiness.Standing(depot, van.Code);
        return holds.Count == 0 ? Refusal.NotHeld(van)
            : Number is { } asked && (asked < 1 || asked > holds.Count)
                ? Refusal.NoSuchHold(van, asked, holds.Count) with { About = "number" }
            : Given.Words(T("why the hold is lifted"), Why) is { } silent ? silent
            : Number is null && holds.Count > 1 && !Sure ? Refusal.AllHolds(van, holds.Count) with { About = "number" }
            : new HoldsLifted(van.Code, [.. (Number is { } n ? [holds[n - 1]] : holds).Select(h => h.Reason)], Why.Trim(), lead);
    }
}

/// <summary>Put the van on hold.</summary>
public sealed record PlaceHold(Code<Van> Van, string Reason, Code<Technician> Lead) : HoldCommand(Van, Lead)
{
    protected override string Does => T("puts a van on hold");

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead) =>
        Given.Words(T("why the van is held"), Reason) is { } silent ? silent
        : Readiness.Standing(depot, van.Code).Any(h => h.Reason == Reason.Trim())
            ? Refusal.HeldAlready(van, Reason.Trim()) with { About = "reason" }
        : new HoldPlaced(van.Code, Reason.Trim(), lead);
}

/// <summary>Close an incident of the van.</summary>
public sealed record CloseIncident(Code<Van> Van, int Number, string Why, Code<Technician> Lead) : HoldCommand(Van, Lead)
{
    protected override string Does => T("closes an incident");

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead)
    {
        var open = Incidents.Open(depot, van.Code).Select(i => i.Number).ToList();
        return !open.Contains(Number) ? Refusal.NoSuchIncident(van, Number, open) with { About = "number" }
            : Given.Words(T("why it is closed"), Why) is { } silent ? silent
            : new IncidentClosed(van.Code, Number, Why.Trim(), lead);
    }
}

/// <summary>Correct the reading from which the van's next day is counted, where an earlier one was wrong.</summary>
/// <param name="Mi">As the odometer reads now, in miles.</param>
/// <param name="Sure">Record it although it lies far from what is on record.</param>
public sealed record CorrectOdometer(Code<Van> Van, decimal Mi, string Why, Code<Technician> Lead, bool Sure = false)
    : HoldCommand(Van, Lead), IAskedAgain
{
    public ICommand Surely() => this with { Sure = true };

    protected override string Does => T("corrects an odometer");

    protected override Decision Decide(Depot depot, Van van, Code<Technician> lead) =>
        depot.Shift(van.Code)?.Mileage is not null ? Refusal.ReadTonight(van)
        : Given.Range(T("The odometer"), Mi, 0, Refusal.MostMiles, "odometer") is { } refused ? refused
        : Given.Words(T("why it is corrected"), Why) is { } silent ? silent
        : !Sure && depot.Van(van.Code).OdometerMi is var now && Math.Abs(Mi - now) > Refusal.MostMilesADay
            ? Refusal.FarCorrection(depot.Setup.Units.Distance(Mi), depot.Setup.Units.Distance(now)) with { About = "odometer" }
        : new OdometerCorrected(van.Code, depot.Van(van.Code).OdometerMi, Mi, Why.Trim(), lead);
}
