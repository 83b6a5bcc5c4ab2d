using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;

namespace Closeout.Screens;

/// <summary>The yard: tonight's cardboard by van, the container, totals over time as bars, and other waste.</summary>
public static class CardboardView
{
    public static void Draw(Sheet sheet, Depot depot, CardboardScreen s)
    {
        View.Head(sheet, depot, s.Page == YardPage.OtherWaste ? "OTHER WASTE" : "CARDBOARD", IsoWeek.Name(depot.Date));
        switch (s.Page)
        {
            case YardPage.Tonight:
                Tonight(sheet, depot, s);
                break;
            case YardPage.OtherWaste:
                WasteView.Draw(sheet, depot, s);
                break;
            default:
                Totals(sheet, depot, s);
                break;
        }

        View.Keys(sheet, "Tab next page  B depot's boxes  P pickup  S ship waste  W write off  F1  Esc");
    }

    private static void Tonight(Sheet sheet, Depot depot, CardboardScreen s)
    {
        var settings = depot.Setup.Depot;
        sheet.Write(2, 1, "tonight          expected flattened missing     weight      volume", Look.Faint);
        var below = Below(depot).SelectMany(b => Sheet.Wrap(b.Sentence, sheet.Width - 13).Select((t, i) => (Word: i == 0 ? b.Word : "", Text: t))).ToList();
        var room = Math.Max(1, sheet.Height - 7 - below.Count);
        var rows = depot.Setup.Vans.Where(v => depot.Shift(v.Code) is not null).ToList();
        var row = 3;
        foreach (var van in rows.Skip(Math.Min(s.Top, Math.Max(0, rows.Count - room))).Take(room))
        {
            var open = !depot.Shift(van.Code)!.Answered.Contains(Step.Cardboard);
            Line(sheet, row++, $"{van.Code} {van.Name}", depot, CardboardTotals.Sum(settings, CardboardTotals.Rows(depot, van.Code)), open ? "to come" : null);
        }

        if (CardboardTotals.DepotRows(depot).ToList() is { Count: > 0 } own)
        {
            Line(sheet, row++, "opened here", depot, CardboardTotals.Sum(settings, own));
        }

        Line(sheet, row, "all", depot, CardboardTotals.Sum(settings, CardboardTotals.Rows(depot)));
        var at = sheet.Height - 2 - below.Count;
        foreach (var (word, text) in below)
        {
            sheet.Write(at, 1, word, Look.Strong, 10);
            sheet.Write(at++, 12, text);
        }
    }

    private static IEnumerable<(string Word, string Sentence)> Below(Depot depot)
    {
        var (settings, units) = (depot.Setup.Depot, depot.Setup.Units);
        var filled = Math.Clamp((int)Math.Round(Container.FullPercent(depot) / 5), 0, 20);
        yield return ("Container", string.Create(
            CultureInfo.InvariantCulture,
            $"[{new string('#', filled)}{new string('.', 20 - filled)}] {Container.FullPercent(depot):0} % of {units.Volume(settings.ContainerCuYd)}{(Container.AsksForHauler(depot) ? ": CALL THE HAULER" : "")}"));
        yield return ("Full", Container.Full(depot) is { } full ? FullWords(settings, full, Container.Days(depot).Count) : $"no date yet: it takes {Container.LeastDays} working days to say");
        yield return ("Emptied", Container.EmptiedOn(depot) is { } on ? $"{on:yyyy-MM-dd}" : "not in this book");
        foreach (var calibration in depot.Yard.Emptied.Select(e => Container.LbPerCuYd(settings, e)).OfType<double>().TakeLast(1))
        {
            yield return ("Calibrate", string.Create(CultureInfo.InvariantCulture, $"tonight's weighed pickup makes {calibration:0.#} lb a cubic yard: put it into depot.csv as cardboard_lb_per_cu_yd"));
        }

        var missing = depot.Setup.Vans.Select(v => (Of: v.Code.Text, Words: VanPage.Boxes(depot, v)))
            .Append((Of: "depot", Words: LostBoxes.Words(depot, [.. LostBoxes.OfDepot(depot)])))
            .Where(m => m.Words is not null)
            .ToList();
        if (missing.Count > 0)
        {
            yield return ("Missing", string.Join("; ", missing.Select(m => $"{m.Of} {m.Words}")));
        }

        if (GreenhouseGas.Words(settings, CardboardTotals.Rows(depot).Sum(r => r.WeightLb)) is { } gas)
        {
            yield return ("Climate", gas);
        }

        yield return ("Caution", string.Create(
            CultureInfo.InvariantCulture, $"Volume at {settings.CardboardLbPerCuYd:0.#} lb a cubic yard; published figures run from 40 to 150: good to a factor of about two."));
    }

