using System.Globalization;

namespace Closeout.Rules;

/// <summary>Why a command was not recorded: a sentence with both numbers and what to do next.</summary>
/// <param name="Code">Stable name, as listed in docs/refusals.md.</param>
/// <param name="AskAgain">The same answer given again is recorded: it looked wrong, but only a person can know.</param>
/// <param name="InsteadMi">An odometer reading, in miles, that was probably meant; null: none.</param>
/// <param name="About">What of the command it is about, by the name that forms give it: <c>fuel</c>, <c>by</c>; null: all of it.</param>
public sealed record Refusal(string Code, string Text, bool AskAgain = false, decimal? InsteadMi = null, string? About = null)
{
    /// <summary>The most pictures of one close-out.</summary>
    public const int MostPhotos = 24;

    /// <summary>The most cartons, units, boxes or pieces that one answer may say.</summary>
    public const int MostAtOnce = 99_999;

    /// <summary>The most of one kit piece in a van; more is a figure typed into the wrong field.</summary>
    public const int MostKit = 99;

    /// <summary>The largest odometer reading, in miles.</summary>
    public const decimal MostMiles = 2_000_000m;

    /// <summary>The most US gallons of one fill; common practice: van tanks hold 20 to 40.</summary>
    public const decimal MostGallons = 100m;

    public static Refusal NoSuchVan(Code<Van> van) =>
        new("no-such-van", $"There is no van {van} at this depot. Type the code on the bay wall, or scan the key tag.");

    public static Refusal NoSuchTechnician(Code<Technician> technician) =>
        new("no-such-technician", $"Nobody here has the code {technician}. Type another one; on the wall F9 shows the codes of all.");

    public static Refusal NoSuchItem(Code<Item> item) =>
        new("no-such-item", $"There is no item {item} at this depot. Type the code on the carton label, or find it by its name.");

    public static Refusal NoSuchPiece(Code<KitPiece> piece) =>
        new("no-such-kit-piece", $"There is no kit piece {piece} on this depot's list. Choose one of the list.");

    public static Refusal AlreadyIn(Van van, Shift shift) =>
        new("already-in",
            $"{van.Code} {van.Name} came in at {Clock(shift.CameInAt)} with {shift.Technician}. Open it from the bay wall and go on from "
                + "there.");

    public static Refusal NotIn(Van van) =>
        new("not-in", $"{van.Code} {van.Name} has not come in yet. Say first who brings it in.");

    public static Refusal AlreadyClosed(Van van, Shift shift) =>
        new("already-closed",
            $"{van.Code} {van.Name} was signed at {Clock(shift.SignedAt!.Value)} by {shift.SignedBy}. Ask the lead if something must be "
                + "changed.");

    public static Refusal TooEarly(Van van, Step now, Step asked) =>
        new("too-early",
            $"{van.Code} {van.Name} is at {StepWords.Name(now)}; {StepWords.Name(asked)} comes later. Answer {StepWords.Name(now)} first.");

    public static Refusal OutOfRange(string what, decimal found, decimal least, decimal most) =>
        new("out-of-range", $"{what} cannot be {Number(found)}: allowed is {Number(least)} to {Number(most)}. Type it again.");

    public static Refusal AboveTheBook(Item item, int counted, int before, int gap) =>
        new("above-the-book",
            $"You count {counted} of {item.Description}, and the book had {before} aboard. Count once more; the same answer again is "
                + $"recorded, with a gap of {gap}.",
            AskAgain: true);

    /// <summary>Of an item that is counted blind: the book's figure would spoil the second count.</summary>
    public static Refusal BlindAboveTheBook(Item item, int counted) =>
        new("blind-above-the-book",
            $"You count {counted} of {item.Description}, and that is more than the book has. Count once more; the same answer again is "
                + "recorded.",
            AskAgain: true);

    public static Refusal BinTooLow(Item item, int inBin, int back) =>
        new("bin-too-low",
            $"The bin holds {inBin} of {item.Description} and this change takes {back} back out of it. Count the bin, or leave the first "
                + "count.");

    /// <param name="instead">The reading that two swapped digits make of it, in the screen's units and in miles; null: none fits.</param>
    public static Refusal BelowStart(string end, string start, (string Shown, decimal Mi)? instead = null) => new(
        "odometer-below-start",
        $"The odometer cannot end at {end} when it began at {start}. Read it once more{Again(instead)}, and the lead will see it.",
        AskAgain: true, instead?.Mi);

