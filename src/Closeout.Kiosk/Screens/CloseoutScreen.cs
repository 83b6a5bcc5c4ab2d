using Closeout.Screens.Parts;
using Closeout.Screens.Steps;
using Closeout.Shifts.Steps;

namespace Closeout.Screens;

/// <summary>A close-out: one question on the left, the tally card on the right, and on a wide screen the whole list between them.</summary>
/// <param name="Back">The wall as it was left.</param>
/// <param name="CardUp">Lines that the card is scrolled up from its end.</param>
public sealed record CloseoutScreen(Question Question, Screen Back, int CardUp = 0) : Screen
{
    private const int CardAt = StepPage.Columns + 3;
    private const int WideFrom = 110;
    private const int WideCard = 35;

    /// <summary>Whether nobody used the van: once it was looked at for damage, its kit is as it was.</summary>
    public bool IsNotUsed { get; init; }

    private Code<Van> Van => Question.Van;

    private StepPage Page => StepPages.Of(Question.At);

    /// <summary>At the question that is open now.</summary>
    public static CloseoutScreen Open(Depot depot, Code<Van> van, Screen back) => new(StepPages.Open(depot, van), back);

    public override Code<Technician>? SpeaksTo(Depot depot) => depot.Shift(Van)?.Technician;

    public override Screen Retold(Depot depot) => Open(depot, Van, Back);

