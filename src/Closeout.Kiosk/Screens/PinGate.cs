using Closeout.Facts;
using Closeout.People;
using Closeout.Rules;
using Closeout.Shifts;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>Stands between an act and the book: what is recorded in somebody's name needs that person's PIN first.</summary>
/// <remarks>One person at a time is remembered, and only for forms of the desk; a signature asks always. It is kept nowhere: a new session knows nobody.</remarks>
public sealed class PinGate(Desk desk, Pins pins)
{
    /// <summary>So long after the last thing recorded in that name, whoever stood here is forgotten; and a PIN half typed is, so long after the last key.</summary>
    public static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private (Code<Technician> Person, PinHash Hash, DateTimeOffset Since)? known;
    private (int Failures, DateTimeOffset At) unwritten;
    private DateTimeOffset lastKey = DateTimeOffset.MinValue;

    /// <summary>A key was pressed. After a long pause first what the pause ended.</summary>
    public Model Key(Model model)
    {
        var rested = Rested(model);
        lastKey = desk.Now;
        return rested;
    }

    /// <summary>After a long pause the person is forgotten, and a PIN typed or shown is gone from the screen; a page that asks for one stays. A clock that was set back ends it too.</summary>
    public Model Rested(Model model)
    {
        var now = desk.Now;
        if (known is { } k && !IsWithin(k.Since, now))
        {
            known = null;
        }

        return IsWithin(lastKey, now) ? model : model.Screen is HelpScreen help ? Closed(model, help.Back) : Closed(model, model.Screen);
    }

    /// <summary>Somebody signed: who was known and is another is forgotten.</summary>
    public void Signed(Code<Technician> signer) => known = known is { } k && k.Person == signer ? known : null;

    /// <summary>What to show, and what may be done now: the act itself, or the one that waited for a PIN, or nothing yet.</summary>
    public (Model Model, Act? Act) Pass(Model model, Act? act) => (act, model.Screen) switch
    {
        (null, _) or (QuitAct, _) => (model, act),
        (TryPinAct, PinScreen s) => Tried(model, s),
        (DrawPinAct, PinScreen s) => (model with { Screen = s with { Stage = PinStage.Drawn, Typed = "", Chosen = Pins.Draw(Of(s.Person)) } }, null),
        (TakePinAct, PinScreen s) => desk.Record(Taking(s)) is { } refusal ? (new(s.Back, refusal.Text), null) : Taken(s),
        (ChangePinAct, _) when desk.Depot.Rehearsal => (model with { Said = PinRefusal.NoneInARehearsal().Text }, null),
        (ChangePinAct change, _) => Asked(model, act, change.Person),
        _ when desk.Depot.Rehearsal => (model, act),
        (RecordAct { Commands: [.., Sign sign] }, _) => Asked(model, act, sign.Technician),
        (_, DeskScreen s) => DeskForms.By(s.Form) is { } by
            ? Knows(by) ? (model, act) : Asked(model, act, by)
            : throw new InvalidOperationException($"{s.Task} is recorded in nobody's name"),
        _ => (model, act),
    };

    /// <summary>Issues a PIN; it is on disk before it is shown.</summary>
    public Model Issue(Model model, IssuePinAct act)
    {
        if (desk.Depot.Setup.Find(act.Person) is not { } person)
        {
            return model with { Said = Refusal.NoSuchTechnician(act.Person).Text };
        }

        var pin = Pins.Draw(person);
        return desk.Record(new IssuePin(person.Code, pins.Hash(pin), act.Lead)) is { } refusal
            ? Refused.By(model, refusal)
            : new(new IssuedScreen(person.Code, pin, ((DeskScreen)model.Screen).Back));
    }

    private static bool IsWithin(DateTimeOffset since, DateTimeOffset now) => now >= since && now - since <= Patience;

    /// <summary>Keys of others at this kiosk do not keep somebody known: only what is recorded in that name does.</summary>
    private bool Knows(Code<Technician> person)
    {
        if (known is { } k && k.Person == person && desk.Depot.Pins.Of(person) is { IsGood: true } now && now.Hash == k.Hash)
        {
            known = k with { Since = desk.Now };
            return true;
        }

        return false;
    }

    private (Model, Act?) Asked(Model model, Act act, Code<Technician> code)
    {
        desk.Refresh();
        if (desk.Depot.Setup.Find(code) is not { } person)
        {
            return (Unasked(model, Refusal.NoSuchTechnician(code)), null);
        }

        var ask = new PinScreen(person.Code, act, model.Screen, pins.Kiosk);
        return desk.Depot.Pins.Of(person.Code) switch
        {
            { IsLocked: true } own => (Unasked(model, PinRefusal.Locked(person, own.Failures)), null),
            { Hash: not null } => (model with { Screen = ask }, null),
            _ when person.IsLead => (Unasked(model, PinRefusal.LeadHasNone(person)), null),
            _ => (model with { Screen = ask with { Stage = PinStage.Choose } }, null),
        };
    }

