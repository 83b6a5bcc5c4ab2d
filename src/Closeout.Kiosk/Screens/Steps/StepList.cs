using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Steps;

/// <summary>On a wide screen, the whole way at a glance: the steps, and in leftovers the items in stow order.</summary>
public static class StepList
{
    public static void Draw(Sheet sheet, int column, int edge, int bottom, Depot depot, Shift shift, Question q)
    {
        var width = edge - column - 1;
        var row = 3;
        foreach (var step in ShiftFlow.Asked(shift.WeeklyDue, shift.HandoverDue))
        {
            var state = step < shift.Step || shift.IsClosed ? T("done") : step == shift.Step ? T("now") : T("to come");
            sheet.Write(row++, column, $"{(step == q.At ? ">" : " ")} {StepWords.Name(step),-14} {state}",
                step == q.At ? Look.Strong : Look.Plain, width);
        }

        if (q.At != Step.Leftovers)
            return;

        row++;
        var items = Leftovers.ToCount(depot, shift);
        var at = Math.Max(0, items.Index().Where(i => i.Item.Code == q.Item).Select(i => i.Index).FirstOrDefault());
        var room = Math.Max(1, bottom - row);
        var top = Math.Clamp(at - room / 2, 0, Math.Max(0, items.Count - room));
        foreach (var item in items.Skip(top).Take(room))
        {
            var done = shift.Counts.ContainsKey(item.Code) ? T("done") : shift.Step > Step.Leftovers ? T("unchanged") : "";
            sheet.Write(row, column, $"{(item.Code == q.Item ? ">" : " ")} {Cells.Middle(item.Description, width - 12)}",
                item.Code == q.Item ? Look.Strong : Look.Plain, width - 10);
            sheet.Write(row++, column + width - 9, done, Look.Plain, 9);
        }
    }
}
