using Closeout.Facts;

namespace Closeout.Tests.Store;

/// <summary>One lawful page with an entry of every kind, in which every field says something.</summary>
internal static class EveryKind
{
    private static readonly Code<Van> Van = new("B3");
    private static readonly Code<Item> Lamp = new("LED-A19");
    private static readonly Code<Item> Tape = new("tape_1.2");
    private static readonly Code<Technician> Technician = new("T07");
    private static readonly Code<KitPiece> Piece = new("FIRE-EXT");
    private static readonly Code<VisitKind> Visit = new("direct-install");
    private static readonly Code<WasteStream> Lamps = new("lamps");
    private static readonly DateOnly Today = new(2026, 3, 4);

    public static IReadOnlyList<Recorded> Page { get; } = [.. Entries().Select((entry, i) => new Recorded(i + 1, At(i), entry))];

    public static Recorded Signed => Page.Single(e => e.Entry is Signed);

    /// <summary>Moments with both signs of offset and milliseconds.</summary>
    private static DateTimeOffset At(int i) =>
        new DateTimeOffset(2026, 3, 4, 16, 30, 0, TimeSpan.FromMinutes(i % 2 == 0 ? -300 : 330)).AddMilliseconds(15_001 * i);

    private static IEnumerable<Entry> Entries() =>
    [
        new PageOpened(Today, Rehearsal: false, Carried(), EndedBy: new("L1")),
        new DayFolderLoaded(
            Setup(true), [Today.AddDays(1)], [new(Today.AddDays(1), Van, Visit, 3)], [Today], [Use()], [new(Today, Van, [new(Lamp, 8)], [new(Visit, 3)])], [new(Today, Van)], [new(Lamp, 12, Today.AddDays(9))]),
        new VanCameIn(Van, Technician, WeeklyDue: true, [Lamp]),
        new VanSentBack(Van),
        new VanCameIn(Van, Technician, WeeklyDue: true, [Lamp]),
        new LeftoverCounted(
            Van, Lamp, new(1, 3, 5), Installed: 20, Used: 21, Gap: 1, Emptied: 1,
            [new(Lamp, 24, Place.Sealed(Van), Place.Loose(Van)), new(Lamp, 3, Place.Loose(Van), Place.Bin), new(Lamp, 20, Place.Loose(Van), Place.Homes), new(Lamp, 1, Place.Loose(Van), Place.Unexplained)]),
        new LeftoversConfirmed(Van),
        new BoxesCounted(Van, Lamp, Expected: 1, Flattened: 2),
        new StreamCounted(Van, Lamps, 4.5m),
        new CardboardConfirmed(Van),
        new MileageLogged(Van, Technician, StartMi: 1000.5m, EndMi: 1042.25m, FuelGal: 12.345m, FuelGrade: "regular \"87\"", Sure: true),
        new DamageFound(Van, 4, Technician, "left side", Severity.Repair, "dent, 3\" wide; 漆 \t scratched \U0001F69A", Drivable: false, "L1", new TimeOnly(16, 45)),
        new DamageConfirmed(Van, None: false),
        new KitCounted(Van, Piece, Count: 1, Expires: new DateOnly(2027, 1, 31), TestedOn: new DateOnly(2026, 3, 1)),
        new KitConfirmed(Van),
        new WeeklyChecked(Van, OilChangedOn: new DateOnly(2026, 2, 1), Photos: 4, Clean: false, NotInOrder: ["wipers"]),
        new PhotoAttached(Van, new string('a', 63) + "1", "left-wiper.jpg", 1_234_567),
        new Signed(Van, Technician, Proof.Pin),
        new PlanOverridden(OverrideKind.Extra, Van, Lamp, Today.AddDays(1), 6, "open house", Technician),
        new OverrideWithdrawn(19, "called off", Technician),
        new VanLoaded(
            Van, [new(Lamp, Sealed: 1, Loose: 9, Opened: 1, Planned: 33)],
            [new(Lamp, 24, Place.Shelf, Place.Sealed(Van)), new(Lamp, 24, Place.Shelf, Place.Bin), new(Lamp, 9, Place.Bin, Place.Loose(Van))], Technician),
        new DeliveryReceived(Lamp, Cartons: 7, Ordered: 5, [new(Lamp, 168, Place.Supplier, Place.Shelf)], Technician),
        new CountCorrected(Place.Bin, Lamp, Book: 25, Counted: 24, "fell behind the bin", [new(Lamp, 1, Place.Bin, Place.Unexplained)], Technician),
        new HoldsLifted(Van, ["roof, unsafe: rack loose"], "rack refastened, workshop slip 12", Technician),
        new HoldPlaced(Van, "steering pulls, look at it first", Technician),
        new IncidentClosed(Van, 3, "repainted", Technician),
        new DepotBoxesCounted(Lamp, Expected: 1, Flattened: 1, Technician),
        new BoxesWrittenOff(Van, Lamp, 2, "never found", Technician),
        new ContainerEmptied(BookLb: 123.25, FullPercent: 85.5, WeighedLb: 610, Technician),
        new CollectingBoxShipped(Lamps, Today.AddDays(-300), 50.5m, "recycler, slip 7", Technician),
        new CloseoutChecked(Van, new("L1")),
        new CloseoutReopened(Van, "wrong odometer", new("L1")),
        new SignedFor(Van, Technician, "went home ill", new("L1")),
        new OdometerCorrected(Van, 1000, 1200, "cluster replaced", new("L1")),
        new VanExplained(Van, StayedIn: false, "in the workshop", new("L1")),
        new BookingsMoved(Today.AddDays(1), Van, Van, [new(Visit, 2)], "a van is held", new("L1")),
        new PinSet(Technician, Hash(7), Issued: true, Technician),
        new PinFailed(Technician, "bay-kiosk"),
        new PinPassed(Technician, "bay-kiosk"),
        new PinReset(Technician, Technician),
        new BookSalvaged(Lost: 2, [new(Lamp, 3, Place.Unexplained, Place.Bin)]),
        new StockTakenBack(22, Lamp, [new(Lamp, 168, Place.Shelf, Place.Supplier)], "came for another depot", Technician),
        new YardTakenBack(29, "the truck was full", Technician),
        new DeliveryReceived(Lamp, 2, 2, [new(Lamp, 48, Place.Supplier, Place.Shelf)], Technician, NotComing: 3),
        new StockMoved(Van, null, Lamp, 0, 9, 1, "short tonight", [new(Lamp, 24, Place.Sealed(Van), Place.Loose(Van))], Technician),
        new StockMoved(Van, null, Lamp, 1, 0, 0, "too much aboard", [new(Lamp, 24, Place.Sealed(Van), Place.Shelf)], Technician),
        new StockGiven(Van, Van, Lamp, 0, 10, 0, [new(Lamp, 10, Place.Loose(Van), Place.Unexplained)], Technician),
        new GiftAnswered(12, Van, Lamp, Came: false, [new(Lamp, 10, Place.Loose(Van), Place.Unexplained)], Technician),
        new CloseoutReopened(Van, "not handed over", new("L1")),
        new HandoverAnswered(Van, [new(new("SWEPT"), "Swept and emptied?", true, ""), new(new("PLACE"), "Everything in its place?", false, "cones under the seat")]),
        new SignedFor(Van, Technician, "went home ill", new("L1")),
    ];

