using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>A form of a desk.</summary>
/// <param name="Van">The van that it is of; null: the depot's own.</param>
/// <param name="Person">Whose PIN it is about; null: nobody's.</param>
public sealed record FormScreen(DeskForm Kind, Form Form, Screen Back, Code<Van>? Van, Code<Item>? Item, Code<Technician>? Person) : Screen
{
    private const int Labels = 24;

    /// <summary>A command that was asked again; null: none.</summary>
    public IAskedAgain? Doubted { get; init; }

    /// <summary>The place in the list of choices; -1: none is chosen.</summary>
    public int Picked { get; init; } = -1;

    public static FormScreen Of(
        DeskForm kind, Scene scene, Screen back, Code<Van>? van = null, Code<Item>? item = null, Code<Technician>? person = null) =>
        new(kind, kind.Open(new(scene.Tonight, van, item, person) { Known = scene.Known?.Person }), back, van, item, person);

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var other = Kind.Other;
        List<Binding> bindings = Doubted is { } doubted
            ? [new(Keys.Letter('!'), T("record it"), _ => Give(scene, doubted.Surely()))]
            : [];
        bindings.Add(new(Keys.Enter, other is null ? T("next, and record at the last") : T("next, record at the last"), _ => Enter(scene)));
        if (other is { } o)
            bindings.Add(new(Keys.F(5), o.Line, _ => Of(o.Form(), scene, Back, Van, Item, Person)));

        bindings.AddRange([
            new(Keys.Up, other is null ? T("back") : null,
                _ => Picked >= 0 ? this with { Picked = Picked - 1 } : this with { Form = Moved(scene, -1) }),
            HelpKey(),
            new(Keys.Escape, other is null ? T("leave it") : T("leave"), _ => Back),
            new(Keys.Of(T("Down"), Press.Down, Press.Tab), null, key => key.Press == Press.Down
                && PickList.Of(scene.Depot, Form.Now) is { Count: var choices } && Picked < choices - 1
                    ? this with { Picked = Picked + 1 }
                    : Onward(scene, mayBeEmpty: true)),
            EditKeys(Form, form => this with { Form = form, Doubted = null, Picked = -1 }),
        ]);
        return bindings;
    }

    public override IEnumerable<string> Help(Scene scene) =>
    [
        .. Kind.Help,
        "",
        T("Enter goes to the next field and records at the last, Up goes back, Esc leaves it: nothing is recorded then.")
            + (Kind.IsLeads
                ? T(" A lead's code, and that lead's PIN, stand under it.")
                : T(" Your own code, and your PIN, stand under it.")),
    ];

    public override bool Asks => Doubted is not null;

    public override Screen At(string? field) => this with { Form = Form.At(field) };

    public override Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done) =>
        new(Kind.Stays ? Of(Kind, scene, Back, Van, Item, Person) : Back.Retold(scene.Depot), done);

    public override Reply Refused(Scene scene, ICommand command, Refusal refusal) => Reply.Lacks(
        this with { Doubted = refusal.AskAgain ? command as IAskedAgain : null }, refusal.About,
        refusal.AskAgain ? T($"{refusal.Text} ! records it.") : refusal.Text);

    public override bool Stands(Depot depot) =>
        (Van is not { } van || depot.Setup.Find(van) is not null)
        && (Item is not { } item || depot.Setup.Find(item) is not null)
        && (Person is not { } person || depot.Setup.Find(person) is not null);

    protected override void Draw(Sheet sheet, Scene scene)
    {
        Frame.Head(sheet, scene.Depot, Kind.Title, Kind.Right(scene.Tonight));
        var row = 2;
        foreach (var line in Kind.About(Filled(scene)).SelectMany(a => Cells.Wrap(a, sheet.Width - 4)))
            sheet.Write(row++, 2, line);

        FormView.Draw(sheet, row + 1, 2, Form, 0, Form.Fields.Count, Labels, sheet.Width - 2);
        PickList.Draw(sheet, row + 2 + Form.Fields.Count, 2, scene.Depot, Form.Now, Picked);
    }

    private Filled Filled(Scene scene) => new(new(scene.Tonight, Van, Item, Person), Form);

    /// <summary>The next field, once this one is right; empty it may be passed over, and is asked for at the last.</summary>
    private Reply Onward(Scene scene, bool mayBeEmpty) =>
        Form.Now is { } field && !(mayBeEmpty && field.Text.Length == 0) && field.Wrong(scene.Depot) is { } wrong
        ? Reply.Lacks(this, field.Name, wrong)
        : this with { Form = Moved(scene, 1), Picked = -1 };

    /// <summary>The form at the next field that is asked.</summary>
    private Form Moved(Scene scene, int by)
    {
        var form = Form.Move(by);
        while (form.Now is { Applies: { } applies } && !applies(scene.Depot, form))
            form = form.Move(by);

        return form;
    }

    /// <summary>Records a command in place of what the form comes to, in the same name.</summary>
    private Reply Give(Scene scene, ICommand command) => Complete(scene) is { Act: RecordAct act } reply
        ? reply with { Act = act with { Commands = [command] } }
        : new(this, T("Fill in the form first."));

    private Reply Enter(Scene scene) => PickList.Taken(scene.Depot, Form.Now, Picked) is { } choice
        ? (this with { Form = Form.With(Form.Now! with { Typed = choice.Text, Caret = null }), Picked = -1 }).Enter(scene)
        : Form.IsLast ? Complete(scene) : Onward(scene, mayBeEmpty: false);

    private Reply Complete(Scene scene)
    {
        var filled = Filled(scene);
        if (Form.Fields.Select(f => (f.Name, Wrong: f.Wrong(scene.Depot)))
            .FirstOrDefault(f => f.Wrong is not null) is { Wrong: { } wrong } first)
        {
            return Reply.Lacks(this, first.Name, wrong);
        }

        var by = filled.Known<Technician>("by");
        var answer = Kind.Answer(filled, by);
        return answer.Act is { } act ? new(this, Act: act with { By = by }) : Reply.Lacks(this, answer.Field, answer.Missing);
    }
}
