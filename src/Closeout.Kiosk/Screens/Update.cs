using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts;

namespace Closeout.Screens;

/// <summary>What a key does: a pure step from model to model, and perhaps an act.</summary>
public static class Update
{
    private const string Beyond = "A character was left out: those up to U+FFFF are taken, and an emoji lies above. Say it in words.";

    /// <param name="plan">Tomorrow's plan, made only where a screen needs it: not between two items of a close-out.</param>
    public static (Model Model, Act? Act) On(Depot depot, Func<RestockPlan> plan, Model model, Keystroke key)
    {
        var quiet = model with { Said = "" };
        return key.Press switch
        {
            Press.Quit => (quiet, new QuitAct()),
            Press.Beyond => (model with { Said = Beyond }, null),
            Press.F1 when model.Screen is not HelpScreen => (quiet with { Screen = new HelpScreen(model.Screen) }, null),
            _ => model.Screen switch
            {
                WallScreen s => Wall(depot, quiet, s, key),
                WhoScreen s => Who(depot, quiet, s, key),
                CloseoutScreen s => CloseoutKeys.On(depot, quiet, s, key),
                TomorrowScreen s => PlanKeys.Tomorrow(plan(), quiet, s, key),
                WhyScreen s => Why(quiet, s, key),
                LoadScreen s => PlanKeys.Load(plan(), depot, quiet, s, key),
                DeskScreen s => PlanKeys.Desk(plan(), depot, quiet, s, key),
                AccuracyScreen s => (quiet with { Screen = key.Press == Press.Escape ? s.Back : s with { Top = Scrolled(s.Top, key.Press) } }, null),
                CardboardScreen s => YardKeys.Yard(depot, quiet, s, key),
                VanScreen s => YardKeys.Van(depot, quiet, s, key),
                DayBookScreen s => YardKeys.DayBook(depot, quiet, s, key),
                AttachScreen s => YardKeys.Attach(quiet, s, key),
                PinScreen s => PinKeys.On(depot, quiet, s, key),
                IssuedScreen s => PinKeys.Issued(quiet, s, key),
                PeopleScreen s => PeopleKeys.On(depot, quiet, s, key),
                HelpScreen s => (quiet with { Screen = s.Back }, null),
                _ => throw new InvalidOperationException($"no keys for {model.Screen.GetType().Name}"),
            },
        };
    }

    /// <summary>All was recorded: on to what comes next.</summary>
    /// <param name="commands">What was recorded, in order.</param>
    public static Model Recorded(Depot depot, Model model, IReadOnlyList<Command> commands) => (model.Screen, commands[^1]) switch
    {
        (WhoScreen who, _) => new(Questions.Open(depot, who.Van)),
        (CloseoutScreen s, Sign) => new(Back(depot, s.Van), $"{s.Van} {depot.Setup.Van(s.Van).Name} is signed. {(depot.Rehearsal ? "REHEARSAL: signed without a PIN." : "Good night.")}"),
        (CloseoutScreen s, var last) => new(CloseoutKeys.Next(depot, s, last)),
        _ => model,
    };

    /// <summary>The wall, the van selected.</summary>
    public static WallScreen Back(Depot depot, Code<Van> van) =>
        new(Math.Max(0, depot.Setup.Vans.Index().Where(v => v.Item.Code == van).Select(v => v.Index).FirstOrDefault()));

