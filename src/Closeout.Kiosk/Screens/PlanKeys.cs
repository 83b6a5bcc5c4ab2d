using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>The keys of tomorrow's plan, of loading, and of the stock desk.</summary>
public static class PlanKeys
{
    /// <summary>The lines as the screen orders and filters them.</summary>
    public static IReadOnlyList<RestockLine> Lines(RestockPlan plan, TomorrowScreen s)
    {
        var lines = plan.Lines.Where(l => Fits(l, s.Filter) && (s.Order != PlanOrder.Short || l.Short > 0));
        return s.Order == PlanOrder.ByVan ? [.. lines] : [.. lines.OrderBy(l => l.Item.Code).ThenBy(l => l.Van.Bay)];
    }

    public static (Model, Act?) Tomorrow(RestockPlan plan, Model model, TomorrowScreen s, Keystroke key)
    {
        var lines = Lines(plan, s);
        var at = Math.Clamp(s.Selected, 0, Math.Max(0, lines.Count - 1));
        var line = lines.Count > 0 ? lines[at] : null;
        return key.Press switch
        {
            Press.Escape => (model with { Screen = s.Filter.Length > 0 ? s with { Filter = "", Selected = 0 } : s.Back }, null),
            Press.Backspace => (model with { Screen = s with { Selected = 0, Filter = s.Filter.Length > 0 ? s.Filter[..^1] : "" } }, null),
            Press.Tab => (model with { Screen = s with { Selected = 0, Order = (PlanOrder)(((int)s.Order + 1) % 3) } }, null),
            Press.Enter when line is not null => (model with { Screen = new WhyScreen(s, line.Van.Code, line.Item.Code) }, null),
            Press.F4 when line is not null => (model with { Screen = new LoadScreen(line.Van.Code, LoadForm(plan, line.Van.Code)) }, null),
            Press.F5 => (model with { Screen = Change(s, line?.Van.Code, line?.Item.Code) }, null),
            Press.Character when s.Filter.Length < 24 => (model with { Screen = s with { Selected = 0, Filter = s.Filter + key.Character } }, null),
            _ => (model with { Screen = s with { Selected = Math.Clamp(Update.Scrolled(at, key.Press), 0, Math.Max(0, lines.Count - 1)) } }, null),
        };
    }

    /// <summary>The form that changes a line, or any van and item. With both known the first question is what to change.</summary>
    public static DeskScreen Change(TomorrowScreen back, Code<Van>? van, Code<Item>? item) =>
        new(DeskTask.Change, DeskForms.Of(DeskTask.Change, van, item) with { Focus = van is null ? 0 : 3 }, back);

    /// <summary>The pick list of a van: a field for sealed cartons and one for loose units where the plan has any, in stow order.</summary>
    public static Form LoadForm(RestockPlan plan, Code<Van> van, Depot? depot = null)
    {
        var lines = plan.Lines.Where(l => l.Van.Code == van && l.Units > 0).ToList();
        var picks = depot is null || lines.Count == 0 ? lines : PickSheet.ToTake(depot, plan, lines[0].Van);
        return new([.. picks.SelectMany(Fields)]);
    }

    public static (Model, Act?) Load(RestockPlan plan, Depot depot, Model model, LoadScreen s, Keystroke key)
    {
        var form = s.Form.Fields.Count == 0 || s.Form.IsUntouched ? LoadForm(plan, s.Van, depot) with { Focus = s.Form.Focus } : s.Form;
        var now = s with { Form = form.Move(0) };
        return key.Press switch
        {
            Press.Escape => (model with { Screen = Update.Back(depot, s.Van) }, null),
            Press.Up => (model with { Screen = now with { Form = now.Form.Move(-1) } }, null),
            Press.Down or Press.Tab => (model with { Screen = now with { Form = now.Form.Move(1) } }, null),
            Press.Backspace => (model with { Screen = now with { Form = now.Form.Erase() } }, null),
            Press.Enter when now.Form.Now is { } field && EndsLine(now.Form) => Took(model, now, [Item(field)], $"{Item(field)} is loaded."),
            Press.Enter => (model with { Screen = now with { Form = now.Form.Move(1) } }, null),
            Press.Character when key.Character == '=' && now.Form.Fields.Count > 0 =>
                Took(model, now, [.. now.Form.Fields.Select(Item).Distinct()], $"{s.Van} is loaded as planned and typed."),
            Press.Character => (model with { Screen = now with { Form = now.Form.Type(key.Character) ?? now.Form } }, null),
            _ => (model, null),
        };
    }

