using Closeout.Cardboard;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Rules;
using Closeout.Vans;
using CsCheck;

namespace Closeout.Tests.Shifts;

/// <summary>What leads and people in the yard say between the close-outs, with unknown codes and wild numbers among it.</summary>
public static class AnyDesk
{
    /// <summary>A second lead: what one closed out the other may check.</summary>
    public static readonly Code<Technician> Second = new("L2");

    private static readonly Gen<int> Boxes = Gen.Frequency((8, Gen.Int[0, 3]), (1, Gen.OneOf(int.MinValue, -1, 99_999, 100_000)));

    private static readonly Gen<Code<Item>> AnyItem =
        Gen.OneOf(Tiny.Lamp.Code, Tiny.Lamp.Code, Tiny.Shower.Code, Tiny.Shower.Code, new Code<Item>("lamp"), new Code<Item>("NONE"));

    private static readonly Gen<Code<Van>> AnyVan = Gen.OneOf(Tiny.B1, Tiny.B1, Tiny.B2, Tiny.B2, Tiny.B3, new Code<Van>("B9"));
    private static readonly Gen<Code<Technician>> Lead = Gen.OneOf(Tiny.Lead, Tiny.Lead, Second, Second, Tiny.T1, new Code<Technician>("NOBODY"));
    private static readonly Gen<Code<WasteStream>> Stream = Gen.OneOf("lamps", "lamps", "film", "metal", "NONE").Select(s => new Code<WasteStream>(s));

    private static readonly Gen<string> Why = Gen.Frequency(
        (8, Gen.OneOf("steering pulls", " looked at ", "never found", "roof, unsafe: rack loose (incident 1)", "fire extinguisher: 0 of 1")),
        (1, Gen.OneOf("", " ", new string('x', 81), "4111111111111111")));

    private static readonly Gen<DateOnly> Date = Gen.OneOf(Tiny.Wednesday.AddDays(1), Tiny.Wednesday.AddDays(1), Tiny.Friday, Tiny.Wednesday, Tiny.Monday);
    private static readonly Gen<double?> Percent = Gen.OneOf<double?>(null, null, 40, 85, 150, 0, -1, 151);
    private static readonly Gen<double?> Pounds = Gen.OneOf<double?>(null, null, 120.5, 610, 0, -1, 100_001);

    public static Gen<ICommand> Said(Code<Van> van) => Gen.Frequency(
        (2, Gen.Select(Why, Lead, (why, by) => (ICommand)new LiftHolds(van, why, by))),
        (3, Gen.Select(Why, Lead, (why, by) => (ICommand)new PlaceHold(van, why, by))),
        (3, Gen.Select(Gen.Int[0, 4], Why, Lead, (number, why, by) => (ICommand)new CloseIncident(van, number, why, by))),
        (2, Gen.Select(AnyItem, Boxes, Lead, (item, boxes, by) => (ICommand)new CountDepotBoxes(item, boxes, by))),
        (3, Gen.Select(Gen.Bool, AnyItem, Gen.Select(Gen.Bool, Boxes, (all, n) => all ? (int?)null : n), Why, Lead,
            (depot, item, boxes, why, by) => (ICommand)new WriteOffBoxes(depot ? null : van, item, boxes, why, by))),
        (1, Gen.Select(Percent, Pounds, Lead, (percent, pounds, by) => (ICommand)new EmptyContainer(percent, pounds, by))),
        (1, Gen.Select(Stream, Why, Lead, (stream, to, by) => (ICommand)new ShipCollected(stream, to, by))),
        (2, Gen.Select(Gen.Int[1, 60], AnyItem, Why, Lead, (entry, item, why, by) => (ICommand)new TakeBack(entry, item, why, by))),
        (2, Lead.Select(by => (ICommand)new CheckCloseout(van, by))),
        (1, Gen.Select(Why, Lead, (why, by) => (ICommand)new Reopen(van, why, by))),
        (1, Gen.Select(Gen.OneOf(Tiny.T1, Tiny.T1, Second), Why, Lead, (whom, why, by) => (ICommand)new SignFor(van, whom, why, by))),
        (1, Gen.Select(Gen.Bool, Why, Lead, (stayed, why, by) => (ICommand)new ExplainVan(van, stayed, why, by))),
        (1, Gen.Select(Date, AnyVan, AnyVan, Gen.Bool, Why, Lead, (date, from, to, all, why, by) => (ICommand)new MoveBookings(date, from, to, all ? null : new("install"), why, by))));
}
