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
    SignOff,
    Closed,
}

/// <summary>The steps in the words of the floor.</summary>
public static class StepWords
{
    public static string Name(Step step) => step switch
    {
        Step.OnTheRoad => "on the road",
        Step.Leftovers => "leftovers",
        Step.Cardboard => "cardboard",
        Step.Mileage => "mileage",
        Step.Damage => "damage",
        Step.Kit => "safety kit",
        Step.Weekly => "weekly check",
        Step.SignOff => "sign-off",
        Step.Closed => "closed",
        _ => throw new InvalidOperationException($"no such step: {step}"),
    };
}
