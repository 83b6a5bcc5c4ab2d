using Closeout.Leads;
using Closeout.Screens.Steps;

namespace Closeout.Screens.Forms;

/// <summary>A lead's forms for a van's close-out.</summary>
public static class CloseoutForms
{
    /// <summary>A lead looks over a signed close-out.</summary>
    public static readonly DeskForm Check = new("CHECK A CLOSE-OUT")
    {
        Fields = _ => [],
        About = f => f.Depot.Shift(f.On.TheVan.Code) is { } shift
            ?
            [
                shift.IsClosed
                    ? $"{f.On.Name}, brought in by {shift.Technician}, signed by {shift.SignedBy}. Look over its card and its page first."
                    : $"{f.On.Name} is not signed.",
                .. StepPages.Summary(f.Depot, shift),
                FourEyes,
            ]
            : [$"{f.On.Name} is not signed.", FourEyes],
        Help = [
            "Second-person check: a lead looks over a signed close-out, its card and the van's page, and confirms that. Whoever brought "
                + "the van in "
                + "or signed it cannot check it."],
        Answer = (f, lead) => FormAnswer.Record(new CheckCloseout(f.On.TheVan.Code, lead)),
    };

    /// <summary>A lead opens a signed close-out again.</summary>
    public static readonly DeskForm Reopen = new("REOPEN A CLOSE-OUT")
    {
        Fields = _ => [DeskFields.Why("Why it is reopened")],
        About = f =>
            [$"{f.On.Name} goes back to its sign-off: every answer may be changed, and it must be signed again. Not once anything was "
                + "loaded into it."],
        Help = [
            "A signed close-out goes back to its sign-off: every answer may be changed, and it must be signed again. Not once anything "
                + "was loaded into the van: correct its counts then, F5 on the wall."],
        Answer = (f, lead) => FormAnswer.Record(new Reopen(f.On.TheVan.Code, f["reason"], lead)),
    };

    /// <summary>A lead closes a van out for somebody else.</summary>
    public static readonly DeskForm Behalf = new("CLOSE OUT FOR SOMEBODY")
    {
        Fields = a =>
            [DeskFields.Person("for", "For whom", InCharge(a)?.Text ?? "", "Type the code of the person it is for."),
                DeskFields.Why("Why")],
        About = f =>
        [
            $"{f.On.Name}: what was not answered is confirmed as unchanged: leftovers as on record, not driven, no damage, kit all there. "
                + "Your name stands under it, and the wall says so.",
            "Better: call them, or count it yourself.",
        ],
        Help = [
            "A van is closed out for somebody who cannot: what was not answered is confirmed as unchanged: leftovers as on record, not "
                + "driven, no damage, kit all there. The wall says so, with your name."],
        Answer = (f, lead) => new CloseForAct(new(f.On.TheVan.Code, f.Known<Technician>("for"), f["reason"], lead)),
    };

    /// <summary>A lead explains why a van is not closed out.</summary>
    public static readonly DeskForm Excuse = new("EXCUSE A VAN")
    {
        Fields = a =>
        [
            DeskFields.Letter(
                "stayed", "Stayed in", a.Depot.Shift(a.TheVan.Code) is null ? "Y" : "N", "YN", "Say whether it stayed in: Y or N.",
                "Y it never went out  N it did"),
            DeskFields.Why("Why it is not closed"),
        ],
        About = f =>
            [$"{f.On.Name} is not closed out. Stayed in: it never went out, so what is on record is aboard. Else it is out or "
                + "half way, and nobody counted it."],
        Help = [
            "A van that is not closed out tonight is excused, so that the day can end. Y: it never went out, so what is on record "
                + "aboard is aboard. N: it is out or half way, and nobody counted it."],
        Answer = (f, lead) => new ExcuseAct(new(f.On.TheVan.Code, f.Letter("stayed") == "Y", f["reason"], lead)),
    };

    private const string FourEyes = "Second-person check: not by who brought it in or signed it.";

    private static Code<Technician>? InCharge(Asked a) =>
        a.Depot.Shift(a.TheVan.Code)?.Technician ?? a.Depot.Setup.Rostered(a.TheVan.Code, a.Depot.Date)?.Code;
}
