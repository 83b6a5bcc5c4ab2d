using Closeout.Restock;
using Closeout.Screens.Parts;

namespace Closeout.Screens;

/// <summary>A van's pick list, in stow order, to be confirmed with what was really taken.</summary>
/// <param name="Form">As typed; untouched it follows the plan.</param>
public sealed record LoadScreen(Code<Van> Van, Form Form, Screen Back) : Screen
{
    public static LoadScreen Of(Tonight tonight, Code<Van> van, Screen back) => new(van, Picks(tonight, van), back);

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var now = this with { Form = Now(scene.Tonight).Move(0) };
        var form = now.Form;
        return
        [
            new(Keys.Enter, T("took this"), _ => form.Now is { } field && EndsLine(form)
                ? now.Took([Item(field)], T($"{Item(field)} is loaded."))
                : now with { Form = form.Move(1) }),
            new(Keys.Of(T("Up/Down"), Press.Up, Press.Down, Press.Tab), T("line"),
                key => now with { Form = form.Move(key.Press == Press.Up ? -1 : 1) }),
            new(Keys.Letter('='), T("took all the rest"), key => form.Fields.Count > 0
                ? now.Took([.. form.Fields.Select(Item).Distinct()], T($"{Van} is loaded as planned and typed."))
                : now with { Form = form.Edit(key) }),
            HelpKey(),
            new(Keys.Escape, T("back"), _ => Back.Choosing(scene.Depot, Van)),
            EditKeys(form, edited => now with { Form = edited }),
        ];
    }

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T("The van's pick list in stow order. Type what you really took; Enter confirms the item, = confirms all the rest as shown."),
        T(
            "Weight: what the stock aboard weighs now and with this load, and what the van's payload leaves for stock once crew and kit "
                + "are taken off. A plan that would be too heavy is cut, least needed first; what was cut stands below. The scale and "
                + "the van's placard are right; trust them over the record."),
        T(
            "Only this moves stock on record. A short pick is kept, and what is left is planned for the others. A van is loaded after "
                + "its close-out."),
    ];

    /// <summary>Of the pick list an item's code will do.</summary>
    public override Screen At(string? field) =>
        this with { Form = Form.At(
            Form.Fields.FirstOrDefault(f => f.Name == field || f.Name.StartsWith($"{field}|", StringComparison.Ordinal))?.Name) };

    public override Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done) =>
        Picks(scene.Tonight, Van) is { Fields.Count: > 0 } left
        ? new(this with { Form = Kept(left) }, done)
        : new(Back.Choosing(scene.Depot, Van), T($"{Van} {scene.Depot.Setup.Van(Van).Name}: nothing is left to load."));

    public override bool Stands(Depot depot) => depot.Setup.Find(Van) is not null;

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var (depot, plan) = (scene.Depot, scene.Tonight.Plan);
        var (van, form, weight) = (depot.Setup.Van(Van), Now(scene.Tonight).Move(0), plan.Weight(Van));
        Frame.Head(sheet, depot, T($"LOAD {van.Code} {van.Name}"), Spell.Day(plan.Date));
        sheet.Write(1, 1, !depot.IsDone(Van) ? T("Not closed yet: close it out first; until then these figures are on record, not counted.")
            : form.Fields.Count == 0 ? T("Nothing is left to load.")
            : T("Deepest first. Type what you really took; only this moves stock on record."), Look.Faint);
        var row = 2;
        foreach (var line in Cells.Wrap(T("Weight: ") + WeightWords.Of(depot.Setup.Units, weight), sheet.Width - 2))
            sheet.Write(row++, 1, line);

        var room = Math.Max(1, sheet.Height - 5 - row);
        FormView.Draw(sheet, row + 1, 1, form, FormView.Top(form, room), room, 34, sheet.Width - 2);
        var shorts = plan.Lines.Where(l => l.Van.Code == Van && l.Short > 0).Select(l => $"{l.Item.Code} {l.Short}").ToList();
        var cut = WeightWords.Cut(weight);
        var lacks =
            new[] { shorts.Count > 0 ? T("SHORT ") + string.Join(", ", shorts) : "", cut.Length > 0 ? T("CUT FOR WEIGHT ") + cut : "" };
        sheet.Write(sheet.Height - 3, 1, string.Join("   ", lacks.Where(l => l.Length > 0)), Look.Strong, sheet.Width - 2);
        sheet.Write(sheet.Height - 2, 1, T("Lift heavy cartons with two; ladder tied; knife away from you."), Look.Faint);
    }

    /// <summary>The pick list: a field for sealed cartons and one for loose units where the plan has any, in stow order.</summary>
    private static Form Picks(Tonight t, Code<Van> van) => new([.. StowOrder.ToTake(t.Depot, t.Plan, van).SelectMany(Fields)]);

    private Form Now(Tonight t) => Form.IsUntouched && Form.Now?.Caret is null ? Picks(t, Van) with { Focus = Form.Focus } : Form;

    /// <summary>The fields that are left, with what was typed in them already.</summary>
    private Form Kept(Form left) => new(
        [.. left.Fields.Select(f => Form.Fields.FirstOrDefault(b => b.Name == f.Name && b.Typed is not null) is { } typed
            ? f with { Typed = typed.Typed }
            : f)]);

    private static IEnumerable<Field> Fields(RestockLine l)
    {
        if (l.Sealed > 0)
        {
            yield return new(l.Item.Code + "|s", l.Item.Description, FieldKind.Count, $"{l.Sealed}",
                T($"sealed of {l.Item.UnitsPerCarton}; {l.Item.Stow}"));
        }

        if (l.FromBin + l.FromOpened > 0)
        {
            var from = l.FromOpened == 0
                ? T("bin")
                : l.FromBin == 0
                ? T("open a carton")
                : T($"{l.FromBin} bin, {l.FromOpened} open a carton");
            var label = l.Sealed > 0 ? T("  and loose") : l.Item.Description;
            yield return new(l.Item.Code + "|l", label, FieldKind.Count, $"{l.FromBin + l.FromOpened}", T($"loose: {from}; {l.Item.Stow}"));
        }
    }

    private static Code<Item> Item(Field field) => new(field.Name.Split('|')[0]);

    /// <summary>What was taken of these items, once every field of theirs says how much.</summary>
    private Reply Took(IReadOnlyList<Code<Item>> items, string done) =>
        Form.Empty(Form.Fields.Where(f => items.Contains(Item(f))).Select(f => f.Name)) is { } empty
            ? Reply.Lacks(this, empty.Name, T($"Type what you took of {Item(empty)}, 0 where it was none."))
            : new(this, Act: new RecordAct([new LoadVan(Van, [.. items.Select(TakenOf)], null)], done));

    private static bool EndsLine(Form form) => form.IsLast || Item(form.Fields[form.Focus + 1]) != Item(form.Now!);

    private Taken TakenOf(Code<Item> item)
    {
        int Of(string kind) =>
            Form.Fields.FirstOrDefault(f => f.Name == $"{item}|{kind}") is { } field && int.TryParse(field.Text, out var number)
                ? number
                : 0;
        return new(item, Of("s"), Of("l"));
    }
}