    /// <param name="usual">What the van usually does in a day; null: the book does not know it well enough.</param>
    public static Refusal TooFar(string end, string start, string distance, string? usual, (string Shown, decimal Mi)? instead = null) =>
        new(
        "odometer-too-far",
        $"From {start} to {end} is {distance} in one day{(usual is null ? "" : $", and this van's usual day is {usual}")}. Read it once "
            + $"more{Again(instead)}.",
        AskAgain: true, instead?.Mi);

    public static Refusal WrongFuel(Van van, string grade) =>
        new("wrong-fuel",
            $"{van.Code} {van.Name} takes {van.Fuel}, and {grade} was typed. Look at the slip once more; the same answer again is "
                + "recorded, and the lead will see it. If it is in the tank, do not start the engine: the workshop says what to do.",
            AskAgain: true);

    public static Refusal OnlyALead(Technician technician, string does) =>
        new("only-a-lead", $"{technician.Code} {technician.Name} is no lead, and only a lead {does}. Ask one, and type the lead's code.");

    public static Refusal NotHeld(Van van) =>
        new("not-held", $"{van.Code} {van.Name} has 0 holds, and at least 1 is needed. Choose a van that the wall shows as HELD.");

    public static Refusal HeldAlready(Van van, string reason) =>
        new("held-already",
            $"{van.Code} {van.Name} is on hold for \"{reason}\" already: 1 hold of that reason is enough. Give another reason, or leave "
                + "it.");

    public static Refusal NoSuchIncident(Van van, int number, IReadOnlyList<int> open) => new(
        "no-such-incident",
        $"Incident {number} of {van.Code} {van.Name} is not open: {(open.Count == 0 ? "0 are" : "open are " + string.Join(", ", open))}. "
            + "Type the number of an open one.");

    public static Refusal StreamIsOff(Code<WasteStream> stream, IReadOnlyList<Code<WasteStream>> on) =>
        new("stream-is-off",
            $"{stream} is not counted at this depot: {(on.Count == 0 ? "0 streams are" : "counted are " + string.Join(", ", on))}. Put "
                + "it where the site's procedure says, or ask the lead to switch it on in depot.csv.");

    public static Refusal BoxTooLow(WasteStream stream, decimal inBox, decimal less) =>
        new("box-too-low",
            $"The collecting box of {stream.Description.ToLowerInvariant()} holds {Number(inBox)}, and this change takes {Number(less)} "
                + "out of it: it was shipped meanwhile. Leave the first count.");

    public static Refusal PartNotTold(string part) =>
        new("part-not-told",
            $"\"{part}\" is said not to be in order, and 0 damages tell of it. Describe it as a damage there, or say that it is in order.");

    public static Refusal TooManyPhotos(Van van, int found) =>
        new("too-many-photos", $"{van.Code} {van.Name} has {found} pictures tonight, and {MostPhotos} fit. Leave the rest out.");

    public static Refusal PhotoIsThere(string name) =>
        new("photo-is-there", $"{name} is attached already: the same picture counts 1 time. Choose another.");

    public static Refusal LooksLikeACard(string what) =>
        new("looks-like-a-card",
            $"Your words on {what} hold 13 to 19 digits that fit a payment card, and 0 are kept here: no card number, no PIN. Leave them "
                + "out.");

    public static Refusal LooksLikeASocialSecurityNumber(string what) =>
        new("looks-like-a-social-security-number",
            $"Your words on {what} hold 9 digits written like a social-security number, and 0 are kept here. Leave them out.");

    public static Refusal NoWords(string what) =>
        new("no-words", $"Say {what} in a few words: 1 to {MostWords} characters, and none found. Type it and press Enter.");

    public static Refusal TooManyWords(string what, int found) =>
        new("too-many-words", $"Say {what} shorter: {found} characters, and {MostWords} fit. Type it again.");

    public static Refusal DateAhead(string what, DateOnly found, DateOnly today) =>
        new("date-ahead", $"{what} cannot be {Iso(found)}: today is {Iso(today)}. Read the date once more.");

    /// <summary>The longest text of a damage.</summary>
    public const int MostWords = 80;

    private static string Again((string Shown, decimal Mi)? instead) => instead is { } i
        ? $": two digits may be swapped, and {i.Shown} stands in the field now. Enter takes it; your own reading typed again is recorded"
        : "; the same answer again is recorded";

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
