using System.Globalization;

namespace Closeout.Rules;

/// <summary>Why a command was not recorded: a sentence with what is wrong, the limit where there is one, and what to do.</summary>
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

    /// <summary>
    /// The most pieces of a waste stream, and boxes flattened, of one van in an evening: more does not fit into a van. Common practice.
    /// </summary>
    public const int MostPieces = 2_000;

    /// <summary>Miles in one day that nobody drives: more than 24 hours at 60 mph.</summary>
    public const decimal MostMilesADay = 1_500m;

    /// <summary>The largest odometer reading, in miles.</summary>
    public const decimal MostMiles = 2_000_000m;

    /// <summary>The most US gallons of one fill; common practice: van tanks hold 20 to 40.</summary>
    public const decimal MostGallons = 100m;

    public static Refusal NoSuchVan(Code<Van> van) =>
        new("no-such-van", T($"No van has the code {van}. Type the code on the wall, or scan the key tag."));

    public static Refusal NoSuchTechnician(Code<Technician> technician) =>
        new("no-such-technician", T($"Nobody here has the code {technician}. F9 on the wall lists all codes."));

    public static Refusal NoSuchItem(Code<Item> item) =>
        new("no-such-item", T($"No item has the code {item}. Type the code on the carton label, or part of the name."));

    public static Refusal NoSuchPiece(Code<KitPiece> piece) =>
        new("no-such-kit-piece", T($"No kit piece has the code {piece}. Choose one from the list."));

    public static Refusal AlreadyIn(Van van, Shift shift) =>
        new("already-in", T($"{van.Code} {van.Name} came in at {Clock(shift.CameInAt)} with {shift.Technician}. Open it from the wall."));

    public static Refusal HasAnswers(Van van) =>
        new("has-answers", T($"{van.Code} {van.Name} has answers already. Close it out, or ask a lead."));

    public static Refusal NotIn(Van van) =>
        new("not-in", T($"{van.Code} {van.Name} has not come in yet. First say who brings it in."));

    public static Refusal AlreadyClosed(Van van, Shift shift) =>
        new("already-closed",
            T($"{van.Code} {van.Name} was signed off at {Clock(shift.SignedAt!.Value)} by {shift.SignedBy}. A lead can reopen it."));

    public static Refusal TooEarly(Van van, Step now, Step asked) =>
        new("too-early",
            T($"{van.Code} {van.Name} is at {StepWords.Name(now)}. Answer that first; {StepWords.Name(asked)} comes later."));

    public static Refusal OutOfRange(string what, decimal found, decimal least, decimal most) =>
        new("out-of-range", T($"{what} cannot be {Number(found)}. Type {Number(least)} to {Number(most)}."));

    public static Refusal AboveTheBook(Item item, int counted, int before, int gap) =>
        new("above-the-book",
            T($"You count {counted} of {item.Description}; only {before} are on record. Count again. Confirmed, the gap is {gap}."),
            AskAgain: true);

    /// <summary>Of an item that is counted blind: the figure on record would spoil the second count.</summary>
    public static Refusal BlindAboveTheBook(Item item, int counted) =>
        new("blind-above-the-book", T($"You count {counted} of {item.Description}; that is more than on record. Count again."),
            AskAgain: true);

    public static Refusal BinTooLow(Item item, int inBin, int back) =>
        new("bin-too-low",
            T($"The bin holds {inBin} of {item.Description}; this change takes {back} back out. Keep the first count, or count the bin."));

    public static Refusal OnlyALead(Technician technician, string does) =>
        new("only-a-lead", T($"Leads only: {technician.Code} {technician.Name} is not a lead. A lead {does}."));

    public static Refusal NotHeld(Van van) =>
        new("not-held", T($"{van.Code} {van.Name} is not on hold."));

    public static Refusal NoSuchHold(Van van, int number, int holds) =>
        new("no-such-hold", T($"{van.Code} {van.Name} has no hold {number}. Type 1 to {holds}, or A for all."));

    public static Refusal AllHolds(Van van, int holds) =>
        new("all-holds", T($"That lifts all {holds} holds of {van.Code} {van.Name} for one reason. Read them again."), AskAgain: true);

    public static Refusal HeldAlready(Van van, string reason) =>
        new("held-already", T($"{van.Code} {van.Name} is already held for \"{reason}\"."));

    public static Refusal NoSuchIncident(Van van, int number, IReadOnlyList<int> open) => new(
        "no-such-incident",
        T($"Incident {number} of {van.Code} {van.Name} is not open. ")
            + (open.Count == 0 ? T("It has no open incident.") : T($"Open: {string.Join(", ", open)}.")));

    public static Refusal FarCorrection(string corrected, string now) =>
        new("far-correction", T($"{corrected} is far from {now} on record. Read the odometer again."), AskAgain: true);

    public static Refusal ReadTonight(Van van) =>
        new("read-tonight",
            T($"{van.Code} {van.Name} was read tonight already. Change the reading in its close-out; a lead can reopen it."));

    public static Refusal StreamIsOff(Code<WasteStream> stream, IReadOnlyList<Code<WasteStream>> on) =>
        new("stream-is-off",
            T($"{stream} is not counted at this depot{(on.Count == 0 ? "" : T($"; counted are {string.Join(", ", on)}"))}. Follow the "
                    + $"site's procedure, or ask the lead to switch it on in depot.csv."));

    public static Refusal BoxTooLow(WasteStream stream, decimal inBox, decimal less) =>
        new("box-too-low",
            T(
                $"The accumulation box of {stream.Description.ToLowerInvariant()} holds {Number(inBox)}; this takes {Number(less)} out. "
                    + $"It was shipped meanwhile: keep the first count."));

    public static Refusal PartNotTold(string part) =>
        new("part-not-told", T($"Describe what is wrong with the {T(part)}, or mark it OK."));

    public static Refusal NotAnswered(HandoverQuestion question) =>
        new("not-answered", T($"Answer \"{question.Question}\": yes or no."));

    public static Refusal TooManyPhotos(Van van, int found) =>
        new("too-many-photos", T($"{van.Code} {van.Name} has {found} photos tonight. The limit is {MostPhotos}."));

    public static Refusal PhotoIsThere(string name) => new("photo-is-there", T($"{name} is already attached."));

    public static Refusal LooksLikeACard(string what) =>
        new("looks-like-a-card", T($"Do not enter card numbers or PINs in {what}."));

    public static Refusal LooksLikeASocialSecurityNumber(string what) =>
        new("looks-like-a-social-security-number", T($"Do not enter social security numbers in {what}."));

    public static Refusal NoWords(string what) => new("no-words", T($"Say {what} (1 to {MostWords} characters)."));

    public static Refusal TooManyWords(string what, int found) =>
        new("too-many-words", T($"Say {what} shorter: it has {found} characters, the limit is {MostWords}."));

    public static Refusal DateAhead(string what, DateOnly found, DateOnly today) =>
        new("date-ahead", T($"{what} cannot be {Iso(found)}; today is {Iso(today)}."));

    /// <summary>The longest text of a damage.</summary>
    public const int MostWords = 80;

    private static string Clock(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static string Iso(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(decimal number) => number.ToString("0.###", CultureInfo.InvariantCulture);
}
