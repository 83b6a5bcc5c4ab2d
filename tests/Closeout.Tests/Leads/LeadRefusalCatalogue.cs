using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Tests.Shifts;
using Closeout.Turning;

namespace Closeout.Tests.Leads;

/// <summary>How each refusal of a lead's desk is met.</summary>
public static class LeadRefusalCatalogue
{
    private const string Card = "4111 1111 1111 1111";
    private static readonly DateOnly Thursday = Tiny.Wednesday.AddDays(1);

    public static IReadOnlyList<Met> All { get; } =
    [
        new(nameof(LeadRefusal.NotSignedYet), "not-signed-yet", Open, new CheckCloseout(Tiny.B1, Tiny.Lead)),
        new(nameof(LeadRefusal.NotSignedYet), "not-signed-yet", () => Open().At(Tiny.B1, Step.SignOff), new Reopen(Tiny.B1, "misread", Tiny.Lead)),
        new(nameof(LeadRefusal.CheckedAlready), "checked-already", () => Signed().Did(new CheckCloseout(Tiny.B1, Tiny.Lead)), new CheckCloseout(Tiny.B1, Tiny.Lead)),
        new(nameof(LeadRefusal.OwnCloseout), "own-closeout", () => Open().Did(new ComeIn(Tiny.B1, Tiny.Lead)).At(Tiny.B1, Step.Closed), new CheckCloseout(Tiny.B1, Tiny.Lead)),
        new(nameof(LeadRefusal.LoadedSince), "loaded-since", Loaded, new Reopen(Tiny.B1, "misread", Tiny.Lead)),
        new(nameof(LeadRefusal.NothingToMove), "nothing-to-move", Open, new MoveBookings(Thursday, Tiny.B1, Tiny.B2, null, "B1 is held", Tiny.Lead)),
        new(nameof(LeadRefusal.NothingToMove), "nothing-to-move", Booked, new MoveBookings(Thursday, Tiny.B1, Tiny.B1, null, "to itself", Tiny.Lead)),
        new(nameof(LeadRefusal.VansOpen), "vans-open", Signed, new EndDay(Thursday, Tiny.Lead)),
        new(nameof(LeadRefusal.VansOpen), "vans-open", () => Signed().At(Tiny.B2, Step.Closed), new EndDay(Thursday, Tiny.Lead)),
        new(nameof(LeadRefusal.NotAfter), "not-after", Signed, new EndDay(Tiny.Wednesday, Tiny.Lead)),
        new(nameof(LeadRefusal.BroughtInBy), "brought-in-by", () => Open().At(Tiny.B1, Step.SignOff), new SignFor(Tiny.B1, Tiny.T2, "ill", Tiny.Lead)),
        new(nameof(LeadRefusal.TooFarAhead), "too-far-ahead", Signed, new EndDay(new(2062, 11, 19), Tiny.Lead)),
        new(nameof(StockRefusal.DateIsOver), "date-is-over", Booked, new MoveBookings(Tiny.Wednesday, Tiny.B1, Tiny.B2, null, "today", Tiny.Lead)),
        new(nameof(Refusal.AlreadyClosed), "already-closed", Signed, new SignFor(Tiny.B1, Tiny.T1, "ill", Tiny.Lead)),
        new(nameof(Refusal.AlreadyClosed), "already-closed", Signed, new ExplainVan(Tiny.B1, true, "in the workshop", Tiny.Lead)),
        new(nameof(Refusal.AlreadyIn), "already-in", () => Open().At(Tiny.B1, Step.Kit), new ExplainVan(Tiny.B1, true, "in the workshop", Tiny.Lead)),
        new(nameof(Refusal.NotIn), "not-in", Open, new SignFor(Tiny.B1, Tiny.T1, "ill", Tiny.Lead)),
        new(nameof(Refusal.TooEarly), "too-early", () => Open().At(Tiny.B1, Step.Kit), new SignFor(Tiny.B1, Tiny.T1, "ill", Tiny.Lead)),
        .. Each(" ").Select(w => new Met(nameof(Refusal.NoWords), "no-words", w.Given, w.When)),
        .. Each(new('x', 81)).Select(w => new Met(nameof(Refusal.TooManyWords), "too-many-words", w.Given, w.When)),
        .. Each(Card).Select(w => new Met(nameof(Refusal.LooksLikeACard), "looks-like-a-card", w.Given, w.When)),
        .. Each("why").Select(w => new Met(nameof(Refusal.OnlyALead), "only-a-lead", w.Given, w.When with { Lead = Tiny.T1 })),
        .. Each("why").Select(w => new Met(nameof(Refusal.NoSuchTechnician), "no-such-technician", w.Given, w.When with { Lead = new("T9") })),
        new(nameof(Refusal.OnlyALead), "only-a-lead", Signed, new EndDay(Thursday, Tiny.T1)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Signed, new CheckCloseout(new("B9"), Tiny.Lead)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Signed, new Reopen(new("B9"), "why", Tiny.Lead)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Signed, new SignFor(new("B9"), Tiny.T1, "why", Tiny.Lead)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Signed, new ExplainVan(new("B9"), true, "why", Tiny.Lead)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Booked, new MoveBookings(Thursday, new("B9"), Tiny.B2, null, "why", Tiny.Lead)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Booked, new MoveBookings(Thursday, Tiny.B1, new("B9"), null, "why", Tiny.Lead)),
        new(nameof(LeadRefusal.NotToTakeBack), "not-to-take-back", Signed, new TakeBack(1, null, "why", Tiny.Lead)),
        new(nameof(LeadRefusal.NotWhoRecorded), "not-who-recorded", Delivered, new TakeBack(Delivered().Number, null, "why", Tiny.T2)),
        new(nameof(LeadRefusal.WhichItem), "which-item", LoadedTwo, new TakeBack(LoadedTwo().Number, null, "why", Tiny.T1)),
        new(nameof(LeadRefusal.NoLongerThere), "no-longer-there", DeliveredAndGone, new TakeBack(Delivered().Number, null, "why", Tiny.T1)),
        new(nameof(LeadRefusal.NextBoxBegun), "next-box-begun", NextBox, new TakeBack(Shipped().Number, null, "why", Tiny.T1)),
        new(nameof(Refusal.NoWords), "no-words", Delivered, new TakeBack(Delivered().Number, null, "", Tiny.T1)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Delivered, new TakeBack(Delivered().Number, null, "why", new("T9"))),
    ];

