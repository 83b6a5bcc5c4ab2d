using Closeout.DayBook;
using Closeout.People;

namespace Closeout.Screens;

/// <summary>The keys of the PIN screens.</summary>
public static class PinKeys
{
    /// <summary>Characters that are taken in; more than a PIN may have, so that a longer one is refused and not cut.</summary>
    private const int MostTyped = PinRules.MostOwn + 8;

    public static (Model, Act?) On(Depot depot, Model model, PinScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = s.Back }, null),
        Press.Backspace => (model with { Screen = s with { Typed = s.Typed.Length > 0 ? s.Typed[..^1] : "" } }, null),
        Press.Character when s.Typed.Length < MostTyped && !char.IsControl(key.Character) => (model with { Screen = s with { Typed = s.Typed + key.Character } }, null),
        Press.Enter when s.Typed.Length == 0 => (model with { Said = Asked(s) }, null),
        Press.Enter => Enter(depot, model, s),
        _ => (model, null),
    };

    /// <summary>Any key of these leads back; no other, so that a scanner does not wipe it away.</summary>
    public static (Model, Act?) Issued(Model model, IssuedScreen s, Keystroke key) =>
        key.Press is Press.Enter or Press.Escape ? (model with { Screen = s.Back }, null) : (model, null);

    private static string Asked(PinScreen s) => s.Stage switch
    {
        PinStage.Ask => $"Type the PIN of {s.Person}, then Enter.",
        PinStage.Choose => $"Type a new PIN of {PinRules.LeastOwn} characters or more, or I for {PinRules.IssuedDigits} digits drawn for you, then Enter.",
        PinStage.Again => "Type the new PIN once more, then Enter.",
        PinStage.Drawn => $"Type the {PinRules.IssuedDigits} digits that stand above, then Enter.",
        _ => throw new InvalidOperationException($"no such stage: {s.Stage}"),
    };

    private static (Model, Act?) Enter(Depot depot, Model model, PinScreen s)
    {
        var fresh = s with { Typed = "" };
        switch (s.Stage)
        {
            case PinStage.Ask:
                return (model, new TryPinAct());
            case PinStage.Choose when s.Typed is "I" or "i":
                return (model, new DrawPinAct());
            case PinStage.Choose:
                return PinRules.Own(s.Typed, depot.Setup.Find(s.Person)!) is { } weak
                    ? (model with { Screen = fresh, Said = weak.Text }, null)
                    : (model with { Screen = fresh with { Stage = PinStage.Again, Chosen = s.Typed } }, null);
            case PinStage.Again or PinStage.Drawn when s.Typed == s.Chosen:
                return (model, new TakePinAct());
            case PinStage.Again:
                return (model with { Screen = fresh with { Stage = PinStage.Choose, Chosen = "" }, Said = PinRefusal.NotTheSame().Text }, null);
            case PinStage.Drawn:
                return (model with { Screen = fresh, Said = "That is not the PIN drawn for you. It stands above: type those six digits." }, null);
            default:
                throw new InvalidOperationException($"no such stage: {s.Stage}");
        }
    }
}
