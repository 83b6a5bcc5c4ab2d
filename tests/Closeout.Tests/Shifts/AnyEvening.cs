using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using CsCheck;

namespace Closeout.Tests.Shifts;

/// <summary>One thing somebody does: a command of any kind, or (null) the plain answer to the step at which the van stands.</summary>
/// <param name="Van">The van that it is of; of the yard any.</param>
public sealed record Asking(Code<Van> Van, ICommand? Said)
{
    public ICommand Asked(Depot depot) => Said ?? depot.Answer(Van);

    public Decision On(Depot depot) => Asked(depot).Decide(depot);
}

/// <summary>Evenings as nobody would plan them: every kind of command, vans and items that do not exist, and wild numbers.</summary>
public static class AnyEvening
{
    /// <summary>An instrument that is tested twice a year.</summary>
    public static readonly KitPiece Detector = new(new("DET"), "gas detector", 1, false, false, 180, 14);

    private static readonly Gen<int> Wild =
        Gen.Frequency((8, Gen.Int[0, 12]), (1, Gen.OneOf(int.MinValue, -1, 99_999, 100_000, int.MaxValue)));

    private static readonly Gen<decimal> WildMiles =
        Gen.Frequency((6, Gen.Int[0, 6000].Select(i => (decimal)i)), (1, Gen.OneOf(-0.5m, 1000.4m, 2_000_000m, 2_000_000.1m, decimal.MaxValue)));

    private static readonly Gen<bool> Seldom = Gen.Frequency((3, Gen.Const(false)), (1, Gen.Const(true)));

    private static readonly Gen<Code<Item>> AnyItem =
        Gen.OneOf(Tiny.Lamp.Code, Tiny.Shower.Code, Tiny.Wrap.Code, new Code<Item>("lamp"), new Code<Item>("NONE"));

    private static readonly Gen<Code<KitPiece>> AnyPiece =
        Gen.OneOf(Tiny.Cones.Code, Tiny.Extinguisher.Code, Tiny.FirstAid.Code, Detector.Code, new Code<KitPiece>("NONE"));

    private static readonly Gen<Code<Technician>> AnyBody = Gen.OneOf(Tiny.T1, Tiny.T2, Tiny.Lead, new Code<Technician>("NOBODY"));

    private static readonly Gen<string> AnyWords =
        Gen.OneOf("rear door", " scratch ", "wipers", "TYRES ", "", "  ", new string('x', 80), new string('x', 81), "card 4111 1111 1111 1111");

    private static readonly Gen<DateOnly?> AnyDate = Gen.OneOf(Gen.Const((DateOnly?)null), Gen.Int[-400, 400].Select(d => (DateOnly?)Tiny.Wednesday.AddDays(d)));

    private static readonly Gen<string> AnyGrade = Gen.OneOf("petrol", "petrol", "petrol", "diesel", "premium", "", " ", new string('x', 81));

    private static readonly Gen<Code<WasteStream>> AnyStream = Gen.OneOf("lamps", "lamps", "film", "batteries", "NONE").Select(s => new Code<WasteStream>(s));

    private static readonly Gen<decimal> Amount =
        Gen.Frequency((8, Gen.Int[0, 9].Select(n => (decimal)n)), (1, Gen.OneOf(-1m, 0.25m, 99_999m, 99_999.5m, decimal.MaxValue)));

    private static readonly Gen<IReadOnlyList<string>?> AnyParts = Gen.OneOf<IReadOnlyList<string>?>(null, null, [], ["wipers"], ["Tyres", "wipers"], ["a part that is none"]);

    private static readonly Code<Van>[] AnyVan = [Tiny.B1, Tiny.B1, Tiny.B1, Tiny.B2, Tiny.B2, new("b1"), new("NONE")];

    /// <summary>An evening of close-outs alone, of two vans of the depot and one that it does not have.</summary>
    public static readonly Gen<Asking[]> Acts = ActAt(AnyVan).Array[0, 60];

    /// <summary>An evening of close-outs, with leads at their desk and people in the yard between.</summary>
    public static readonly Gen<Asking[]> Whole = Gen.Frequency(
        (3, ActAt(AnyVan)),
        (2, Gen.OneOf(AnyVan).SelectMany(van => AnyDesk.Said(van).Select(said => new Asking(van, said))))).Array[0, 90];

    private static readonly Setup Setup = Tiny.Setup with
    {
        Depot = Tiny.Settings with { Streams = [new("lamps"), new("film")] },
        Kit = [.. Tiny.Setup.Kit, Detector],
        Crew = [.. Tiny.Setup.Crew, new(AnyDesk.Second, "Lou Invented", true, null, [DayOfWeek.Thursday])],
    };

