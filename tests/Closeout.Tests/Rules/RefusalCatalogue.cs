using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Tests.Shifts;

namespace Closeout.Tests.Rules;

/// <summary>How each refusal of a close-out is met. <see cref="EveryRefusalTests"/> fails when a refusal is in no catalogue.</summary>
public static class RefusalCatalogue
{
    private static readonly Code<Van> B1 = Tiny.B1;
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Code<WasteStream> Lamps = new("lamps");

    public static IReadOnlyList<Met> All { get; } =
    [
        new(nameof(Refusal.NoSuchVan), "no-such-van", New, new ComeIn(new("B9"), Tiny.T1)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", New, new ComeIn(B1, new("T9"))),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", At(Step.SignOff), new Sign(B1, new("T9"))),
        new(nameof(Refusal.NoSuchItem), "no-such-item", At(Step.Leftovers), new CountLeftover(B1, new("NONE"), 0, 0, 0)),
        new(nameof(Refusal.NoSuchItem), "no-such-item", At(Step.Cardboard), new CountBoxes(B1, new("NONE"), 1)),
        new(nameof(Refusal.NoSuchPiece), "no-such-kit-piece", At(Step.Kit), new CountKit(B1, new("NONE"), 1)),
        new(nameof(Refusal.AlreadyIn), "already-in", At(Step.Leftovers), new ComeIn(B1, Tiny.T2)),
        new(nameof(Refusal.AlreadyIn), "already-in", At(Step.Closed), new ComeIn(B1, Tiny.T1)),
        new(nameof(Refusal.NotAnswered), "not-answered", Handover, new AnswerHandover(B1, [new(new("OTHER"), true)])),
        new(nameof(Refusal.NoWords), "no-words", Handover, new AnswerHandover(B1, [new(new("SWEPT"), false, " ")])),
        new(nameof(Refusal.NotIn), "not-in", New, new ConfirmLeftovers(B1)),
        new(nameof(Refusal.HasAnswers), "has-answers", Seen, new SendBack(B1)),
        new(nameof(Refusal.AlreadyClosed), "already-closed", At(Step.Closed), new LogMileage(B1, 1040)),
        new(nameof(Refusal.AlreadyClosed), "already-closed", At(Step.Closed), new Sign(B1, Tiny.T1)),
        new(nameof(Refusal.TooEarly), "too-early", At(Step.Leftovers), new LogMileage(B1, 1040)),
        new(nameof(Refusal.TooEarly), "too-early", At(Step.Kit), new Sign(B1, Tiny.T1)),
        new(nameof(Refusal.TooEarly), "too-early", At(Step.Kit), new CheckWeekly(B1, null, 0, true)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Leftovers), new CountLeftover(B1, Lamp, -1, 0, 0)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Leftovers), new CountLeftover(B1, Lamp, 0, 100_000, 0)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Leftovers), new CountLeftover(B1, Lamp, 0, 0, int.MaxValue)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Leftovers), new CountLeftover(B1, Lamp, 0, 0, 0, -1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Cardboard), new CountBoxes(B1, Lamp, -1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Mileage), new LogMileage(B1, -0.1m, Sure: true)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Mileage), new LogMileage(B1, 2_000_000.1m, Sure: true)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Mileage), new LogMileage(B1, 1040, 100.1m)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Kit), new CountKit(B1, Tiny.Cones.Code, -1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Weekly, new CheckWeekly(B1, null, -1, true)),
        new(nameof(Refusal.AboveTheBook), "above-the-book", Seen, new CountLeftover(B1, Lamp, 3, 0, 0)),
        new(nameof(Refusal.BlindAboveTheBook), "blind-above-the-book", Blind, new CountLeftover(B1, Lamp, 3, 0, 0)),
        new(nameof(Refusal.BinTooLow), "bin-too-low", BinEmptied, new CountLeftover(B1, Lamp, 2, 0, 5)),
        new(nameof(MileageRefusal.BelowStart), "odometer-below-start", At(Step.Mileage), new LogMileage(B1, 999)),
        new(nameof(MileageRefusal.TooFar), "odometer-too-far", At(Step.Mileage), new LogMileage(B1, 1301)),
        new(nameof(MileageRefusal.TooFar), "odometer-too-far", At(Step.Mileage), new LogMileage(B1, 1000 + Refusal.MostMilesADay)),
        new(nameof(MileageRefusal.TooFarForADay), "odometer-impossible", At(Step.Mileage), new LogMileage(B1, 1000.1m + Refusal.MostMilesADay, Sure: true)),
        new(nameof(MileageRefusal.UsedNotDriven), "used-not-driven", Used, new LogMileage(B1, null)),
        new(nameof(MileageRefusal.DrivenNotUsed), "driven-not-used", Visited, new LogMileage(B1, 1001)),
        new(nameof(MileageRefusal.FueledNotDriven), "fueled-not-driven", At(Step.Mileage), new LogMileage(B1, 1000, 5)),
        new(nameof(MileageRefusal.MoreThanTheTank), "more-than-the-tank", SmallTank, new LogMileage(B1, 1040, 20.1m)),
        new(nameof(MileageRefusal.OddEconomy), "odd-economy", Economical, new LogMileage(B1, 1100, 50)),
        new(nameof(MileageRefusal.OddEconomy), "odd-economy", Economical, new LogMileage(B1, 1100, 1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Mileage), new LogMileage(B1, 1040, -0.1m)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Kit), new CountKit(B1, Tiny.Cones.Code, 2 * Tiny.Cones.Required + 1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Streams, new CountStream(B1, Lamps, Refusal.MostPieces + 1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", At(Step.Leftovers), new CountLeftover(B1, Lamp, 99_999, 0, 0, Sure: true)),
        new(nameof(MileageRefusal.WrongFuel), "wrong-fuel", At(Step.Mileage), new LogMileage(B1, 1040, 12, "diesel")),
        new(nameof(MileageRefusal.WrongFuel), "wrong-fuel", At(Step.Mileage), new LogMileage(B1, 1040, 12, "whatever came out")),
        new(nameof(Refusal.StreamIsOff), "stream-is-off", At(Step.Cardboard), new CountStream(B1, Lamps, 1)),
        new(nameof(Refusal.StreamIsOff), "stream-is-off", Streams, new CountStream(B1, new("batteries"), 1)),
        new(nameof(Refusal.StreamIsOff), "stream-is-off", Streams, new CountStream(B1, new("NONE"), 1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Streams, new CountStream(B1, Lamps, -1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Streams, new CountStream(B1, Lamps, 1.5m)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Streams, new CountStream(B1, new("film"), 100_000)),
        new(nameof(Refusal.BoxTooLow), "box-too-low", Shipped, new CountStream(B1, Lamps, 1)),
        new(nameof(Refusal.NoWords), "no-words", At(Step.Damage), new ReportDamage(B1, " ", Severity.Note, "scratch")),
        new(nameof(Refusal.NoWords), "no-words", At(Step.Damage), new ReportDamage(B1, "rear door", Severity.Note, "")),
        new(nameof(Refusal.TooManyWords), "too-many-words", At(Step.Damage), new ReportDamage(B1, "rear door", Severity.Note, new('x', 81))),
        new(nameof(Refusal.TooManyWords), "too-many-words", At(Step.Mileage), new LogMileage(B1, 1040, 5m, new('x', 81))),
        new(nameof(Refusal.TooManyWords), "too-many-words", At(Step.Damage), new ReportDamage(B1, "rear door", Severity.Repair, "dent", true, new('x', 81))),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", At(Step.Damage), new ReportDamage(B1, "card 4111 1111 1111 1111", Severity.Note, "found")),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", At(Step.Damage), new ReportDamage(B1, "inside", Severity.Note, "card 4111 1111 1111 1111")),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", At(Step.Damage), new ReportDamage(B1, "inside", Severity.Note, "dent", true, "L1, 4111111111111111")),
        new(nameof(Refusal.LooksLikeASocialSecurityNumber), "looks-like-a-social-security-number", At(Step.Damage), new ReportDamage(B1, "inside", Severity.Note, "of 219-09-9999")),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", At(Step.Mileage), new LogMileage(B1, 1040, 5m, "4111-1111-1111-1111")),
        new(nameof(Refusal.DateAhead), "date-ahead", Weekly, new CheckWeekly(B1, Tiny.Friday.AddDays(1), 0, true)),
        new(nameof(Refusal.DateAhead), "date-ahead", At(Step.Kit), new CountKit(B1, Tiny.Extinguisher.Code, 1, null, Tiny.Wednesday.AddDays(1))),
        new(nameof(Refusal.PartNotTold), "part-not-told", Weekly, new CheckWeekly(B1, null, 0, true, ["wipers"])),
        new(nameof(Refusal.PartNotTold), "part-not-told", Weekly, new CheckWeekly(B1, null, 0, true, ["a part that is none"])),
        new(nameof(Refusal.TooManyPhotos), "too-many-photos", () => Pictures(Refusal.MostPhotos), Picture(Refusal.MostPhotos)),
        new(nameof(Refusal.PhotoIsThere), "photo-is-there", () => Pictures(2), Picture(1) with { Name = "the-same-again.png" }),
        new(nameof(Refusal.AlreadyClosed), "already-closed", At(Step.Closed), Picture(0)),
        new(nameof(Refusal.NotIn), "not-in", New, Picture(0)),
    ];

    private static Depot Handover() =>
        Tiny.Opened(setup: Tiny.Setup with { Handover = [new(new("SWEPT"), "Swept and emptied?")] }).At(B1, Step.Kit).Did(new ConfirmKit(B1));

    private static Depot New() => Tiny.Opened("B1: 2+5 LAMP");

    /// <summary>A book that never counted the lamps: they are counted blind.</summary>
    private static Depot Blind() => New().Did(new ComeIn(B1, Tiny.T1));

    /// <summary>The lamps were counted once, so that the book's figure is no secret any more.</summary>
    private static Depot Seen() => Blind().Did(new CountLeftover(B1, Lamp, 2, 0, 5));

    /// <summary>A depot that collects lamps, by the piece, and film, by the pound; nothing is in their boxes.</summary>
    private static Depot Streams() =>
        Tiny.Opened(setup: Tiny.Setup with { Depot = Tiny.Settings with { Streams = [Lamps, new("film")] } }).At(B1, Step.Cardboard);

    /// <summary>Three lamps came home and went to the recycler.</summary>
    private static Depot Shipped() => Streams().Did(new CountStream(B1, Lamps, 3)).Did(new ShipCollected(Lamps, "recycler, slip 7", Tiny.T1));

    private static Depot Pictures(int many) => Enumerable.Range(0, many).Aggregate(At(Step.Damage)(), (d, n) => d.Did(Picture(n)));

    private static AttachPhoto Picture(int n) => new(B1, n.ToString("x64"), $"{n}.png", 135);

    private static Func<Depot> At(Step step) => () => New().At(B1, step);

    /// <summary>Three lamps were used tonight.</summary>
    private static Depot Used() => Seen().Did(new CountLeftover(B1, Lamp, 2, 0, 2)).At(B1, Step.Mileage);

    /// <summary>Two visits were booked for today, and nothing was used.</summary>
    private static Depot Visited() => At(Step.Mileage)().Planned(p => p with { Bookings = [new(Tiny.Wednesday, B1, new("HOME"), 2)] });

    private static Depot SmallTank() =>
        Tiny.Opened(setup: Tiny.Setup with { Vans = [.. Tiny.Setup.Vans.Select(v => v with { TankGal = 20 })] }).At(B1, Step.Mileage);

    /// <summary>Four fills, the last this morning, at 10 miles a gallon.</summary>
    private static Depot Economical() => Tiny.Opened(carried: v => v with
    {
        Driven = [.. Enumerable.Range(0, 4).Select(d => new DrivenDay(Tiny.Wednesday.AddDays(d - 4), 600 + 100 * d, 700 + 100 * d, 10))],
    }).At(B1, Step.Mileage);

    private static Depot Weekly() => Tiny.Opened("B1: 2+5 LAMP", Tiny.Friday).At(B1, Step.Weekly);

    /// <summary>Five were put in the bin tonight, and an entry of another van took them out again: no command of today does, loading vans will.</summary>
    private static Depot BinEmptied() => New().At(B1, Step.Leftovers).At(Tiny.B2, Step.Leftovers)
        .Did(new CountLeftover(B1, Lamp, 2, 5, 0))
        .Take(new LeftoverCounted(Tiny.B2, Lamp, new(0, 0, 5), null, 0, 0, 0, [new Move(Lamp, 5, Place.Bin, Place.Loose(Tiny.B2))]));
}
