using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;
using CsCheck;

namespace Closeout.Tests.Shifts;

/// <summary>One thing somebody does at the kiosk: says something, or (null) gives the plain answer to the step at which the van stands.</summary>
public sealed record Act(Code<Van> Van, Command? Said)
{
    public Command On(Depot depot) => Said ?? depot.Answer(Van);
}

/// <summary>Evenings as nobody would plan them: every kind of command, vans and items that do not exist, and wild numbers.</summary>
public static class AnyEvening
{
    private static readonly Gen<int> Wild =
        Gen.Frequency((8, Gen.Int[0, 12]), (1, Gen.OneOf(int.MinValue, -1, 99_999, 100_000, int.MaxValue)));

    private static readonly Gen<decimal> WildMiles =
        Gen.Frequency((6, Gen.Int[0, 6000].Select(i => (decimal)i)), (1, Gen.OneOf(-0.5m, 1000.4m, 2_000_000m, 2_000_000.1m, decimal.MaxValue)));

    private static readonly Gen<bool> Seldom = Gen.Frequency((3, Gen.Const(false)), (1, Gen.Const(true)));

    private static readonly Gen<Code<Item>> AnyItem =
        Gen.OneOf(Tiny.Lamp.Code, Tiny.Shower.Code, Tiny.Wrap.Code, new Code<Item>("lamp"), new Code<Item>("NONE"));

    private static readonly Gen<Code<KitPiece>> AnyPiece =
        Gen.OneOf(Tiny.Cones.Code, Tiny.Extinguisher.Code, Tiny.FirstAid.Code, new Code<KitPiece>("NONE"));

    private static readonly Gen<Code<Technician>> AnyBody = Gen.OneOf(Tiny.T1, Tiny.T2, Tiny.Lead, new Code<Technician>("NOBODY"));

    private static readonly Gen<string> AnyWords = Gen.OneOf("rear door", " scratch ", "", "  ", new string('x', 80), new string('x', 81));

    private static readonly Gen<DateOnly?> AnyDate = Gen.OneOf(Gen.Const((DateOnly?)null), Gen.Int[-400, 400].Select(d => (DateOnly?)Tiny.Wednesday.AddDays(d)));

    /// <summary>What is said of a van, whatever step it stands at.</summary>
    private static Gen<Command> Said(Code<Van> van) => Gen.Frequency(
        (8, Gen.Select(AnyItem, Wild.Nullable(), Wild, Wild, Wild.Nullable(), Seldom,
            (item, @sealed, bin, kept, installed, sure) => (Command)new CountLeftover(van, item, @sealed, bin, kept, installed, sure))),
        (3, Gen.Select(AnyItem, Wild, (item, boxes) => (Command)new CountBoxes(van, item, boxes))),
        (2, Gen.Select(WildMiles, WildMiles.Nullable(), AnyWords, Seldom, (end, fuel, grade, sure) => (Command)new LogMileage(van, end, fuel, grade, sure))),
        (2, Gen.Select(AnyWords, Gen.Enum<Severity>(), AnyWords, (zone, severity, what) => (Command)new ReportDamage(van, zone, severity, what))),
        (2, Gen.Select(AnyPiece, Wild.Nullable(), AnyDate, (piece, count, expires) => (Command)new CountKit(van, piece, count, expires))),
        (1, Gen.Select(AnyDate, Wild, Gen.Bool, (oil, photos, clean) => (Command)new CheckWeekly(van, oil, photos, clean))),
        (1, Gen.Bool.Select(none => (Command)new ConfirmDamage(van, none))),
        (1, AnyBody.Select(who => (Command)new ComeIn(van, who))),
        (1, AnyBody.Select(who => (Command)new Sign(van, who))),
        (2, Gen.OneOf<Command>(new ConfirmLeftovers(van), new ConfirmCardboard(van), new ConfirmKit(van))));

    /// <summary>An act at one of these vans; about one in three is the plain answer, so that evenings come to their end.</summary>
    public static Gen<Act> ActAt(params Code<Van>[] vans) => Gen.OneOf(vans).SelectMany(van => Gen.Frequency(
        (1, Gen.Const(new Act(van, null))),
        (2, Said(van).Select(said => new Act(van, said)))));

    /// <summary>An evening of two vans of the depot and one that it does not have.</summary>
    public static readonly Gen<Act[]> Acts =
        ActAt(Tiny.B1, Tiny.B1, Tiny.B1, Tiny.B2, Tiny.B2, new("b1"), new("NONE")).Array[0, 60];

    /// <summary>The depot in the afternoon, with stock everywhere; on Friday the weekly check is due for T1's van.</summary>
    public static Depot Afternoon(DateOnly? date = null) => Tiny.Opened(
        "shelf: 5 LAMP, 3 SHOWER; bin: 7 LAMP, 2 WRAP; B1: 2+5 LAMP, 1+2 SHOWER, 0+4 WRAP; B2: 3+0 LAMP, 0+6 SHOWER", date);

    private static Gen<T?> Nullable<T>(this Gen<T> gen)
        where T : struct => Gen.Frequency((1, Gen.Const((T?)null)), (3, gen.Select(t => (T?)t)));
}
