using System.Globalization;
using Closeout.Cardboard;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Yard;

/// <summary>Tonight's cardboard by van, and below it the container.</summary>
internal static class BoxesTonight
{
    private const int GaugeCells = 20;

    public static void Draw(Sheet sheet, Depot depot, int top)
    {
        var settings = depot.Setup.Depot;
        sheet.Write(2, 1, T("tonight          expected flattened missing     weight      volume"), Look.Faint);
        var below = Frame.Hanging(Below(depot), sheet.Width - 13).ToList();
        var room = Math.Max(1, sheet.Height - 7 - below.Count);
        var rows = depot.Setup.Vans.Where(v => depot.Shift(v.Code) is not null).ToList();
        var row = 3;
        foreach (var van in rows.Skip(Math.Min(top, Math.Max(0, rows.Count - room))).Take(room))
        {
            var open = !depot.Shift(van.Code)!.Answered.Contains(Step.Cardboard);
            Line(sheet, row++, $"{van.Code} {van.Name}", depot, CardboardTotals.Sum(settings, CardboardTotals.Rows(depot, van.Code)),
                open ? T("to come") : Boxes(LostBoxes.Of(depot, van.Code)));
        }

        if (CardboardTotals.DepotRows(depot).ToList() is { Count: > 0 } own)
            Line(sheet, row++, T("opened here"), depot, CardboardTotals.Sum(settings, own), Boxes(LostBoxes.OfDepot(depot)));

        var lost = depot.Setup.Vans.SelectMany(v => LostBoxes.Of(depot, v.Code)).Concat(LostBoxes.OfDepot(depot));
        Line(sheet, row, T("all"), depot, CardboardTotals.Sum(settings, CardboardTotals.Rows(depot)), Boxes(lost));
        var at = sheet.Height - 2 - below.Count;
        foreach (var (word, text) in below)
        {
            sheet.Write(at, 1, word, Look.Strong, 10);
            sheet.Write(at++, 12, text);
        }
    }

    private static IEnumerable<(string Word, string Sentence)> Below(Depot depot)
    {
        var (settings, units, percent) = (depot.Setup.Depot, depot.Setup.Units, Container.FullPercent(depot));
        yield return (T("Container"), T($"[{Shapes.Bar(percent / 100, GaugeCells)}] {percent:0} % of "
                + $"{units.Volume(settings.ContainerCuYd)}{(Container.AsksForHauler(depot) ? T(": CALL THE HAULER") : "")}"));
        yield return (T("Full"), Container.Full(depot) is { } full
            ? FullWords(depot, full, Container.Days(depot).Count)
            : T($"no date yet: it takes {Container.LeastDays} working days to say"));
        yield return (T("Emptied"), Container.EmptiedOn(depot) is { } on ? Facts.IsoDate.Text(on) : T("not in this book"));
        foreach (var calibration in depot.Yard.Emptied.Select(e => Container.LbPerCuYd(settings, e)).OfType<double>().TakeLast(1))
        {
            yield return (T("Calibrate"),
                T($"tonight's weighed pickup makes {calibration:0.#} lb a cubic yard: put it into depot.csv as cardboard_lb_per_cu_yd"));
        }

        var missing = depot.Setup.Vans.Select(v => (Of: v.Code.Text, Words: LostBoxes.Words(depot, [.. LostBoxes.Of(depot, v.Code)])))
            .Append((Of: T("depot"), Words: LostBoxes.Words(depot, [.. LostBoxes.OfDepot(depot)])))
            .Where(m => m.Words is not null)
            .ToList();
        if (missing.Count > 0)
            yield return (T("Missing"), string.Join("; ", missing.Select(m => $"{m.Of} {m.Words}")));

        if (GreenhouseGas.Words(settings, CardboardTotals.Rows(depot).Sum(r => r.WeightLb)) is { } gas)
            yield return (T("Climate"), gas);

        yield return (T("Caution"),
            T(
                $"Volume at {settings.CardboardLbPerCuYd:0.#} lb a cubic yard; published figures run from 40 to 150: good to a factor of "
                    + $"about two."));
    }

    /// <summary>When the container will be full, with its range.</summary>
    private static string FullWords(Depot depot, FullDate full, int days)
    {
        var latest = full.Latest is { } late ? Spell.DayOfMonth(late) : T("nobody can say");
        return T(
            $"{depot.Setup.Depot.ContainerFullPercent:0.#} % about {Spell.ShortDay(full.On)}, between {Spell.DayOfMonth(full.Earliest)} "
                + $"and {latest}, at the pace of the last {days} working days");
    }

    private static string Boxes(IEnumerable<MissingBoxes> lost) => lost.Sum(b => b.Boxes).ToString(CultureInfo.InvariantCulture);

    /// <param name="missing">Boxes not found so far, those of earlier evenings among them.</param>
    private static void Line(Sheet sheet, int row, string name, Depot depot, BoxSum sum, string missing)
    {
        var units = depot.Setup.Units;
        sheet.Write(row, 1, name, Look.Plain, 16);
        sheet.Write(
            row, 18, $"{sum.Expected,8} {sum.Flattened,9} {missing,7} {units.Weight(sum.WeightLb),10} {units.Volume(sum.VolumeCuYd),11}");
    }
}
