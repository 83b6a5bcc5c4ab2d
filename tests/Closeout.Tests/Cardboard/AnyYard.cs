using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using CsCheck;

namespace Closeout.Tests.Cardboard;

/// <summary>What a random evening does in the yard. What the rules refuse is not done.</summary>
public abstract record YardDeed;

/// <summary>A van's close-out goes on by one plain answer.</summary>
public sealed record GoOn(Code<Van> Van) : YardDeed;

/// <summary>A command of a close-out.</summary>
public sealed record Say(ICommand Command) : YardDeed;

/// <summary>A command of the yard.</summary>
public sealed record AtTheYard(ICommand Command) : YardDeed;

/// <summary>A lead's command of a van.</summary>
public sealed record AtTheVan(ICommand Command) : YardDeed;

/// <summary>A lead opens a signed close-out again.</summary>
public sealed record Anew(Code<Van> Van) : YardDeed;

/// <summary>A carton is opened at the depot: lamps loaded one by one into a van.</summary>
public sealed record OpenCarton(Code<Van> Van, int Loose) : YardDeed;

/// <summary>Random evenings of boxes and waste over several pages, played by the real rules.</summary>
internal static class AnyYard
{
    public static readonly Setup Setup = Tiny.Setup with { Depot = Tiny.Settings with { Streams = [new("lamps"), new("film")] } };

    private static readonly Gen<Code<Van>> Vans = Gen.OneOf(Tiny.B1, Tiny.B2, Tiny.B3);
    private static readonly Gen<Code<Item>> Items = Gen.OneOf(Tiny.Lamp.Code, Tiny.Shower.Code);
    private static readonly Gen<decimal> Amounts = Gen.OneOf(0m, 1m, 2m, 3m, 2.5m, 0.25m);

    public static readonly Gen<YardDeed> Boxes = Gen.Frequency(
        (9, Vans.Select(v => (YardDeed)new GoOn(v))),
        (5, Gen.Select(Vans, Items, Gen.Int[0, 1], (v, i, n) => (YardDeed)new Say(new CountLeftover(v, i, n, 0, 0, Sure: true)))),
        (3, Gen.Select(Vans, Items, Gen.Int[0, 3], (v, i, n) => (YardDeed)new Say(new CountBoxes(v, i, n)))),
        (2, Gen.Select(Vans, Gen.Int[1, 9], (v, n) => (YardDeed)new OpenCarton(v, n))),
        (2, Gen.Select(Items, Gen.Int[0, 4], (i, n) => (YardDeed)new AtTheYard(new CountDepotBoxes(i, n, Tiny.T1)))),
        (2, Gen.Select(Vans.Select(v => (Code<Van>?)v), Items, Gen.Int[0, 3], (v, i, n) => (YardDeed)new AtTheYard(new WriteOffBoxes(n == 3 ? null : v, i, n == 0 ? null : n, "gone", Tiny.Lead)))));

    public static readonly Gen<YardDeed> Pickups = Gen.Select(Gen.Int[1, 100], n => (YardDeed)new AtTheYard(new EmptyContainer(n, 10.0 * n, Tiny.T1)));

    public static readonly Gen<YardDeed> Waste = Gen.Frequency(
        (5, Vans.Select(v => (YardDeed)new GoOn(v))),
        (6, Gen.Select(Vans, Gen.OneOf("lamps", "film"), Amounts, (v, s, n) => (YardDeed)new Say(new CountStream(v, new(s), n)))),
        (1, Gen.OneOf("lamps", "film").Select(s => (YardDeed)new AtTheYard(new ShipCollected(new(s), "recycler, slip 7", Tiny.T1)))));

    /// <summary>A depot with cartons everywhere.</summary>
    public static Depot Afternoon(DateOnly? date = null, YardCarried? yard = null, Setup? setup = null) => Tiny.Opened(
        "shelf: 40 LAMP, 9 SHOWER; bin: 3 LAMP; B1: 3+5 LAMP, 2+2 SHOWER; B2: 3+0 LAMP, 1+0 SHOWER; B3: 2+0 LAMP", date, setup ?? Setup, yard: yard);

    /// <summary>What is told and asked of vans besides: readings, damages, pictures, and what a lead does about them.</summary>
    public static readonly Gen<YardDeed> Vehicles = Gen.Frequency(
        (4, Gen.Select(Vans, Gen.Int[9_000, 30_000], Gen.OneOf<decimal?>(null, 12.5m), (v, t, gal) => (YardDeed)new Say(new LogMileage(v, t / 10m, gal, gal is null ? null : "petrol", Sure: true)))),
        (3, Gen.Select(Vans, Gen.Enum<Severity>(), Gen.OneOf<bool?>(null, false), (v, s, d) => (YardDeed)new Say(new ReportDamage(v, "roof", s, "dent", d, "L1", new TimeOnly(16, 41))))),
        (1, Gen.Select(Vans, Gen.Bool, (v, none) => (YardDeed)new Say(new ConfirmDamage(v, none)))),
        (1, Gen.Select(Vans, Gen.Int[0, 3], (v, n) => (YardDeed)new Say(new AttachPhoto(v, new string((char)('a' + n), 64), $"{n}.png", 9)))),
        (1, Gen.Select(Vans, Gen.Int[1, 6], (v, n) => (YardDeed)new AtTheVan(new CloseIncident(v, n, "mended", Tiny.Lead)))),
        (1, Vans.Select(v => (YardDeed)new AtTheVan(new LiftHolds(v, "looked at", Tiny.Lead)))),
        (1, Vans.Select(v => (YardDeed)new Anew(v))));

    /// <summary>What a deed comes to by the real rules.</summary>
    public static Decision Decide(Depot depot, YardDeed deed) => deed switch
    {
        GoOn d => depot.Answer(d.Van).Decide(depot),
        Say d => d.Command.Decide(depot),
        AtTheYard d => d.Command.Decide(depot),
        AtTheVan d => d.Command.Decide(depot),
        Anew d => new Reopen(d.Van, "counted anew", Tiny.Lead).Decide(depot),
        OpenCarton d => new LoadVan(d.Van, [new(Tiny.Lamp.Code, 0, d.Loose)], null).Decide(depot),
        _ => throw new InvalidOperationException($"no such deed: {deed}"),
    };

    /// <summary>The entry that a deed becomes; null: refused.</summary>
    public static Entry? Entry(Depot depot, YardDeed deed) => Decide(depot, deed).Entry;

    /// <summary>The depot after a deed, or as it was.</summary>
    public static Depot After(Depot depot, YardDeed deed) => Entry(depot, deed) is { } entry ? depot.Take(entry) : depot;
}
