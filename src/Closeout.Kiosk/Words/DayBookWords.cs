using System.Globalization;

namespace Closeout.Words;

/// <summary>An entry for people: who did what of which van and item.</summary>
/// <param name="Van">Null: of no van.</param>
/// <param name="Person">Null: nobody named himself.</param>
/// <param name="Item">Item, kit piece or waste stream; null: none.</param>
/// <param name="What">A sentence in the past tense, in file units.</param>
public sealed record DayBookLine(string? Van, string? Person, string? Item, string What);

/// <summary>Puts the entries of the day book into words, for the screen and for audit.csv.</summary>
public static class DayBookWords
{
    /// <summary>All entries of a page in words.</summary>
    public static IEnumerable<(Recorded Recorded, DayBookLine Line)> Of(IEnumerable<Recorded> page)
    {
        foreach (var (recorded, (van, person)) in Concerned.Of(page))
        {
            var (item, what) = Words(recorded.Entry);
            yield return (recorded, new(van?.Text, person?.Text, item, what));
        }
    }

    /// <summary>One entry in a sentence.</summary>
    public static string Sentence(Entry entry) => Words(entry) is ({ } item, var what) ? $"{item}: {what}" : Words(entry).What;

    private static (string? Item, string What) Words(Entry entry) => entry switch
    {
        PageOpened e => (null, T($"opened {e.Date:yyyy-MM-dd}{(e.EndedBy is null ? "" : T("; the date before was ended"))}")
            + (e.Rehearsal ? T(", a rehearsal") : "")),
        DayFolderLoaded e =>
            (null, T($"loaded a day folder: {Spell.Count(e.Setup.Vans.Count, T("van"), T("vans"))}, "
                + $"{Spell.Count(e.Setup.Items.Count, T("item"), T("items"))}, "
                + $"{Spell.Count(e.Bookings.Count, T("booking"), T("bookings"))}")),
        VanSentBack => (null, T("opened by mistake: on the road again")),
        VanCameIn e => (null, T($"came in{(e.WeeklyDue ? T(", weekly check due") : "")}")),
        LeftoverCounted e =>
            (e.Item.Text,
                T($"counted: {e.Count.Sealed} sealed, {e.Count.Bin} to the bin, {e.Count.Kept} kept; {e.Used} "
                    + $"used{(e.Gap == 0 ? "" : T($", gap {e.Gap}"))}")),
        LeftoversConfirmed e => (null, T("leftovers done, the rest unchanged")),
        BoxesCounted e => (e.Item.Text, T($"{e.Flattened} of {e.Expected} boxes flattened")),
        StreamCounted e => (e.Stream.Text, T($"brought home {e.Amount} {T(WasteStream.Of(e.Stream).Unit)}")),
        CardboardConfirmed e => (null, T("cardboard done, the rest as expected")),
        MileageLogged e => (null, T($"odometer {e.StartMi} to {e.EndMi} mi")
            + (e.FuelGal is null ? "" : T($", {e.FuelGal} gal {e.FuelGrade}")) + (e.Sure ? T(", confirmed as read") : "")),
        DamageFound e => (null, T($"incident {e.Number}: {T(e.Zone)}, {How(e.Severity)}"
            + $"{(e.Drivable ? "" : T(", not drivable"))}: {e.What}{(e.Told.Length > 0 ? T($"; told {e.Told}") : "")}")),
        DamageConfirmed e => (null, (e.None ? T("walked around: no damage") : T("walked around: no more damage"))
            + (e.Known is null ? "" : T($"; still there: {string.Join(", ", e.Known)}"))),
        KitCounted e =>
            (e.Piece.Text,
                T($"{e.Count} there{(e.Expires is { } on ? T($", good until {on:yyyy-MM-dd}") : "")}")
                    + (e.TestedOn is { } tested ? T($", tested {tested:yyyy-MM-dd}") : "")),
        KitConfirmed e => (null, T("safety kit done, the rest all there")),
        WeeklyChecked e =>
            (null,
                T(
                    $"weekly check: {Parts(e.NotInOrder)}, "
                    + $"{(e.Clean ? T("clean") : T("to be cleaned"))}")),
        PhotoAttached e => (null, T($"attached {e.Name}, {e.Bytes} bytes")),
        Signed e => (null, e.Proof == Proof.Pin ? T("signed the close-out") : T("signed the close-out, a rehearsal: without a PIN")),
        HandoverAnswered { Answers.Count: 0 } => (null, T("handover not asked")),
        HandoverAnswered e => (null, T("handover: ")
            + string.Join("; ", e.Answers.Select(a => $"{a.Question} {(a.Yes ? T("yes") : T($"no, {a.Why}"))}"))),
        SignedFor e => (null, T($"signed for {e.For}: {e.Why}")),
        CloseoutChecked e => (null, T("checked the close-out")),
        CloseoutReopened e => (null, T($"reopened the close-out: {e.Why}")),
        OdometerCorrected e => (null, T($"odometer corrected from {e.FromMi} to {e.Mi} mi: {e.Why}")),
        VanExplained e => (null, $"{(e.StayedIn ? T("stayed in") : T("excused"))}: {e.Why}"),
        BookingsMoved e =>
            (null, T($"{string.Join(", ", e.Visits.Select(v => $"{v.Visits} {v.Kind}"))} of {e.Date:yyyy-MM-dd} moved to {e.To}: {e.Why}")),
        HoldsLifted e => (null, T($"hold lifted ({string.Join("; ", e.Reasons)}): {e.Why}")),
        HoldPlaced e => (null, T($"put on hold: {e.Reason}")),
        IncidentClosed e => (null, T($"incident {e.Number} closed: {e.Why}")),
        PlanOverridden e => (e.Item?.Text, T($"plan of {e.Date:yyyy-MM-dd}: {Change(e)}: {e.Reason}")),
        OverrideWithdrawn e => (null, T($"change {e.Number} of the plan withdrawn: {e.Reason}")),
        VanLoaded e => (null, T("loaded ") + string.Join(", ", e.Lines.Select(l => T($"{l.Item} {l.Sealed} sealed {l.Loose} loose")))),
        DeliveryReceived e => (e.Item.Text, T($"{e.Cartons} cartons came, {e.Ordered} of them ordered")
            + (e.NotComing > 0 ? T($"; {e.NotComing} will not come") : "")),
        StockMoved e => (e.Item.Text, T($"{e.Sealed} sealed and {e.Loose} loose moved to {e.To?.Text ?? T("the depot")}: {e.Why}")),
        StockGiven e => (e.Item.Text, T($"{e.Sealed} sealed and {e.Loose} loose handed to {e.To} on the road")),
        GiftAnswered e => (e.Item.Text, e.Came ? T($"entry {e.Entry}: it came") : T($"entry {e.Entry}: it did not come")),
        CountCorrected e => (e.Item.Text, T($"{e.Place} corrected from {e.Book} to {e.Counted}: {e.Reason}")),
        StockTakenBack e => (e.Item.Text, T($"entry {e.Entry} taken back: {e.Why}")),
        YardTakenBack e => (null, T($"entry {e.Entry} taken back: {e.Why}")),
        DepotBoxesCounted e => (e.Item.Text, T($"{e.Flattened} of {e.Expected} boxes opened at the depot flattened")),
        BoxesWrittenOff e => (e.Item.Text, T($"{e.Boxes} boxes written off: {e.Why}")),
        ContainerEmptied e =>
            (null,
                T($"container emptied: {e.BookLb:0.0} lb on record{(e.WeighedLb is null ? "" : T($", {e.WeighedLb} lb weighed"))}")),
        CollectingBoxShipped e => (e.Stream.Text, T($"accumulation box of {e.StartedOn:yyyy-MM-dd} shipped with {e.Amount}: {e.To}")),
        PinSet e => (null, T($"{(e.Issued ? T("an issued PIN") : T("a PIN of one's own"))} is set for {e.Person}")),
        PinReset e => (null, T($"reset the PIN of {e.Person}")),
        PinFailed e => (null, T($"wrong PIN for {e.Person} at {e.Kiosk}")),
        PinPassed e => (null, T($"right PIN at {e.Kiosk}, after wrong ones")),
        BookSalvaged e =>
            (null,
                T(
                    $"{e.Lost} entries of this page or before the next were lost by damage; {e.Change.Sum(m => m.Units)} units moved to "
                        + $"or from unexplained")),

        // A kind without a sentence of its own is told by its name: FloorSwept, "floor swept".
        _ =>
            (null,
                string.Concat(
                    entry.GetType().Name.Select((c, i) => char.IsUpper(c) ? $"{(i > 0 ? " " : "")}{char.ToLowerInvariant(c)}" : $"{c}"))),
    };

    private static string Parts(IReadOnlyList<string> notInOrder) =>
        notInOrder.Count == 0 ? T("all in order") : T("not in order: ") + string.Join(", ", notInOrder.Select(T));

    private static string How(Severity severity) => severity switch
    {
        Severity.Note => T("note"),
        Severity.Repair => T("repair"),
        Severity.Unsafe => T("unsafe"),
        _ => throw new InvalidOperationException($"no such severity: {severity}"),
    };

    private static string Change(PlanOverridden e) => e.Kind switch
    {
        OverrideKind.Target => T($"target {e.Units}"),
        OverrideKind.Extra => T($"{e.Units} more, once"),
        OverrideKind.Exclude => T("excluded"),
        _ => throw new InvalidOperationException($"no such change: {e.Kind}"),
    };

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