    /// <summary>Each command that asks for a reason, where nothing but the reason is wrong.</summary>
    private static IEnumerable<(Func<Depot> Given, LeadCommand When)> Each(string why) =>
    [
        (Signed, new Reopen(Tiny.B1, why, Tiny.Lead)),
        (() => Open().At(Tiny.B1, Step.SignOff), new SignFor(Tiny.B1, Tiny.T1, why, Tiny.Lead)),
        (Open, new ExplainVan(Tiny.B1, false, why, Tiny.Lead)),
        (Booked, new MoveBookings(Thursday, Tiny.B1, Tiny.B2, null, why, Tiny.Lead)),
    ];

    private static Depot Open() => Tiny.Opened("B1: 2+5 LAMP; shelf: 3 LAMP");

    private static Depot Signed() => Open().At(Tiny.B1, Step.Closed);

    private static Depot Booked() => Open().Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, new("install"), 1)] });

    private static Depot Delivered() => Signed().Did(new ReceiveDelivery(Tiny.Lamp.Code, 5, Tiny.T1));

    private static Depot DeliveredAndGone() => Delivered().Did(new LoadVan(Tiny.B1, [new(Tiny.Lamp.Code, 5, 0)], Tiny.T1));

    private static Depot LoadedTwo() => Tiny.Opened("shelf: 3 LAMP, 2 WRAP").At(Tiny.B1, Step.Closed)
        .Did(new LoadVan(Tiny.B1, [new(Tiny.Lamp.Code, 1, 0), new(new("WRAP"), 1, 0)], Tiny.T1));

    private static Depot Shipped() => Tiny.Opened("B1: 2+5 LAMP", setup: Tiny.Setup with { Depot = Tiny.Setup.Depot with { Streams = [new("lamps")] } })
        .At(Tiny.B1, Step.Cardboard).Did(new CountStream(Tiny.B1, new("lamps"), 3)).Did(new ShipCollected(new("lamps"), "recycler, slip 7", Tiny.T1));

    private static Depot NextBox() => Shipped().Did(new CountStream(Tiny.B1, new("lamps"), 5));

    private static Depot Loaded() =>
        Signed().Take(new VanLoaded(Tiny.B1, [new(Tiny.Lamp.Code, 1, 0, 0, 10)], [new Move(Tiny.Lamp.Code, 10, Place.Shelf, Place.Sealed(Tiny.B1))], null));
}