    public static (Model, Act?) Desk(RestockPlan plan, Depot depot, Model model, DeskScreen s, Keystroke key)
    {
        switch (key.Press)
        {
            case Press.Escape:
                return (model with { Screen = s.Back }, null);
            case Press.F5 when s.Task is DeskTask.Delivery or DeskTask.Correction:
                var other = s.Task == DeskTask.Delivery ? DeskTask.Correction : DeskTask.Delivery;
                return (model with { Screen = s with { Task = other, Form = DeskForms.Of(other) } }, null);
            case Press.Up:
                return (model with { Screen = s with { Form = s.Form.Move(-1) } }, null);
            case Press.Down or Press.Tab:
                return (model with { Screen = s with { Form = s.Form.Move(1) } }, null);
            case Press.Backspace:
                return (model with { Screen = s with { Form = s.Form.Erase() } }, null);
            case Press.Enter when !s.Form.IsLast:
                return (model with { Screen = s with { Form = s.Form.Move(1) } }, null);
            case Press.Enter:
                var answer = DeskForms.Answer(depot, s, plan.Date);
                return answer.Missing is { } missing ? (Refused.At(model, answer.Field, missing), null) : (model, answer.Act);
            case Press.Character:
                return (model with { Screen = s with { Form = s.Form.Type(key.Character) ?? s.Form } }, null);
            default:
                return (model, null);
        }
    }

    /// <summary>After a stock command was recorded.</summary>
    public static Model Recorded(RestockPlan plan, Depot depot, Model model, string done) => model.Screen switch
    {
        LoadScreen s when LoadForm(plan, s.Van, depot) is { Fields.Count: > 0 } left => new(s with { Form = Kept(s.Form, left) }, done),
        LoadScreen s => new(Update.Back(depot, s.Van), $"{s.Van} {depot.Setup.Van(s.Van).Name}: nothing is left to load."),
        DeskScreen { Task: not (DeskTask.Delivery or DeskTask.Correction) } s => new(s.Back, done),
        DeskScreen s => new(s with { Form = DeskForms.Of(s.Task) }, done),
        _ => model with { Said = done },
    };

    /// <summary>The fields that are left, with what was typed in them already.</summary>
    private static Form Kept(Form before, Form left) => new(
        [.. left.Fields.Select(f => before.Fields.FirstOrDefault(b => b.Name == f.Name && b.Typed is not null) is { } typed ? f with { Typed = typed.Typed } : f)]);

    private static IEnumerable<Field> Fields(RestockLine l)
    {
        if (l.Sealed > 0)
        {
            yield return new(l.Item.Code + "|s", l.Item.Description, FieldKind.Count, $"{l.Sealed}", $"sealed of {l.Item.UnitsPerCarton}; {l.Item.Stow}");
        }

        if (l.FromBin + l.FromOpened > 0)
        {
            var from = l.FromOpened == 0 ? "bin" : l.FromBin == 0 ? "open a carton" : $"{l.FromBin} bin, {l.FromOpened} open a carton";
            yield return new(l.Item.Code + "|l", l.Sealed > 0 ? "  and loose" : l.Item.Description, FieldKind.Count, $"{l.FromBin + l.FromOpened}", $"loose: {from}; {l.Item.Stow}");
        }
    }

    private static Code<Item> Item(Field field) => new(field.Name.Split('|')[0]);

    /// <summary>What was taken of these items, once every field of theirs says how much.</summary>
    private static (Model, Act?) Took(Model model, LoadScreen s, IReadOnlyList<Code<Item>> items, string done) =>
        s.Form.Empty(s.Form.Fields.Where(f => items.Contains(Item(f))).Select(f => f.Name)) is { } empty
            ? (Refused.At(model with { Screen = s }, empty.Name, $"Type what you took of {Item(empty)}, 0 where it was none."), null)
            : (model with { Screen = s }, new StockAct(new LoadVan(s.Van, [.. items.Select(i => TakenOf(s.Form, i))], null), done));

    private static bool EndsLine(Form form) => form.IsLast || Item(form.Fields[form.Focus + 1]) != Item(form.Now!);

    private static Taken TakenOf(Form form, Code<Item> item)
    {
        int Of(string kind) => form.Fields.FirstOrDefault(f => f.Name == $"{item}|{kind}") is { } field && int.TryParse(field.Text, out var number) ? number : 0;
        return new(item, Of("s"), Of("l"));
    }

    private static bool Fits(RestockLine line, string filter) => new[] { line.Van.Code.Text, line.Van.Name, line.Item.Code.Text, line.Item.Description }
        .Any(t => t.Contains(filter, StringComparison.OrdinalIgnoreCase));
}
