using System.Globalization;
using Closeout.Screens.Parts;
using Closeout.Vans;

namespace Closeout.Screens.Forms;

/// <summary>A lead's forms for what stands against a van.</summary>
public static class HoldForms
{
    /// <summary>A lead lifts the holds of a van.</summary>
    public static DeskForm Lift => new(T("LIFT A HOLD"))
    {
        Fields = a => Holds(a).Count > 1
            ? [Which(Holds(a).Count), DeskFields.Why(T("Why it may go out"))]
            : [DeskFields.Why(T("Why it may go out"))],
        About = f =>
        [
            Holds(f.On).Count == 0 ? T($"{f.On.Name} is not held.") : T($"{f.On.Name} is held:"),
            .. Holds(f.On).Select((h, i) => $"{i + 1}  {h}"),
            Licensed,
        ],
        Help =
        [
            T(
                "A lead lifts a hold, with a reason that stays on the wall. Each hold is lifted by its number; A lifts all for one "
                    + "reason, and asks once more. An incident stays open until it is closed, C on the van's page."),
            T("The book repeats what people confirmed. It does not say that a van is safe."),
        ],
        Answer = (f, lead) => FormAnswer.Record(
            new LiftHolds(f.On.TheVan.Code, f["reason"], lead, Holds(f.On).Count > 1 ? f.Whole("number") : 1), Done(f)),
    };

    /// <summary>A lead corrects the reading from which the van's next day is counted.</summary>
    public static DeskForm Odometer => new(T("CORRECT THE ODOMETER"))
    {
        Fields = a =>
        [
            new("odometer", T("Odometer now"), FieldKind.Number, "", a.Depot.Setup.Units.DistanceUnit)
            {
                Decimals = 1, Needed = T("Type the odometer reading."),
                Check = (_, f) => Given.Range(T("The odometer"), f.Number ?? -1, 0, Refusal.MostMiles)?.Text,
            },
            DeskFields.Why(T("Why it is corrected")),
        ],
        About = f => [T($"On record for {f.On.Name}: {f.Depot.Setup.Units.Distance(Readiness.OdometerMi(f.Depot, f.On.TheVan.Code))}.")],
        Help = [T("Where an earlier reading was wrong, a lead types what the odometer says now. The next day is counted from there.")],
        Answer = (f, lead) => FormAnswer.Record(
            new CorrectOdometer(f.On.TheVan.Code, f.Depot.Setup.Units.Miles(f.Number("odometer") ?? 0), f["reason"], lead), Done(f)),
    };

    /// <summary>A lead puts a van on hold.</summary>
    public static DeskForm Hold => new(T("HOLD A VAN"))
    {
        Fields = _ => [DeskFields.Why(T("Why it must stay"))],
        About = f =>
            [T($"{f.On.Name} will not go out until a lead lifts it."), T("Say why, so that the morning crew understands.")],
        Help = [T("A hold keeps a van in: the wall says HELD and the reason, until a lead lifts it, L on the van's page.")],
        Answer = (f, lead) => FormAnswer.Record(new PlaceHold(f.On.TheVan.Code, f["reason"], lead), Done(f)),
    };

    /// <summary>A lead closes an incident.</summary>
    public static DeskForm Close => new(T("CLOSE AN INCIDENT"))
    {
        Fields = a =>
        [
            DeskFields.Whole("number", T("Incident number"), T("Type the incident's number.")) with
            {
                Shown = Incidents.Open(a.Depot, a.TheVan.Code) is [var first, ..]
                    ? first.Number.ToString(CultureInfo.InvariantCulture)
                    : "",
            },
            DeskFields.Why(T("Why it is closed")),
        ],
        About = f =>
        [
            .. Incidents.Open(f.Depot, f.On.TheVan.Code)
                .Select(i => T($"{Incidents.Words(i)}, since {IsoDate.Text(i.Since)}; {Incidents.ToldWords(i)}"))
                .DefaultIfEmpty(T($"{f.On.Name} has no open incident.")),
            Licensed,
        ],
        Help = [
            T(
                "An incident is closed once it was seen to, with how. Its number stands on the van's page. The hold that came of it ends "
                    + "with it.")],
        Answer = (f, lead) => FormAnswer.Record(new CloseIncident(f.On.TheVan.Code, f.Whole("number") ?? 0, f["reason"], lead), Done(f)),
    };

    private static string Licensed =>
        T(
            "A damaged van, or one without its safety kit, goes out only after a qualified person approves it, by local rules and the "
                + "maker's instructions. The book records that you settled it, and why; it does not say that the van is safe.");

    private static IReadOnlyList<string> Holds(Asked a) => Readiness.Of(a.Depot, a.TheVan).Holds;

    /// <summary>Which of several holds: its number; A, which is no number: all.</summary>
    private static Field Which(int holds) => new("number", T("Which hold"), FieldKind.Code, "", T($"1 to {holds}, A all"))
    {
        Needed = T($"Type 1 to {holds}, or A for all."),
        Check = (_, f) => f.Letter == "A" || f.Whole is >= 1 and var n && n <= holds ? null : T($"Type 1 to {holds}, or A for all."),
    };

    private static string Done(Filled f) => T($"{f.On.TheVan.Code}: recorded, with your reason.");
}
