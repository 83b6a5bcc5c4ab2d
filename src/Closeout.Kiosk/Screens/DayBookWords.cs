using System.Globalization;
using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Screens;

/// <summary>An entry for people: who did what of which van and item.</summary>
/// <param name="Van">Null: of no van.</param>
/// <param name="Person">Null: nobody named himself.</param>
/// <param name="Item">Item, kit piece or waste stream; null: none.</param>
/// <param name="What">A sentence in the past tense, in file units.</param>
public sealed record DayBookLine(string? Van, string? Person, string? Item, string What);

/// <summary>Puts the entries of the day book into words, for the screen and for audit.csv.</summary>
public static class DayBookWords
{
    /// <param name="inCharge">Who brought the van of an entry in; a close-out's answers are that person's.</param>
    public static DayBookLine Of(Entry entry, Func<Code<Van>, Code<Technician>?> inCharge)
    {
        string? With(Code<Van> van) => inCharge(van)?.Text;
        return entry switch
        {
            PageOpened e => new(null, e.EndedBy?.Text, null, $"opened {e.Date:yyyy-MM-dd}{(e.EndedBy is null ? "" : "; the date before was ended")}{(e.Rehearsal ? ", a rehearsal" : "")}"),
            DayFolderLoaded e => new(null, null, null, $"loaded a day folder: {e.Setup.Vans.Count} vans, {e.Setup.Items.Count} items, {e.Bookings.Count} bookings"),
            VanCameIn e => new(e.Van.Text, e.Technician.Text, null, $"came in{(e.WeeklyDue ? ", weekly check due" : "")}"),
            LeftoverCounted e => new(e.Van.Text, With(e.Van), e.Item.Text, $"counted: {e.Count.Sealed} sealed, {e.Count.Bin} to the bin, {e.Count.Kept} kept; {e.Used} used{(e.Gap == 0 ? "" : $", gap {e.Gap}")}"),
            LeftoversConfirmed e => new(e.Van.Text, With(e.Van), null, "leftovers done, the rest as booked"),
            BoxesCounted e => new(e.Van.Text, With(e.Van), e.Item.Text, $"{e.Flattened} of {e.Expected} boxes flattened"),
            StreamCounted e => new(e.Van.Text, With(e.Van), e.Stream.Text, Inv($"brought home {e.Amount} {WasteStream.Of(e.Stream).Unit}")),
            CardboardConfirmed e => new(e.Van.Text, With(e.Van), null, "cardboard done, the rest as expected"),
            MileageLogged e => new(e.Van.Text, e.Technician.Text, null, Inv($"odometer {e.StartMi} to {e.EndMi} mi{(e.FuelGal is null ? "" : Inv($", {e.FuelGal} gal {e.FuelGrade}"))}{(e.Sure ? ", confirmed as read" : "")}")),
            DamageFound e => new(e.Van.Text, e.By.Text, null, $"incident {e.Number}: {e.Zone}, {e.Severity.ToString().ToLowerInvariant()}{(e.Drivable ? "" : ", not drivable")}: {e.What}{(e.Told.Length > 0 ? $"; told {e.Told}" : "")}"),
            DamageConfirmed e => new(e.Van.Text, With(e.Van), null, e.None ? "walked round: no damage" : "walked round: no more damage"),
            KitCounted e => new(e.Van.Text, With(e.Van), e.Piece.Text, $"{e.Count} there{(e.Expires is { } on ? $", good until {on:yyyy-MM-dd}" : "")}{(e.TestedOn is { } tested ? $", tested {tested:yyyy-MM-dd}" : "")}"),
            KitConfirmed e => new(e.Van.Text, With(e.Van), null, "safety kit done, the rest all there"),
            WeeklyChecked e => new(e.Van.Text, With(e.Van), null, $"weekly check: {(e.NotInOrder.Count == 0 ? "all in order" : "not in order: " + string.Join(", ", e.NotInOrder))}, {(e.Clean ? "clean" : "to be cleaned")}"),
            PhotoAttached e => new(e.Van.Text, With(e.Van), null, $"attached {e.Name}, {e.Bytes} bytes"),
            Signed e => new(e.Van.Text, e.Technician.Text, null, e.Proof == Proof.Pin ? "signed the close-out" : "signed the close-out, a rehearsal: without a PIN"),
            SignedFor e => new(e.Van.Text, e.Lead.Text, null, $"signed for {e.For}: {e.Why}"),
            CloseoutChecked e => new(e.Van.Text, e.Lead.Text, null, "checked the close-out"),
            CloseoutReopened e => new(e.Van.Text, e.Lead.Text, null, $"reopened the close-out: {e.Why}"),
            VanExplained e => new(e.Van.Text, e.Lead.Text, null, $"{(e.StayedIn ? "stayed in" : "left open")}: {e.Why}"),
            BookingsMoved e => new(e.From.Text, e.Lead.Text, null, $"{string.Join(", ", e.Visits.Select(v => $"{v.Visits} {v.Kind}"))} of {e.Date:yyyy-MM-dd} moved to {e.To}: {e.Why}"),
            HoldsLifted e => new(e.Van.Text, e.Lead.Text, null, $"hold lifted ({string.Join("; ", e.Reasons)}): {e.Why}"),
            HoldPlaced e => new(e.Van.Text, e.Lead.Text, null, $"put on hold: {e.Reason}"),
            IncidentClosed e => new(e.Van.Text, e.Lead.Text, null, $"incident {e.Number} closed: {e.Why}"),
            PlanOverridden e => new(e.Van.Text, e.Lead.Text, e.Item?.Text, $"plan of {e.Date:yyyy-MM-dd}: {Change(e)}: {e.Reason}"),
            OverrideWithdrawn e => new(null, e.Lead.Text, null, $"change {e.Number} of the plan withdrawn: {e.Reason}"),
            VanLoaded e => new(e.Van.Text, e.By?.Text, null, "loaded " + string.Join(", ", e.Lines.Select(l => $"{l.Item} {l.Sealed} sealed {l.Loose} loose"))),
            DeliveryReceived e => new(null, e.By.Text, e.Item.Text, $"{e.Cartons} cartons came, {e.Ordered} of them ordered"),
            CountCorrected e => new(e.Place.Van == default ? null : e.Place.Van.Text, e.By.Text, e.Item.Text, $"{e.Place} corrected from {e.Book} to {e.Counted}: {e.Reason}"),
            DepotBoxesCounted e => new(null, e.By.Text, e.Item.Text, $"{e.Flattened} of {e.Expected} boxes opened at the depot flattened"),
            BoxesWrittenOff e => new(e.Van?.Text, e.Lead.Text, e.Item.Text, $"{e.Boxes} boxes written off: {e.Why}"),
            ContainerEmptied e => new(null, e.By.Text, null, Inv($"container emptied: {e.BookLb:0.0} lb by the book{(e.WeighedLb is null ? "" : Inv($", {e.WeighedLb} lb weighed"))}")),
            CollectingBoxShipped e => new(null, e.By.Text, e.Stream.Text, Inv($"collecting box of {e.StartedOn:yyyy-MM-dd} shipped with {e.Amount}: {e.To}")),
            PinSet e => new(null, (e.Lead ?? e.Person).Text, null, $"{(e.Issued ? "an issued PIN" : "a PIN of one's own")} is set for {e.Person}"),
            PinReset e => new(null, e.Lead.Text, null, $"reset the PIN of {e.Person}"),
            PinFailed e => new(null, null, null, $"wrong PIN for {e.Person} at {e.Kiosk}"),
            PinPassed e => new(null, e.Person.Text, null, $"right PIN at {e.Kiosk}, after wrong ones"),
            _ => throw new InvalidOperationException($"no words for {entry.GetType().Name}"),
        };
    }

    /// <summary>All entries of a page in words.</summary>
    public static IEnumerable<(Recorded Recorded, DayBookLine Line)> Of(IEnumerable<Recorded> page)
    {
        var inCharge = new Dictionary<Code<Van>, Code<Technician>>();
        foreach (var recorded in page)
        {
            if (recorded.Entry is VanCameIn came)
            {
                inCharge[came.Van] = came.Technician;
            }

            yield return (recorded, Of(recorded.Entry, van => inCharge.TryGetValue(van, out var who) ? who : null));
        }
    }

    private static string Change(PlanOverridden e) => e.Kind switch
    {
        OverrideKind.Target => $"target {e.Units}",
        OverrideKind.Extra => $"{e.Units} more, once",
        OverrideKind.Exclude => "excluded",
        _ => throw new InvalidOperationException($"no such change: {e.Kind}"),
    };

    private static string Inv(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