    public override IReadOnlyList<Binding> Bindings(Scene scene)
    {
        var (depot, q) = (scene.Depot, Question);
        var own = Page.Keys(depot, q)
            .Select(k => new Binding(k.Keys, k.Line, key => q.Form.Now is { IsSpoiled: true } now && key.Press != Press.Up
                    ? new Reply(this, now.Spoiled)
                    : After(depot, k.Do(key), isMeant: key.Press != Press.Enter || q.IsRetyped))
                { Row = k.Row })
            .ToList();
        if (q.Find is not null)
            return [.. own, HelpKey(null)];

        if (q is { Doubted: IAskedAgain doubted, IsSuggested: false } && (!q.IsRetyped || Page.Answer(depot, q).Commands.Contains(doubted)))
            own.Insert(0, new(Keys.Letter('!'), T("record it"), _ => Recording(depot, [doubted.Surely()])) { Row = 1 });

        var (isClosed, isSignOff, isNew) = (q.At == Step.Closed, q.At == Step.SignOff, IsNotUsed || depot.Shift(Van)!.Story.Count == 1);
        string? Unless(bool told, string line) => told ? null : line;
        Binding pages = new(Keys.Of(T("PgUp/PgDn"), Press.PageUp, Press.PageDown),
            Unless(q.IsReport || isClosed || isSignOff, T("earlier/later step")),
            key => Stepped(depot, key.Press == Press.PageUp ? -1 : 1));
        Binding pictures = new(Keys.F(8), Page.HasPictures && !q.IsReport ? T("attach photos") : null,
            _ => isClosed ? this : AttachScreen.Of(this)) { Row = 1 };
        Binding change = new(Keys.PageUp, isSignOff ? T("change something") : null, _ => Stepped(depot, -1)) { Row = 1 };
        Binding escape = new(Keys.Escape, q.IsReport ? T("do not report") : isClosed ? T("back to the wall") : T("leave (all is kept)"),
            _ => Page.Escaped(depot, depot.Shift(Van)!, q) is { } before ? this with { Question = before } : Back.Choosing(depot, Van));
        if (isClosed)
            return [HelpKey(), escape];

        Binding card = new(Keys.F(4), TallyCard.IsLong(depot, depot.Shift(Van)!) ? T("card") : null,
            _ => this with { CardUp = CardUp + TallyCard.Page }) { Row = isSignOff ? 1 : 0 };

        // Digits are no code of anybody here: they are the PIN of whoever's code stands in the field.
        Binding pin = new(new("0-9", key => isSignOff && !depot.Rehearsal && q.Form.IsUntouched && key.Press == Press.Character
                && char.IsAsciiDigit(key.Character) && !depot.Setup.Crew.Any(c => char.IsAsciiDigit(c.Code.Text[0]))), null,
            key => Recording(depot, Page.Answer(depot, q).Commands, key.Character.ToString()));
        Binding wrongVan = new(Keys.F(2), isNew ? T("wrong van") : null, _ => new(this, Act: new RecordAct([new SendBack(Van)])))
            { Help = isNew ? T("wrong van: out again") : "" };

        return
        [
            .. own, .. GiftKeys.Of(this, scene), pin, pictures, change, pages, wrongVan, card, HelpKey(), escape,
            new(Keys.Of(T("Down"), Press.Down, Press.Tab), null, _ => After(depot, Page.After(depot, q), isMeant: true)),
            EditKeys(q.Form, form => form == q.Form ? this : Edited(depot, form)),
        ];
    }

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T(
            "One question at a time. The answer most likely right is in the field: Enter accepts it, typing replaces it, Tab goes to the "
                + "next field, Up goes back."),
        "",
        StepPages.All[0].Help!,
        string.Join(' ', StepPages.All.Skip(1).Select(p => p.Help).OfType<string>()),
        "",
        T(
            "PgUp goes to an earlier step to change it; what you answered later stays. Every Enter is on disk before the screen moves "
                + "on, so Esc, a power cut or a closed window loses nothing that was confirmed."),
        "",
        T("!! asks once more when an answer looks wrong. Enter alone does not record it then: type the answer again, or press !."),
    ];

    public override bool Asks => Question.Doubted is IAskedAgain;

    public override Screen At(string? field) => this with { Question = Question with { Form = Question.Form.At(field) } };

    public override Reply Recorded(Scene scene, IReadOnlyList<ICommand> commands, string done)
    {
        var depot = scene.Depot;
        return commands[^1] is SendBack
            ? new Reply(Back.Choosing(depot, Van), T($"{Van} {depot.Setup.Van(Van).Name} is out again: nothing was recorded of it."))
            : commands[^1] is Sign
            ? new Reply(Back.Choosing(depot, Van),
                T($"{Van} {depot.Setup.Van(Van).Name} is signed. "
                        + $"{(depot.Rehearsal ? T("REHEARSAL: signed without a PIN.") : T("Good night."))}"))
            : Next(depot, Page.Recorded(depot, depot.Shift(Van)!, Question, commands[^1]) ?? StepPages.Open(depot, Van));
    }

    /// <summary>A second answer of an earlier step is corrected there, one after the other, until somebody goes on.</summary>
    private Reply Next(Depot depot, Question next) => next.At < depot.Shift(Van)!.Step && !next.IsReport && Question.At == next.At
        ? new Reply(this with { Question = next }, T("Changed. PgDn goes on."))
        : this with { Question = next };

    public override Reply Refused(Scene scene, ICommand command, Refusal refusal)
    {
        var asked =
            Question with { Doubted = refusal.AskAgain ? command : null, IsRetyped = false, IsSuggested = refusal.InsteadMi is not null,
            Form = Page.Refused(scene.Depot, Question, refusal) };
        return Reply.Lacks(this with { Question = asked }, Page.FieldOf(command, refusal),
            !refusal.AskAgain ? refusal.Text
            : T($"{refusal.Text} To record your answer, type it again{(refusal.InsteadMi is null ? T(" or press !") : "")}."));
    }

    public override bool Stands(Depot depot) => depot.Setup.Find(Van) is not null && depot.Shift(Van) is { } shift
        && Question.At <= shift.Step && (Question.Item is not { } item || depot.Setup.Find(item) is not null);

    public override Code<Van>? Walks(Depot depot) => depot.Shift(Van) is { IsClosed: false } ? Van : null;

    /// <summary>After pictures were attached.</summary>
    public CloseoutScreen WithPhotos(Depot depot) => this with { Question = WeeklyPage.WithPhotos(depot, Question) };

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var depot = scene.Depot;
        var (van, shift) = (depot.Setup.Van(Van), depot.Shift(Van)!);
        Frame.Head(sheet, depot, $"{van.Code} {van.Name}  {shift.Technician}", Spell.Clock(scene.Now));
        var (bottom, isWide) = (sheet.Height - 4, sheet.Width >= WideFrom);
        if (isWide)
            StepList.Draw(sheet, CardAt, sheet.Width - WideCard - 2, bottom, depot, shift, Question);

        TallyCard.Draw(sheet, isWide ? sheet.Width - WideCard - 1 : CardAt, bottom, depot, shift, CardUp);
        StepBar.Draw(sheet, 1, shift, Question.At);
        if (!Question.IsReport)
            sheet.Write(2, 1, Page.Title(depot, shift, Question), Look.Strong, StepPage.Columns);

        Page.Draw(sheet, depot, shift, Question);
        sheet.Write(sheet.Height - 3, 1, Page.Caution, Look.Faint);
    }

    /// <param name="isMeant">
    /// Whether an answer that was asked again may go through: it was typed again, or came by another key than Enter.
    /// </param>
    private Reply After(Depot depot, StepReply reply, bool isMeant) =>
        reply.Answer is { } answer ? Give(depot, answer, isMeant)
        : reply.Step != 0 ? Stepped(depot, reply.Step)
        : new(reply.IsOpen ? Open(depot, Van, Back) : this with { Question = reply.Question! }, reply.Said) { IsDone = reply.IsDone };

    /// <summary>An answer to record. One that was asked again goes through when it is meant.</summary>
    private Reply Give(Depot depot, Answer answer, bool isMeant)
    {
        if (answer.Missing is { } missing)
            return Reply.Lacks(this, answer.Field, missing);

        if (!isMeant && answer.Commands.Any(c => c.Equals(Question.Doubted)))
            return new(this, T("Enter alone does not record it. Type the answer again, or press ! to record it as it is."));

        var sure = answer.Commands.Select(c => c.Equals(Question.Doubted) && c is IAskedAgain again ? again.Surely() : c).ToList();
        var (commands, otherwise) = Page.Give(depot, Question, sure);
        return commands is null ? After(depot, otherwise, isMeant) : Recording(depot, commands);
    }

    private Reply Recording(Depot depot, IReadOnlyList<ICommand> commands, string typed = "")
    {
        if (IsNotUsed && commands is [ConfirmDamage { None: true }] && NotUsedAct.KitIsAsItWas(depot, Van))
            return new(this, Act: new RecordAct([.. commands, new ConfirmKit(Van)]));

        var act = new RecordAct(commands);
        return new(this, Act: commands[^1] is not Sign sign ? act : act with
        {
            By = sign.Technician, IsSignature = true, Typed = typed, Does = T($"signs {Van} {depot.Setup.Van(Van).Name}"),
        });
    }

    private CloseoutScreen Edited(Depot depot, Form form) =>
        this with { Question = Page.Refilled(
            depot, Question with { Form = form, IsRetyped = true, Doubted = Question.Doubted as IAskedAgain }) };

    private Reply Stepped(Depot depot, int by)
    {
        var shift = depot.Shift(Van)!;
        var steps = ShiftFlow.Asked(shift.WeeklyDue, shift.HandoverDue).Where(t => t <= shift.Step).ToList();
        var to = steps.IndexOf(Question.At) + by;
        if (shift.IsClosed || to < 0 || to >= steps.Count)
            return this;

        var first = steps[to] == Step.Leftovers && shift.Step > Step.Leftovers
            ? Leftovers.ToCount(depot, shift).Select(i => (Code<Item>?)i.Code).FirstOrDefault()
            : null;
        return this with { Question = StepPages.Of(steps[to]).Ask(depot, shift, first) };
    }
}
