using Closeout.People;
using Closeout.Shifts;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>The kiosk without a terminal: keys in, model out, entries to the desk. The terminal view and the tests drive the same one.</summary>
/// <param name="pins">Null: the program's own, with the usual iterations and the machine's name.</param>
public sealed class KioskSession(Desk desk, Archive archive, Attachments attachments, Pins? pins = null)
{
    private readonly PinGate gate = new(desk, pins ?? new Pins());

    public Desk Desk => desk;

    public Model Model { get; private set; } = Model.Start;

    /// <summary>Whether somebody asked to leave.</summary>
    public bool IsDone { get; private set; }

    /// <summary>One key.</summary>
    public void Press(Keystroke key)
    {
        var (model, act) = Update.On(desk.Depot, () => desk.Plan, gate.Key(Model), key);
        Model = model;
        try
        {
            (Model, var allowed) = gate.Pass(Model, act);
            Do(allowed);
        }
        catch (BookException e)
        {
            Model = Model with { Said = e.Message };
        }

        Model = Settle.On(desk.Depot, Model);
    }

    /// <summary>Takes in what other programs wrote. True when the screen may have changed.</summary>
    public bool Refresh()
    {
        try
        {
            var rested = gate.Rested(Model);
            var same = ReferenceEquals(rested, Model);
            Model = rested;
            if (!desk.Refresh())
            {
                return !same;
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
            case CardboardAct:
                var today = desk.Depot.Date;
                Model = new(new CardboardScreen(archive.Boxes(today.AddYears(-1), today), archive.Streams(today.AddYears(-1), today)));
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
        refusal is null ? PlanKeys.Recorded(desk.Plan, desk.Depot, Model, done) : Model with { Said = refusal.Text };

    /// <summary>Pictures one after the other: each is in the book before the next is looked at.</summary>
    private void Attach(AttachAct attach)
    {
        var found = Attachments.At(attach.Path.Length > 0 ? attach.Path : attachments.Inbox);
        var (there, known) = (0, desk.Depot.Shift(attach.Van)!.Photos.Select(p => p.Sha256).ToHashSet());
        foreach (var path in found)
        {
            var taken = attachments.Take(path);
            if (found.Count > 1 && known.Contains(taken.Sha256))
            {
                continue;
            }

            if (desk.Record(new AttachPhoto(attach.Van, taken.Sha256, taken.Name, taken.Bytes)) is { } refusal)
            {
                Model = Model with { Said = refusal.Text };
                return;
            }

            there++;
        }

        Model = new(((AttachScreen)Model.Screen).Back.Refreshed(desk.Depot), $"{View.Count(there, "picture is", "pictures are")} attached.");
    }

    private void Record(IReadOnlyList<Command> commands)
    {
        foreach (var command in commands)
        {
            if (desk.Record(command) is { } refusal)
            {
                Model = Update.Refused(desk.Depot, Model, command, refusal);
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
