using Closeout.People;
using Closeout.Rules;
using static Closeout.Tests.People.TinyPeople;

namespace Closeout.Tests.People;

/// <summary>How each refusal of a PIN is met. <see cref="PinRefusalTests"/> fails when one of <see cref="PinRefusal"/> is missing here.</summary>
public sealed record PinMet(string Factory, string Code, Func<Refusal?> When)
{
    public override string ToString() => Code;
}

public static class PinRefusalCatalogue
{
    public static IReadOnlyList<PinMet> All { get; } =
    [
        new(nameof(PinRefusal.TooShort), "pin-too-short", () => Own("gravel7")),
        new(nameof(PinRefusal.TooLong), "pin-too-long", () => Own(string.Concat(Enumerable.Range(10, 33)))),
        new(nameof(PinRefusal.Repeats), "pin-repeats", () => Own("71717171")),
        new(nameof(PinRefusal.Runs), "pin-runs", () => Own("1234abcd")),
        new(nameof(PinRefusal.IsADate), "pin-is-a-date", () => Own("19900412")),
        new(nameof(PinRefusal.IsACardNumber), "pin-is-a-card-number", () => Own("4111 1111 1111 1111")),
        new(nameof(PinRefusal.IsASocialSecurityNumber), "pin-is-a-social-security-number", () => Own("219-09-9999")),
        new(nameof(PinRefusal.HasYourName), "pin-has-your-name", () => Own("tess+gravel")),
        new(nameof(PinRefusal.NotTheSame), "pin-not-the-same", PinRefusal.NotTheSame),
        new(nameof(PinRefusal.Wrong), "wrong-pin", () => PinRefusal.Wrong(WithPins().Person("T1"), 3)),
        new(nameof(PinRefusal.Wait), "pin-waits", () => WithPins().Wrong(3).At(61)),
        new(nameof(PinRefusal.KioskRests), "kiosk-rests", () => WithPins().Wrong(9).Did(270, new NoteRight(Tiny.T1, Bay)).Wrong(9).Did(270, new NoteRight(Tiny.T1, Bay)).Wrong(2).At(60)),
        new(nameof(PinRefusal.Locked), "pin-locked", () => WithPins().Wrong(10).At(9_000)),
        new(nameof(PinRefusal.LeadHasNone), "lead-has-no-pin", () => PinRefusal.LeadHasNone(Tiny.Opened().Person("L1"))),
        new(nameof(PinRefusal.HasNone), "has-no-pin", () => PinRefusal.HasNone(Tiny.Opened().Person("T1"))),
        new(nameof(PinRefusal.ChangedMeanwhile), "pin-changed-meanwhile", () => WithPins().Did(9, new ResetPin(Tiny.T1, Tiny.Lead)).Refuses(new ChangePin(Tiny.T1, Known, Known, true))),
        new(nameof(PinRefusal.NothingToReset), "no-pin-to-reset", () => WithPins().Refuses(new ResetPin(Tiny.T2, Tiny.Lead))),
        new(nameof(PinRefusal.NotTheFirst), "not-the-first-pin", () => TwoLeads().Refuses(new FirstPin(new("L2"), Known))),
        new(nameof(PinRefusal.NoneInARehearsal), "no-pins-in-a-rehearsal", () => (Tiny.Opened() with { Rehearsal = true }).Refuses(new ResetPin(Tiny.T1, Tiny.Lead))),
        new(nameof(Refusal.OnlyALead), "only-a-lead", () => WithPins().Refuses(new IssuePin(Tiny.T2, Known, Tiny.T1))),
        new(nameof(Refusal.OnlyALead), "only-a-lead", () => WithPins().Refuses(new ResetPin(Tiny.T1, Tiny.T1))),
        new(nameof(Refusal.OnlyALead), "only-a-lead", () => Tiny.Opened().Refuses(new FirstPin(Tiny.T1, Known))),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", () => WithPins().Refuses(new ResetPin(new("T9"), Tiny.Lead))),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", () => WithPins().Refuses(new IssuePin(Tiny.T1, Known, new("L9")))),
    ];

    private static Closeout.DayBook.Depot TwoLeads()
    {
        var depot = WithPins();
        return depot with { Setup = depot.Setup with { Crew = [.. depot.Setup.Crew, new(new("L2"), "Hale", true, null, [])] } };
    }

    private static Refusal? Own(string pin) => PinRules.Own(pin, Tiny.Setup.Find(Tiny.T1)!);
}
