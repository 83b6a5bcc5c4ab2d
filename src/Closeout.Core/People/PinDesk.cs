using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.People;

/// <summary>What is asked to be recorded of somebody's PIN. Never the PIN itself.</summary>
public abstract record PinCommand(Code<Technician> Person);

/// <summary>Somebody without a PIN takes one.</summary>
/// <param name="Issued">Whether the kiosk drew it.</param>
public sealed record TakePin(Code<Technician> Person, PinHash Hash, bool Issued) : PinCommand(Person);

/// <summary>Somebody who typed the old one takes another.</summary>
/// <param name="Old">What the PIN that was typed was held against.</param>
/// <param name="Issued">Whether the kiosk drew the new one.</param>
public sealed record ChangePin(Code<Technician> Person, PinHash Old, PinHash Hash, bool Issued) : PinCommand(Person);

/// <summary>A lead issues one, in place of an old one too.</summary>
public sealed record IssuePin(Code<Technician> Person, PinHash Hash, Code<Technician> Lead) : PinCommand(Person);

/// <summary>A lead takes a PIN and its failures away: the person gets a new one.</summary>
public sealed record ResetPin(Code<Technician> Person, Code<Technician> Lead) : PinCommand(Person);

/// <summary>A lead's PIN from outside the kiosk, while no other lead has one that works: the first, or another for the only lead who forgot it.</summary>
public sealed record FirstPin(Code<Technician> Person, PinHash Hash) : PinCommand(Person);

/// <summary>A wrong PIN was typed.</summary>
public sealed record NoteWrong(Code<Technician> Person, string Kiosk) : PinCommand(Person);

/// <summary>The right PIN was typed.</summary>
public sealed record NoteRight(Code<Technician> Person, string Kiosk) : PinCommand(Person);

/// <summary>Who gets a PIN from whom. Whether the lead named is the lead who stands there was asked before.</summary>
public static class PinDesk
{
    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, PinCommand command)
    {
        if (depot.Setup.Find(command.Person) is not { } person)
        {
            return Refusal.NoSuchTechnician(command.Person);
        }

        if (depot.Rehearsal)
        {
            return PinRefusal.NoneInARehearsal();
        }

        var now = depot.Pins.Of(person.Code);
        return command switch
        {
            TakePin when now.Hash is not null => PinRefusal.HasOne(person),
            TakePin when person.IsLead => PinRefusal.LeadHasNone(person),
            TakePin c => new PinSet(person.Code, c.Hash, c.Issued, null),
            ChangePin c when now.Hash != c.Old => PinRefusal.ChangedMeanwhile(person),
            ChangePin c => new PinSet(person.Code, c.Hash, c.Issued, null),
            FirstPin when !person.IsLead => Refusal.OnlyALead(person, "gets the first PIN"),
            FirstPin when depot.Setup.Crew.FirstOrDefault(t => t.IsLead && t.Code != person.Code && depot.Pins.Of(t.Code).IsGood) is { } other => PinRefusal.NotTheFirst(person, other),
            FirstPin c => new PinSet(person.Code, c.Hash, Issued: true, null),
            IssuePin c => Given.Lead(depot.Setup, c.Lead, "issues a PIN") is { } refused ? refused : new PinSet(person.Code, c.Hash, Issued: true, depot.Setup.Find(c.Lead)!.Code),
            ResetPin c when Given.Lead(depot.Setup, c.Lead, "resets a PIN") is { } refused => refused,
            ResetPin when now.Hash is null => PinRefusal.NothingToReset(person),
            ResetPin c => new PinReset(person.Code, depot.Setup.Find(c.Lead)!.Code),
            NoteWrong or NoteRight when now.Hash is null => PinRefusal.ChangedMeanwhile(person),
            NoteWrong or NoteRight when now.IsLocked => PinRefusal.Locked(person, now.Failures),
            NoteWrong c => new PinFailed(person.Code, c.Kiosk),
            NoteRight c => new PinPassed(person.Code, c.Kiosk),
            _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
        };
    }
}