    private static (Model, Act?) Wall(Depot depot, Model model, WallScreen s, Keystroke key)
    {
        var (last, here) = (depot.Setup.Vans.Count - 1, new WallScreen(s.Selected));
        return key.Press switch
        {
            Press.Up => (model with { Screen = new WallScreen(Math.Max(0, s.Selected - 1)) }, null),
            Press.Down or Press.Tab => (model with { Screen = new WallScreen(Math.Min(last, s.Selected + 1)) }, null),
            Press.Home => (model with { Screen = new WallScreen() }, null),
            Press.End => (model with { Screen = new WallScreen(last) }, null),
            Press.PageUp => (model with { Screen = new WallScreen(Math.Max(0, s.Selected - 10)) }, null),
            Press.PageDown => (model with { Screen = new WallScreen(Math.Min(last, s.Selected + 10)) }, null),
            Press.F2 => (model with { Screen = new TomorrowScreen(here) }, null),
            Press.F3 => (model, new CardboardAct(here)),
            Press.F4 => (model with { Screen = new LoadScreen(depot.Setup.Vans[s.Selected].Code, Form.None) }, null),
            Press.F5 => (model with { Screen = new DeskScreen(DeskTask.Delivery, DeskForms.Of(DeskTask.Delivery), here) }, null),
            Press.F6 => (model with { Screen = new AccuracyScreen(here) }, null),
            Press.F8 => (model, new DayBookAct(here)),
            Press.F7 => (model with { Screen = new VanScreen(depot.Setup.Vans[s.Selected].Code) }, null),
            Press.F9 => (model with { Screen = new PeopleScreen(here) }, null),
            Press.Backspace => (model with { Screen = s with { Typed = s.Typed.Length > 0 ? s.Typed[..^1] : "" } }, null),
            Press.Escape => (model with { Screen = s with { Typed = "" } }, null),
            Press.Enter => Enter(depot, model, s),
            Press.Character when s.Typed.Length < 24 && Code<Van>.IsValid(key.Character.ToString()) => (model with { Screen = Typed(depot, s, s.Typed + key.Character) }, null),
            _ => (model, null),
        };
    }

    private static WallScreen Typed(Depot depot, WallScreen s, string typed)
    {
        var found = depot.Setup.Vans.Index().FirstOrDefault(v => v.Item.Code.Text.StartsWith(typed, StringComparison.OrdinalIgnoreCase), (s.Selected, null!));
        return new(found.Index, typed);
    }

    private static (Model, Act?) Enter(Depot depot, Model model, WallScreen s)
    {
        var typed = Code<Van>.IsValid(s.Typed) ? new Code<Van>(s.Typed) : default;
        if (s.Typed.Length > 0 && depot.Setup.Find(typed) is null)
        {
            return (new(s with { Typed = "" }, Refusal.NoSuchVan(typed).Text), null);
        }

        var van = s.Typed.Length > 0 ? depot.Setup.Find(typed)! : depot.Setup.Vans[Math.Min(s.Selected, depot.Setup.Vans.Count - 1)];
        return (model with
        {
            Screen = depot.Shift(van.Code) is null
                ? new WhoScreen(van.Code, Questions.Who(depot, van.Code))
                : Questions.Open(depot, van.Code),
        }, null);
    }

    private static (Model, Act?) Who(Depot depot, Model model, WhoScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = Back(depot, s.Van) }, null),
        Press.Backspace => (model with { Screen = s with { Form = s.Form.Erase() } }, null),
        Press.Character => (model with { Screen = s with { Form = s.Form.Type(key.Character) ?? s.Form } }, null),
        Press.Enter when s.Form["technician"].Text is { Length: > 0 } code && Code<Technician>.IsValid(code) =>
            (model, new RecordAct([new ComeIn(s.Van, new(code))])),
        Press.Enter => (Refused.At(model, "technician", "Type or scan the code of whoever brings it in, then Enter."), null),
        _ => (model, null),
    };

    private static (Model, Act?) Why(Model model, WhyScreen s, Keystroke key) => key.Press switch
    {
        Press.F5 => (model with { Screen = PlanKeys.Change(s.Back, s.Van, s.Item) }, null),
        Press.Escape or Press.Enter => (model with { Screen = s.Back }, null),
        _ => (model, null),
    };

    /// <summary>The first line shown; the view keeps it within the lines that there are.</summary>
    public static int Scrolled(int top, Press press) => Math.Clamp(
        top + press switch
        {
            Press.Up => -1,
            Press.Down => 1,
            Press.PageUp => -10,
            Press.PageDown => 10,
            Press.Home => -top,
            _ => 0,
        },
        0,
        100_000);
}
