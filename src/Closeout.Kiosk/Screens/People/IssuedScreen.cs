using Closeout.Screens.Parts;

namespace Closeout.Screens.People;

/// <summary>A PIN that a lead issued, shown once.</summary>
public sealed record IssuedScreen(Code<Technician> Person, string Pin, Screen Back) : Screen
{
    /// <summary>Enter or Esc leads back; no other key, so that a scanner does not wipe it away.</summary>
    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
        [new(Keys.Of("Enter", Press.Enter, Press.Escape), T("done"), _ => Back)];

    public override IEnumerable<string> Help(Scene scene) =>
        [T(
            "The PIN that was drawn is shown on the screen behind, once: Enter there leaves it, and nobody sees it again. Its owner "
                + "reads it now and writes it down where nobody else looks. Lost: issue another.")];

    public override bool Stands(Depot depot) => depot.Setup.Find(Person) is not null;

    public override Reply Rested() => Back;

    /// <summary>Without the PIN: a record prints itself in messages.</summary>
    public override string ToString() => T($"{nameof(IssuedScreen)} of {Person}");

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var person = scene.Depot.Setup.Find(Person)!;
        Frame.Head(sheet, scene.Depot, T("A NEW PIN"), "");
        sheet.Write(3, 3, T($"The PIN of {person.Code} {person.Name} is {Pin}"), Look.Strong);
        sheet.Write(5, 3, T("It is shown once. Let nobody but its owner read it, and write it down where"));
        sheet.Write(6, 3, T("nobody else looks. The old one, if there was one, opens nothing any more."));
    }
}
