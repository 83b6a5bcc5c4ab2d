using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The keys of a close-out.</summary>
public static class CloseoutKeys
{
    public static (Model Model, Act? Act) On(Depot depot, Model model, CloseoutScreen s, Keystroke key)
    {
        if (s.Find is not null)
        {
            return (Finding.On(depot, model, s, key), null);
        }

        var form = s.Form;
        return key.Press switch
        {
            Press.Escape => (model with { Screen = s.IsReport ? Reported(depot, s) : Update.Back(depot, s.Van) }, null),
            Press.F8 when s.At != Step.Closed => (model with { Screen = new AttachScreen(s.Van, s, Form.Of(new Field("path", "Picture or folder", FieldKind.Words, ""))) }, null),
            Press.PageUp => (model with { Screen = Stepped(depot, s, -1) }, null),
            Press.PageDown => (model with { Screen = Stepped(depot, s, 1) }, null),
            _ when s.At == Step.Closed => (model, null),
            Press.Up => (model with { Screen = form.Focus > 0 ? s with { Form = form.Move(-1) } : Earlier(depot, s) }, null),
            Press.Down or Press.Tab => (model with { Screen = form.IsLast && s is { At: Step.Leftovers, Item: { } item } ? Item(depot, s, item, 1) : s with { Form = form.Move(1) } }, null),
            Press.Backspace => (model with { Screen = Refilled(depot, s with { Form = form.Erase(), Doubted = Kept(s) }) }, null),
            Press.Enter => Enter(depot, model, s),
            Press.Character => Typed(depot, model, s, key.Character),
            _ => (model, null),
        };
    }

    /// <summary>The question after something was recorded: the next item or field, or the step that is open now.</summary>
    public static CloseoutScreen Next(Depot depot, CloseoutScreen s, Command recorded)
    {
        var shift = depot.Shift(s.Van)!;
        return recorded switch
        {
            CountLeftover c when shift.Step == Step.Leftovers => Questions.At(depot, s.Van, Step.Leftovers, Questions.NextItem(depot, shift, c.Item)),
            CountBoxes or CountKit => Onward(Questions.At(depot, s.Van, s.At), s.Form.Focus + 1),
            CountStream => Onward(Questions.At(depot, s.Van, s.At), s.Form.Focus + 1),
            ReportDamage => Reported(depot, s),
            _ => Questions.Open(depot, s.Van),
        };
    }

    /// <summary>A doubted count or reading typed once more is the same answer again; elsewhere a key begins a new one.</summary>
    private static Command? Kept(CloseoutScreen s) => s.Doubted is CountLeftover or LogMileage ? s.Doubted : null;

    /// <summary>Back from the report of a damage: to the walk-round as it stood, or to the question whether there is more.</summary>
    private static CloseoutScreen Reported(Depot depot, CloseoutScreen s) => Questions.At(depot, s.Van, s.At) is var screen && s.Behind is { } behind
        ? screen with { Form = behind.Move(1) }
        : screen;

    private static CloseoutScreen Onward(CloseoutScreen s, int focus) => s with { Form = s.Form.Move(focus) };

