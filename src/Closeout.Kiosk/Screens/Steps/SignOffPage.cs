using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Steps;

/// <summary>All that is signed, and the signature; once signed, the card.</summary>
/// <param name="step">The sign-off, or the end.</param>
public sealed class SignOffPage(Step step) : StepPage
{
    public override Step Step => step;

    public override string Caution => T("Your name says what you saw. It does not say that the van is safe to drive.");

    public override string? Help => null;

    public override ICommand Unchanged(Code<Van> van) => throw new InvalidOperationException($"{step} cannot be confirmed as booked");

    public override EveningStep Evening => new(
        Step.SignOff, "sign", [new("sign", EveningItem.None, _ => { })], a => new Sign(a.Van, a.Technician));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) => step == Step.SignOff
        ? [EnterKey(T("sign, or type your PIN"), depot, q), UpKey(depot, q) with { Line = null }]
        : [];

    public override Answer Answer(Depot depot, Question q) =>
        q.Form["technician"].Text is { Length: > 0 } code && Code<Technician>.IsValid(code)
        ? Steps.Answer.Of(new Sign(q.Van, new(code)))
        : Steps.Answer.Lacks("technician", T("Type or scan your own code to sign, then Enter."));

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        IEnumerable<string> signed = StepPages.Summary(depot, shift);
        if (depot.Rehearsal)
            signed = signed.Append(step == Step.SignOff ? T("REHEARSAL: no PIN is asked.") : T("REHEARSAL: signed without a PIN."));

        var (lines, room) = (signed.SelectMany(l => Cells.Wrap(l, Columns)).ToList(), sheet.Height - (step == Step.SignOff ? 9 : 7));
        if (lines.Count > room)
            lines = [.. lines.Take(room - 1), T($"... {lines.Count - room + 1} lines more: F4 shows them on the card")];

        foreach (var (i, line) in lines.Index())
            sheet.Write(3 + i, 1, line, Look.Plain, Columns);

        if (step == Step.SignOff)
            FormView.Draw(sheet, sheet.Height - 5, 1, q.Form, 0, 1, 22);
    }

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry switch
    {
        Signed e =>
            [(0, shift.SignedAt is { } at ? T($"SIGNED {e.Technician} {Spell.Clock(at)}") : T($"signed {e.Technician}, reopened since"))],
        SignedFor e => [(0, T($"SIGNED for {e.For} by {e.Lead}"))],
        CloseoutReopened e => [(0, T($"REOPENED by {e.Lead}: {e.Why}"))],
        CloseoutChecked e => shift.Checked == e ? [(0, T($"CHECKED by {e.Lead}"))] : [],
        _ => null,
    };

    protected override StepReply Enter(Depot depot, Shift shift, Question q) => Answer(depot, q);

    protected override Form Fields(Depot depot, Shift shift) => step == Step.SignOff
        ? Form.Of(new Field("technician", T("Sign with your code"), FieldKind.Code, shift.Technician.Text))
        : Form.None;
}
