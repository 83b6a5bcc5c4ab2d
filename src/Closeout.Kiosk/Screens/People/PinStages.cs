using Closeout.People;

namespace Closeout.Screens.People;

/// <summary>The words of the page that asks for a PIN, for each stage of it.</summary>
internal static class PinStages
{
    /// <summary>What whoever types it does.</summary>
    public static string Does(PinScreen s) => s.Then is not ChangePinAct
        ? s.Then.Does
        : s.Stage == PinStage.Ask
        ? T("takes another PIN")
        : T("a new PIN");

    public static string Label(PinStage stage) => stage switch
    {
        PinStage.Ask => "PIN",
        PinStage.Choose => T("New PIN"),
        PinStage.Again => T("Once more"),
        PinStage.Drawn => T("Type it"),
        _ => throw new InvalidOperationException($"no such stage: {stage}"),
    };

    public static IEnumerable<string> About(PinScreen s) => s.Stage switch
    {
        PinStage.Ask when s.Then is ChangePinAct =>
            [T("Your present PIN, then Enter. The new one is asked next; until it is taken the present one opens.")],
        PinStage.Ask => [T("Your own PIN, then Enter. What follows is recorded in your name.")],
        PinStage.Choose =>
        [
            T("The present PIN opens until the new one is taken."),
            T("I and Enter issues six digits; or type eight or more characters of your own, and Enter."),
            T(
                "Not taken: one or two characters or a pattern again and again, 1234, abcd, qwerty and the like, dates, your own code or "
                    + "name, card and social-security numbers."),
        ],
        PinStage.Again => [T("The same once more, then Enter.")],
        PinStage.Drawn => [T($"Your PIN is {s.Chosen}"), T("It is shown once. Write it down where nobody else looks, then type it here.")],
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };

    /// <summary>What an Enter without anything typed is answered.</summary>
    public static string Wanted(PinScreen s) => s.Stage switch
    {
        PinStage.Ask => T($"Type the PIN of {s.Person}, then Enter."),
        PinStage.Choose =>
            T(
                $"Type a new PIN of {PinRules.LeastOwn} characters or more, or I for {PinRules.IssuedDigits} digits drawn for you, then "
                    + $"Enter."),
        PinStage.Again => T("Type the new PIN once more, then Enter."),
        PinStage.Drawn => T($"Type the {PinRules.IssuedDigits} digits that stand above, then Enter."),
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };
}
