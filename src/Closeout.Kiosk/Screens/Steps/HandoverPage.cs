using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Steps;

/// <summary>The depot's own yes/no questions before the signature. None has a default; a no asks what is wrong.</summary>
public sealed class HandoverPage : StepPage
{
    private const string Why = EveningGiven.Why;

    public override Step Step => Step.Handover;

    public override string Caution => T("Nothing loose in the cab. Batteries and old lamps go to their boxes.");

    public override string? Help => null;

    public override ICommand Unchanged(Code<Van> van) => new AnswerHandover(van, []);

    public override EveningStep Evening => new(Step, "handover", [], a => new AnswerHandover(a.Van,
    [
        .. a.Values.Keys.Where(k => !k.EndsWith(Why, StringComparison.Ordinal))
            .Select(k => new HandoverReply(new(k), a.YesNo(k) == true, a.Text(k + Why) ?? "")),
    ]));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) =>
    [
        EnterKey(T("next"), depot, q),
        UpKey(depot, q),
        new(new("Y/N", key => q.Form.Now is { Kind: FieldKind.Letter } && IsReply(key)), T("yes or no"), key => Replied(depot, q, key)),
    ];

    public override Answer Answer(Depot depot, Question q)
    {
        var open = depot.Setup.Questions.FirstOrDefault(h => q.Form[h.Code.Text].Letter is not ("Y" or "N"));
        if (open is not null)
            return Steps.Answer.Lacks(open.Code.Text, Refusal.NotAnswered(open).Text);

        return Steps.Answer.Of(new AnswerHandover(q.Van,
        [
            .. depot.Setup.Questions.Select(h => q.Form[h.Code.Text].Letter == "Y"
                ? new HandoverReply(h.Code, true)
                : new HandoverReply(h.Code, false, q.Form[h.Code + Why].Text)),
        ]));
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        var code = q.Form.Now?.Name.Split('/')[0];
        var asked = depot.Setup.Questions.FirstOrDefault(h => h.Code.Text == code);
        var below = Say(sheet, 3, asked?.Question ?? "");
        List(sheet, Math.Max(below, 5) + 1, q.Form, 36);
    }

    /// <summary>Under each no a field for what is wrong.</summary>
    public override Question Refilled(Depot depot, Question q)
    {
        var (form, fields) = (q.Form, new List<Field>());
        foreach (var field in form.Fields.Where(f => f.Kind == FieldKind.Letter))
        {
            fields.Add(field);
            if (field.Letter == "N")
                fields.Add(form.Fields.FirstOrDefault(f => f.Name == field.Name + Why) ?? WhyField(field.Name, ""));
        }

        return q with { Form = new([.. fields], Math.Max(0, fields.FindIndex(f => f.Name == form.Now?.Name))) };
    }

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry switch
    {
        HandoverAnswered e when e.Answers.All(a => a.Yes) => [(0, T("handover: all yes"))],
        HandoverAnswered e => e.Answers.Where(a => !a.Yes).Select(a => (0, T($"{a.Question} No: {a.Why}"))),
        _ => null,
    };

    public override IEnumerable<string> Summary(Depot depot, Shift shift) => shift.Handover is not { Answers: { Count: > 0 } answers } ? []
        : answers.All(a => a.Yes) ? [T("Handover    all yes")]
        : answers.Where(a => !a.Yes).Select(a => T($"Handover    {a.Question} No: {a.Why}"));

    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.Form.Now is { Kind: FieldKind.Letter, Text: "" } || q.Form.IsLast ? Answer(depot, q) : q.Move(1);

    protected override Form Fields(Depot depot, Shift shift)
    {
        var before = shift.Handover?.Answers ?? [];
        return new([.. depot.Setup.Questions.SelectMany(h => Field(h, before.FirstOrDefault(a => a.Code == h.Code)))]);
    }

    private static IEnumerable<Field> Field(HandoverQuestion question, HandoverAnswer? before)
    {
        yield return new(
            question.Code.Text, Cells.Cut(question.Question, 34), FieldKind.Letter, before is null ? "" : before.Yes ? T("Y") : "N");
        if (before is { Yes: false })
            yield return WhyField(question.Code.Text, before.Why);
    }

    private static Field WhyField(string code, string shown) => new(code + Why, T("  what is wrong"), FieldKind.Words, shown);

    private static bool IsReply(Keystroke key) => key.Press == Press.Character
        && new Field("", "", FieldKind.Letter, "", Typed: key.Character.ToString()).Letter is "Y" or "N";

    /// <summary>One key for each question; the last yes records them.</summary>
    private StepReply Replied(Depot depot, Question q, Keystroke key)
    {
        var told = Refilled(depot, q with { Form = q.Form.Type(key.Character) ?? q.Form });
        return told.Form.IsLast ? Answer(depot, told) : told.Move(1);
    }
}
