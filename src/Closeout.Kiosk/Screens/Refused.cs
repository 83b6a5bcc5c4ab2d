using Closeout.DayBook;
using Closeout.Rules;
using Closeout.Shifts;

namespace Closeout.Screens;

/// <summary>What was refused or is missing: it is said, and the cursor stands in the field that it is about. What is typed next replaces what stands there.</summary>
public static class Refused
{
    /// <param name="field">The field's name; of the pick list an item's code will do. Null, or none of this screen: the cursor stays.</param>
    public static Model At(Model model, string? field, string said) => model with
    {
        Said = said,
        Screen = model.Screen switch
        {
            WhoScreen s => s with { Form = s.Form.At(field) },
            CloseoutScreen s => s with { Form = s.Form.At(field) },
            DeskScreen s => s with { Form = s.Form.At(field) },
            LoadScreen s => s with { Form = s.Form.At(s.Form.Fields.FirstOrDefault(f => f.Name == field || f.Name.StartsWith($"{field}|", StringComparison.Ordinal))?.Name) },
            var screen => screen,
        },
    };

    /// <summary>A command that was refused.</summary>
    public static Model By(Model model, Refusal refusal) => At(model, refusal.About, refusal.Text);

    /// <summary>An answer of a close-out that was refused, or is asked again.</summary>
    public static Model Answer(Depot depot, Model model, Command command, Refusal refusal) => model.Screen is CloseoutScreen s
        ? At(new(s with { Doubted = refusal.AskAgain ? command : null, Form = Instead(depot, s, refusal) }), FieldOf(command, refusal), refusal.Text)
        : By(model, refusal);

    /// <summary>The form with the reading that was probably meant.</summary>
    private static Form Instead(Depot depot, CloseoutScreen s, Refusal refusal) => refusal.InsteadMi is { } mi
        ? s.Form.With(s.Form["odometer"] with { Typed = depot.Setup.Units.Distance(mi).Split(' ')[0] })
        : s.Form;

    /// <summary>A list has a field for each item, stream or piece: of several answers given at once the refused one says which.</summary>
    private static string? FieldOf(Command command, Refusal refusal) => command switch
    {
        CountBoxes c => c.Item.Text,
        CountStream c => Questions.StreamField + c.Stream,
        CountKit c => c.Piece + (refusal.About is { } part ? "/" + part : ""),
        _ => refusal.About,
    };
}
