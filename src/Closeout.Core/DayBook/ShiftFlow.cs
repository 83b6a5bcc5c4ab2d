using Stateless;

namespace Closeout.DayBook;

/// <summary>Where a close-out stands. The steps are in the order in which they are asked.</summary>
public enum Step
{
    OnTheRoad,
    Leftovers,
    Cardboard,
    Mileage,
    Damage,
    Kit,
    Weekly,
    Handover,
    SignOff,
    Closed,
}

/// <summary>The steps in the words of the floor.</summary>
public static class StepWords
{
    public static string Name(Step step) => step switch
    {
        Step.OnTheRoad => T("on the road"),
        Step.Leftovers => T("leftovers"),
        Step.Cardboard => T("cardboard"),
        Step.Mileage => T("mileage"),
        Step.Damage => T("damage"),
        Step.Kit => T("safety kit"),
        Step.Weekly => T("weekly check"),
        Step.Handover => T("handover"),
        Step.SignOff => T("sign-off"),
        Step.Closed => T("closed"),
        _ => throw new InvalidOperationException($"no such step: {step}"),
    };
}

/// <summary>What moves a close-out: a step answered, or the two things that redirect it.</summary>
public enum Trigger
{
    ComeIn,
    Leftovers,
    Cardboard,
    Mileage,
    Damage,
    Kit,
    Weekly,
    Handover,
    Sign,

    /// <summary>A count was changed so that other boxes must exist than were counted: cardboard is asked again.</summary>
    BoxesChanged,

    /// <summary>The weekly check, or the handover, is not due: pass it by.</summary>
    NotDue,

    /// <summary>A lead opens a signed close-out again.</summary>
    Reopen,
}

/// <summary>
/// The only list of which step follows which: a machine declared once, whose ways are read off it. To fire it at each step is a hundred
/// times slower.
/// </summary>
public static class ShiftFlow
{
    private static readonly Dictionary<(Step, Trigger), Step> Table = Declared().GetInfo().States
        .SelectMany(s =>
            s.FixedTransitions.Select(t =>
                (From: s.UnderlyingState, By: t.Trigger.UnderlyingTrigger, To: t.DestinationState.UnderlyingState)))
        .ToDictionary(t => ((Step)t.From, (Trigger)t.By), t => (Step)t.To);

    /// <summary>Whether the trigger is allowed there. An answer to an earlier step is: it may be changed until the sign-off.</summary>
    public static bool Allows(Step step, Trigger trigger) => Table.ContainsKey((step, trigger));

    /// <summary>The step after the trigger.</summary>
    /// <exception cref="InvalidOperationException">The flow has no such way.</exception>
    public static Step After(Step step, Trigger trigger) => Table.TryGetValue((step, trigger), out var next)
        ? next
        : throw new InvalidOperationException($"the close-out has no way by {trigger} from {step}");

    /// <summary>The trigger that answers the step; none for the two ends.</summary>
    public static Trigger? Answers(Step step) => step switch
    {
        Step.OnTheRoad => Trigger.ComeIn,
        Step.Leftovers => Trigger.Leftovers,
        Step.Cardboard => Trigger.Cardboard,
        Step.Mileage => Trigger.Mileage,
        Step.Damage => Trigger.Damage,
        Step.Kit => Trigger.Kit,
        Step.Weekly => Trigger.Weekly,
        Step.Handover => Trigger.Handover,
        Step.SignOff => Trigger.Sign,
        Step.Closed => null,
        _ => throw new InvalidOperationException($"no such step: {step}"),
    };

    /// <summary>The steps asked of a technician, in their order; the weekly check and the handover only when they are due.</summary>
    public static IReadOnlyList<Step> Asked(bool weeklyDue, bool handoverDue = false)
    {
        var steps = new List<Step>();
        for (var step = After(Step.OnTheRoad, Trigger.ComeIn); step != Step.Closed; step = After(step, Answers(step)!.Value))
        {
            if ((step != Step.Weekly || weeklyDue) && (step != Step.Handover || handoverDue))
                steps.Add(step);
        }

        return steps;
    }

    private static StateMachine<Step, Trigger> Declared()
    {
        var flow = new StateMachine<Step, Trigger>(Step.OnTheRoad);
        flow.Configure(Step.OnTheRoad).Permit(Trigger.ComeIn, Step.Leftovers);
        flow.Configure(Step.Leftovers).Permit(Trigger.Leftovers, Step.Cardboard);
        flow.Configure(Step.Cardboard).Permit(Trigger.Cardboard, Step.Mileage);
        flow.Configure(Step.Mileage).Permit(Trigger.Mileage, Step.Damage);
        flow.Configure(Step.Damage).Permit(Trigger.Damage, Step.Kit);
        flow.Configure(Step.Kit).Permit(Trigger.Kit, Step.Weekly);
        flow.Configure(Step.Weekly).Permit(Trigger.Weekly, Step.Handover).Permit(Trigger.NotDue, Step.Handover);
        flow.Configure(Step.Handover).Permit(Trigger.Handover, Step.SignOff).Permit(Trigger.NotDue, Step.SignOff);
        flow.Configure(Step.SignOff).Permit(Trigger.Sign, Step.Closed);
        flow.Configure(Step.Closed).Permit(Trigger.Reopen, Step.SignOff);

        for (var step = Step.Cardboard; step <= Step.SignOff; step++)
        {
            for (var earlier = Step.Leftovers; earlier < step; earlier++)
                flow.Configure(step).InternalTransition(Answers(earlier)!.Value, () => { });

            if (step > Step.Cardboard)
                flow.Configure(step).Permit(Trigger.BoxesChanged, Step.Cardboard);
        }

        return flow;
    }
}
