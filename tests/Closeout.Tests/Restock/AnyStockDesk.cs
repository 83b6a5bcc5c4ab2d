using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Tests.Shifts;
using CsCheck;

namespace Closeout.Tests.Restock;

/// <summary>One thing done at the depot: at a van (an act of its close-out), or at the stock desk.</summary>
internal sealed record Doing(Asking? AtVan, ICommand? AtDesk)
{
    public Decision On(Depot depot) => AtDesk is { } command ? command.Decide(depot) : AtVan!.On(depot);
}

/// <summary>Evenings with close-outs, loading, deliveries, corrections and changes of the plan in any order, with wild numbers and unknown codes among them.</summary>
internal static class AnyStockDesk
{
    private static readonly Gen<int> Wild =
        Gen.Frequency((9, Gen.Int[0, 25]), (1, Gen.OneOf(int.MinValue, -1, 9_999, 10_000, 99_999, int.MaxValue)));

    private static readonly Gen<Code<Van>> AnyVan =
        Gen.OneOf(Tiny.B1, Tiny.B1, Tiny.B2, Tiny.B2, Tiny.B3, new Code<Van>("b2"), new Code<Van>("B9"));

    private static readonly Gen<Code<Item>> AnyItem =
        Gen.OneOf(Tiny.Lamp.Code, Tiny.Lamp.Code, Tiny.Shower.Code, Tiny.Wrap.Code, new Code<Item>("lamp"), new Code<Item>("NONE"));

    private static readonly Gen<Code<Technician>> AnyBody = Gen.OneOf(Tiny.T1, Tiny.Lead, Tiny.Lead, new Code<Technician>("l1"), new Code<Technician>("NOBODY"));
    private static readonly Gen<string> AnyReason = Gen.Frequency((6, Gen.Const("counted twice")), (1, Gen.OneOf("", " ", new string('x', 80), new string('x', 81))));
    private static readonly Gen<DateOnly> AnyDate = Gen.OneOf(TinyDesk.Thursday, TinyDesk.Thursday, TinyDesk.Thursday, Tiny.Friday, Tiny.Friday.AddDays(3), Tiny.Wednesday);

    private static readonly Gen<ICommand> Change = Gen.Select(Gen.Enum<OverrideKind>(), AnyVan, Gen.Frequency((6, AnyItem.Select(i => (Code<Item>?)i)), (1, Gen.Const((Code<Item>?)null))), AnyDate, Wild, AnyReason, AnyBody)
        .Select((kind, van, item, date, units, reason, by) => (ICommand)new ChangePlan(kind, van, item, date, units, reason, by));

    private static readonly Gen<ICommand> Load = Gen.Select(
        AnyVan, Gen.Select(AnyItem, Gen.Frequency((9, Gen.Int[0, 3]), (1, Wild)), Wild, (i, s, l) => new Taken(i, s, l)).Array[0, 3], (van, lines) => (ICommand)new LoadVan(van, lines, null));

    private static Gen<ICommand> Correct(Gen<Place> places) => Gen.Select(places, AnyItem, Wild, AnyReason, AnyBody)
        .Select((place, item, counted, reason, by) => (ICommand)new CorrectCount(place, item, counted, reason, by));

    private static readonly Gen<Place> AtDepot = Gen.OneOf(Place.Shelf, Place.Bin);
    private static readonly Gen<Place> InVan = Gen.Select(Gen.Bool, AnyVan, (boxed, van) => boxed ? Place.Sealed(van) : Place.Loose(van));

    private static Gen<ICommand> AtDesk(Gen<Place> places) => Gen.Frequency(
        (4, Change),
        (1, Gen.Select(Gen.Int[1, 60], AnyReason, AnyBody).Select((number, reason, by) => (ICommand)new WithdrawChange(number, reason, by))),
        (1, Gen.Select(Gen.Int[1, 60], AnyItem, AnyReason, AnyBody).Select((number, item, reason, by) => (ICommand)new TakeBack(number, item, reason, by))),
        (6, Load),
        (2, Gen.Select(AnyItem, Wild, AnyBody).Select((item, cartons, by) => (ICommand)new ReceiveDelivery(item, cartons, by))),
        (3, Correct(places)));

    /// <summary>Doings of an evening, with corrections in these places.</summary>
    private static Gen<Doing[]> Evening(Gen<Place> places) => Gen.Frequency(
        (1, AnyEvening.ActAt(Tiny.B1, Tiny.B2).Select(act => new Doing(act, null))),
        (1, AnyEvening.ActAt(Tiny.B1, Tiny.B2, Tiny.B3).Select(act => new Doing(new Asking(act.Van, null), null))),
        (2, AtDesk(places).Select(command => new Doing(null, command)))).Array[0, 80];

    private static readonly Code<VisitKind> Home = new("HOME");

    public static readonly Gen<Doing[]> Doings = Evening(AtDepot);

    /// <summary>The same with vans corrected at any moment, most of them in the middle of their close-outs.</summary>
    public static readonly Gen<Doing[]> DoingsWithVansCorrected = Gen.Frequency(
        (3, AnyEvening.ActAt(Tiny.B1, Tiny.B2).Select(act => new Doing(act, null))),
        (2, Correct(InVan).Select(command => new Doing(null, command))),
        (1, AtDesk(AtDepot).Select(command => new Doing(null, command)))).Array[0, 60];

    /// <summary>Stock everywhere, visits booked for tomorrow and the day after, and cartons on order.</summary>
    public static Depot Afternoon() => (AnyEvening.Afternoon() with
    {
        Setup = Tiny.Setup with { Rates = [new(Home, Tiny.Lamp.Code, 4, 10), new(Home, Tiny.Shower.Code, 1.5, 5)] },
    })
    .Planned(p => p with { Bookings = [new(TinyDesk.Thursday, Tiny.B1, Home, 4), new(TinyDesk.Thursday, Tiny.B2, Home, 2), new(Tiny.Friday, Tiny.B3, Home, 3)] })
    .Stocked(s => s with
    {
        Orders = [new(Tiny.Lamp.Code, 4, Tiny.Friday), new(Tiny.Lamp.Code, 2, TinyDesk.Thursday), new(Tiny.Wrap.Code, 9, Tiny.Friday)],
    });
}
