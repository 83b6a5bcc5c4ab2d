namespace Closeout.Leads;

/// <summary>Look over a signed close-out.</summary>
public sealed record CheckCloseout(Code<Van> Van, Code<Technician> Lead) : LeadCommand(Lead)
{
    protected override string Does => T("checks a close-out");

    protected override Decision Decide(Depot depot, Technician lead) => depot.Setup.Find(Van) is not { } van
        ? Refusal.NoSuchVan(Van)
        : depot.Shift(van.Code) switch
        {
            not { IsClosed: true } => LeadRefusal.NotSignedYet(van),
            { Checked: { } before } => LeadRefusal.CheckedAlready(van, before.Lead),
            var shift when shift.Technician == lead.Code || shift.SignedBy == lead.Code => LeadRefusal.OwnCloseout(van, lead),
            _ => new CloseoutChecked(van.Code, lead.Code),
        };
}

/// <summary>Open a signed close-out again.</summary>
public sealed record Reopen(Code<Van> Van, string Why, Code<Technician> Lead) : LeadCommand(Lead)
{
    protected override string Does => T("reopens a close-out");

    protected override Decision Decide(Depot depot, Technician lead)
    {
        if (depot.Setup.Find(Van) is not { } van)
            return Refusal.NoSuchVan(Van);

        // What was loaded since was taken on these counts: changing them under it would be guessing.
        var loaded = depot.Stock.Loaded.Keys.Count(k => k.Van == van.Code);
        return depot.Shift(van.Code) is not { IsClosed: true } ? LeadRefusal.NotSignedYet(van)
            : loaded > 0 ? LeadRefusal.LoadedSince(van, loaded)
            : Given.Words(T("why it is reopened"), Why) is { } silent ? silent
            : new CloseoutReopened(van.Code, Why.Trim(), lead.Code);
    }
}

/// <summary>Sign a close-out for whoever brought the van in. What was not answered was confirmed as booked before.</summary>
/// <param name="For">Who brought it in.</param>
public sealed record SignFor(Code<Van> Van, Code<Technician> For, string Why, Code<Technician> Lead) : LeadCommand(Lead)
{
    protected override string Does => T("signs for somebody else");

    /// <summary>Whether it may be done at all, before anything is confirmed as booked; null: yes.</summary>
    public Refusal? NotAllowed(Depot depot) =>
        Given.Lead(depot.Setup, Lead, Does)
        ?? (depot.Setup.Find(For) is null ? Refusal.NoSuchTechnician(For) with { About = "for" } : null)
        ?? Given.Words(T("why it is signed for somebody else"), Why)
        ?? (depot.Shift(Van) is { } shift ? Another(depot, depot.Setup.Van(Van), shift) : null);

    protected override Decision Decide(Depot depot, Technician lead)
    {
        if (depot.Setup.Find(Van) is not { } van)
            return Refusal.NoSuchVan(Van);

        return depot.Shift(van.Code) switch
        {
            null => Refusal.NotIn(van),
            { IsClosed: true } closed => Refusal.AlreadyClosed(van, closed),
            var shift when Another(depot, van, shift) is { } another => another,
            { Step: not Step.SignOff and var step } => Refusal.TooEarly(van, step, Step.SignOff),
            var shift => Given.Words(T("why it is signed for somebody else"), Why) is { } silent
                ? silent
                : new SignedFor(van.Code, shift.Technician, Why.Trim(), lead.Code),
        };
    }

    private Refusal? Another(Depot depot, Van van, Shift shift) => shift.Technician == For
        ? null
        : LeadRefusal.BroughtInBy(van, depot.Setup.Find(shift.Technician)!, For) with { About = "for" };
}

/// <summary>Explain why a van is not closed out.</summary>
/// <param name="StayedIn">It never went out.</param>
public sealed record ExplainVan(Code<Van> Van, bool StayedIn, string Why, Code<Technician> Lead) : LeadCommand(Lead)
{
    protected override string Does => T("excuses a van");

    protected override Decision Decide(Depot depot, Technician lead) => depot.Setup.Find(Van) is not { } van
        ? Refusal.NoSuchVan(Van)
        : (depot.Shift(van.Code), StayedIn) switch
        {
            ({ IsClosed: true } shift, _) => Refusal.AlreadyClosed(van, shift),
            ({ } shift, true) => Refusal.AlreadyIn(van, shift),
            _ => Given.Words(T("why it is not closed"), Why) is { } silent
                ? silent
                : new VanExplained(van.Code, StayedIn, Why.Trim(), lead.Code),
        };
}