    private static (Model, Act?) Enter(Depot depot, Model model, CloseoutScreen s)
    {
        var (form, now) = (s.Form, s.Form.Now);
        if (s.At != Step.Leftovers && IsLookedAt(depot, s))
        {
            return (model with { Screen = Stepped(depot, s, 1) }, null);
        }

        if (s.Doubted is not null && Answers.All(depot, s) is { Missing: null, Commands: [var again] } same && again.Equals(s.Doubted))
        {
            return Give(depot, model, s, same);
        }

        switch (s.At)
        {
            case Step.Weekly when !s.IsReport && now is { Kind: FieldKind.Letter } part && WalkRound.Find(part.Name) is not null && Answers.IsNot(form, part.Name) && !IsTold(depot, s.Van, part.Name):
                return (model with { Screen = s with { IsReport = true, Behind = form, Form = Questions.Report(part.Name) } }, null);
            case Step.Damage or Step.Weekly when s.IsReport && now is { Name: "what" } && Answers.Severity(form) == Severity.Note:
                return Give(depot, model, s, Answers.All(depot, s));
            case Step.Cardboard when now is { Typed: null } && IsStream(now) && form.Fields.Skip(form.Focus).All(f => f.Typed is null):
                // Nothing else came home: one key, not one for each stream.
                return Give(depot, model, s, Answers.All(depot, s));
            case Step.Leftovers when s.Item is { } blind && Questions.IsBlind(depot.Shift(s.Van)!, blind) && !form.IsLast:
            case Step.Leftovers when !form.IsUntouched && !form.IsLast:
            case Step.Weekly when !s.IsReport && !form.IsLast:
            case Step.Damage or Step.Weekly when s.IsReport && !form.IsLast:
            case Step.Mileage when now?.Name == "odometer" && now.Text.Length > 0:
            case Step.Mileage when now?.Name == "fuel" && now.Text.Length > 0:
            case Step.Cardboard or Step.Kit when now is { Typed: null } && !form.IsLast:
                return (model with { Screen = s with { Form = form.Move(1) } }, null);
            case Step.Damage when !s.IsReport && string.Equals(now!.Text, "D", StringComparison.OrdinalIgnoreCase):
                return (model with { Screen = s with { IsReport = true, Form = Questions.Report() } }, null);
            case Step.Cardboard or Step.Kit when !form.IsLast:
                return Give(depot, model, s, Answers.One(depot, s, now!));
            default:
                return Give(depot, model, s, Answers.All(depot, s));
        }
    }

    private static bool IsStream(Field field) => field.Name.StartsWith(Questions.StreamField, StringComparison.Ordinal);

    private static bool IsTold(Depot depot, Code<Van> van, string part) => depot.Shift(van)!.Damages.Any(d => WalkRound.Find(d.Zone) == part);

    private static string Unseen(Depot depot, Code<Van> van, Code<Item> item) => !depot.Shift(van)!.SpotItems.Contains(item) && depot.Reported(van, item) is > 0 and var used
        ? $"Visits report {used} used of {depot.Setup.Item(item).Description}, and it is not counted. Count it, or * again: the rest as booked all the same."
        : $"{depot.Setup.Item(item).Description} is to be counted blind tonight. Count it, or * again: the rest as booked all the same.";

    /// <summary>An earlier step, looked at and left as it is: nothing new to record.</summary>
    private static bool IsLookedAt(Depot depot, CloseoutScreen s) => s.At < depot.Shift(s.Van)!.Step && !s.IsReport && s.Form.IsUntouched;

    private static (Model, Act?) Typed(Depot depot, Model model, CloseoutScreen s, char c)
    {
        var now = s.Form.Now;
        if (s.At == Step.Leftovers && Finding.Begins(depot, s, c) is { } finding)
        {
            return (model with { Screen = finding }, null);
        }

        switch (c)
        {
            case '=' when s.Item is { } blind && Questions.IsBlind(depot.Shift(s.Van)!, blind):
                return Give(depot, model, s, Answers.All(depot, s));
            case '=' when s.At is Step.Leftovers or Step.Mileage:
                return Give(depot, model, s, Answer.Of(Answers.AsBooked(depot, s)));
            case '=' when s.At is Step.Cardboard or Step.Kit or Step.Mileage && IsLookedAt(depot, s):
                return (model with { Screen = Stepped(depot, s, 1) }, null);
            case '=' when s.At == Step.Weekly && !s.IsReport:
                return (model with { Screen = s with { Form = s.Form with { Focus = WalkRound.Parts.Count } } }, null);
            case '=' when s.At is Step.Cardboard or Step.Kit:
                return Give(depot, model, s, Answers.All(depot, s));
            case '*' when s.At == Step.Leftovers && depot.Shift(s.Van)!.Step > Step.Leftovers:
                return (model with { Screen = Questions.Open(depot, s.Van) }, null);
            case '*' when s.At == Step.Leftovers && Questions.Unseen(depot, depot.Shift(s.Van)!) is { } unseen && s.Doubted is not ConfirmLeftovers:
                return (model with { Screen = Questions.At(depot, s.Van, Step.Leftovers, unseen) with { Doubted = new ConfirmLeftovers(s.Van) }, Said = Unseen(depot, s.Van, unseen) }, null);
            case '*' when s.At == Step.Leftovers:
                return Give(depot, model, s, Answer.Of(new ConfirmLeftovers(s.Van)));
            case 'd' or 'D' when s is { At: Step.Damage, IsReport: false }:
                return (model with { Screen = s with { IsReport = true, Form = Questions.Report() } }, null);
            default:
                return now is not null && s.Form.Type(c) is { } form
                    ? (model with { Screen = Refilled(depot, s with { Form = form, Doubted = Kept(s) }) }, null)
                    : (model, null);
        }
    }

