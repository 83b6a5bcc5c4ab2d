using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens.People;

/// <summary>Everybody with role, and whether a PIN is set.</summary>
/// <param name="Back">The wall as it was left.</param>
public sealed record PeopleScreen(Screen Back, int Selected = 0) : Screen
{
    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var crew = scene.Depot.Setup.Crew;
        var here = this with { Selected = Math.Clamp(Selected, 0, Math.Max(0, crew.Count - 1)) };
        Reply OfChosen(Func<Code<Technician>, Reply> then) => crew.Count > 0 ? then(crew[here.Selected].Code) : this;
        return
        [
            new(Keys.Letter('C'), T("change your own"), _ => OfChosen(code => new(here, Act: new ChangePinAct(code)))),
            new(Keys.Letter('R'), T("reset, I issue (a lead)"),
                _ => OfChosen(code => FormScreen.Of(PinForms.Reset, scene, here, person: code))),
            new(Keys.Letter('I'), null, _ => OfChosen(code => FormScreen.Of(PinForms.Issue, scene, here, person: code))),
            HelpKey(),
            new(Keys.Escape, T("the wall"), _ => Back),
            new(Keys.Arrows, null, key => this with { Selected = Scrolling.Within(Selected, key.Press, crew.Count) }),
        ];
    }

    public override bool GivesWay => true;

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T(
            "Everybody of the crew, and whether a PIN is set, locked, or none. C takes another in place of your own, which is asked "
                + "first. R takes one away. I issues six digits, shown once, in place of none or of an old one: the owner reads them, "
                + "and may change them with C. Both are a lead's, with code and PIN."),
        "",
        T("The first lead's PIN was shown at set-up. While no other lead has one that works, closeout first-pin LEAD issues another."),
    ];

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (depot, crew) = (scene.Depot, scene.Depot.Setup.Crew);
        Frame.Head(sheet, depot, T("PEOPLE"), Spell.Count(crew.Count, T("person"), T("people")));
        sheet.Write(2, 3, T("code   name                      role         PIN"), Look.Faint);
        var room = Math.Max(1, sheet.Height - 8);
        var at = Math.Clamp(Selected, 0, Math.Max(0, crew.Count - 1));
        var top = Math.Clamp(at - room + 1, 0, Math.Max(0, crew.Count - room));
        for (var row = 0; row < room && top + row < crew.Count; row++)
        {
            var person = crew[top + row];
            var look = top + row == at ? Look.Field : Look.Plain;
            sheet.Write(3 + row, 1, top + row == at ? "> " : "  ", look);
            sheet.Write(3 + row, 3, person.Code.Text, look, 6);
            sheet.Write(3 + row, 10, person.Name, look, 25);
            sheet.Write(3 + row, 36, person.IsLead ? T("lead") : T("technician"), look);
            sheet.Write(3 + row, 49, PinWords.State(depot, person.Code), look);
        }

        sheet.Write(sheet.Height - 4, 3, depot.Rehearsal
            ? T("A rehearsal asks for no PIN and keeps none.")
            : T($"{PersonPin.MostInARow} wrong ones in a row lock a PIN until a lead resets it."), Look.Faint);
        sheet.Write(
            sheet.Height - 3, 3, depot.Rehearsal ? "" : T("A PIN says who confirmed. It does not say that a van is safe."), Look.Faint);
    }
}
