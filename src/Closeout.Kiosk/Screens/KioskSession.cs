using Closeout.Shifts;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>The kiosk without a terminal: keys in, model out, entries to the desk. The terminal view and the tests drive the same one.</summary>
/// <param name="daily">The day's backup; null: none is made.</param>
public sealed class KioskSession(Desk desk, Archive archive, DailyBackup? daily = null)
{
    public Desk Desk => desk;

    public Model Model { get; private set; } = Model.Start;

    /// <summary>Whether somebody asked to leave.</summary>
    public bool IsDone { get; private set; }

    /// <summary>One key.</summary>
    public void Press(Keystroke key)
    {
        var (model, act) = Update.On(desk.Depot, () => desk.Plan, Model, key);
        Model = model;
        try
        {
            Do(act);
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
        daily?.Begin();
        var told = TellOfBackup();
        try
        {
            if (!desk.Refresh())
            {
                return told;
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
            case CardboardAct:
                var today = desk.Depot.Date;
                Model = new(new CardboardScreen(archive.Boxes(today.AddDays(-62), today)));
                break;
            case StockAct stock:
                Model = desk.Record(stock.Command) is { } refusal
                    ? Model with { Said = refusal.Text }
                    : PlanKeys.Recorded(desk.Plan, desk.Depot, Model, stock.Done);
                break;
            case RecordAct record:
                Record(record.Commands);
                break;
            default:
                throw new InvalidOperationException($"no way to do {act.GetType().Name}");
        }
    }

    private void Record(IReadOnlyList<Command> commands)
    {
        foreach (var command in commands)
        {
            if (desk.Record(command) is { } refusal)
            {
                Model = Update.Refused(Model, command, refusal);
                return;
            }
        }

        Model = Update.Recorded(desk.Depot, Model, commands);
    }
}
