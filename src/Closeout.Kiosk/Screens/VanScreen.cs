using Closeout.Screens.Forms;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>One van: its state, what stands against it, what is due; and a lead's desk for it.</summary>
public sealed record VanScreen(Code<Van> Van, Screen Back, int Top = 0) : Screen
{
    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        Binding Opens(char letter, string? line, DeskForm form) =>
            new(Keys.Letter(letter), line, _ => FormScreen.Of(form, scene, this, Van))
                { Row = "LHCOWK".Contains(letter, StringComparison.Ordinal) ? 1 : 0 };
        return
        [
            Opens('L', T("lift a hold"), HoldForms.Lift),
            Opens('H', T("hold"), HoldForms.Hold),
            Opens('C', T("close an incident"), HoldForms.Close),
            Opens('W', T("write off boxes"), YardForms.WriteOff),
            Opens('K', T("check"), CloseoutForms.Check),
            Opens('R', T("reopen"), CloseoutForms.Reopen),
            Opens('B', T("close out for somebody"), CloseoutForms.Behalf),
            Opens('M', T("move visits"), PlanForms.Move),
            Opens('X', T("excuse"), CloseoutForms.Excuse),
            Opens('O', T("odometer"), HoldForms.Odometer),
            Opens('G', null, MoveForms.Came) with { Help = T("goods from another van: did they come?") },
            HelpKey(),
            new(Keys.Escape, T("back"), _ => Back.Choosing(scene.Depot, Van)),
            new(Keys.Arrows, null, key => this with { Top = Scrolling.To(Top, key.Press) }),
        ];
    }

    public override bool GivesWay => true;

    public override Code<Van>? About => Van;

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T("All there is to know of one van: why it is held, its open incidents and who was told, what is due and when, what to load."),
        T(
            "A lead: L lifts its holds, H puts it on hold, C closes an incident, W writes off boxes that nobody found. K checks a signed "
                + "close-out (not one's own), R opens it again, B closes it out for somebody, M moves its bookings to another van, X "
                + "excuses it from tonight, O corrects its odometer, G answers whether goods from another van came. Each with a reason "
                + "that stays on record. Lifting a hold leaves its "
                + "incident open until it is closed."),
    ];

    public override bool Stands(Depot depot) => depot.Setup.Find(Van) is not null;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var van = scene.Depot.Setup.Van(Van);
        Frame.Head(sheet, scene.Depot, $"{van.Code} {van.Name}", T($"bay {van.Bay}"));
        var lines = Frame.Hanging(VanWords.Of(scene.Tonight, van), sheet.Width - 13).ToList();
        var room = Math.Max(1, sheet.Height - 6);
        var top = Math.Min(Top, Math.Max(0, lines.Count - room));
        foreach (var (i, line) in lines.Skip(top).Take(room).Index())
        {
            sheet.Write(2 + i, 1, line.Word, Look.Strong, 10);
            sheet.Write(2 + i, 12, line.Text);
        }

        var more = lines.Count > room ? T($"{lines.Count - room} more lines: Up and Down. ") : T("It repeats what people confirmed. ");
        sheet.Write(sheet.Height - 3, 1, more + T("It does not say that the van is safe."), Look.Faint);
    }
}
