using Closeout.Facts;
using Closeout.Leads;
using Closeout.People;
using Closeout.Rules;
using Closeout.Shifts;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>The kiosk without a terminal: keys in, model out, entries to the desk. The terminal view and the tests drive the same one.</summary>
/// <param name="seats">Says to other kiosks which van is walked here; null: there are no others.</param>
/// <param name="daily">The day's backup; null: none is made.</param>
/// <param name="pins">Null: the program's own, with the usual iterations and the machine's name.</param>
public sealed class KioskSession(Desk desk, Archive archive, Attachments attachments, VanSeats? seats = null, DailyBackup? daily = null, Pins? pins = null)
{
    /// <summary>Characters of a paste that are typed: more than any field holds, and soon done.</summary>
    private const int MostPasted = 512;

    private readonly PinGate gate = new(desk, pins ?? new Pins());

    public Desk Desk => desk;

    public Model Model { get; private set; } = Model.Start;

    /// <summary>Whether somebody asked to leave.</summary>
    public bool IsDone { get; private set; }

    /// <summary>Draws the screen at once, before a key is done with; null: nobody draws.</summary>
    public Action? Draw { get; set; }

    /// <summary>Says how far something is that takes long, while it does. What comes after it is said in its place.</summary>
    public void Working(string sentence)
    {
        Model = Model with { Said = sentence };
        Draw?.Invoke();
    }

    /// <summary>One key.</summary>
    public void Press(Keystroke key) => Press(key, mayAct: true);

    /// <summary>Pasted text, typed character by character; an end of line within becomes a blank. It presses no Enter and records nothing: nobody looked at it yet.</summary>
    public void Paste(string text)
    {
        var typed = string.Join(' ', string.Concat(text.Select(c => char.IsControl(c) ? '\n' : c)).Split('\n', StringSplitOptions.RemoveEmptyEntries));
        foreach (var c in typed.Where(c => !char.IsSurrogate(c)).Take(MostPasted))
        {
            Press(new(Closeout.Screens.Press.Character, c), mayAct: false);
        }

        if (typed.Any(char.IsSurrogate))
        {
            Press(new(Closeout.Screens.Press.Beyond));
        }
    }

    private void Press(Keystroke key, bool mayAct)
    {
        var (model, act) = Update.On(desk.Depot, () => desk.Plan, gate.Key(Model), key);
        (Model, act) = (model, mayAct ? act : null);
        try
        {
            (Model, var allowed) = gate.Pass(Model, act);
            Do(allowed);
            Model = Settle.On(desk.Depot, Model);
            Sit();
        }
        catch (BookException e)
        {
            Model = Settle.On(desk.Depot, Model) with { Said = e.Message };
        }

        // Nobody looks into the folder of torn lines unless told.
        if (desk.SetAside() is { Length: > 0 } torn)
        {
            Model = Model with { Said = Model.Said.Length == 0 ? torn : $"{Model.Said} {torn}" };
        }
    }

    /// <summary>An open close-out is walked at one kiosk: the second is told who has it.</summary>
    private void Sit()
    {
        if (seats is null)
        {
            return;
        }

        if (Walked(Model.Screen) is not { } van)
        {
            seats.Leave();
        }
        else if (seats.Take(van, desk.Now) is { } holder)
        {
            Model = new(Update.Back(desk.Depot, van), Elsewhere(van, holder));
        }
    }

    /// <summary>What is typed at another kiosk and not yet confirmed would be lost with the date.</summary>
    private string? BeingWalked() => desk.Depot.Setup.Vans
        .Select(v => seats?.Elsewhere(v.Code) is { } holder ? Elsewhere(v.Code, holder) : null).FirstOrDefault(w => w is not null);

    private string Elsewhere(Code<Van> van, string holder) =>
        $"{van} {desk.Depot.Setup.Van(van).Name} is being closed out at {holder}. Go on there, or press Esc there first.";

    private Code<Van>? Walked(Screen screen) => screen switch
    {
        CloseoutScreen s when desk.Depot.Shift(s.Van) is { IsClosed: false } => s.Van,
        AttachScreen s => Walked(s.Back),
        PinScreen s => Walked(s.Back),
        HelpScreen s => Walked(s.Back),
        _ => null,
    };

    /// <summary>Takes in what other programs wrote. True when the screen may have changed.</summary>
    public bool Refresh()
    {
        daily?.Begin();
        var told = TellOfBackup();
        try
        {
            var rested = gate.Rested(Model);
            var same = ReferenceEquals(rested, Model);
            Model = rested;
            if (!desk.Refresh())
            {
                return told || !same;
            }

            Model = Settle.On(desk.Depot, Model);
            return true;
        }
        catch (BookException e)
        {
            Model = Model with { Said = e.Message };
            return true;
        }
    }

