namespace Closeout.People;

/// <summary>Why a PIN was not taken, or not given. None of them says a PIN.</summary>
public static class PinRefusal
{
    public static Refusal TooShort(int found) =>
        new("pin-too-short",
            $"A PIN of your own has at least {PinRules.LeastOwn} characters, and {found} were typed. Type a longer one, or I for six "
                + "digits drawn for you.");

    public static Refusal TooLong(int found) =>
        new("pin-too-long", $"A PIN of your own has at most {PinRules.MostOwn} characters, and {found} were typed. Type a shorter one.");

    public static Refusal Repeats() =>
        new("pin-repeats",
            "The PIN is 1 or 2 characters or a pattern of up to 4 said again and again, and 0 of those are taken. Type another, or I for "
                + "six digits drawn for you.");

    public static Refusal Runs() =>
        new("pin-runs",
            "The PIN is made of 4 or more in a row, up or down or along a row of keys, and 0 of those are taken. Type another, or I for "
                + "six digits drawn for you.");

    public static Refusal IsADate() =>
        new("pin-is-a-date",
            "The PIN reads as a date of the years 1900 to 2099, and 0 of those are taken. Type another, or I for six digits drawn for "
                + "you.");

    public static Refusal HasYourName(string name) =>
        new("pin-has-your-name",
            $"The PIN has \"{name}\" of your code or name in it 1 time, and 0 are allowed. Type another, or I for six digits drawn for "
                + "you.");

    public static Refusal IsACardNumber() =>
        new("pin-is-a-card-number",
            "The PIN has 13 to 19 digits that fit a payment card, and 0 of those are taken. Type another, or I for six digits drawn for "
                + "you.");

    public static Refusal IsASocialSecurityNumber() =>
        new("pin-is-a-social-security-number",
            "The PIN has 9 digits that fit a social-security number, and 0 of those are taken. Type another, or I for six digits drawn "
                + "for you.");

    public static Refusal NotTheSame() =>
        new("pin-not-the-same", "The PIN was typed 2 times and not the same: 0 PINs were set. Type it anew, then once more.");

    public static Refusal Wrong(Technician person, int failures) =>
        new("wrong-pin",
            $"That is not the PIN of {person.Code} {person.Name}: {failures} wrong in a row, and {PersonPin.MostInARow} lock it. Type it "
                + $"again after {(int)PinTries.Wait(failures).TotalSeconds} s.");

    public static Refusal Wait(int failures, int seconds) =>
        new("pin-waits", $"After {failures} wrong in a row the next PIN is looked at in {seconds} s. Wait, then type it again.");

    public static Refusal KioskRests(string kiosk, int failures, int seconds) =>
        new("kiosk-rests",
            $"{failures} wrong PINs within 15 minutes at {kiosk}: it takes none for {seconds} s. Ask the lead what happened here, or use "
                + "another kiosk.");

    public static Refusal Locked(Technician person, int failures) =>
        new("pin-locked",
            $"The PIN of {person.Code} {person.Name} is locked: {failures} wrong in a row, and {PersonPin.MostInARow} are the most. Ask "
                + $"{(person.IsLead ? "another lead" : "a lead")} to reset it: F9 on the wall, then "
                + $"R.{(person.IsLead ? $" Where there is none, closeout first-pin {person.Code} issues another." : "")}");

    /// <summary>Why a PIN that was typed cannot be noted, right or wrong; null: it can.</summary>
    internal static Refusal? NotTried(Technician person, PersonPin now) =>
        now.Hash is null ? ChangedMeanwhile(person) : now.IsLocked ? Locked(person, now.Failures) : null;

    public static Refusal LeadHasNone(Technician lead) =>
        new("lead-has-no-pin",
            $"{lead.Code} {lead.Name} is a lead and has 0 PINs, and 1 is needed. Ask another lead to issue one: F9 on the wall, then I. "
                + $"Where there is none, closeout first-pin {lead.Code} issues it.");

    public static Refusal HasOne(Technician person) =>
        new("has-a-pin",
            $"{person.Code} {person.Name} has 1 PIN already, and 1 is all. Type that one, or ask a lead to reset it: F9 on the wall, "
                + "then R.");

    public static Refusal ChangedMeanwhile(Technician person) =>
        new("pin-changed-meanwhile",
            $"The PIN of {person.Code} {person.Name} was changed or reset at another kiosk meanwhile: 1 was typed here for it, and 0 "
                + "were taken. Type the newest one, or ask a lead.");

    public static Refusal NothingToReset(Technician person) =>
        new("no-pin-to-reset", $"{person.Code} {person.Name} has 0 PINs, so there is none to reset. Choose I to issue one.");

    public static Refusal NotTheFirst(Technician lead, Technician other) =>
        new("not-the-first-pin",
            $"{lead.Code} {lead.Name} gets no PIN from here: 1 other lead, {other.Code} {other.Name}, has one that works. Ask "
                + $"{other.Code} to issue one: F9 on the wall, then I.");

    public static Refusal NoneInARehearsal() =>
        new("no-pins-in-a-rehearsal",
            "This is a rehearsal's book: 0 PINs are asked there and 0 are kept. Choose a depot's own book with --book.");
}
