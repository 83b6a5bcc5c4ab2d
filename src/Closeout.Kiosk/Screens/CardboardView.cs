using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Store;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The recycling totals: tonight by van, and the day, week and month so far.</summary>
public static class CardboardView
{
    public static void Draw(Sheet sheet, Depot depot, CardboardScreen s)
    {
        View.Head(sheet, depot, "CARDBOARD", WeeklyCheck.Name(depot.Date));
        sheet.Write(2, 1, "tonight          expected flattened missing     weight      volume", Look.Faint);
        var row = 3;
        var room = Math.Max(1, sheet.Height - 14);
        var rows = depot.Setup.Vans.Where(v => depot.Shift(v.Code) is not null).ToList();
        foreach (var van in rows.Skip(Math.Min(s.Top, Math.Max(0, rows.Count - room))).Take(room))
        {
            var open = !depot.Shift(van.Code)!.Answered.Contains(Step.Cardboard);
            Line(sheet, row++, $"{van.Code} {van.Name}", depot, CardboardTotals.Sum(depot.Setup.Depot, CardboardTotals.Rows(depot, van.Code)), open ? "to come" : null);
        }

        var tonight = CardboardTotals.Sum(depot.Setup.Depot, CardboardTotals.Rows(depot));
        row += 1;
        Line(sheet, row++, "all vans", depot, tonight);
        row += 1;
        sheet.Write(row++, 1, "so far", Look.Faint);
        var earlier = s.Days.Where(d => d.Date < depot.Date).ToList();
        Line(sheet, row++, $"week {WeeklyCheck.Name(depot.Date)[5..]}", depot, Total(depot, earlier.Where(d => d.Date >= WeeklyCheck.Monday(depot.Date)), tonight));
        Line(sheet, row++, "month", depot, Total(depot, earlier.Where(d => d.Date.Month == depot.Date.Month && d.Date.Year == depot.Date.Year), tonight));
        sheet.Write(sheet.Height - 3, 1, string.Create(CultureInfo.InvariantCulture, $"Volume at {depot.Setup.Depot.CardboardLbPerCuYd:0.#} lb a cubic yard; published figures run from 40 to 150: good to"), Look.Faint);
        sheet.Write(sheet.Height - 2, 1, "a factor of two to three. One weighed container calibrates it (depot.csv).", Look.Faint);
        View.Keys(sheet, "Up/Down scroll   F1 help   Esc back to the wall");
    }

    private static void Line(Sheet sheet, int row, string name, Depot depot, BoxSum sum, string? missing = null)
    {
        var units = depot.Setup.Units;
        sheet.Write(row, 1, name, Look.Plain, 16);
        sheet.Write(row, 18, $"{sum.Expected,8} {sum.Flattened,9} {missing ?? sum.Missing.ToString(CultureInfo.InvariantCulture),7} {units.Weight(sum.WeightLb),10} {units.Volume(sum.VolumeCuYd),11}");
    }

    private static BoxSum Total(Depot depot, IEnumerable<BoxDay> days, BoxSum tonight) => days.Aggregate(tonight, (sum, d) =>
        sum + new BoxSum(d.Expected, d.Flattened, d.WeightLb, CardboardTotals.VolumeCuYd(depot.Setup.Depot, d.WeightLb)));
}
