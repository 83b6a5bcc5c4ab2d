using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>PINs and the tries at them, by person and by kiosk.</summary>
public sealed record PinState(ImmutableDictionary<Code<Technician>, PersonPin> People, ImmutableDictionary<string, KioskTries> Kiosks)
{
    public static PinState Open(IEnumerable<PersonPin> people, IEnumerable<KioskTries> kiosks) =>
        new(people.ToImmutableDictionary(p => p.Person), kiosks.ToImmutableDictionary(k => k.Kiosk));

    public PersonPin Of(Code<Technician> person) => People.GetValueOrDefault(person) ?? new(person, null, false, 0, null);

    public KioskTries At(string kiosk) => Kiosks.GetValueOrDefault(kiosk) ?? new(kiosk, 0, []);

    /// <summary>
    /// Without the PINs of those whose role changes, or who leave the crew: what a technician took alone must not open a
    /// lead's desk, not even by way of a crew that did not have that technician.
    /// </summary>
    public PinState Staying(Setup before, Setup after) => this with
    {
        People = People.RemoveRange(
            People.Keys.Where(p => after.Find(p) is not { } now || before.Find(p) is not { } then || now.IsLead != then.IsLead)),
    };

    /// <summary>What an entry of the people does.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    public PinState Evolve(PinEntry entry, DateTimeOffset at) => entry switch
    {
        PinSet e => With(new PersonPin(e.Person, e.Hash, e.Issued, 0, null)),
        PinReset e when Of(e.Person).Hash is not null => With(new PersonPin(e.Person, null, false, 0, null)),
        PinFailed e when Of(e.Person) is { Hash: not null } own =>
            With(own with { Failures = own.Failures + 1, FailedAt = at }).Failed(At(e.Kiosk), at),
        PinPassed e when Of(e.Person) is { Hash: not null, IsLocked: false } own =>
            With(own with { Failures = 0, FailedAt = null }).With(At(e.Kiosk) with { InARow = 0 }),
        _ => throw new InvalidOperationException("it cannot stand here"),
    };

    private PinState Failed(KioskTries kiosk, DateTimeOffset at) =>
        With(kiosk with { InARow = kiosk.InARow + 1, Failed = [.. kiosk.Failed.Append(at).TakeLast(KioskTries.Most)] });

    private PinState With(PersonPin person) => this with { People = People.SetItem(person.Person, person) };

    private PinState With(KioskTries kiosk) => this with { Kiosks = Kiosks.SetItem(kiosk.Kiosk, kiosk) };
}