    /// <summary>An answer to record. One that was asked again and is given once more goes through; one that says what is recorded already does not go twice.</summary>
    private static (Model, Act?) Give(Depot depot, Model model, CloseoutScreen s, Answer answer)
    {
        if (answer.Missing is { } missing)
        {
            return (Refused.At(model, answer.Field, missing), null);
        }

        var commands = answer.Commands.Select(c => c.Equals(s.Doubted) ? Sure(c) : c).ToList();
        if (commands is [CountLeftover count] && Counted(depot, count))
        {
            return (model with { Screen = Later(depot, s, count.Item) }, null);
        }

        // The last item counted closes the step: nothing is left to ask.
        if (commands is [CountLeftover last] && IsLastItem(depot, last))
        {
            commands.Add(new ConfirmLeftovers(s.Van));
        }

        return (model, new RecordAct(commands));
    }

    private static Command Sure(Command command) => command switch
    {
        CountLeftover c => c with { Sure = true },
        LogMileage c => c with { Sure = true },
        _ => command,
    };

    private static bool Counted(Depot depot, CountLeftover c) =>
        depot.Shift(c.Van)!.Counts.TryGetValue(c.Item, out var old) && old.Count == new LeftoverCount(c.Sealed ?? 0, c.Bin, c.Kept);

    private static bool IsLastItem(Depot depot, CountLeftover c)
    {
        var shift = depot.Shift(c.Van)!;
        return shift.Step == Step.Leftovers && Leftovers.ToCount(depot, shift).All(i => i.Code == c.Item || shift.Counts.ContainsKey(i.Code));
    }

    /// <summary>After an item that was left as it is: the next item, and behind the last the open question.</summary>
    private static CloseoutScreen Later(Depot depot, CloseoutScreen s, Code<Item> item) =>
        Item(depot, s, item, 1) is var next && next != s ? next : Questions.Open(depot, s.Van);

    private static CloseoutScreen Earlier(Depot depot, CloseoutScreen s) => s switch
    {
        { IsReport: true } => s,
        { At: Step.Leftovers, Item: { } item } => Item(depot, s, item, -1),
        _ => Stepped(depot, s, -1),
    };

    private static CloseoutScreen Item(Depot depot, CloseoutScreen s, Code<Item> item, int by)
    {
        var items = Leftovers.ToCount(depot, depot.Shift(s.Van)!).Select(i => i.Code).ToList();
        var to = items.IndexOf(item) + by;
        return to >= 0 && to < items.Count ? Questions.At(depot, s.Van, Step.Leftovers, items[to]) : s;
    }

    private static CloseoutScreen Stepped(Depot depot, CloseoutScreen s, int by)
    {
        var shift = depot.Shift(s.Van)!;
        var steps = ShiftFlow.Asked(shift.WeeklyDue).Where(t => t <= shift.Step).ToList();
        var to = steps.IndexOf(s.At) + by;
        if (shift.IsClosed || to < 0 || to >= steps.Count)
        {
            return s;
        }

        var first = Leftovers.ToCount(depot, shift).Select(i => (Code<Item>?)i.Code).FirstOrDefault();
        return Questions.At(depot, s.Van, steps[to], steps[to] == Step.Leftovers && shift.Step > Step.Leftovers ? first : null);
    }

    private static CloseoutScreen Refilled(Depot depot, CloseoutScreen s) => s.IsReport
        ? s with { Form = s.Form.With(s.Form["drivable"] with { Shown = Answers.Severity(s.Form) == Severity.Unsafe ? "N" : "Y" }) }
        : s is { At: Step.Leftovers, Item: { } item } && !Questions.IsBlind(depot.Shift(s.Van)!, item)
        ? s with { Form = Questions.Refill(depot, depot.Shift(s.Van)!, item, s.Form) }
        : s;
}
