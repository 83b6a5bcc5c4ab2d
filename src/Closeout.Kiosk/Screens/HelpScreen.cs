using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>The keys and words of a screen, on one page.</summary>
public sealed record HelpScreen(Screen Back) : Screen
{
    public override IReadOnlyList<Binding> Bindings(Scene scene) => [new(Keys.Any, T("goes back"), _ => Back)];

    public override IEnumerable<string> Help(Scene scene) => Back.Help(scene);

    public override bool Stands(Depot depot) => Back.Stands(depot);

    public override Code<Van>? Walks(Depot depot) => Back.Walks(depot);

    public override Reply Rested() => Back.Rested() is var rested && !ReferenceEquals(rested.Screen, Back) ? rested : this;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        Frame.Head(sheet, scene.Depot, T("HELP"), "");
        var row = 2;
        var lines = Back.Help(scene).Append("").Append(string.Join("   ", Binding.Explained(Back.Bindings(scene))));
        var shown = lines.SelectMany(l => l.Length == 0 ? [""] : Cells.Wrap(l, sheet.Width - 4));
        foreach (var line in shown.Take(Math.Max(0, sheet.Height - 3)))
            sheet.Write(row++, 2, line);
    }
}