    private static Carried Carried() => new(
        Setup(false),
        [
            new(Place.Shelf, Lamp, 48), new(Place.Bin, Lamp, 7), new(Place.Sealed(Van), Lamp, 48), new(Place.Loose(Van), Lamp, 2), new(Place.Homes, Lamp, 100),
            new(Place.Scrap, Lamp, 1), new(Place.Unexplained, Lamp, -2), new(Place.Supplier, Lamp, -204),
        ],
        [
            new(
                Van, 1000.5m, Today.AddDays(-7), Today.AddDays(-40), [new(Lamp, 2, Today.AddDays(-1))], [new(Piece, new(2026, 12, 9), new(2026, 2, 2))], [new(Piece, 0)],
                [
                    new(2, Today.AddDays(-2), new DateTimeOffset(2026, 3, 2, 17, 5, 0, TimeSpan.FromHours(-5)), null, "rear door", Severity.Note, "scratch", true, "", null, false),
                    new(3, Today.AddDays(-1), new DateTimeOffset(2026, 3, 3, 17, 5, 0, TimeSpan.FromHours(-5)), Technician, "roof", Severity.Unsafe, "rack loose", false, "L1", new TimeOnly(17, 10), true),
                ],
                [new(Today.AddDays(-2), "roof, unsafe: rack loose")], [new(Today.AddDays(-1), 950.5m, 1000.5m, 12.3m)]),
        ],
        [new(Today.AddDays(1), Van, Visit, 2)],
        [new(Tape, 5, Today.AddDays(2))],
        [Use()],
        [new(Today, Van, [new(Tape, 1)], [])],
        [new(Today.AddDays(-2), Van, [new(Lamp, 5)])],
        [new(12, new(OverrideKind.Exclude, Van, null, Today.AddDays(3), 0, "in the workshop", Technician))],
        [new(Van, Tape, Today.AddDays(-9), -2)],
        [new(Van, Lamp, 31)],
        [new(Today.AddDays(-1), 1, 40, 39, 2, 3, 900, 310)],
        new(321.5, Today.AddDays(-20), [new(Tape, 1, Today.AddDays(-3))], [new(Today.AddDays(-1), 5, 4, 3.25)], [new(Lamps, Today.AddDays(-300), 46)]),
        3,
        [new(Technician, Hash(3), false, 2, new DateTimeOffset(2026, 3, 3, 17, 6, 0, TimeSpan.FromHours(-5)))],
        [new("bay-kiosk", 2, [new DateTimeOffset(2026, 3, 3, 17, 6, 0, TimeSpan.FromHours(-5))])],
        new(
            [new(Today.AddDays(-1), Van, true, [new(Visit, 3)], [new(Visit, 2)]), new(Today.AddDays(-2), Van, false, [new(Visit, 1)], null)],
            [new(Today.AddDays(-1), new("SKUA"), Lamp, 6, 4, Today.AddDays(-5)), new(Today.AddDays(-1), null, Tape, 1, 1, Today)],
            [new(Van, Lamp, 4, 1)],
            [new(Today.AddDays(-1), 7, 5, 31, 2)],
            [new(12, new(Van, Van, Lamp, 1, 0, 0, [], Technician))]));

