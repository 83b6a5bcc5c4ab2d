using System.Globalization;
using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Shifts;

/// <summary>Why a command was not recorded: a sentence with both numbers and what to do next.</summary>
/// <param name="Code">Stable name, as listed in docs/refusals.md.</param>
/// <param name="AskAgain">The same answer given again is recorded: it looked wrong, but only a person can know.</param>
public sealed record Refusal(string Code, string Text, bool AskAgain = false)
{
    /// <summary>The most cartons, units, boxes or pieces that one answer may say.</summary>
    public const int MostAtOnce = 99_999;

    /// <summary>The most of one kit piece in a van; more is a figure typed into the wrong field.</summary>
    public const int MostKit = 99;

    /// <summary>The largest odometer reading, in miles.</summary>
    public const decimal MostMiles = 2_000_000m;

    /// <summary>Farther than this in one day is asked again, in miles. Common practice: a day's route of home visits is far shorter.</summary>
    public const decimal FarMiles = 300m;

    /// <summary>The most US gallons of one fill; common practice: van tanks hold 20 to 40.</summary>
    public const decimal MostGallons = 100m;

    public static Refusal NoSuchVan(Code<Van> van) =>
        new("no-such-van", $"There is no van {van} at this depot. Type the code on the bay wall, or scan the key tag.");

    public static Refusal NoSuchTechnician(Code<Technician> technician) =>
        new("no-such-technician", $"Nobody here has the code {technician}. Type your own code, or ask the lead.");

    public static Refusal NoSuchItem(Code<Item> item) =>
        new("no-such-item", $"There is no item {item} at this depot. Type the code on the carton label, or find it by its name.");

    public static Refusal NoSuchPiece(Code<KitPiece> piece) =>
        new("no-such-kit-piece", $"There is no kit piece {piece} on this depot's list. Choose one of the list.");

    public static Refusal AlreadyIn(Van van, Shift shift) =>
        new("already-in", $"{van.Code} {van.Name} came in at {Clock(shift.CameInAt)} with {shift.Technician}. Open it from the bay wall and go on from there.");

    public static Refusal NotIn(Van van) =>
        new("not-in", $"{van.Code} {van.Name} has not come in yet. Say first who brings it in.");

    public static Refusal AlreadyClosed(Van van, Shift shift) =>
        new("already-closed", $"{van.Code} {van.Name} was signed at {Clock(shift.SignedAt!.Value)} by {shift.Signed!.Technician}. Ask the lead if something must be changed.");

    public static Refusal TooEarly(Van van, Step now, Step asked) =>
        new("too-early", $"{van.Code} {van.Name} is at {StepWords.Name(now)}; {StepWords.Name(asked)} comes later. Answer {StepWords.Name(now)} first.");

    public static Refusal OutOfRange(string what, decimal found, decimal least, decimal most) =>
        new("out-of-range", $"{what} cannot be {Number(found)}: allowed is {Number(least)} to {Number(most)}. Type it again.");

    public static Refusal AboveTheBook(Item item, int counted, int before, int gap) =>
        new("above-the-book", $"You count {counted} of {item.Description}, and the book had {before} aboard. Count once more; the same answer again is recorded, with a gap of {gap}.", AskAgain: true);

    /// <summary>Of an item that is counted blind: the book's figure would spoil the second count.</summary>
    public static Refusal BlindAboveTheBook(Item item, int counted) =>
        new("blind-above-the-book", $"You count {counted} of {item.Description}, and that is more than the book has. Count once more; the same answer again is recorded.", AskAgain: true);

    public static Refusal BinTooLow(Item item, int inBin, int back) =>
        new("bin-too-low", $"The bin holds {inBin} of {item.Description} and this change takes {back} back out of it. Count the bin, or leave the first count.");

    public static Refusal BelowStart(string end, string start) =>
        new("odometer-below-start", $"The odometer cannot end at {end} when it began at {start}. Read it once more; the same answer again is recorded, and the lead will see it.", AskAgain: true);

    public static Refusal TooFar(string end, string start, string distance) =>
        new("odometer-too-far", $"From {start} to {end} is {distance} in one day. Read it once more; the same answer again is recorded.", AskAgain: true);

    public static Refusal OnlyALead(Technician technician, string does) =>
        new("only-a-lead", $"{technician.Code} {technician.Name} is no lead, and only a lead {does}. Ask one, and type the lead's code.");

    public static Refusal NotHeld(Van van) =>
        new("not-held", $"{van.Code} {van.Name} has 0 holds and 0 damages open, and at least 1 is needed. Choose a van that the wall shows as HELD, or with a damage among its notes.");

    public static Refusal NoWords(string what) =>
        new("no-words", $"Say {what} in a few words: 1 to {MostWords} characters, and none found. Type it and press Enter.");

    public static Refusal TooManyWords(string what, int found) =>
        new("too-many-words", $"Say {what} shorter: {found} characters, and {MostWords} fit. Type it again.");

    public static Refusal DateAhead(string what, DateOnly found, DateOnly today) =>
        new("date-ahead", $"{what} cannot be {Iso(found)}: today is {Iso(today)}. Read the date once more.");

    /// <summary>The longest text of a damage.</summary>
    public const int MostWords = 80;

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
