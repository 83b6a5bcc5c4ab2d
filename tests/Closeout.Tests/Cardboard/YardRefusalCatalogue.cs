using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Tests.Shifts;

namespace Closeout.Tests.Cardboard;

/// <summary>How each refusal of the yard is met.</summary>
public static class YardRefusalCatalogue
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;
    private static readonly Code<Technician> Nobody = new("T9");
    private static readonly ShipCollected Ship = new(new("lamps"), "recycler, slip 7", Tiny.T1);
    private const string Card = "4111 1111 1111 1111";

    public static IReadOnlyList<Met> All { get; } =
    [
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", TwoMissing, WriteOff(3)),
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", TwoMissing, WriteOff(0)),
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", TwoMissing, WriteOff(-1)),
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", TwoMissing, WriteOff(1) with { Van = Tiny.B2 }),
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", TwoMissing, WriteOff(null) with { Van = null }),
        new(nameof(YardRefusal.NotSoManyMissing), "not-so-many-missing", () => TwoMissing().Did(WriteOff(1)), WriteOff(2)),
        new(nameof(YardRefusal.NoSuchStream), "no-such-stream", Collected, new ShipCollected(new("NONE"), "recycler, slip 7", Tiny.T1)),
        new(nameof(YardRefusal.NothingCollected), "nothing-collected", Collected, new ShipCollected(new("batteries"), "recycler, slip 7", Tiny.T1)),
        new(nameof(YardRefusal.NothingCollected), "nothing-collected", () => Collected().Did(Ship), Ship),
        new(nameof(Refusal.OnlyALead), "only-a-lead", TwoMissing, WriteOff(1) with { Lead = Tiny.T1 }),
        new(nameof(Refusal.NoSuchVan), "no-such-van", TwoMissing, WriteOff(1) with { Van = new("B9") }),
        new(nameof(Refusal.NoSuchItem), "no-such-item", TwoMissing, WriteOff(1) with { Item = new("NONE") }),
        new(nameof(Refusal.NoSuchItem), "no-such-item", TwoMissing, new CountDepotBoxes(new("NONE"), 1, Tiny.T1)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", TwoMissing, WriteOff(1) with { Lead = Nobody }),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", TwoMissing, new CountDepotBoxes(Lamp, 1, Nobody)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", TwoMissing, new EmptyContainer(80, null, Nobody)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Collected, Ship with { By = Nobody }),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new CountDepotBoxes(Lamp, -1, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new CountDepotBoxes(Lamp, 100_000, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new EmptyContainer(0, null, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new EmptyContainer(151, null, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new EmptyContainer(80, 0, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", TwoMissing, new EmptyContainer(80, 100_001, Tiny.T1)),
        new(nameof(Refusal.NoWords), "no-words", TwoMissing, WriteOff(1) with { Why = "" }),
        new(nameof(Refusal.NoWords), "no-words", Collected, Ship with { To = " " }),
        new(nameof(Refusal.TooManyWords), "too-many-words", TwoMissing, WriteOff(1) with { Why = new('x', 81) }),
        new(nameof(Refusal.TooManyWords), "too-many-words", Collected, Ship with { To = new('x', 81) }),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", TwoMissing, WriteOff(1) with { Why = Card }),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", Collected, Ship with { To = Card }),
    ];

    private static WriteOffBoxes WriteOff(int? boxes) => new(Tiny.B1, Lamp, boxes, "never found", Tiny.Lead);

    /// <summary>B1 misses two boxes of lamps since Monday.</summary>
    private static Depot TwoMissing() => Tiny.Opened(carried: v => v.Van == Tiny.B1 ? v with { MissingBoxes = [new(Lamp, 2, Tiny.Monday)] } : v);

    private static Depot Collected() => Tiny.Opened(yard: YardCarried.Empty with { Collecting = [new(new("lamps"), Tiny.Monday, 46)] });
}
