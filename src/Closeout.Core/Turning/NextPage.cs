using Closeout.Cardboard;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Turning;

/// <summary>What a page hands to the next.</summary>
public static class NextPage
{
    /// <summary>The page that follows the depot's, on a later business date.</summary>
    public static PageOpened After(Depot depot, DateOnly date) => new(date, depot.Rehearsal, new Carried(
        depot.Setup,
        [.. depot.Stock.Ledger.Balances.OrderBy(b => b.Item).ThenBy(b => b.Place.Kind).ThenBy(b => b.Place.Van)],
        [.. depot.Setup.Vans.Select(v => Of(depot, v.Code))],
        [.. depot.Planning.Bookings.Where(b => b.Date >= date)],
        depot.Stock.Orders,
        [.. depot.Planning.Use.Where(u => u.Date > date.AddDays(-PlanningWindow.Days))],
        [.. depot.Planning.ByVan.Values.Where(v => v.Date >= date).OrderBy(v => v.Date).ThenBy(v => v.Van)],
        [.. depot.Planning.Counted.Where(d => d.Date > date.AddDays(-PlanningWindow.Days)), .. CountedDays.Tonight(depot)],
        [.. depot.Planning.Overrides.Where(o => o.Change.Date > date)],
        [.. depot.Stock.SpotCounts.Values.Where(s => depot.Setup.Find(s.Van) is not null && depot.Setup.Find(s.Item) is not null)
            .OrderBy(s => s.Van).ThenBy(s => s.Item)],
        [.. RestockPlan.Promises(depot, date)],
        [.. depot.Planning.Kept.Where(k => k.Date > date.AddDays(-PlanningWindow.Days)), .. Accuracy.Tonight(depot)],
        Yard(depot),
        depot.Vans.Incidents,
        [.. depot.Pins.People.Values.Where(p => p.Hash is not null && depot.Setup.Find(p.Person) is not null).OrderBy(p => p.Person)],
        [.. depot.Pins.Kiosks.Values.OrderBy(k => k.Kiosk, StringComparer.Ordinal)],
        Learning.After(depot)));

    private static VanCarried Of(Depot depot, Code<Van> van)
    {
        var (old, shift) = (depot.Van(van), depot.Shift(van));
        return new(
            van,
            Readiness.OdometerMi(depot, van),
            Readiness.WeeklyCheckedOn(depot, van),
            shift?.Weekly?.OilChangedOn ?? old.OilChangedOn,
            [.. LostBoxes.Of(depot, van)],
            [.. depot.Setup.Kit.Where(k => k.HasDate).Select(k => KitCheck.DatesOf(depot, van, k.Code))
                .Where(d => d.Expires is not null || d.TestedOn is not null)],
            [.. KitCheck.MissingOf(depot, van).Where(m => !Readiness.Lifted(depot, van).Contains(English(() => Readiness.KitWords(m))))
                .Select(m => new KitThere(m.Piece.Code, m.There))],
            Incidents.Open(depot, van),
            [.. Readiness.Carried(depot, van)],
            DrivingHabit.Known(depot, van));
    }

    private static YardCarried Yard(Depot depot) => new(
        Container.LoadedLb(depot),
        Container.EmptiedOn(depot),
        [.. LostBoxes.OfDepot(depot)],
        Container.Days(depot),
        [.. depot.Yard.Collecting.Values.OrderBy(b => b.Stream)]);
}