    /// <summary>An act of the close-outs of these vans; about one in three is the plain answer, so that evenings come to their end.</summary>
    public static Gen<Asking> ActAt(params Code<Van>[] vans) => Gen.OneOf(vans).SelectMany(van => Gen.Frequency(
        (1, Gen.Const(new Asking(van, null))),
        (2, Said(van).Select(said => new Asking(van, said)))));

    /// <summary>
    /// The depot in the afternoon, with stock everywhere; an old incident, an old hold and boxes missing of B1, lamps
    /// collected, bookings for the next days. On Friday the weekly check is due for T1's van.
    /// </summary>
    public static Depot Afternoon(DateOnly? date = null)
    {
        var depot = Tiny.Opened(
            "shelf: 5 LAMP, 3 SHOWER; bin: 7 LAMP, 2 WRAP; B1: 2+5 LAMP, 1+2 SHOWER, 0+4 WRAP; B2: 3+0 LAMP, 0+6 SHOWER",
            date,
            Setup,
            v => v.Van != Tiny.B1 ? v : v with
            {
                MissingBoxes = [new(Tiny.Lamp.Code, 3, Tiny.Monday)],
                KitDates = [new(Detector.Code, null, Tiny.Monday.AddDays(-170))],
                Incidents = [new(1, Tiny.Monday, Tiny.FiveOClock.AddDays(-2), Tiny.T2, "roof", Severity.Unsafe, "rack loose", false, "L1", null, false)],
                Holds = [new(Tiny.Monday, "steering pulls")],
            },
            new(200, Tiny.Monday.AddDays(-14), [new(Tiny.Shower.Code, 2, Tiny.Monday)], [new(Tiny.Monday, 5, 4, 3)], [new(new("lamps"), Tiny.Monday, 46)]));
        return depot.Planned(p => p with {
                Bookings =
                [
                    new(Tiny.Wednesday.AddDays(1), Tiny.B1, new("install"), 3),
                    new(Tiny.Wednesday.AddDays(1), Tiny.B2, new("recheck"), 1),
                    new(Tiny.Friday, Tiny.B2, new("install"), 2),
                ],
            });
    }

    /// <summary>What is said in a close-out, whatever step it stands at.</summary>
    private static Gen<ICommand> Said(Code<Van> van) => Gen.Frequency(
        (8, Gen.Select(AnyItem, Wild.Nullable(), Wild, Wild, Wild.Nullable(), Seldom,
            (item, @sealed, bin, kept, installed, sure) => (ICommand)new CountLeftover(van, item, @sealed, bin, kept, installed, sure))),
        (3, Gen.Select(AnyItem, Wild, (item, boxes) => (ICommand)new CountBoxes(van, item, boxes))),
        (3, Gen.Select(AnyStream, Amount, (stream, amount) => (ICommand)new CountStream(van, stream, amount))),
        (2, Gen.Select(WildMiles, WildMiles.Nullable(), AnyGrade, Seldom, (end, fuel, grade, sure) => (ICommand)new LogMileage(van, end, fuel, grade, sure))),
        (3, Gen.Select(AnyWords, Gen.Enum<Severity>(), AnyWords, Gen.Bool.Nullable(), AnyWords, Gen.Int[0, 1439].Nullable(),
            (zone, severity, what, drivable, told, at) => (ICommand)new ReportDamage(van, zone, severity, what, drivable, told, at is { } m ? TimeOnly.MinValue.AddMinutes(m) : null))),
        (2, Gen.Select(AnyPiece, Wild.Nullable(), AnyDate, AnyDate, (piece, count, expires, tested) => (ICommand)new CountKit(van, piece, count, expires, tested))),
        (2, Gen.Select(AnyDate, Wild, Gen.Bool, AnyParts, (oil, photos, clean, parts) => (ICommand)new CheckWeekly(van, oil, photos, clean, parts))),
        (2, Gen.Int[1, 4].Select(n => (ICommand)new AttachPhoto(van, n.ToString("x64"), $"{n}.png", n))),
        (1, Gen.Bool.Select(none => (ICommand)new ConfirmDamage(van, none))),
        (1, AnyBody.Select(who => (ICommand)new ComeIn(van, who))),
        (1, AnyBody.Select(who => (ICommand)new Sign(van, who))),
        (2, Gen.OneOf<ICommand>(new ConfirmLeftovers(van), new ConfirmCardboard(van), new ConfirmKit(van))));

    private static Gen<T?> Nullable<T>(this Gen<T> gen)
        where T : struct => Gen.Frequency((1, Gen.Const((T?)null)), (3, gen.Select(t => (T?)t)));
}
