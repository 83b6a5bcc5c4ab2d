namespace Closeout.People;

/// <summary>
/// What is asked to be recorded of somebody's PIN; never the PIN itself. Whether the lead named is the lead who stands there
/// was asked before.
/// </summary>
public abstract record PinCommand(Code<Technician> Person) : ICommand
{
    public Decision Decide(Depot depot) =>
        depot.Setup.Find(Person) is not { } person ? Refusal.NoSuchTechnician(Person)
        : depot.Rehearsal ? PinRefusal.NoneInARehearsal()
        : Decide(depot, person, depot.Pins.Of(person.Code));

    protected abstract Decision Decide(Depot depot, Technician person, PersonPin now);
}

/// <summary>Somebody who typed the old one takes another.</summary>
/// <param name="Old">What the PIN that was typed was held against.</param>
/// <param name="Issued">Whether the kiosk drew the new one.</param>
public sealed record ChangePin(Code<Technician> Person, PinHash Old, PinHash Hash, bool Issued) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now) =>
        now.Hash != Old ? PinRefusal.ChangedMeanwhile(person) : new PinSet(person.Code, Hash, Issued, null);
}

/// <summary>A lead issues one, in place of an old one too.</summary>
public sealed record IssuePin(Code<Technician> Person, PinHash Hash, Code<Technician> Lead) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now) =>
        Given.Lead(depot.Setup, Lead, T("issues a PIN")) is { } refused
            ? refused
            : new PinSet(person.Code, Hash, Issued: true, depot.Setup.Find(Lead)!.Code);
}

/// <summary>A lead takes a PIN and its failures away: nobody has that name until a lead issues a new one.</summary>
public sealed record ResetPin(Code<Technician> Person, Code<Technician> Lead) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now) =>
        Given.Lead(depot.Setup, Lead, T("resets a PIN")) is { } refused ? refused
        : now.Hash is null ? PinRefusal.NothingToReset(person)
        : new PinReset(person.Code, depot.Setup.Find(Lead)!.Code);
}

/// <summary>
/// A lead's PIN from outside the kiosk, while no other lead has one that works: the first, or another for the only lead who
/// forgot it.
/// </summary>
public sealed record FirstPin(Code<Technician> Person, PinHash Hash) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now)
    {
        var other = depot.Setup.Crew.FirstOrDefault(t => t.IsLead && t.Code != person.Code && depot.Pins.Of(t.Code).IsGood);
        return !person.IsLead ? Refusal.OnlyALead(person, T("gets the first PIN"))
            : other is not null ? PinRefusal.NotTheFirst(person, other)
            : new PinSet(person.Code, Hash, Issued: true, null);
    }
}

/// <summary>A wrong PIN was typed.</summary>
public sealed record NoteWrong(Code<Technician> Person, string Kiosk) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now) =>
        PinRefusal.NotTried(person, now) is { } refused ? refused : new PinFailed(person.Code, Kiosk);
}

/// <summary>The right PIN was typed after wrong ones.</summary>
public sealed record NoteRight(Code<Technician> Person, string Kiosk) : PinCommand(Person)
{
    protected override Decision Decide(Depot depot, Technician person, PersonPin now) =>
        PinRefusal.NotTried(person, now) is { } refused ? refused : new PinPassed(person.Code, Kiosk);
}
