using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Tests.Shifts;
using Closeout.Vans;

namespace Closeout.Tests.Vans;

/// <summary>How each refusal of a lead's desk at a van is met.</summary>
public static class VanRefusalCatalogue
{
    private const string Card = "4111 1111 1111 1111";

    public static IReadOnlyList<Met> All { get; } =
    [
        .. EachBut(c => c with { Van = new("B9") }).Select(c => new Met(nameof(Refusal.NoSuchVan), "no-such-van", Held, c)),
        .. EachBut(c => c with { Lead = new("T9") }).Select(c => new Met(nameof(Refusal.NoSuchTechnician), "no-such-technician", Held, c)),
        .. EachBut(c => c with { Lead = Tiny.T1 }).Select(c => new Met(nameof(Refusal.OnlyALead), "only-a-lead", Held, c)),
        .. Each(" ").Select(c => new Met(nameof(Refusal.NoWords), "no-words", Held, c)),
        .. Each(new('x', 81)).Select(c => new Met(nameof(Refusal.TooManyWords), "too-many-words", Held, c)),
        .. Each(Card).Select(c => new Met(nameof(Refusal.LooksLikeACard), "looks-like-a-card", Held, c)),
        new(nameof(Refusal.NotHeld), "not-held", Held, new LiftHolds(Tiny.B2, "why not", Tiny.Lead)),
        new(nameof(Refusal.NotHeld), "not-held", () => Held().Did(new LiftHolds(Tiny.B1, "replaced", Tiny.Lead)), new LiftHolds(Tiny.B1, "once more", Tiny.Lead)),
        new(nameof(Refusal.NoSuchHold), "no-such-hold", Held, new LiftHolds(Tiny.B1, "replaced", Tiny.Lead, 2)),
        new(nameof(Refusal.NoSuchHold), "no-such-hold", Held, new LiftHolds(Tiny.B1, "replaced", Tiny.Lead, 0)),
        new(nameof(Refusal.AllHolds), "all-holds", () => Held().Did(new PlaceHold(Tiny.B1, "steering pulls", Tiny.Lead)), new LiftHolds(Tiny.B1, "replaced", Tiny.Lead)),
        new(nameof(Refusal.FarCorrection), "far-correction", () => Tiny.Opened(), new CorrectOdometer(Tiny.B1, 9_000, "read wrong", Tiny.Lead)),
        new(nameof(Refusal.ReadTonight), "read-tonight", () => Tiny.Opened().At(Tiny.B1, Step.Damage), new CorrectOdometer(Tiny.B1, 1200, "cluster replaced", Tiny.Lead)),
        new(nameof(Refusal.OutOfRange), "out-of-range", () => Tiny.Opened(), new CorrectOdometer(Tiny.B1, -1, "cluster replaced", Tiny.Lead)),
        new(nameof(Refusal.HeldAlready), "held-already", () => Held().Did(new PlaceHold(Tiny.B1, "steering pulls", Tiny.Lead)), new PlaceHold(Tiny.B1, " steering pulls ", Tiny.Lead)),
        new(nameof(Refusal.HeldAlready), "held-already", Held, new PlaceHold(Tiny.B1, "windshield, unsafe: crack (incident 1)", Tiny.Lead)),
        new(nameof(Refusal.NoSuchIncident), "no-such-incident", Held, new CloseIncident(Tiny.B1, 2, "repaired", Tiny.Lead)),
        new(nameof(Refusal.NoSuchIncident), "no-such-incident", Held, new CloseIncident(Tiny.B2, 1, "repaired", Tiny.Lead)),
        new(nameof(Refusal.NoSuchIncident), "no-such-incident", () => Held().Did(new CloseIncident(Tiny.B1, 1, "replaced", Tiny.Lead)), new CloseIncident(Tiny.B1, 1, "once more", Tiny.Lead)),
        new(nameof(Refusal.NoSuchIncident), "no-such-incident", () => Held().Did(new ConfirmDamage(Tiny.B1, None: true)), new CloseIncident(Tiny.B1, 1, "it was none", Tiny.Lead)),
    ];

    /// <summary>B1 has a crack in its windshield, incident 1.</summary>
    private static Depot Held() => Tiny.Opened().At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "windshield", Severity.Unsafe, "crack"));

    private static IEnumerable<ICommand> EachBut(Func<HoldCommand, HoldCommand> change) => Each("steering pulls").Select(change);

    private static IEnumerable<HoldCommand> Each(string why) =>
        [new LiftHolds(Tiny.B1, why, Tiny.Lead), new PlaceHold(Tiny.B1, why, Tiny.Lead), new CloseIncident(Tiny.B1, 1, why, Tiny.Lead)];
}
