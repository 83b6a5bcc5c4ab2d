using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>All that a technician signs, in a few sentences.</summary>
public static class SummaryLines
{
    public static IEnumerable<string> Of(Depot depot, Shift shift)
    {
        var (setup, units) = (depot.Setup, depot.Setup.Units);
        var counts = shift.Counts.Values.ToList();
        var items = Leftovers.ToCount(depot, shift).Count;
        yield return $"Leftovers   {counts.Count} of {View.Count(items, "item", "items")} counted, the rest as booked; {counts.Sum(c => Math.Max(0, c.Used))} used, {counts.Sum(c => c.Count.Bin)} to the bin";
        foreach (var gap in Readiness.Gaps(shift))
        {
            yield return $"GAP         {gap.Gap} of {setup.Item(gap.Item).Description}";
        }

        var rows = CardboardTotals.Rows(depot, shift.Van).ToList();
        var (expected, flattened) = (rows.Sum(r => r.Expected), rows.Sum(r => r.Flattened));
        yield return $"Cardboard   {flattened} of {View.Count(expected, "box", "boxes")} flattened{(flattened < expected ? $", {expected - flattened} MISSING" : "")}";
        foreach (var stream in Collecting.On(depot.Setup.Depot).Where(w => shift.StreamOf(w.Code) > 0))
        {
            yield return $"Waste       {Collecting.Amount(stream, shift.StreamOf(stream.Code), units)} {stream.Description.ToLowerInvariant()}";
        }

        if (shift.Mileage is { } read)
        {
            yield return $"Mileage     {units.Distance(read.DistanceMi)}, odometer {units.Distance(read.EndMi)}{(read.Sure ? ", confirmed as read" : "")}";
        }

        yield return shift.Damages.Count == 0 ? "Damage      none seen" : $"Damage      {string.Join("; ", shift.Damages.Select(d => $"{d.Zone}, {Readiness.SeverityWords(d.Severity)}"))}";
        var lacking = KitCheck.MissingOf(depot, shift.Van).ToList();
        yield return lacking.Count == 0 ? "Safety kit  all there" : $"Safety kit  {string.Join("; ", lacking.Select(m => $"{m.Piece.Description} {m.There} of {m.Required}"))}";
        if (shift.WeeklyDue || shift.Weekly is not null)
        {
            yield return shift.Weekly is null
                ? "Weekly      not done"
                : $"Weekly      done, {(shift.Weekly.NotInOrder.Count == 0 ? "all in order" : "not in order: " + string.Join(", ", shift.Weekly.NotInOrder))}{(shift.Weekly.Clean ? "" : ", to be cleaned")}";
        }

        var holds = Readiness.Of(depot, setup.Van(shift.Van)).Holds;
        if (holds.Count > 0)
        {
            yield return $"HELD        {string.Join("; ", holds)}. A lead must lift it before the van goes out.";
        }
    }
}
