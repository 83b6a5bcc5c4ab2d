using Closeout.Screens.Parts;
using Closeout.Screens.People;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>
/// The kiosk without a terminal: keys in, model out, entries to the desk. The terminal view and the tests drive the same one.
/// </summary>
/// <param name="seats">Says to other kiosks which van is walked here; null: there are no others.</param>
/// <param name="daily">The day's backup; null: none is made.</param>
/// <param name="pins">Null: the program's own, with the usual iterations and the machine's name.</param>
public sealed class KioskSession(
    Desk desk, Archive archive, Attachments attachments, VanSeats? seats = null, DailyBackup? daily = null, Pins? pins = null)
{
    private static string Beyond => T("A character was left out: those up to U+FFFF are taken, and an emoji lies above. Say it in words.");

    private readonly PinGate gate = new(desk, pins ??= new());
    private readonly SpokenTo spokenTo = new(Language.Chosen);
    private DrawnFrom? shown;
    private bool isUnseen;
    private readonly World world = new(desk, archive, attachments, seats, pins);

    public Desk Desk => desk;

    public Model Model { get; private set; } = new(new WallScreen());

    /// <summary>Whether somebody asked to leave.</summary>
    public bool IsDone { get; private set; }

    /// <summary>Draws the screen at once, before a key is done with; null: nobody draws.</summary>
    public Action? Draw { get; set; }

    /// <summary>Says how far something is that takes long, while it does. What comes after it is said in its place.</summary>
    public void Working(string sentence)
    {
        Model = Model with { Said = sentence, IsDone = true };
        Draw?.Invoke();
    }

    /// <summary>Whether keys are dropped that were typed before a doubt could be seen; a test need not look between its keys.</summary>
    public bool DropsTypedAhead { get; set; }

    /// <summary>One key.</summary>
    public void Press(Keystroke key)
    {
        if (DropsTypedAhead && isUnseen)
            return;

        var asked = Model.Screen.Asks;
        var spoken = spokenTo.Code(desk.Depot, Model.Screen);
        spokenTo.Speaking(desk.Depot, Model.Screen, () => Press(key, mayAct: true));
        if (spokenTo.Code(desk.Depot, Model.Screen) != spoken)
            spokenTo.Speaking(desk.Depot, Model.Screen, () => Model = Model with { Screen = Model.Screen.Retold(desk.Depot) });

        isUnseen = !asked && Model.Screen.Asks;
    }

    /// <summary>
    /// Pasted text, typed character by character; an end of line within becomes a blank. It presses no Enter and records nothing: nobody
    /// looked at it yet.
    /// </summary>
    public void Paste(string text) => spokenTo.Speaking(desk.Depot, Model.Screen, () =>
    {
        foreach (var key in Keystroke.Pasted(text))
            Press(key, mayAct: false);
    });

    /// <summary>Takes in what other programs wrote. True when the screen shows something else than when it was shown last.</summary>
    public bool Refresh()
    {
        daily?.Begin();
        spokenTo.Speaking(desk.Depot, Model.Screen, TakeIn);
        return shown != spokenTo.Speaking(desk.Depot, Model.Screen, Looks);
    }

    private void TakeIn()
    {
        TellOfBackup();
        try
        {
            Model = gate.Rested(Model);
            if (desk.Refresh())
                Model = Settled(Model);
        }
        catch (BookException e)
        {
            // What is on the screen already stays: it need not be drawn again.
            Model = Model.Said == e.Message ? Model : Model with { Said = e.Message, IsDone = false };
        }
    }

    /// <summary>The screen as it stands.</summary>
    public Sheet Show(int width, int height)
    {
        isUnseen = false;
        return spokenTo.Speaking(desk.Depot, Model.Screen, () =>
        {
            shown = Looks();
            return Model.Screen.Show(Scene(Model.Said) with { IsDone = Model.IsDone }, width, height);
        });
    }

    /// <summary>What a screen is drawn from, the clock to the minute. While none of it changes nothing need be drawn.</summary>
    private DrawnFrom Looks()
    {
        var scene = Scene(Model.Said);
        return new(Model, scene.Tonight, scene.Now.Ticks / TimeSpan.TicksPerMinute, Model.Screen.Counting(scene), scene.Known);
    }

    private Scene Scene(string said) => new(desk.Tonight, desk.Now, said) { Known = gate.Known };

    private void Press(Keystroke key, bool mayAct)
    {
        var before = gate.Key(Model);
        var reply = On(before, key);
        Model = new(reply.Screen, reply.Said, reply.IsDone);
        try
        {
            if (mayAct && reply.Act is { } act)
                Do(act);

            Model = Settled(Model);
            Sit();
        }
        catch (BookException e)
        {
            Model = Settled(Model) with { Said = e.Message, IsDone = false };
        }

        // Nobody looks into the folder of torn lines unless told.
        if (desk.SetAside() is { Length: > 0 } torn)
            Model = Model with { Said = Model.Said.Length == 0 ? torn : $"{Model.Said} {torn}", IsDone = false };
    }

    /// <summary>The keys that every screen has, and the screen's own.</summary>
    private Reply On(Model model, Keystroke key)
    {
        switch (key.Press)
        {
            case Parts.Press.Quit:
                IsDone = true;
                return model.Screen;
            case Parts.Press.Beyond:
                return new(model.Screen, Beyond);
            case Parts.Press.F1 when model.Screen is not HelpScreen:
                return new HelpScreen(model.Screen);
            default:
                var reply = model.Screen.On(Scene(""), key);
                return model.Screen.GivesWay && key.Press is >= Parts.Press.F2 and <= Parts.Press.F9
                    && ReferenceEquals(reply.Screen, model.Screen) && reply.Act is null ? Wall(model.Screen).On(Scene(""), key) : reply;
        }
    }

    /// <summary>The wall as if it were looked at, with the van chosen that a screen is of.</summary>
    private Screen Wall(Screen from) => from.About is { } van ? new WallScreen().Choosing(desk.Depot, van) : new WallScreen();

    /// <summary>Does what a key asked for, once the gate lets it through.</summary>
    private void Do(Act act)
    {
        var passed = gate.Pass(Model.Screen, act);
        Model = new(passed.Screen, passed.Said, passed.IsDone);
        if (passed.Act is not { } allowed)
            return;

        var reply = allowed.Do(world, Model.Screen);
        Model = new(reply.Screen, reply.Said, reply.IsDone);
        if (allowed is { IsSignature: true, By: { } signer })
            gate.Signed(signer);
    }

    /// <summary>An open close-out is walked at one kiosk: the second is told who has it.</summary>
    private void Sit()
    {
        if (seats is null)
            return;

        if (Model.Screen.Walks(desk.Depot) is not { } van)
            seats.Leave();
        else if (seats.Take(van, desk.Now) is { } holder)
            Model = new(new WallScreen().Choosing(desk.Depot, van), world.WalkedAt(van, holder));
    }

    /// <summary>
    /// Other programs may change the set-up or open the next page under a screen: where it has nothing to show any more, the bay wall.
    /// </summary>
    private Model Settled(Model model) => model.Screen.Stands(desk.Depot)
        ? model with { Screen = model.Screen.Within(desk.Depot) }
        : new(new WallScreen(),
            T($"The book was changed by another program; it is at {Spell.Day(desk.Depot.Date)} now. Everything confirmed is kept."));

    /// <summary>Says that a backup failed, once nothing else is being said. It stops nobody.</summary>
    private void TellOfBackup()
    {
        if (Model.Said.Length == 0 && daily?.Failure() is { Length: > 0 } failure)
            Model = Model with { Said = failure, IsDone = false };
    }
}
