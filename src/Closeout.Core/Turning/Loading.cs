namespace Closeout.Turning;

/// <summary>The rules of loading a day folder into a book that has one already.</summary>
public static class Loading
{
    /// <summary>Everything that forbids it, each a sentence with the file that it concerns; none: it may be loaded.</summary>
    public static IEnumerable<(string File, string Text)> Faults(Depot depot, DayGiven given)
    {
        if (given.BusinessDate < depot.Date)
        {
            yield return ("depot.csv",
                T(
                    $"business_date goes back: found {given.BusinessDate:yyyy-MM-dd}, allowed is {depot.Date:yyyy-MM-dd}, the book's "
                        + $"open date, or later"));
        }

        if (given.BusinessDate > depot.Date.AddDays(PlanningWindow.MostDaysAhead))
        {
            yield return ("depot.csv",
                T(
                    $"business_date goes {given.BusinessDate.DayNumber - depot.Date.DayNumber} days ahead, and there is no way back: "
                        + $"found {given.BusinessDate:yyyy-MM-dd}, allowed up to "
                        + $"{depot.Date.AddDays(PlanningWindow.MostDaysAhead):yyyy-MM-dd}, {PlanningWindow.MostDaysAhead} days after the "
                        + $"book's open date"));
        }

        foreach (var shift in depot.Shifts.Values.Where(s => !s.IsClosed).OrderBy(s => s.Van))
        {
            if (given.Setup.Find(shift.Technician) is null)
            {
                yield return ("crew.csv",
                    T(
                        $"technician {shift.Technician} has the open close-out of van {shift.Van} and is gone: found no row, allowed "
                            + $"once it is signed"));
            }

            if (given.Setup.Find(shift.Van) is null)
            {
                yield return ("vans.csv", T($"van {shift.Van} has an open close-out and is gone: found no row, allowed once it is signed"));
            }
            else if (given.BusinessDate > depot.Date)
            {
                yield return ("depot.csv",
                    T(
                        $"business_date moves on to {given.BusinessDate:yyyy-MM-dd} while van {shift.Van} has an open close-out of "
                            + $"{depot.Date:yyyy-MM-dd}: sign it first"));
            }
        }

        foreach (var van in depot.Setup.Vans.Where(v => given.Setup.Find(v.Code) is null))
        {
            var aboard = depot.Stock.Ledger.Balances.Where(b => b.Place.IsPhysical && b.Place.Van == van.Code).ToList();
            if (aboard.Count > 0)
            {
                yield return ("vans.csv",
                    T(
                        $"van {van.Code} still has {aboard.Sum(b => b.Units)} units aboard and is gone: found no row, allowed once it is "
                            + $"empty"));
            }
        }

        foreach (var item in depot.Setup.Items)
        {
            var held = depot.Stock.Ledger.Balances.Where(b => b.Item == item.Code && b.Place.IsPhysical).ToList();
            if (given.Setup.Find(item.Code) is not { } now)
            {
                if (depot.Shifts.Values.FirstOrDefault(t => t.Counts.ContainsKey(item.Code) || t.Boxes.ContainsKey(item.Code)) is { } shift)
                {
                    yield return ("items.csv",
                        T(
                            $"item {item.Code} was counted tonight on van {shift.Van} and is gone: found no row, allowed from the next "
                                + $"business date on"));
                }

                if (depot.Yard.DepotBoxes.ContainsKey(item.Code))
                {
                    yield return ("items.csv",
                        T(
                            $"item {item.Code} had boxes counted at the depot tonight and is gone: found no row, allowed from the next "
                                + $"business date on"));
                }

                if (held.Count > 0)
                {
                    yield return ("items.csv",
                        T(
                            $"item {item.Code} still has {held.Sum(b => b.Units)} units in {held.Count} places and is gone: found no "
                                + $"row, allowed once there are none"));
                }
            }
            else if (now.UnitsPerCarton != item.UnitsPerCarton
                && depot.Shifts.Values.FirstOrDefault(t => t.Before.ContainsKey(item.Code) || t.Counts.ContainsKey(item.Code)) is { } open)
            {
                yield return ("items.csv",
                    T(
                        $"units_per_carton of {item.Code} changes in an evening that counts it on van {open.Van}: found "
                            + $"{now.UnitsPerCarton}, allowed {item.UnitsPerCarton}; give the new carton a code of its own"));
            }
            else if (now.UnitsPerCarton != item.UnitsPerCarton && held.Any(b => b.Place.IsSealed))
            {
                yield return ("items.csv",
                    T(
                        $"units_per_carton of {item.Code} changes while {held.Where(b => b.Place.IsSealed).Sum(b => b.Units)} units are "
                            + $"in sealed cartons: found {now.UnitsPerCarton}, allowed {item.UnitsPerCarton}; give the new carton a code "
                            + $"of its own"));
            }
        }
    }

    /// <summary>The folder's set-up with every code that the book knows in the spelling that the book keeps.</summary>
    public static DayGiven KeepSpelling(Depot depot, DayGiven given) => given with
    {
        Setup = given.Setup with
        {
            Items = [.. given.Setup.Items.Select(i => i with { Code = depot.Setup.Find(i.Code)?.Code ?? i.Code })],
            Vans = [.. given.Setup.Vans.Select(v => v with { Code = depot.Setup.Find(v.Code)?.Code ?? v.Code })],
            Kit = [.. given.Setup.Kit.Select(k => k with { Code = depot.Setup.Find(k.Code)?.Code ?? k.Code })],
            Crew = [.. given.Setup.Crew.Select(t => t with { Code = depot.Setup.Find(t.Code)?.Code ?? t.Code })],
            Replaced = Replacement.Kept(depot.Setup, given.Setup),
        },
    };

    /// <summary>The next page, with what the folder says of it.</summary>
    public static PageOpened NextPageWith(Depot depot, DayGiven given)
    {
        var loaded = depot.Apply(new Recorded(depot.Number + 1, default, given.Loaded(depot)));
        var page = NextPage.After(loaded, given.BusinessDate);

        // Reports that came late tell of days that only counts told of so far.
        return page with { Carried = page.Carried with { Counted = [
            .. page.Carried.Counted.Where(d => !given.Used.Reported.Contains(new VanDay(d.Date, d.Van)))] } };
    }
}
