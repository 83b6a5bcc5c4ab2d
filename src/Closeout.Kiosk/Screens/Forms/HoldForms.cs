using System.Globalization;
using Closeout.Vans;

namespace Closeout.Screens.Forms;

/// <summary>A lead's forms for what stands against a van.</summary>
public static class HoldForms
{
    /// <summary>A lead lifts the holds of a van.</summary>
    public static readonly DeskForm Lift = new("LIFT A HOLD")
    {
        Fields = _ => [DeskFields.Why("Why it may go out")],
        About = f =>
        [
            Readiness.Of(f.Depot, f.On.TheVan).Holds is { Count: > 0 } holds
                ? $"{f.On.Name} is held: {string.Join("; ", holds)}"
                : $"{f.On.Name} is not held.",
            Licensed,
        ],
        Help =
        [
            "A hold is lifted by a lead, with a reason that stays on the wall. All holds of the van are lifted; an incident stays open "
                + "until it is closed, C on the van's page.",
            "The book repeats what people confirmed. It does not say that a van is safe.",
        ],
        Answer = (f, lead) => FormAnswer.Record(new LiftHolds(f.On.TheVan.Code, f["reason"], lead), Done(f)),
    };

    /// <summary>A lead puts a van on hold.</summary>
    public static readonly DeskForm Hold = new("HOLD A VAN")
    {
        Fields = _ => [DeskFields.Why("Why it must stay")],
        About = f =>
            [$"{f.On.Name} will not go out until a lead lifts it.", "Say why, so that whoever reads it in the morning understands."],
        Help = ["A hold keeps a van in: the wall says HELD and the reason, until a lead lifts it, L on the van's page."],
        Answer = (f, lead) => FormAnswer.Record(new PlaceHold(f.On.TheVan.Code, f["reason"], lead), Done(f)),
    };

    /// <summary>A lead closes an incident.</summary>
    public static readonly DeskForm Close = new("CLOSE AN INCIDENT")
    {
        Fields = a =>
        [
            DeskFields.Whole("number", "Incident number", "Type the incident's number.") with
            {
                Shown = Incidents.Open(a.Depot, a.TheVan.Code) is [var first, ..]
                    ? first.Number.ToString(CultureInfo.InvariantCulture)
                    : "",
            },
            DeskFields.Why("Why it is closed"),
        ],
        About = f =>
        [
            .. Incidents.Open(f.Depot, f.On.TheVan.Code)
                .Select(i => $"{Incidents.Words(i)}, since {IsoDate.Text(i.Since)}; {Incidents.ToldWords(i)}")
                .DefaultIfEmpty($"{f.On.Name} has no open incident."),
            Licensed,
        ],
        Help = [
            "An incident is closed once it was seen to, with how. Its number stands on the van's page. The hold that came of it ends "
                + "with it."],
        Answer = (f, lead) => FormAnswer.Record(new CloseIncident(f.On.TheVan.Code, f.Whole("number") ?? 0, f["reason"], lead), Done(f)),
    };

    private const string Licensed =
        "A damaged van, or one without its safety kit, goes out only when somebody licensed to say so said so, by local rules and the "
            + "maker's instructions. The book records that you settled it, and why; it does not say that the van is safe.";

    private static string Done(Filled f) => $"{f.On.TheVan.Code}: recorded, with your reason.";
}
