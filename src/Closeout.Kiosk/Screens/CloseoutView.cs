using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Store;

namespace Closeout.Screens;

/// <summary>A close-out: one question on the left, the tally card on the right, and on a wide screen the whole list between them.</summary>
public static class CloseoutView
{
    private const int CardAt = 48;
    private const int WideFrom = 110;
    private const int WideCard = 35;

    /// <summary>Columns of a question.</summary>
    public const int QuestionColumns = CardAt - 3;

    public static void Draw(Sheet sheet, Desk desk, CloseoutScreen s)
    {
        var depot = desk.Depot;
        var (van, shift) = (depot.Setup.Van(s.Van), depot.Shift(s.Van)!);
        View.Head(sheet, depot, $"{van.Code} {van.Name}  {shift.Technician}", View.Clock(desk.Now));
        var bottom = sheet.Height - 4;
        if (sheet.Width >= WideFrom)
        {
            StepList.Draw(sheet, CardAt, sheet.Width - WideCard - 2, bottom, depot, shift, s);
        }

        TallyCard.Draw(sheet, sheet.Width >= WideFrom ? sheet.Width - WideCard - 1 : CardAt, bottom, depot, shift);

        var steps = ShiftFlow.Asked(shift.WeeklyDue);
        sheet.Write(1, 1, Title(depot, shift, s), Look.Strong, 32);
        if (!shift.IsClosed)
        {
            sheet.Write(1, 34, $"step {steps.IndexOf(s.At) + 1} of {steps.Count}", Look.Plain, 13);
        }

        QuestionView.Draw(sheet, depot, shift, s);
        sheet.Write(sheet.Height - 3, 1, Caution(s.At), Look.Faint);
        var (first, second) = Keys(s, s.Item is { } item && Questions.IsBlind(shift, item));
        sheet.Write(sheet.Height - 2, 1, first, Look.Strong, sheet.Width - 2);
        View.Keys(sheet, second);
    }

    private static string Title(Depot depot, Shift shift, CloseoutScreen s)
    {
        var name = StepWords.Name(s.At);
        name = char.ToUpperInvariant(name[0]) + name[1..];
        if (s.At != Step.Leftovers || s.Item is not { } item)
        {
            return s.At < shift.Step && !shift.IsClosed ? name + ", looked at again" : name;
        }

        var items = Leftovers.ToCount(depot, shift).Select(i => i.Code).ToList();
        var at = items.IndexOf(item);
        return at < 0 ? $"{name}, not in the book" : $"{name}, item {at + 1} of {items.Count}";
    }

    /// <summary>The usual caution of the trade, on one line of 78; local rules, the maker's instructions and licensed people come first.</summary>
    public static string Caution(Step step) => step switch
    {
        Step.Leftovers => "Tie ladders before you unload; lift heavy cartons with two. Site rules first.",
        Step.Cardboard => "Knife away from you, blade in when done. Lamps, batteries: not in cardboard.",
        Step.Mileage => "Read it parked, brake set. Fuel only with the engine off.",
        Step.Damage => "Vest on, mind the traffic side. In doubt say unsafe: lead and workshop decide.",
        Step.Kit => "Gas smell or CO alarm: get out, call for help; licensed people work on it.",
        Step.Weekly => "Chocks, cool engine, nobody under the van. In doubt: the workshop looks at it.",
        Step.SignOff or Step.Closed => "Your name says what you saw. It does not say that the van is safe to drive.",
        _ => "",
    };

    private static (string First, string Second) Keys(CloseoutScreen s, bool isBlind)
    {
        const string leave = "PgUp/PgDn earlier/later step   F1 help   Esc leave (all is kept)";
        return s switch
        {
            { Find: not null } => ("Enter take the first   Backspace back", "Esc stop finding"),
            { IsReport: true } => ("Enter next, record at the last   Up back", "F1 help   Esc do not report"),
            { At: Step.Leftovers, Item: null } => ("Enter leftovers done   / find", leave),
            { At: Step.Leftovers } when isBlind => ("Enter next   Up back   * rest as booked   / find", leave),
            { At: Step.Leftovers } => ("Enter accept   Tab field   Up back   = as booked   * rest as booked   / find", leave),
            { At: Step.Cardboard } when s.Form.Fields.Count == 0 => ("Enter go on", leave),
            { At: Step.Cardboard } => ("Enter next   Up back   = all the rest as expected", leave),
            { At: Step.Mileage } => ("Enter next   Up back   = not driven", leave),
            { At: Step.Damage } => ("Enter accept   N none   D describe a damage   F8 attach pictures", leave),
            { At: Step.Kit } => ("Enter next   Up back   = all the rest is there", leave),
            { At: Step.Weekly } => ("Enter next   Up back   = all parts in order   F8 attach pictures", leave),
            { At: Step.SignOff } => ("Enter sign   PgUp change something", "F1 help   Esc leave (all is kept)"),
            { At: Step.Closed } => ("", "F1 help   Esc back to the wall"),
            _ => ("", leave),
        };
    }

    private static int IndexOf(this IReadOnlyList<Step> steps, Step step) => steps.Index().Where(s => s.Item == step).Select(s => s.Index).FirstOrDefault(-1);
}
