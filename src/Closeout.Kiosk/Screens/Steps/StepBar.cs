using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>The steps of a close-out in one line: a mark for each, and the one looked at in capitals.</summary>
internal static class StepBar
{
    public static void Draw(Sheet sheet, int row, Shift shift, Step at)
    {
        var steps = ShiftFlow.Asked(shift.WeeklyDue, shift.HandoverDue);
        var isTight = steps.Sum(s => Cells.Count(Short(s, false)) + 4) > sheet.Width - 2;
        var (column, gap) = (1, isTight ? 1 : 2);
        foreach (var step in steps)
        {
            var name = Short(step, isTight);
            var mark = step < shift.Step || shift.IsClosed ? "●" : step == shift.Step ? "◐" : "○";
            column = sheet.Write(row, column, $"{mark} ", step == shift.Step ? Look.Strong : Look.Plain);
            column = step == at
                ? sheet.Write(row, column, name.ToUpperInvariant(), Look.Strong)
                : sheet.Write(row, column, name, Look.Faint);
            column += gap;
        }
    }

    /// <summary>A step in a word: all of them fit one line of 78 columns.</summary>
    private static string Short(Step step, bool isTight) => step switch
    {
        Step.Kit => T("kit"),
        Step.Weekly => T("weekly"),
        Step.SignOff when isTight => T("sign"),
        _ => StepWords.Name(step),
    };
}
