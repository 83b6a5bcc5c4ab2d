using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;

namespace Closeout.Screens;

/// <summary>How well the plan did.</summary>
public static class AccuracyView
{
    public static void Draw(Sheet sheet, Depot depot, AccuracyScreen s)
    {
        View.Head(sheet, depot, "HOW WELL THE PLAN DID", "60 days");
        sheet.Write(2, 1, "priority  promised    kept  lines  within  emptied     used  missed aboard/used", Look.Faint);
        var row = 3;
        foreach (var sum in Accuracy.Sums(depot))
        {
            Line(sheet, row++, $"{sum.Priority}", depot, sum);
        }

        if (row == 3)
        {
            sheet.Write(row++, 1, "Nothing yet: the plan of one evening is judged by the close-outs of the next.");
        }

        sheet.Write(++row, 1, "day by day", Look.Faint);
        var days = Accuracy.Of(depot).Reverse().ToList();
        var room = Math.Max(1, sheet.Height - 5 - row);
        foreach (var day in days.Skip(Math.Min(s.Top, Math.Max(0, days.Count - room))).Take(room))
        {
            Line(sheet, ++row, $"{day.Date:MM-dd} {day.Priority}", depot, day);
        }

        sheet.Write(sheet.Height - 3, 1, "emptied: nothing was left, so demand may have been more than anybody saw.", Look.Faint);
        sheet.Write(sheet.Height - 2, 1, "missed: units demanded beyond what was aboard that morning, as visits report.", Look.Faint);
        View.Keys(sheet, "Up/Down scroll   F1 help   Esc back to the wall");
    }

    private static void Line(Sheet sheet, int row, string name, Depot depot, KeptPromises kept)
    {
        var share = kept.Lines == 0 ? 0 : kept.Within / (double)kept.Lines;
        sheet.Write(row, 1, name, Look.Plain, 9);
        var perUsed = kept.Used == 0 ? "-" : (kept.Aboard / (double)kept.Used).ToString("0.00", System.Globalization.CultureInfo.InvariantCulture);
        sheet.Write(row, 11, $"{Why.Percent(depot.Setup.Depot.Service(kept.Priority)),8} {Why.Percent(share),7} {kept.Lines,6} {kept.Within,7} {kept.Emptied,8} {kept.Used,8} {kept.Missed,7} {perUsed,9}");
    }
}
