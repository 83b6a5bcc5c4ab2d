using Closeout.Leads;
using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Turning;

namespace Closeout.Screens.Forms;

/// <summary>A lead's forms for a van's close-out.</summary>
public static class CloseoutForms
{
    /// <summary>A lead looks over a signed close-out.</summary>
    public static DeskForm Check => new(T("CHECK A CLOSE-OUT"))
    {
        Fields = _ => [],
        About = f => f.Depot.Shift(f.On.TheVan.Code) is { } shift
            ?
            [
                shift.IsClosed
                    ? T(
                        $"{f.On.Name}, brought in by {shift.Technician}, signed by {shift.SignedBy}. Look over its card and its page "
                            + $"first.")
                    : T($"{f.On.Name} is not signed."),
                .. StepPages.Summary(f.Depot, shift),
                FourEyes,
            ]
            : [T($"{f.On.Name} is not signed."), FourEyes],
        Help = [
            T(
                "Second-person check: a lead looks over a signed close-out, its card and the van's page, and confirms that. Whoever "
                    + "brought the van in or signed it cannot check it.")],
        Answer = (f, lead) => FormAnswer.Record(new CheckCloseout(f.On.TheVan.Code, lead)),
    };

    /// <summary>A lead opens a signed close-out again.</summary>
    public static DeskForm Reopen => new(T("REOPEN A CLOSE-OUT"))
    {
        Fields = _ => [DeskFields.Why(T("Why it is reopened"))],
        About = f =>
            [T(
                $"{f.On.Name} goes back to its sign-off: every answer may be changed, and it must be signed again. Not once anything was "
                    + $"loaded into it.")],
        Help = [
            T(
                "A signed close-out goes back to its sign-off: every answer may be changed, and it must be signed again. Not once "
                    + "anything was loaded into the van: correct its counts then, F5 on the wall.")],
        Answer = (f, lead) => FormAnswer.Record(new Reopen(f.On.TheVan.Code, f["reason"], lead)),
    };

    /// <summary>A lead closes a van out for somebody else.</summary>
    public static DeskForm Behalf => new(T("CLOSE OUT FOR SOMEBODY"))
    {
        Fields = a =>
            [DeskFields.Person("for", T("For whom"), InCharge(a)?.Text ?? "", T("Type the code of the person it is for.")),
                DeskFields.Why(T("Why"))],
        About = f =>
        [
            T(
                $"{f.On.Name}: what was not answered is confirmed as unchanged: leftovers as on record, not driven, no damage, kit all "
                    + $"there. Your name stands under it, and the wall says so."),
            T("Better: call them, or count it yourself."),
        ],
        Help = [
            T(
                "A van is closed out for somebody who cannot: what was not answered is confirmed as unchanged: leftovers as on record, "
                    + "not driven, no damage, kit all there. The wall says so, with your name.")],
        Answer = (f, lead) => new CloseForAct(new(f.On.TheVan.Code, f.Known<Technician>("for"), f["reason"], lead)),
    };

    /// <summary>A lead explains why vans are not closed out: several at once, where the reason is the same.</summary>
    public static DeskForm Excuse => new(T("EXCUSE VANS"))
    {
        Fields = a =>
        [
            new Field("vans", T("Vans"), FieldKind.Words, a.TheVan.Code.Text, T("or several"))
            {
                Needed = T("Type the code of a van, or several with blanks between."),
                Check = (d, f) =>
                    Codes(f.Text).Select(c => d.Setup.Find(c) is null ? Refusal.NoSuchVan(c).Text : null)
                        .FirstOrDefault(w => w is not null),
            },
            DeskFields.Letter(
                "stayed", T("Stayed in"), a.Depot.Shift(a.TheVan.Code) is null ? T("Y") : "N", "YN",
                T("Say whether they stayed in: Y or N."),
                T("Y never went out  N did")),
            DeskFields.Why(T("Why not closed"), T("not needed today"), T("in the shop"), T("technician ill"), T("still out")),
        ],
        About = f =>
        [
            T("Open: ") + string.Join(", ", DayEnd.Open(f.Depot).Select(v => $"{v.Code} {v.Name}").DefaultIfEmpty(T("none"))),
            T("Stayed in: it never went out, so what is on record is aboard. Else it is out or half way, and nobody counted it."),
        ],
        Help = [
            T("Vans that are not closed out tonight are excused, so that the day can end. Several codes, where the reason is the same. Y: "
                + "they never went out, so what is on record aboard is aboard. N: they are out or half way, and nobody counted them.")],
        Answer = (f, lead) => new ExcuseAct(
            [.. Codes(f["vans"]).Select(v => new ExplainVan(f.Depot.Setup.Van(v).Code, f.Letter("stayed") == "Y", f["reason"], lead))]),
    };

    private static IEnumerable<Code<Van>> Codes(string text) => text.Split([' ', ','], StringSplitOptions.RemoveEmptyEntries)
        .Where(Code<Van>.IsValid).Select(c => new Code<Van>(c)).Distinct();

    private static string FourEyes => T("Second-person check: not by who brought it in or signed it.");

    private static Code<Technician>? InCharge(Asked a) =>
        a.Depot.Shift(a.TheVan.Code)?.Technician ?? a.Depot.Setup.Rostered(a.TheVan.Code, a.Depot.Date)?.Code;
}
