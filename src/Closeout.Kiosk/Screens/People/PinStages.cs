using Closeout.People;

namespace Closeout.Screens.People;

/// <summary>The words of the page that asks for a PIN, for each stage of it.</summary>
internal static class PinStages
{
    /// <summary>What whoever types it does.</summary>
    public static string Does(PinScreen s) => s.Then is not ChangePinAct
        ? s.Then.Does
        : s.Stage == PinStage.Ask
        ? "takes another PIN"
        : "a new PIN";

    public static string Label(PinStage stage) => stage switch
    {
        PinStage.Ask => "PIN",
        PinStage.Choose => "New PIN",
        PinStage.Again => "Once more",
        PinStage.Drawn => "Type it",
        _ => throw new InvalidOperationException($"no such stage: {stage}"),
    };

    public static IEnumerable<string> About(PinScreen s) => s.Stage switch
    {
        PinStage.Ask when s.Then is ChangePinAct =>
            ["Your present PIN, then Enter. The new one is asked next; until it is taken the present one opens."],
        PinStage.Ask => ["Your own PIN, then Enter. What follows is recorded in your name."],
        PinStage.Choose =>
        [
            "The present PIN opens until the new one is taken.",
            "I and Enter issues six digits; or type eight or more characters of your own, and Enter.",
            "Not taken: one or two characters or a pattern again and again, 1234, abcd, qwerty and the like, dates, your own code or "
                + "name, card and social-security numbers.",
        ],
        PinStage.Again => ["The same once more, then Enter."],
        PinStage.Drawn => [$"Your PIN is {s.Chosen}", "It is shown once. Write it down where nobody else looks, then type it here."],
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };

    /// <summary>What an Enter without anything typed is answered.</summary>
    public static string Wanted(PinScreen s) => s.Stage switch
    {
        PinStage.Ask => $"Type the PIN of {s.Person}, then Enter.",
        PinStage.Choose =>
            $"Type a new PIN of {PinRules.LeastOwn} characters or more, or I for {PinRules.IssuedDigits} digits drawn for you, then Enter.",
        PinStage.Again => "Type the new PIN once more, then Enter.",
        PinStage.Drawn => $"Type the {PinRules.IssuedDigits} digits that stand above, then Enter.",
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };
}
