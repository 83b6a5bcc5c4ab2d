using System.Globalization;
using Closeout.Leads;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>The form that takes back what was recorded by mistake tonight.</summary>
public static class TakeBackForm
{
    public static DeskForm TakeBack => new(T("TAKE BACK AN ENTRY"))
    {
        IsLeads = false,
        Fields = _ =>
        [
            DeskFields.Whole("number", T("Number of the entry"), T("Type the number of the entry, as the day book has it."), 1),
            DeskFields.Item(mayBeEmpty: true) with { After = T("of a load of several") },
            DeskFields.Why(T("Why it is taken back")),
        ],
        About = f =>
        [
            f.Whole("number") is { } number && Leads.TakeBack.Of(f.Depot, number) is { } entry
                ? DayBookWords.Sentence(entry)
                : T("This entry cannot be taken back: see the help, F1."),
            T("The mistake stays in the day book; a new entry undoes it. Put the goods where they go now."),
        ],
        Help =
        [
            T("A load of one item, a delivery, a pickup and a shipped box that were recorded by mistake tonight are taken back here: by "
                + "whoever recorded them, or by a lead, as long as nothing was built on them."),
            T("What was loaded goes back to the shelf, loose units to the bin, and is planned again. A delivery is on order again, a "
                + "pickup's cardboard is in the container again, a shipped box stands in the yard again."),
        ],
        Answer = (f, by) => FormAnswer.Record(
            new TakeBack(f.Whole("number") ?? 0, f.Code<Item>("item"), f["reason"], by), T("Taken back.")),
    };

    /// <summary>The form, opened on an entry.</summary>
    /// <param name="number">Null: on none; its number is typed.</param>
    public static FormScreen Of(Scene scene, Screen back, int? number)
    {
        var screen = FormScreen.Of(TakeBack, scene, back);
        return number is not { } known ? screen : screen with
        {
            Form = screen.Form.With(screen.Form["number"] with { Shown = known.ToString(CultureInfo.InvariantCulture) }).At("reason"),
        };
    }
}
