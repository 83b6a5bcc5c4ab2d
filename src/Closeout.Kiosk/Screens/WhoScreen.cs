using Closeout.Screens.Forms;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens;

/// <summary>Who brings the van in?</summary>
public sealed record WhoScreen(Code<Van> Van, Form Form, Screen Back) : Screen
{
    public static Form Fields(Depot depot, Code<Van> van) => Form.Of(
        new Field("technician", T("Your code"), FieldKind.Code,
            depot.Setup.Rostered(van, depot.Date)?.Code.Text ?? "") { Choices = DeskFields.People });

    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.Enter, T("this is me"), _ => Chosen(scene.Depot).Enter()),
        EditKeys(Form, form => this with { Form = form }),
        new(Keys.F(4), T("not used today"),
            _ => Chosen(scene.Depot) is { Named: { } code } ? new(this, Act: new NotUsedAct(Van, code)) : Enter())
            { Help = T("nothing was touched: only damage is asked") },
        HelpKey(),
        new(Keys.Escape, T("back to the wall"), _ => Back.Choosing(scene.Depot, Van)),
    ];

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T("The technician who closes the van out. The roster's name is in the field; type or scan another code to replace it. Any "
            + "technician may close out any van."),
        T("F4, where the van was not used: stock, boxes, miles and kit are confirmed as unchanged. You look for damage, and sign."),
    ];

    public override Screen At(string? field) => this with { Form = Form.At(field) };

    public override Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done) =>
        CloseoutScreen.Open(scene.Depot, Van, Back);

    public override bool Stands(Depot depot) => depot.Setup.Find(Van) is not null && depot.Shift(Van) is null;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (setup, code) = (scene.Depot.Setup, Form["technician"].Text);
        var van = setup.Van(Van);
        Frame.Head(sheet, scene.Depot, $"{van.Code} {van.Name}", T("coming in"));
        sheet.Write(3, 3, T($"{van.Code} {van.Name}, bay {van.Bay}, is back."), Look.Strong);
        sheet.Write(5, 3, T("Who closes it out?"));
        FormView.Draw(sheet, 7, 3, Form, 0, 1, 22);
        if (Code<Technician>.IsValid(code) && setup.Find(new Code<Technician>(code)) is { } who)
            sheet.Write(9, 3, who.Name + (who.IsLead ? T(", lead") : ""));

        PickList.Draw(sheet, 9, 3, scene.Depot, Form.Now, -1);

        sheet.Write(sheet.Height - 4, 3, T("Engine off, brake set, keys out. Watch for traffic and for vans that back up."), Look.Faint);
    }

    /// <summary>With the first of those whose name or code has what was typed.</summary>
    private WhoScreen Chosen(Depot depot) => PickList.Taken(depot, Form.Now, -1) is { } choice
        ? this with { Form = Form.With(Form.Now! with { Typed = choice.Text, Caret = null }) }
        : this;

    private Code<Technician>? Named => Form["technician"].Text is { Length: > 0 } code && Code<Technician>.IsValid(code) ? new(code) : null;

    private Reply Enter() => Named is { } code
        ? new(this, Act: new RecordAct([new ComeIn(Van, code)]))
        : Reply.Lacks(this, "technician", T("Type or scan the code of the person who brings it in, then Enter."));
}