    /// <summary>When the container will be full, with its range.</summary>
    public static string FullWords(DepotSettings settings, FullDate full, int days) => string.Create(
        CultureInfo.InvariantCulture,
        $"{settings.ContainerFullPercent:0.#} % about {full.On:ddd d MMM}, between {full.Earliest:d MMM} and {(full.Latest is { } latest ? latest.ToString("d MMM", CultureInfo.InvariantCulture) : "nobody can say")}, at the pace of the last {days} working days");

    private static void Totals(Sheet sheet, Depot depot, CardboardScreen s)
    {
        var period = s.Page switch
        {
            YardPage.Weeks => Period.Week,
            YardPage.Months => Period.Month,
            YardPage.Days => Period.Day,
            YardPage.Vans => Period.Van,
            YardPage.Items => Period.Item,
            _ => throw new InvalidOperationException($"no totals on {s.Page}"),
        };
        var boxes = s.Boxes.Where(b => b.Date < depot.Date).Concat(RecyclingTotals.Tonight(depot)).ToList();
        var totals = RecyclingTotals.By(period, depot.Setup.Depot, boxes);
        if (period is Period.Day or Period.Week or Period.Month)
        {
            totals = [.. totals.Reverse()];
        }

        sheet.Write(2, 1, $"by {RecyclingTotals.Words(period),-20} boxes missing     weight      volume", Look.Faint);
        var room = Math.Max(1, sheet.Height - 7);
        var most = totals.Select(t => t.Sum.WeightLb).DefaultIfEmpty(0).Max();
        var bar = Math.Max(4, sheet.Width - 64);
        var row = 3;
        foreach (var total in totals.Skip(Math.Min(s.Top, Math.Max(0, totals.Count - room))).Take(room))
        {
            sheet.Write(row, 1, total.Name.Length > 0 ? total.Name : period == Period.Van ? "depot, or earlier" : "earlier records", Look.Plain, 22);
            sheet.Write(row, 24, $"{total.Sum.Flattened,5} {total.Sum.Missing,7} {depot.Setup.Units.Weight(total.Sum.WeightLb),10} {depot.Setup.Units.Volume(total.Sum.VolumeCuYd),11}");
            sheet.Write(row++, 62, new string('#', most > 0 ? (int)Math.Round(bar * total.Sum.WeightLb / most) : 0), Look.Strong);
        }

        Line(sheet, sheet.Height - 3, "all of these", depot, CardboardTotals.Sum(depot.Setup.Depot, boxes.Select(b => b.Row)), 24);
        sheet.Write(sheet.Height - 2, 1, "The last year; # is weight. To a file: closeout recycling-weeks --out FILE", Look.Faint, sheet.Width - 2);
    }

    private static void Line(Sheet sheet, int row, string name, Depot depot, BoxSum sum, int at) =>
        sheet.Write(row, at, $"{sum.Flattened,5} {sum.Missing,7} {depot.Setup.Units.Weight(sum.WeightLb),10} {depot.Setup.Units.Volume(sum.VolumeCuYd),11}", Look.Strong, sheet.Write(row, 1, name, Look.Strong) + sheet.Width);

    private static void Line(Sheet sheet, int row, string name, Depot depot, BoxSum sum, string? missing = null)
    {
        var units = depot.Setup.Units;
        sheet.Write(row, 1, name, Look.Plain, 16);
        sheet.Write(row, 18, $"{sum.Expected,8} {sum.Flattened,9} {missing ?? sum.Missing.ToString(CultureInfo.InvariantCulture),7} {units.Weight(sum.WeightLb),10} {units.Volume(sum.VolumeCuYd),11}");
    }
}
