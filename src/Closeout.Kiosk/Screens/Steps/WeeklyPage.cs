using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>The longer check of the week: the walk-round part by part, oil, photos, clean.</summary>
public sealed class WeeklyPage : StepPage
{
    public override Step Step => Step.Weekly;

    public override string Caution => T("Chocks, cool engine, nobody under the van. In doubt: the shop looks at it.");

    public override string? Help => T("Weekly check: part by part, when it is due. F8 attaches photos.");

    public override bool HasPictures => true;

    public override ICommand Unchanged(Code<Van> van) => new CheckWeekly(van, null, 0, Clean: true);

    public override EveningStep Evening => new(
        Step,
        "weekly",
        [
            new("oil_change_on", EveningItem.None, row => row.Date("value")),
            new("photos", EveningItem.None, row => row.Whole("value", 0, Refusal.MostAtOnce)),
            new("clean", EveningItem.None, row => row.YesNo("value")),
            new("part", EveningItem.Part, row => row.Text("value")) { NeedsItem = true, ComesBefore = true },
            new("photo", EveningItem.None, EveningField.FileName) { IsOwnAnswer = true, ComesBefore = true, IsPhoto = true },
        ],
        a => a.Item.Length > 0
            ? new ReportDamage(a.Van, a.Item, Severity.Repair, a.Text("part")!)
            : new CheckWeekly(a.Van, a.Date("oil_change_on"), a.Whole("photos") ?? 0, a.YesNo("clean") ?? true));

    public override IEnumerable<StepKey> Keys(Depot depot, Question q) => q.IsReport
        ? [EnterKey(T("next, record at the last"), depot, q), UpKey(depot, q)]
        :
        [
            EnterKey(T("next"), depot, q),
            UpKey(depot, q),
            new(new("N", key => IsPart(q.Form.Now) && key.Press == Press.Character && char.ToUpperInvariant(key.Character) == 'N'), null,
                key => Enter(depot, depot.Shift(q.Van)!, q with { Form = q.Form.Type(key.Character)! })),
            new(Parts.Keys.Letter('='), T("all parts in order"), _ => q with { Form = q.Form with { Focus = WalkRound.Parts.Count } }),
        ];

    public override Answer Answer(Depot depot, Question q)
    {
        if (q.IsReport)
            return DamageReport.Answer(q.Van, q.Form);

        var (form, oil, clean) = (q.Form, q.Form["oil"], q.Form["clean"].Letter);
        return oil.Text.Length > 0 && oil.Date is null
            ? Steps.Answer.Lacks("oil", T($"\"{oil.Text}\" is no date. Type it as YYYY-MM-DD, or clear the field."))
            : WalkRound.Parts.FirstOrDefault(p => form[p].Letter is not ("Y" or "N")) is { } open
                ? Steps.Answer.Lacks(open, InOrder(open))
            : form.Empty("photos") is not null ? Steps.Answer.Lacks("photos", T("Type how many photos were taken, 0 where there are none."))
            : clean is not ("Y" or "N") ? Steps.Answer.Lacks("clean", CleanInside)
            : Steps.Answer.Of(new CheckWeekly(
                q.Van, oil.Date, form["photos"].Whole ?? 0, clean == "Y", [.. WalkRound.Parts.Where(p => form[p].Letter == "N")]));
    }

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        if (q.IsReport)
        {
            DamageReport.Draw(sheet, q.Form);
            return;
        }

