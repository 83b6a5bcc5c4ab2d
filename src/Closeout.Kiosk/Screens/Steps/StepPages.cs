using Closeout.Files;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>All steps at the kiosk, in the order in which they are asked.</summary>
public static class StepPages
{
    public static readonly IReadOnlyList<StepPage> All =
    [
        new LeftoversPage(), new CardboardPage(), new MileagePage(), new DamagePage(), new KitPage(), new WeeklyPage(), new HandoverPage(),
        new SignOffPage(Step.SignOff), new SignOffPage(Step.Closed),
    ];

    /// <summary>The steps of evening.csv.</summary>
    public static readonly IReadOnlyList<EveningStep> Evening = [.. All.Where(p => p.Step != Step.Closed).Select(p => p.Evening)];

    public static StepPage Of(Step step) => All.First(p => p.Step == step);

    /// <summary>The question that is open now.</summary>
    public static Question Open(Depot depot, Code<Van> van) => Of(depot.Shift(van)!.Step).Ask(depot, depot.Shift(van)!);

    /// <summary>All that a technician signs, in a few sentences.</summary>
    public static IEnumerable<string> Summary(Depot depot, Shift shift)
    {
        var holds = Readiness.Of(depot, depot.Setup.Van(shift.Van)).Holds;
        return
        [
            .. All.SelectMany(p => p.Summary(depot, shift)),
            .. holds.Count == 0 ? [] : new[] { T($"HELD        {string.Join("; ", holds)}. A lead must lift it before the van goes out.") },
        ];
    }
}
