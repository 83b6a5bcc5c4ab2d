namespace Closeout.Leads;

/// <summary>What a lead asks to have recorded of close-outs and bookings.</summary>
public abstract record LeadCommand(Code<Technician> Lead) : ICommand
{
    /// <summary>What a lead does by it, as part of a sentence.</summary>
    protected abstract string Does { get; }

    public Decision Decide(Depot depot) => Given.Lead(depot.Setup, Lead, Does) is { } refused
        ? refused
        : Decide(depot, depot.Setup.Find(Lead)!);

    protected abstract Decision Decide(Depot depot, Technician lead);
}
