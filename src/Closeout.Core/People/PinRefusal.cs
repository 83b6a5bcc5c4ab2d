namespace Closeout.People;

/// <summary>Why a PIN was not taken, or not given. None of them says a PIN.</summary>
public static class PinRefusal
{
    public static Refusal TooShort(int found) =>
        new("pin-too-short", T($"That PIN has {found} characters; use at least {PinRules.LeastOwn}, or press I for six digits."));

    public static Refusal TooLong(int found) =>
        new("pin-too-long", T($"That PIN has {found} characters; the limit is {PinRules.MostOwn}."));

    public static Refusal Repeats() =>
        new("pin-repeats", T("That PIN repeats. Choose another, or press I for six digits."));

    public static Refusal Runs() =>
        new("pin-runs", T("That PIN is a simple sequence. Choose another, or press I for six digits."));

    public static Refusal IsADate() =>
        new("pin-is-a-date", T("That PIN looks like a date. Choose another, or press I for six digits."));

    public static Refusal HasYourName(string name) =>
        new("pin-has-your-name", T($"That PIN contains \"{name}\" of your name or code. Choose another, or press I for six digits."));

    public static Refusal IsACardNumber() =>
        new("pin-is-a-card-number", T("That PIN looks like a card number. Choose another, or press I for six digits."));

    public static Refusal IsASocialSecurityNumber() =>
        new("pin-is-a-social-security-number",
            T("That PIN looks like a social security number. Choose another, or press I for six digits."));

    public static Refusal NotTheSame() =>
        new("pin-not-the-same", T("The two entries differ. Start over."));

    public static Refusal Wrong(Technician person, int failures) =>
        new("wrong-pin",
            T(
                $"Wrong PIN for {person.Code} {person.Name} ({failures} of {PersonPin.MostInARow}). Wait "
                    + $"{Seconds((int)PinTries.Wait(failures).TotalSeconds)}."));

    public static Refusal Wait(int failures, int seconds) =>
        new("pin-waits", T($"{failures} wrong in a row. Try again in {Seconds(seconds)}."));

    public static Refusal KioskRests(string kiosk, int failures, int seconds) =>
        new("kiosk-rests",
            T($"{failures} wrong PINs at {kiosk}: locked for {Seconds(seconds)}. Tell the lead, or use another kiosk."));

    public static Refusal Locked(Technician person, int failures) =>
        new("pin-locked",
            T($"The PIN of {person.Code} {person.Name} is locked after {failures} wrong tries. "
                + $"{(person.IsLead ? T("Another lead") : T("A lead"))} resets it: F9, then R.")
                + (person.IsLead ? T($" Without another lead: closeout first-pin {person.Code}.") : ""));

    /// <summary>Why a PIN that was typed cannot be noted, right or wrong; null: it can.</summary>
    internal static Refusal? NotTried(Technician person, PersonPin now) =>
        now.Hash is null ? ChangedMeanwhile(person) : now.IsLocked ? Locked(person, now.Failures) : null;

    public static Refusal LeadHasNone(Technician lead) =>
        new("lead-has-no-pin",
            T(
                $"{lead.Code} {lead.Name} has no PIN yet. Another lead issues one: F9, then I. Without another lead: closeout first-pin "
                    + $"{lead.Code}."));

    public static Refusal HasNone(Technician person) =>
        new("has-no-pin", T($"{person.Code} {person.Name} has no PIN yet. A lead issues one: F9 on the wall, then I."));

    public static Refusal ChangedMeanwhile(Technician person) =>
        new("pin-changed-meanwhile", T($"The PIN of {person.Code} {person.Name} was changed elsewhere. Enter the new one."));

    public static Refusal NothingToReset(Technician person) =>
        new("no-pin-to-reset", T($"{person.Code} {person.Name} has no PIN to reset. Press I to issue one."));

    public static Refusal NotTheFirst(Technician lead, Technician other) =>
        new("not-the-first-pin",
            T($"{other.Code} {other.Name} is a lead with a working PIN and can issue one for {lead.Code} {lead.Name}: F9, then I."));

    public static Refusal NoneInARehearsal() =>
        new("no-pins-in-a-rehearsal", T("Rehearsals use no PINs. Choose a depot's own book with --book."));

    private static string Seconds(int seconds) => seconds switch
    {
        1 => T("1 second"),
        < 60 => T($"{seconds} seconds"),
        60 => T("1 minute"),
        _ => T($"{(seconds + 59) / 60} minutes"),
    };
}
