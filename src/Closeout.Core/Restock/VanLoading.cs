using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Restock;

/// <summary>The rules of loading: what was really taken, and only that, leaves the shelf and the bin.</summary>
public static class VanLoading
{
    public static Decision Load(Depot depot, LoadVan command)
    {
        if (depot.Setup.Find(command.Van) is not { } van)
        {
            return Refusal.NoSuchVan(command.Van);
        }

        if (!depot.IsDone(van.Code))
        {
            return StockRefusal.NotClosedYet(van);
        }

        if (command.By is { } by && depot.Setup.Find(by) is null)
        {
            return Refusal.NoSuchTechnician(by);
        }

        if (command.Lines.Count == 0)
        {
            return StockRefusal.NothingTaken(van);
        }

        var plan = RestockPlan.For(depot);
        var (lines, moves) = (new List<LoadedLine>(), new List<Move>());
        foreach (var taken in command.Lines)
        {
            if (depot.Setup.Find(taken.Item) is not { } item)
            {
                return Refusal.NoSuchItem(taken.Item);
            }

            if (depot.Loaded.ContainsKey((van.Code, item.Code)) || lines.Any(l => l.Item == item.Code))
            {
                return StockRefusal.LoadedAlready(van, item) with { About = item.Code.Text };
            }

            var c = item.UnitsPerCarton;
            foreach (var (what, number, most) in new[] { ("Sealed cartons", taken.Sealed, Refusal.MostAtOnce / c), ("Loose units", taken.Loose, Refusal.MostAtOnce) })
            {
                if (number < 0 || number > most)
                {
                    return Refusal.OutOfRange(what, number, 0, most) with { About = item.Code.Text };
                }
            }

            var bin = Math.Max(0, depot.Ledger.Units(Place.Bin, item.Code));
            var opened = Math.Max(0, (taken.Loose - bin + c - 1) / c);
            var shelf = depot.Ledger.Units(Place.Shelf, item.Code) / c;
            if (taken.Sealed + opened > shelf)
            {
                return StockRefusal.NotOnTheShelf(item, taken.Sealed, opened, shelf) with { About = item.Code.Text };
            }

            var planned = plan.Lines.FirstOrDefault(l => l.Van.Code == van.Code && l.Item.Code == item.Code)?.Units ?? 0;
            lines.Add(new(item.Code, taken.Sealed, taken.Loose, opened, planned));
            moves.AddRange(Move.Signed(item.Code, taken.Sealed * c, Place.Shelf, Place.Sealed(van.Code)));
            moves.AddRange(Move.Signed(item.Code, opened * c, Place.Shelf, Place.Bin));
            moves.AddRange(Move.Signed(item.Code, taken.Loose, Place.Bin, Place.Loose(van.Code)));
        }

        return new VanLoaded(van.Code, lines, moves, command.By is { } who ? depot.Setup.Find(who)!.Code : null);
    }
}
