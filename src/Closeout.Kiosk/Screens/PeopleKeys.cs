using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>The people screen: its keys, and a lead's two forms behind it.</summary>
public static class PeopleKeys
{
    public static (Model, Act?) On(Depot depot, Model model, PeopleScreen s, Keystroke key)
    {
        var at = Math.Clamp(s.Selected, 0, Math.Max(0, depot.Setup.Crew.Count - 1));
        return key.Press switch
        {
            Press.Escape => (model with { Screen = s.Back }, null),
            Press.Character when depot.Setup.Crew.Count > 0 && key.Character is 'C' or 'c' => (model with { Screen = s with { Selected = at } }, new ChangePinAct(depot.Setup.Crew[at].Code)),
            Press.Character when depot.Setup.Crew.Count > 0 => (model with
            {
                Screen = char.ToUpperInvariant(key.Character) switch
                {
                    'R' => Form(DeskTask.ResetPin, depot.Setup.Crew[at].Code, s with { Selected = at }),
                    'I' => Form(DeskTask.IssuePin, depot.Setup.Crew[at].Code, s with { Selected = at }),
                    _ => s,
                },
            }, null),
            Press.End => (model with { Screen = s with { Selected = Math.Max(0, depot.Setup.Crew.Count - 1) } }, null),
            _ => (model with { Screen = s with { Selected = Math.Clamp(Update.Scrolled(at, key.Press), 0, Math.Max(0, depot.Setup.Crew.Count - 1)) } }, null),
        };
    }

    /// <summary>What a form comes to.</summary>
    public static DeskAnswer Answer(DeskScreen s) => (s.Task, DeskForms.By(s.Form)) switch
    {
        (_, null) => ("by", "That is a lead's: type the lead's code."),
        (DeskTask.ResetPin, { } lead) => new DeskAnswer(new ResetPinAct(s.Person!.Value, lead), null),
        (DeskTask.IssuePin, { } lead) => new DeskAnswer(new IssuePinAct(s.Person!.Value, lead), null),
        _ => throw new InvalidOperationException($"no act for {s.Task}"),
    };

    /// <summary>What stands above a form.</summary>
    public static IEnumerable<string> About(Depot depot, DeskScreen s)
    {
        var person = depot.Setup.Find(s.Person!.Value);
        yield return $"{s.Person} {person?.Name}: PIN {PeopleView.State(depot, s.Person.Value)}";
        yield return s.Task == DeskTask.IssuePin
            ? "Six digits are drawn and shown once: let the owner stand beside you. An old PIN and its failures are gone."
            : "The PIN and its failures are gone. A technician takes a new one at the next sign-off; to a lead another lead issues one.";
    }

    private static DeskScreen Form(DeskTask task, Code<Technician> person, PeopleScreen back) => new(task, DeskForms.Of(task), back, Person: person);
}
