using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Restock;

/// <summary>What one van gets of one item for tomorrow.</summary>
/// <param name="Aboard">Units aboard by the book after the close-out.</param>
/// <param name="Q">Quantile of the booked demand, in units.</param>
/// <param name="Need">Units lacking to the target.</param>
/// <param name="Sealed">Sealed cartons to load.</param>
/// <param name="FromBin">Loose units out of the leftovers bin.</param>
/// <param name="FromOpened">Loose units out of cartons opened at the depot.</param>
/// <param name="Units">All of it in units; above need where a carton was rounded up.</param>
/// <param name="Short">Need that the depot cannot fill.</param>
/// <param name="MissChance">Chance that demand exceeds what will be aboard.</param>
/// <param name="Provisional">The van is not closed: aboard is what the book says, and nobody counted.</param>
public sealed record RestockLine(
    Van Van, Item Item, int Aboard, int Low, int High, int Q, Target Target, int Need,
    int Sealed, int FromBin, int FromOpened, int Units, int Short, double MissChance, bool Provisional);

/// <summary>What the plan does to the depot's own stock of one item. Cartons on the shelf, units in the bin.</summary>
public sealed record ShelfLine(
    Item Item, int ShelfBefore, int BinBefore, int SealedOut, int Opened, int LooseOut, int ShelfAfter, int BinAfter, int Short, int OnOrder);

/// <summary>Tomorrow's restock: what goes into each van, and what that leaves at the depot.</summary>
/// <param name="Date">Tomorrow.</param>
/// <param name="Lines">Lines with a need, in bay order, then item order.</param>
/// <param name="Shelf">Every item, in item order.</param>
/// <remarks>
/// Until the forecast is built the booked demand counts as none: q is 0, every target is the van's low, and where the
/// depot is short the vans get their need in bay order.
/// </remarks>
public sealed record RestockPlan(DateOnly Date, IReadOnlyList<RestockLine> Lines, IReadOnlyList<ShelfLine> Shelf)
{
    /// <summary>The plan for the next day with a booking.</summary>
    public static RestockPlan For(Depot depot)
    {
        var lines = new List<RestockLine>();
        var shelf = new List<ShelfLine>();
        foreach (var item in depot.Setup.Items.OrderBy(i => i.Code))
        {
            var planned = Plan(depot, item);
            lines.AddRange(planned.Lines);
            shelf.Add(planned.Shelf);
        }

        return new(Tomorrow(depot), [.. lines.OrderBy(l => l.Van.Bay).ThenBy(l => l.Item.Code)], shelf);
    }

    /// <summary>The first date after the business date with a visit booked for any van; without bookings, the day after.</summary>
    public static DateOnly Tomorrow(Depot depot) => depot.Bookings
        .Where(b => b.Date > depot.Date && b.Visits > 0)
        .Select(b => b.Date)
        .DefaultIfEmpty(depot.Date.AddDays(1))
        .Min();

    private static (IEnumerable<RestockLine> Lines, ShelfLine Shelf) Plan(Depot depot, Item item)
    {
        var c = item.UnitsPerCarton;
        var (cartons, bin) = (depot.Ledger.Units(Place.Shelf, item.Code) / c, depot.Ledger.Units(Place.Bin, item.Code));
        var wants = depot.Setup.Vans.Select(van => Want(depot, van, item)).Where(w => w.Need > 0).ToList();
        var given = Sharing.InBayOrder([.. wants.Select(w => w.Need)], bin + cartons * c);
        var packing = Packing.Pack([.. wants.Select((w, v) => new Portion(given[v], w.Aboard, w.High))], c, bin, cartons);

        var binLeft = bin;
        var lines = wants.Select((w, v) =>
        {
            var packed = packing.Vans[v];
            var fromBin = Math.Min(packed.Loose, binLeft);
            binLeft -= fromBin;
            return w with
            {
                Sealed = packed.Sealed,
                FromBin = fromBin,
                FromOpened = packed.Loose - fromBin,
                Units = packed.Sealed * c + packed.Loose,
                Short = w.Need - given[v],
            };
        }).ToList();

        var sealedOut = lines.Sum(l => l.Sealed);
        var looseOut = lines.Sum(l => l.FromBin + l.FromOpened);
        return (lines, new ShelfLine(
            item,
            cartons,
            bin,
            sealedOut,
            packing.Opened,
            looseOut,
            cartons - sealedOut - packing.Opened,
            bin + packing.Opened * c - looseOut,
            lines.Sum(l => l.Short),
            depot.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons) * c));
    }

    private static RestockLine Want(Depot depot, Van van, Item item)
    {
        const int q = 0;
        var aboard = depot.Ledger.Aboard(van.Code, item).Units(item.UnitsPerCarton);
        var (low, high) = depot.Setup.Limit(van.Code, item);
        var target = Target.Of(low, high, q);
        var provisional = depot.Shift(van.Code) is not { Step: Step.Closed };
        return new(van, item, aboard, low, high, q, target, target.Need(aboard), 0, 0, 0, 0, 0, 0, provisional);
    }
}