    private static PinHash Hash(byte salt) => new(600_000, Convert.ToBase64String(new byte[15].Append(salt).ToArray()), Convert.ToBase64String(new byte[32]));

    private static DailyUse Use() => new(Today.AddDays(-1), Visit, 4, [new(Lamp, 21, 9_000_000_000_000)]);

    private static Setup Setup(bool metric) => new(
        new("Saltmarsh Row", new(16, 30), metric, 0.98, 0.95, 0.9, 8, 85, 106, 3.25, "a source, page 7", [Lamps], 475.5),
        [new(Lamp, "LED lamp A19, \"9 W\"", 1, 24, 0.13, new(14.75, 9.75, 4.75, "32ECT-B"), 48, 84, 5, 6, 4, "rear left"), new(Tape, "Tape", 3, 1, 0.05, new(0, 0, 0, "own"), 0, 3, 1, 2, 0, "")],
        [new(Van, 3, "Curlew", 1650.5, "diesel", 1000.5m, 5000, 6, 25600.1m, new(2026, 1, 24))],
        [new(Van, Lamp, 72, 144)],
        [new(Piece, "Fire extinguisher", 1, Critical: true, Expires: true, TestEveryDays: 30, WarnDays: 7)],
        [new(Van, Piece, 2)],
        [new(Technician, "Perrin Shoal", IsLead: false, Van, [DayOfWeek.Monday, DayOfWeek.Sunday]), new(new("L1"), "Nessa Quay", IsLead: true, null, [])],
        [new(Visit, Lamp, 6.5, 20)],
        [new("own", 108.5)]);
}