    /// <summary>Says that a backup failed, once nothing else is being said. It stops nobody.</summary>
    private bool TellOfBackup()
    {
        if (Model.Said.Length > 0 || daily?.Failure() is not { Length: > 0 } failure)
        {
            return false;
        }

        Model = Model with { Said = failure };
        return true;
    }

    /// <summary>The screen as it stands.</summary>
    public Sheet Show(int width, int height) => View.Of(desk, Model, width, height);

    private void Do(Act? act)
    {
        switch (act)
        {
            case null:
                break;
            case QuitAct:
                IsDone = true;
                break;
            case CardboardAct cardboard:
                var today = desk.Depot.Date;
                Model = new(new CardboardScreen(cardboard.Back, archive.Boxes(today.AddYears(-1), today), archive.Streams(today.AddYears(-1), today)));
                break;
            case StockAct stock:
                Model = Told(desk.Record(stock.Command), stock.Done);
                break;
            case YardAct yard:
                Model = Told(desk.Record(yard.Command), yard.Done);
                break;
            case VanAct van:
                Model = Told(desk.Record(van.Command), van.Done);
                break;
            case ResetPinAct reset:
                Model = Told(desk.Record(new ResetPin(reset.Person, reset.Lead)), $"The PIN of {reset.Person} is reset.");
                break;
            case IssuePinAct issue:
                Model = gate.Issue(Model, issue);
                break;
            case LeadAct { Command: ExplainVan { Van: var excused } } when seats?.Elsewhere(excused) is { } holder:
                Model = Model with { Said = Elsewhere(excused, holder) };
                break;
            case EndDayAct when BeingWalked() is { } walked:
                Model = Model with { Said = walked };
                break;
            case LeadAct lead:
                Model = Told(desk.Record(lead.Command), lead.Done);
                break;
            case BehalfAct behalf:
                Model = Told(Behalf(behalf), $"{behalf.Van} is closed out for {behalf.For}; the wall says so.");
                break;
            case EndDayAct end:
                Model = desk.EndDay(end.Next, end.Lead) is { } refused ? Refused.By(Model, refused) : new(new WallScreen(), $"{View.Day(desk.Depot.Date)} is open. Load its day folder for bookings and visit reports.");
                break;
            case DayBookAct dayBook:
                Model = new(new DayBookScreen(dayBook.Back, [.. DayBookWords.Of(desk.Entries()).Reverse()]));
                break;
            case AttachAct attach:
                Attach(attach);
                break;
            case RecordAct record:
                Record(record.Commands);
                break;
            default:
                throw new InvalidOperationException($"no way to do {act.GetType().Name}");
        }
    }

    private Model Told(Refusal? refusal, string done) =>
        refusal is null ? PlanKeys.Recorded(desk.Plan, desk.Depot, Model, done) : Refused.By(Model, refusal);

    /// <summary>A van that is being counted at another kiosk is not confirmed as booked under its hands.</summary>
    private Refusal? Behalf(BehalfAct act) => seats?.Take(act.Van, desk.Now) is { } holder
        ? new("walked-elsewhere", Elsewhere(act.Van, holder))
        : desk.CloseFor(new SignFor(act.Van, act.For, act.Why, act.Lead));

    /// <summary>Pictures one after the other: each is in the book before the next is looked at.</summary>
    private void Attach(AttachAct attach)
    {
        var found = Attachments.At(attach.Path.Length > 0 ? attach.Path : attachments.Inbox);
        var (there, stayed, known) = (0, "", desk.Depot.Shift(attach.Van)!.Photos.Select(p => p.Sha256).ToHashSet());
        foreach (var path in found)
        {
            var taken = attachments.Take(path);
            if (found.Count > 1 && !known.Add(taken.Sha256))
            {
                stayed = attachments.Done(path) is { Length: > 0 } left ? left : stayed;
                continue;
            }

            if (desk.Record(new AttachPhoto(attach.Van, taken.Sha256, taken.Name, taken.Bytes)) is { } refusal)
            {
                Model = Model with { Said = refusal.Text };
                return;
            }

            stayed = attachments.Done(path) is { Length: > 0 } why ? why : stayed;
            there++;
        }

        Model = new(((AttachScreen)Model.Screen).Back.Refreshed(desk.Depot), $"{View.Count(there, "picture is", "pictures are")} attached. {stayed}".TrimEnd());
    }

    private void Record(IReadOnlyList<Command> commands)
    {
        foreach (var command in commands)
        {
            if (desk.Record(command) is { } refusal)
            {
                Model = Refused.Answer(desk.Depot, Model, command, refusal);
                return;
            }
        }

        if (commands[^1] is Sign sign)
        {
            gate.Signed(sign.Technician);
        }

        Model = Update.Recorded(desk.Depot, Model, commands);
    }
}