    /// <summary>Nobody's PIN is asked: the code is another's, or none.</summary>
    private static Model Unasked(Model model, Refusal refusal) => Refused.At(model, model.Screen is DeskScreen ? "by" : "technician", refusal.Text);

    /// <summary>The failure is on disk before the next try.</summary>
    private (Model, Act?) Tried(Model model, PinScreen s)
    {
        desk.Refresh();
        if (desk.Depot.Setup.Find(s.Person) is not { } person)
        {
            return (new(s.Back, Refusal.NoSuchTechnician(s.Person).Text), null);
        }

        var again = model with { Screen = s with { Typed = "" } };
        if (Unwritten() is { } resting)
        {
            return (again with { Said = resting.Text }, null);
        }

        if (PinTries.Now(desk.Depot, person, pins.Kiosk, desk.Now) is { } notNow)
        {
            return (again with { Said = notNow.Text }, null);
        }

        if (desk.Depot.Pins.Of(person.Code).Hash is not { } hash)
        {
            return (new(s.Back, $"The PIN of {person.Code} {person.Name} was reset meanwhile. Press Enter once more."), null);
        }

        if (!hash.Fits(s.Typed))
        {
            var refusal = Noted(person);
            return (again with { Said = (refusal ?? Wrong(person)).Text }, null);
        }

        return PinTries.Clears(desk.Depot, person.Code, pins.Kiosk) && desk.Record(new NoteRight(person.Code, pins.Kiosk)) is { } refused
            ? (again with { Said = refused.Text }, null)
            : s.Then is ChangePinAct
                ? (model with { Screen = s with { Stage = PinStage.Choose, Typed = "", Old = hash }, Said = "" }, null)
                : Through(s);
    }

    private Refusal? Noted(Technician person)
    {
        try
        {
            var refusal = desk.Record(new NoteWrong(person.Code, pins.Kiosk));
            unwritten = default;
            return refusal;
        }
        catch (BookException)
        {
            unwritten = (unwritten.Failures + 1, desk.Now);
            throw;
        }
    }

    /// <summary>A failure that the book could not take counts here alone: a full disk gives no free tries.</summary>
    private Refusal? Unwritten() => unwritten.Failures > 0 && unwritten.At + PinTries.Wait(unwritten.Failures) - desk.Now is var left && left > TimeSpan.Zero
        ? PinRefusal.Wait(unwritten.Failures, (int)Math.Ceiling(left.TotalSeconds))
        : null;

    private PinCommand Taking(PinScreen s)
    {
        var (hash, issued) = (pins.Hash(s.Chosen), s.Stage == PinStage.Drawn);
        return s.Old is { } old ? new ChangePin(s.Person, old, hash, issued) : new TakePin(s.Person, hash, issued);
    }

    private (Model, Act?) Taken(PinScreen s) => s.Then is ChangePinAct
        ? (new(s.Back, $"The new PIN of {s.Person} is set, and recorded. {(s.Old is null ? "It is asked from now on." : "The old one opens nothing any more.")}"), null)
        : Through(s);

    private Refusal Wrong(Technician person) => desk.Depot.Pins.Of(person.Code) is { IsLocked: true, Failures: var failures }
        ? PinRefusal.Locked(person, failures)
        : PinRefusal.Wrong(person, desk.Depot.Pins.Of(person.Code).Failures);

    private (Model, Act?) Through(PinScreen s)
    {
        if (s.Then is not RecordAct && desk.Depot.Pins.Of(s.Person).Hash is { } hash)
        {
            known = (s.Person, hash, desk.Now);
        }

        return (new(s.Back), s.Then);
    }

    private Technician Of(Code<Technician> code) => desk.Depot.Setup.Find(code) ?? throw new InvalidOperationException($"a PIN of {code}, whom the set-up does not have");

    /// <summary>The page that asks for a PIN stays: what is typed next would else stand in clear in a field behind it.</summary>
    private static Model Closed(Model model, Screen screen) => screen switch
    {
        PinScreen { Stage: PinStage.Ask, Typed: "" } => model,
        PinScreen { Stage: PinStage.Ask } s => new(s with { Typed = "" }, $"No key for {Patience.TotalMinutes:0} minutes: what was typed is gone, and nothing was recorded. Type the PIN of {s.Person} anew, or Esc."),
        PinScreen s => new(s.Back, $"No key for {Patience.TotalMinutes:0} minutes: the PIN is asked anew, and nothing was recorded."),
        IssuedScreen s => new(s.Back),
        _ => model,
    };
}
