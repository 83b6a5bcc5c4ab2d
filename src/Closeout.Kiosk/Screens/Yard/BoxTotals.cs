using Closeout.Cardboard;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Yard;

/// <summary>Boxes of the last year added up, with a bar each.</summary>
internal static class BoxTotals
{
    public static void Draw(Sheet sheet, Depot depot, IReadOnlyList<DatedBoxes> year, Period period, int top)
    {
        var boxes = year.Where(b => b.Date < depot.Date).Concat(RecyclingTotals.Tonight(depot)).ToList();
        var totals = RecyclingTotals.By(period, depot.Setup.Depot, boxes);
        if (period is Period.Day or Period.Week or Period.Month)
            totals = [.. totals.Reverse()];

        sheet.Write(2, 1, T($"by {RecyclingTotals.Words(period),-20} boxes missing     weight      volume"), Look.Faint);
        var room = Math.Max(1, sheet.Height - 7);
        var most = totals.Select(t => t.Sum.WeightLb).DefaultIfEmpty(0).Max();
        var bar = Math.Max(4, sheet.Width - 64);
        var row = 3;
        foreach (var total in totals.Skip(Math.Min(top, Math.Max(0, totals.Count - room))).Take(room))
        {
            var name = total.Name.Length > 0 ? total.Name : period == Period.Van ? T("depot, or earlier") : T("earlier records");
            sheet.Write(row, 1, name, Look.Plain, 22);
            sheet.Write(row, 24, Numbers(depot, total.Sum));
            sheet.Write(row++, 62, Shapes.Bar(most > 0 ? total.Sum.WeightLb / most : 0, bar), Look.Strong);
        }

        sheet.Write(sheet.Height - 3, 1, T("all of these"), Look.Strong);
        sheet.Write(sheet.Height - 3, 24, Numbers(depot, CardboardTotals.Sum(depot.Setup.Depot, boxes.Select(b => b.Row))), Look.Strong);
        if (period is Period.Day or Period.Week or Period.Month)
        {
            var weights = totals.Reverse().Select(t => t.Sum.WeightLb).TakeLast(sheet.Width - 64).ToList();
            sheet.Write(sheet.Height - 3, 62, Shapes.Sparkline(weights), Look.Strong);
        }

        sheet.Write(
            sheet.Height - 2, 1, T("The last year; bars are weight. To a file: closeout recycling-weeks --out FILE"), Look.Faint,
            sheet.Width - 2);
    }

    private static string Numbers(Depot depot, BoxSum sum) =>
        $"{sum.Flattened,5} {sum.Missing,7} {depot.Setup.Units.Weight(sum.WeightLb),10} {depot.Setup.Units.Volume(sum.VolumeCuYd),11}";
}
