using Closeout.People;
using Closeout.Screens.Parts;

namespace Closeout.Screens.People;

/// <summary>What is asked of a PIN.</summary>
public enum PinStage
{
    /// <summary>The PIN that the person has.</summary>
    Ask,

    /// <summary>A new one: of one's own, or I for one that is drawn.</summary>
    Choose,

    /// <summary>One's own, once more.</summary>
    Again,

    /// <summary>The one that was drawn and stands on the screen.</summary>
    Drawn,
}

/// <summary>
/// Somebody's PIN, before something is recorded in that name: dots, never the characters. A new one that was drawn is shown once.
/// </summary>
/// <param name="Then">What is done once the PIN fits.</param>
/// <param name="Back">The screen that asked for it.</param>
/// <param name="Typed">Shown as dots.</param>
/// <param name="Chosen">The new PIN as far as it is known.</param>
/// <param name="Kiosk">What the book calls this kiosk.</param>
/// <param name="Old">
/// What the old PIN was held against, where a new one takes its place; null: there is none, or it was not typed yet.
/// </param>
public sealed record PinScreen(
    Code<Technician> Person, Act Then, Screen Back, string Kiosk, PinStage Stage = PinStage.Ask, string Typed = "", string Chosen = "",
    PinHash? Old = null) : Screen
{
    /// <summary>So long after the last key what was typed is gone, and whoever stood here is forgotten.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private const int Columns = 24;

    public override Code<Technician>? SpeaksTo(Depot depot) => Person;

    /// <summary>Characters that are taken in; more than a PIN may have, so that a longer one is refused and not cut.</summary>
    private const int MostTyped = PinRules.MostOwn + 8;

    public override IReadOnlyList<Binding> Bindings(Scene scene) =>
    [
        new(Keys.Enter, Stage == PinStage.Ask ? T("take it") : T("next"),
            _ => Typed.Length == 0 ? new(this, PinStages.Wanted(this)) : Enter(scene.Depot)),
        new(Keys.Backspace, T("back"), _ => this with { Typed = Typed.Length > 0 ? Typed[..^1] : "" }),
        HelpKey(),
        new(Keys.Escape, T("leave it, nothing is recorded"), _ => Back),
        new(Keys.Typing, null,
            key => Typed.Length < MostTyped && !char.IsControl(key.Character) ? this with { Typed = Typed + key.Character } : this),
    ];

    public override IEnumerable<string> Help(Scene scene) =>
    [
        T(
            "What is recorded in your name needs your PIN. At the desk it is remembered for two minutes after the last thing recorded in "
                + "it, and not beyond somebody else's sign-off; a signature asks always."),
        "",
        T(
            "After a wrong one the kiosk waits: 1, 2, 4 seconds, up to 30. Ten in a row lock the PIN: a lead resets it, F9 on the wall "
                + "and R. A lead without a PIN gets one from another lead."),
        T(
            "A PIN of your own has eight characters or more; six digits are drawn for you with I. No date, no code or name, no card or "
                + "social-security number, nothing repeated, in a row or along a row of keys."),
        T(
            "It proves who confirmed. It does not say that a van is safe. Fuel PINs, card numbers and social-security numbers have no "
                + "place here."),
    ];

    /// <summary>After a wrong PIN: how long the next is not looked at. A sentence below may say already what was refused.</summary>
    public override string Counting(Scene scene) => Stage == PinStage.Ask && scene.Said.Length == 0
        && PinTries.Now(scene.Depot, scene.Depot.Setup.Find(Person)!, Kiosk, scene.Now) is { } wait ? wait.Text : "";

    public override bool Stands(Depot depot) => depot.Setup.Find(Person) is not null && Back.Stands(depot);

    public override Code<Van>? Walks(Depot depot) => Back.Walks(depot);

    /// <summary>The page that asks for a PIN stays: what is typed next would else stand in clear in a field behind it.</summary>
    public override Reply Rested() => this switch
    {
        { Stage: PinStage.Ask, Typed: "" } => this,
        { Stage: PinStage.Ask } => new Reply(
            this with { Typed = "" },
            T(
                $"No key for {Patience.TotalMinutes:0} minutes: what was typed is gone, and nothing was recorded. Type the PIN of "
                    + $"{Person} anew, or Esc.")),
        _ => new Reply(Back, T($"No key for {Patience.TotalMinutes:0} minutes: nothing was recorded. Enter the PIN again.")),
    };

    /// <summary>Without what was typed: a record prints itself in messages.</summary>
    public override string ToString() => T($"{nameof(PinScreen)} of {Person}, {Stage}");

    protected override void Draw(Sheet sheet, Scene scene)
    {
        var depot = scene.Depot;
        var person = depot.Setup.Find(Person)!;
        Frame.Head(sheet, depot, "PIN", Spell.Clock(scene.Now));
        sheet.Write(2, 3, $"{person.Code} {person.Name}{(person.IsLead ? T(", lead") : "")}: {PinStages.Does(this)}", Look.Strong);
        var row = Say(sheet, 4, PinStages.About(this));
        var shown = new string('•', Math.Min(Typed.Length, Columns));
        var column = sheet.Write(row + 1, 3, "> " + PinStages.Label(Stage) + "  ");
        sheet.Write(row + 1, column, $"[{shown.PadRight(Columns)}]", Look.Field);
        sheet.Caret = (row + 1, column + 1 + Math.Min(shown.Length, Columns - 1));

        if (Counting(scene) is { Length: > 0 } wait)
            Say(sheet, row + 3, [wait]);

        sheet.Write(sheet.Height - 4, 3, T("A PIN says who confirmed. It does not say that a van is safe."), Look.Faint);
        sheet.Write(sheet.Height - 3, 3, T("Never type a fuel card's PIN, a card number or a social-security number here."), Look.Faint);
    }

    private static int Say(Sheet sheet, int row, IEnumerable<string> sentences)
    {
        foreach (var line in sentences.SelectMany(s => Cells.Wrap(s, sheet.Width - 6)))
            sheet.Write(row++, 3, line);

        return row;
    }

    private Reply Enter(Depot depot)
    {
        var fresh = this with { Typed = "" };
        return Stage switch
        {
            PinStage.Ask => new Reply(this, Act: new TryPinAct()),
            PinStage.Choose when Typed is "I" or "i" => new Reply(this, Act: new DrawPinAct()),
            PinStage.Choose => PinRules.Own(Typed, depot.Setup.Find(Person)!) is { } weak
                ? new Reply(fresh, weak.Text)
                : new Reply(fresh with { Stage = PinStage.Again, Chosen = Typed }),
            PinStage.Again or PinStage.Drawn when Typed == Chosen => new Reply(this, Act: new TakePinAct()),
            PinStage.Again => new Reply(fresh with { Stage = PinStage.Choose, Chosen = "" }, PinRefusal.NotTheSame().Text),
            PinStage.Drawn => new Reply(fresh, T("That is not the PIN drawn for you. It stands above: type those six digits.")),
            _ => throw new InvalidOperationException($"no such stage: {Stage}"),
        };
    }
}

/// <summary>What only the gate can do: it knows who stands here.</summary>
public abstract record GateAct : Act
{
    public sealed override Reply Do(World world, Screen from) => throw new InvalidOperationException("the gate does it");
}

/// <summary>Hold what was typed against the person's PIN.</summary>
public sealed record TryPinAct : GateAct;

/// <summary>Draw a PIN for the person.</summary>
public sealed record DrawPinAct : GateAct;

/// <summary>The person takes the PIN that was typed twice, or drawn and typed.</summary>
public sealed record TakePinAct : GateAct;

/// <summary>Somebody sets a PIN of his own: another in place of the old one, which is asked first.</summary>
public sealed record ChangePinAct(Code<Technician> Person) : GateAct;
