using Closeout.People;
using Closeout.Screens.Parts;
using Closeout.Store;

namespace Closeout.Screens.People;

/// <summary>Stands between an act and the book: what is recorded in somebody's name needs that person's PIN first.</summary>
/// <remarks>
/// One person at a time is remembered, and only for forms of the desk; a signature asks always. It is kept nowhere: a new session knows
/// nobody.
/// </remarks>
public sealed class PinGate(Desk desk, Pins pins)
{
    /// <summary>
    /// So long after the last thing recorded in that name, whoever stood here is forgotten; and a PIN half typed is, so long after the last
    /// key.
    /// </summary>
    public static readonly TimeSpan Patience = PinScreen.Patience;

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

    /// <summary>
    /// After a long pause the person is forgotten, and what a screen must not keep in sight is gone. A clock that was set back ends it too.
    /// </summary>
    public Model Rested(Model model)
    {
        var now = desk.Now;
        if (known is { } k && !IsWithin(k.Since, now))
            known = null;

        if (IsWithin(lastKey, now))
            return model;

        var rested = model.Screen.Rested();
        return ReferenceEquals(rested.Screen, model.Screen) ? model : new(rested.Screen, rested.Said);
    }

    /// <summary>Who is known, and for how long yet; null: nobody.</summary>
    public Known? Known => known is { } k && IsWithin(k.Since, desk.Now)
        ? new(k.Person, (int)Math.Ceiling((k.Since + Patience - desk.Now).TotalMinutes))
        : null;

    /// <summary>Somebody signed: who was known and is another is forgotten.</summary>
    public void Signed(Code<Technician> signer) => known = known is { } k && k.Person == signer ? known : null;

    /// <summary>What to show, and what may be done now: the act itself, or the one that waited for a PIN, or nothing yet.</summary>
    public Reply Pass(Screen screen, Act act) => (act, screen) switch
    {
        (TryPinAct, PinScreen s) => Tried(s),
        (DrawPinAct, PinScreen s) => s with { Stage = PinStage.Drawn, Typed = "", Chosen = Pins.Draw(Of(s.Person)) },
        (TakePinAct, PinScreen s) => desk.Record(Taking(s)) is { } refusal
            ? new(s.Back, refusal.Text)
            : new(s.Back, T($"The new PIN of {s.Person} is set. The old one no longer works.")) { IsDone = true },
        (ChangePinAct, _) when desk.Depot.Rehearsal => new(screen, PinRefusal.NoneInARehearsal().Text),
        (ChangePinAct change, _) => Asked(screen, act, change.Person),
        _ when desk.Depot.Rehearsal => new(screen, Act: act),
        ({ By: { } by, IsSignature: true }, _) => Asked(screen, act, by),
        ({ By: { } by }, _) => Knows(by) ? new(screen, Act: act) : Asked(screen, act, by),
        _ => new(screen, Act: act),
    };

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

    private Reply Asked(Screen screen, Act act, Code<Technician> code)
    {
        desk.Refresh();
        if (desk.Depot.Setup.Find(code) is not { } person)
            return Unasked(screen, act, Refusal.NoSuchTechnician(code));

        var ask = new PinScreen(person.Code, act, screen, pins.Kiosk, Typed: act.Typed);
        return desk.Depot.Pins.Of(person.Code) switch
        {
            { IsLocked: true } own => Unasked(screen, act, PinRefusal.Locked(person, own.Failures)),
            { Hash: not null } => ask,
            _ when person.IsLead => Unasked(screen, act, PinRefusal.LeadHasNone(person)),
            _ => Unasked(screen, act, PinRefusal.HasNone(person)),
        };
    }

    /// <summary>Nobody's PIN is asked: the code is another's, or none.</summary>
    private static Reply Unasked(Screen screen, Act act, Refusal refusal) =>
        Reply.Lacks(screen, act.IsSignature ? "technician" : "by", refusal.Text);

    /// <summary>The failure is on disk before the next try.</summary>
    private Reply Tried(PinScreen s)
    {
        desk.Refresh();
        if (desk.Depot.Setup.Find(s.Person) is not { } person)
            return new(s.Back, Refusal.NoSuchTechnician(s.Person).Text);

        var again = s with { Typed = "" };
        if ((Unwritten() ?? PinTries.Now(desk.Depot, person, pins.Kiosk, desk.Now)) is { } notNow)
            return new(again, notNow.Text);

        if (desk.Depot.Pins.Of(person.Code).Hash is not { } hash)
            return new(s.Back, T($"The PIN of {person.Code} {person.Name} was reset meanwhile. Press Enter once more."));

        if (!hash.Fits(s.Typed))
        {
            var refusal = Noted(person);
            return new(again, (refusal ?? Wrong(person)).Text);
        }

        return PinTries.Clears(desk.Depot, person.Code, pins.Kiosk) && desk.Record(new NoteRight(person.Code, pins.Kiosk)) is { } refused
            ? new(again, refused.Text)
            : s.Then is ChangePinAct
                ? s with { Stage = PinStage.Choose, Typed = "", Old = hash }
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
    private Refusal? Unwritten() =>
        unwritten.Failures > 0 && unwritten.At + PinTries.Wait(unwritten.Failures) - desk.Now is var left && left > TimeSpan.Zero
        ? PinRefusal.Wait(unwritten.Failures, (int)Math.Ceiling(left.TotalSeconds))
        : null;

    /// <summary>A PIN of one's own takes the place of one that was typed; a first one comes from a lead.</summary>
    private ChangePin Taking(PinScreen s) => new(
        s.Person, s.Old ?? throw new InvalidOperationException("a PIN is taken without the old one"), pins.Hash(s.Chosen),
        s.Stage == PinStage.Drawn);

    private Refusal Wrong(Technician person) => desk.Depot.Pins.Of(person.Code) is { IsLocked: true, Failures: var failures }
        ? PinRefusal.Locked(person, failures)
        : PinRefusal.Wrong(person, desk.Depot.Pins.Of(person.Code).Failures);

    private Reply Through(PinScreen s)
    {
        if (!s.Then.IsSignature && desk.Depot.Pins.Of(s.Person).Hash is { } hash)
            known = (s.Person, hash, desk.Now);

        return new(s.Back, Act: s.Then);
    }

    private Technician Of(Code<Technician> code) =>
        desk.Depot.Setup.Find(code) ?? throw new InvalidOperationException($"a PIN of {code}, whom the set-up does not have");
}
