using System.Globalization;
using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>One walk around the van: none, or what, where, how bad.</summary>
public sealed class DamagePage : StepPage
{
    public override Step Step => Step.Damage;

    public override string Caution => T("Vest on, mind the traffic side. In doubt say unsafe: lead and shop decide.");

    public override string? Help => T("Damage: N none, D describe.");

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
        ? [EnterKey(T("next, record at the last"), depot, q), UpKey(depot, q)]
        :
        [
            EnterKey(depot.Shift(q.Van)!.Damages.Count == 0 ? null : T("accept"), depot, q),
            new(Parts.Keys.Letter('N'), T("none"), key => None(depot, q, key)),
            new(Parts.Keys.Letter('D'), T("describe"), _ => Report(q)),
            new(new("1-9", key => Known(depot, q, key) is not null), Open(depot, q.Van).Count == 0 ? null : T("still there"),
                key => Pointed(q, Known(depot, q, key)!.Number)),
            UpKey(depot, q) with { Line = null },
        ];

    public override Answer Answer(Depot depot, Question q)
    {
        if (q.IsReport)
            return DamageReport.Answer(q.Van, q.Form);

        return q.Form["damage"].Letter switch
        {
            "N" => Steps.Answer.Of(new ConfirmDamage(q.Van, None: true, Seen(q))),
            "T" when depot.Shift(q.Van)!.Damages.Count > 0 => Steps.Answer.Of(new ConfirmDamage(q.Van, None: false, Seen(q))),
            _ => Steps.Answer.Lacks("damage", T("Walk around the van, then press N for none or D to describe a damage.")),
        };
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        if (q.IsReport)
        {
            DamageReport.Draw(sheet, q.Form);
            return;
        }

        var row = Say(sheet, 3, T("Walk once around the van. Any damage, new or not yet reported?"));
        foreach (var damage in shift.Damages)
            row = Say(sheet, row + 1, $"- {T(damage.Zone)}, {Readiness.SeverityWords(damage.Severity)}: {damage.What}");

        FormView.Draw(sheet, row + 2, 1, q.Form, 0, 1, 12);
        row = Say(sheet, row + 4, shift.Damages.Count == 0
            ? T("N nothing new   D describe a damage")
            : T("T that is all   D one more   N clear tonight's reports")) + 1;
        if (Open(depot, shift.Van) is { Count: > 0 } open)
        {
            row = Say(sheet, row, T("Already known. Press a number if it is still there:"));
            foreach (var (i, incident) in open.Index())
            {
                var seen = Seen(q).Contains(incident.Number) ? T("still there: ") : "";
                row = Say(sheet, row, $"{i + 1} {seen}{Incidents.Words(incident)}");
            }
        }
    }

    public override Question Refilled(Depot depot, Question q) => q.IsReport ? DamageReport.Refilled(q) : q;

    public override StepReply Before(Depot depot, Question q) => q.IsReport ? q : StepReply.Go(-1);

    public override Question? Escaped(Depot depot, Shift shift, Question q) => q.IsReport ? Asked(depot, shift, q) : null;

    public override Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) => recorded is ReportDamage
        ? Asked(depot, shift, q)
        : null;

    public override object? Subject(VanEntry entry) => entry as DamageFound;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry switch
    {
        DamageFound e when shift.Damages.Contains(e) =>
            [(0, T($"DAMAGE {T(e.Zone)}, {Readiness.SeverityWords(e.Severity)}{(e.Drivable ? "" : T(", HOLDS"))} (incident {e.Number})"))],
        DamageConfirmed { Known: { Count: > 0 } known } => [(0, T($"known, still there: {string.Join(", ", known)}"))],
        DamageConfirmed when shift.Damages.Count == 0 => [(0, T("no damage seen"))],
        DamageFound or DamageConfirmed => [],
        _ => null,
    };

    public override IEnumerable<string> Summary(Depot depot, Shift shift) =>
    [
        shift.Damages.Count == 0
            ? T("Damage      none seen")
            : T($"Damage      {string.Join("; ", shift.Damages.Select(d => $"{T(d.Zone)}, {Readiness.SeverityWords(d.Severity)}"))}"),
    ];

    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.IsReport ? DamageReport.Enter(q) : q.Form["damage"].Letter == "D" ? Report(q) : Answer(depot, q);

    protected override Form Fields(Depot depot, Shift shift) =>
        Form.Of(new Field("damage", T("Damage"), FieldKind.Letter, shift.Damages.Count > 0 ? "T" : ""));

    /// <summary>None at one key; where damages were reported it would clear them, so Enter must say so too.</summary>
    private StepReply None(Depot depot, Question q, Keystroke key) => q with { Form = q.Form.Type(key.Character)! } is var none
        && depot.Shift(q.Van)!.Damages.Count == 0 ? Answer(depot, none) : none;

    /// <summary>Open damage of earlier days that a number key points at; null: the key is none.</summary>
    private static Incident? Known(Depot depot, Question q, Keystroke key) =>
        key.Press == Press.Character && char.IsAsciiDigit(key.Character)
            ? Open(depot, q.Van).ElementAtOrDefault(key.Character - '1')
            : null;

    private static List<Incident> Open(Depot depot, Code<Van> van) =>
        [.. Incidents.Open(depot, van).Where(i => i.Since < depot.Date).Take(9)];

    /// <summary>Pointed at once: still there. Pointed at again: not said.</summary>
    private static Question Pointed(Question q, int number)
    {
        var seen = Seen(q);
        int[] now = seen.Contains(number) ? [.. seen.Where(n => n != number)] : [.. seen, number];
        return q with { Pointed = string.Join(' ', now.Order()) };
    }

    private static List<int> Seen(Question q) =>
        [.. q.Pointed.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => int.Parse(n, CultureInfo.InvariantCulture))];

    /// <summary>The step's question again, with what was pointed at.</summary>
    private Question Asked(Depot depot, Shift shift, Question q) => Ask(depot, shift) with { Pointed = q.Pointed };

    private static Question Report(Question q) => q with { IsReport = true, Form = DamageReport.Fields() };
}