        List(sheet, Say(sheet, 3, T("The weekly walk-around. N describes what is not in order; = says the rest is.")), q.Form, 20);
    }

    public override Question Refilled(Depot depot, Question q) => q.IsReport ? DamageReport.Refilled(q) : q;

    public override StepReply Before(Depot depot, Question q) => q.IsReport ? q : StepReply.Go(-1);

    public override Question? Escaped(Depot depot, Shift shift, Question q) => q.IsReport ? NotReported(depot, shift, q) : null;

    public override Question? Recorded(Depot depot, Shift shift, Question q, ICommand recorded) => recorded is ReportDamage
        ? Reported(depot, shift, q)
        : null;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) =>
        entry is WeeklyChecked e ? [(0, T($"weekly check done, {Order(e)}, {(e.Clean ? T("clean") : T("to be cleaned"))}"))] : null;

    public override IEnumerable<string> Summary(Depot depot, Shift shift) => shift switch
    {
        { Weekly: { } done } => [T($"Weekly      done, {Order(done)}{(done.Clean ? "" : T(", to be cleaned"))}{Oil(done)}")],
        { WeeklyDue: true } => [T("Weekly      not done")],
        _ when Readiness.WeeklyCheckedOn(depot, shift.Van) is { } last => [T($"Weekly      last {last:yyyy-MM-dd}, not due")],
        _ => [],
    };

    /// <summary>Esc in a report takes the N back that began it: nothing is wrong with the part, or it is said again.</summary>
    private Question NotReported(Depot depot, Shift shift, Question q) =>
        Ask(depot, shift) is var asked && q.Behind is { Now: { } part } behind
        ? asked with { Form = behind.With(part with { Typed = null, Caret = null }) }
        : asked;

    /// <summary>The same question after pictures were attached: what was typed stays, their number follows, behind a report too.</summary>
    public static Question WithPhotos(Depot depot, Question q)
    {
        var number = depot.Shift(q.Van)!.Photos.Count;
        Form With(Form form) =>
            form.With(Field.Count("photos", form["photos"].Label, number, form["photos"].After) with { Typed = form["photos"].Typed });
        return q switch
        {
            { At: Step.Weekly, IsReport: false } => q with { Form = With(q.Form) },
            { Behind: { } behind } => q with { Behind = With(behind) },
            _ => q,
        };
    }

    protected override StepReply Enter(Depot depot, Shift shift, Question q)
    {
        if (q.IsReport)
            return DamageReport.Enter(q);

        if (q.Form.Now is { Kind: FieldKind.Letter, Letter: not ("Y" or "N") } letter)
            return Steps.Answer.Lacks(letter.Name, IsPart(letter) ? InOrder(letter.Name) : CleanInside);

        var isTold = shift.Damages.Any(d => WalkRound.Find(d.Zone) == q.Form.Now?.Name);
        return q.Form.Now is { Kind: FieldKind.Letter, Letter: "N" } part && WalkRound.Find(part.Name) is not null && !isTold
            ? q with { IsReport = true, Behind = q.Form, Form = DamageReport.Fields(part.Name) }
            : q.Form.IsLast ? Answer(depot, q) : q.Move(1);
    }

    protected override Form Fields(Depot depot, Shift shift)
    {
        var done = shift.Weekly;
        var told = shift.Damages.Select(d => WalkRound.Find(d.Zone)).ToHashSet();
        return new(
        [
            .. WalkRound.Parts.Select((p, i) => new Field(
                p, Capital(T(p)), FieldKind.Letter, told.Contains(p) ? "N" : T("Y"),
                i == 0 ? T("Y in order  N not") : "")),
            Field.OfDate("oil", T("Oil last changed"), done?.OilChangedOn ?? depot.Van(shift.Van).OilChangedOn, T("empty: none")),
            Field.Count("photos", T("Photos taken"), done?.Photos ?? shift.Photos.Count, T("F8 attaches")),
            new Field("clean", T("Clean inside"), FieldKind.Letter, done is { Clean: false } ? "N" : T("Y"), T("Y yes  N no")),
        ]);
    }

    private static string Oil(WeeklyChecked done) => done.OilChangedOn is { } oil ? T($", oil changed {oil:yyyy-MM-dd}") : "";

    private static string CleanInside => T("Say whether it is clean inside: Y yes, N no.");

    private static string InOrder(string part) => T($"Say whether this part is in order: {T(part)}. Y yes, N no.");

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];

    private static bool IsPart(Field? field) => field is not null && WalkRound.Find(field.Name) is not null;

    /// <summary>Back from the report of a damage: to the walk-round as it stood.</summary>
    private Question Reported(Depot depot, Shift shift, Question q) => Ask(depot, shift) is var asked && q.Behind is { } behind
        ? asked with { Form = behind.Move(1) }
        : asked;

    private static string Order(WeeklyChecked e) => e.NotInOrder.Count == 0
        ? T("all in order")
        : T("not in order: ") + string.Join(", ", e.NotInOrder.Select(T));
}
