using Closeout.Screens.Parts;

namespace Closeout.Screens.Steps;

/// <summary>The steps of a close-out in one line: a mark for each, and the one looked at in capitals.</summary>
internal static class StepBar
{
    public static void Draw(Sheet sheet, int row, Shift shift, Step at)
    {
        var column = 1;
        foreach (var step in ShiftFlow.Asked(shift.WeeklyDue))
        {
            var name = Short(step);
            var mark = step < shift.Step || shift.IsClosed ? "●" : step == shift.Step ? "◐" : "○";
            column = sheet.Write(row, column, $"{mark} ", step == shift.Step ? Look.Strong : Look.Plain);
            column = step == at
                ? sheet.Write(row, column, name.ToUpperInvariant(), Look.Strong)
                : sheet.Write(row, column, name, Look.Faint);
            column += 2;
        }
    }

    /// <summary>A step in a word: all of them fit one line of 78 columns.</summary>
    private static string Short(Step step) => step switch
    {
        Step.Kit => T("kit"),
        Step.Weekly => T("weekly"),
        _ => StepWords.Name(step),
    };
}
