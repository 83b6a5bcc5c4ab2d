using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>The keys of the yard, of a van's page, and of attaching pictures.</summary>
public static class YardKeys
{
    public static (Model, Act?) Yard(Depot depot, Model model, CardboardScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = s.Back }, null),
        Press.Tab => (model with { Screen = s with { Page = (YardPage)(((int)s.Page + 1) % Enum.GetValues<YardPage>().Length), Top = 0 } }, null),
        Press.Character => (model with
        {
            Screen = char.ToUpperInvariant(key.Character) switch
            {
                'B' => Task(depot, s, DeskTask.DepotBoxes, null),
                'W' => Task(depot, s, DeskTask.WriteOff, null),
                'P' => Task(depot, s, DeskTask.Pickup, null),
                'S' => Task(depot, s, DeskTask.Ship, null),
                _ => s,
            },
        }, null),
        _ => (model with { Screen = s with { Top = Update.Scrolled(s.Top, key.Press) } }, null),
    };

    public static (Model, Act?) Van(Depot depot, Model model, VanScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = Update.Back(depot, s.Van) }, null),
        Press.Character => (model with
        {
            Screen = char.ToUpperInvariant(key.Character) switch
            {
                'L' => Task(depot, s, DeskTask.Lift, s.Van),
                'H' => Task(depot, s, DeskTask.Hold, s.Van),
                'C' => Task(depot, s, DeskTask.Close, s.Van),
                'W' => Task(depot, s, DeskTask.WriteOff, s.Van),
                'K' => Task(depot, s, DeskTask.Check, s.Van),
                'R' => Task(depot, s, DeskTask.Reopen, s.Van),
                'B' => Task(depot, s, DeskTask.Behalf, s.Van),
                'X' => Task(depot, s, DeskTask.Excuse, s.Van),
                'M' => Task(depot, s, DeskTask.Move, s.Van),
                _ => s,
            },
        }, null),
        _ => (model with { Screen = s with { Top = Update.Scrolled(s.Top, key.Press) } }, null),
    };

    public static (Model, Act?) Attach(Model model, AttachScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = s.Back }, null),
        Press.Enter => (model, new AttachAct(s.Van, s.Form["path"].Text.Trim())),
        Press.Backspace => (model with { Screen = s with { Form = s.Form.Erase() } }, null),
        Press.Character => (model with { Screen = s with { Form = s.Form.Type(key.Character) ?? s.Form } }, null),
        _ => (model, null),
    };

    public static (Model, Act?) DayBook(Depot depot, Model model, DayBookScreen s, Keystroke key) => key.Press switch
    {
        Press.Escape => (model with { Screen = s.Filter.Length > 0 ? s with { Filter = "", Selected = 0 } : s.Back }, null),
        Press.F5 => (model with { Screen = Task(depot, s.Back, DeskTask.EndDay, null) }, null),
        Press.Backspace => (model with { Screen = s with { Selected = 0, Filter = s.Filter.Length > 0 ? s.Filter[..^1] : "" } }, null),
        Press.Character when s.Filter.Length < 24 => (model with { Screen = s with { Selected = 0, Filter = s.Filter + key.Character } }, null),
        _ => (model with { Screen = s with { Selected = Chosen(s, key.Press) } }, null),
    };

    private static int Chosen(DayBookScreen s, Press press)
    {
        var last = Math.Max(0, DayBookView.Filtered(s).Count - 1);
        return press == Press.End ? last : Math.Min(last, Update.Scrolled(s.Selected, press));
    }

    private static DeskScreen Task(Depot depot, Screen back, DeskTask task, Code<Van>? van) =>
        new(task, task >= DeskTask.Check ? LeadForms.Of(task, depot, van) : YardForms.Of(task, depot, van), back, van);
}
