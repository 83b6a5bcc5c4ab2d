using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>One walk around the van: none, or what, where, how bad.</summary>
public sealed class DamagePage : StepPage
{
    public override Step Step => Step.Damage;

    public override string Caution => "Vest on, mind the traffic side. In doubt say unsafe: lead and workshop decide.";

    public override string? Help => "Damage: N none, D describe.";

    public override bool HasPictures => true;

    public override ICommand Unchanged(Code<Van> van) => new ConfirmDamage(van, None: false);

    public override EveningStep Evening => new(
        Step,
        "damage",
        [
            new("none", EveningItem.None, _ => { }) { IsOwnAnswer = true },
            new("zone", EveningItem.None, row => row.Text("value")),
            new("severity", EveningItem.None, row => row.OneOf("value", [.. Enum.GetNames<Severity>().Select(s => s.ToLowerInvariant())])),
            new("what", EveningItem.None, row => row.Text("value")),
            new("drivable", EveningItem.None, row => row.YesNo("value")),
            new("told", EveningItem.None, row => row.Text("value")),
            new("told_at", EveningItem.None, row => row.Clock("value")),
        ],
        a => a.Has("none") ? new ConfirmDamage(a.Van, None: true) : new ReportDamage(
            a.Van, a.Text("zone") ?? "", Enum.Parse<Severity>(a.Text("severity") ?? nameof(Severity.Note), ignoreCase: true),
            a.Text("what") ?? "", a.YesNo("drivable"), a.Text("told") ?? "", a.Clock("told_at")));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) => q.IsReport
        ? [EnterKey("next, record at the last", depot, q), UpKey(depot, q)]
        :
        [
            EnterKey("accept", depot, q),
            new(Parts.Keys.Letter('N'), "none", key => q with { Form = q.Form.Type(key.Character)!, Doubted = null }),
            new(Parts.Keys.Letter('D'), "describe a damage", _ => Report(q)),
            UpKey(depot, q) with { Line = null },
        ];

    public override Answer Answer(Depot depot, Question q)
    {
        if (q.IsReport)
            return DamageReport.Answer(q.Van, q.Form);

        return q.Form["damage"].Letter switch
        {
            "N" => Steps.Answer.Of(new ConfirmDamage(q.Van, None: true)),
            "T" when depot.Shift(q.Van)!.Damages.Count > 0 => Steps.Answer.Of(new ConfirmDamage(q.Van, None: false)),
            _ => Steps.Answer.Lacks("damage", "Type N for none, or D to describe a damage."),
        };
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        if (q.IsReport)
        {
            DamageReport.Draw(sheet, q.Form);
            return;
        }

        var row = Say(sheet, 3, "Walk once around the van. Any damage, new or not yet reported?");
        foreach (var damage in shift.Damages)
            row = Say(sheet, row + 1, $"- {damage.Zone}, {Readiness.SeverityWords(damage.Severity)}: {damage.What}");

        FormView.Draw(sheet, row + 2, 1, q.Form, 0, 1, 12);
        Say(sheet, row + 4, shift.Damages.Count == 0
            ? "N none   D describe a damage"
            : "T that is all   D one more   N none after all: what you reported tonight is withdrawn");
    }

    public override Question Refilled(Depot depot, Question q) => q.IsReport ? DamageReport.Refilled(q) : q;

    public override StepReply Before(Depot depot, Question q) => q.IsReport ? q : StepReply.Go(-1);

    public override Question? Escaped(Depot depot, Shift shift, Question q) => q.IsReport ? Ask(depot, shift) : null;

    public override Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) => recorded is ReportDamage
        ? Ask(depot, shift)
        : null;

    public override object? Subject(VanEntry entry) => entry as DamageFound;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry switch
    {
        DamageFound e when shift.Damages.Contains(e) =>
            [(0, $"DAMAGE {e.Number}: {e.Zone}, {Readiness.SeverityWords(e.Severity)}{(e.Drivable ? "" : ", HOLDS")}")],
        DamageConfirmed when shift.Damages.Count == 0 => [(0, "no damage seen")],
        DamageFound or DamageConfirmed => [],
        _ => null,
    };

    public override IEnumerable<string> Summary(Depot depot, Shift shift) =>
    [
        shift.Damages.Count == 0
            ? "Damage      none seen"
            : $"Damage      {string.Join("; ", shift.Damages.Select(d => $"{d.Zone}, {Readiness.SeverityWords(d.Severity)}"))}",
    ];

    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.IsReport ? DamageReport.Enter(q) : q.Form["damage"].Letter == "D" ? Report(q) : Answer(depot, q);

    protected override Form Fields(Depot depot, Shift shift) =>
        Form.Of(new Field("damage", "Damage", FieldKind.Letter, shift.Damages.Count == 0 ? "N" : "T"));

    private static Question Report(Question q) => q with { IsReport = true, Form = DamageReport.Fields() };
}
