using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Restock;

/// <summary>The rules of loading, deliveries, corrections and changes of the plan.</summary>
public static class StockDecider
{
    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, StockCommand command) => command switch
    {
        ChangePlan c => Change(depot, c),
        WithdrawChange c => Withdraw(depot, c),
        LoadVan c => VanLoading.Load(depot, c),
        ReceiveDelivery c => Deliver(depot, c),
        CorrectCount c => Correct(depot, c),
        _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
    };

    private static Decision Change(Depot depot, ChangePlan c)
    {
        if (depot.Setup.Find(c.Van) is not { } van)
        {
            return Refusal.NoSuchVan(c.Van) with { About = "van" };
        }

        if (Given.Lead(depot.Setup, c.Lead, "changes the plan") is { } refused)
        {
            return refused;
        }

        if (c.Date <= depot.Date)
        {
            return StockRefusal.DateIsOver(c.Date, depot.Date) with { About = "date" };
        }

        if (Given.Words("the reason", c.Reason) is { } silent)
        {
            return silent;
        }

        if (c.Kind == OverrideKind.Exclude)
        {
            return new PlanOverridden(c.Kind, van.Code, null, c.Date, 0, c.Reason.Trim(), depot.Setup.Find(c.Lead)!.Code);
        }

        if (c.Item is not { } code)
        {
            return StockRefusal.NoItemNamed(van) with { About = "item" };
        }

        if (depot.Setup.Find(code) is not { } item)
        {
            return Refusal.NoSuchItem(code) with { About = "item" };
        }

        var high = depot.Setup.Limit(van.Code, item).High;
        if (c.Units < 0 || c.Units > Refusal.MostAtOnce)
        {
            return Refusal.OutOfRange("Units", c.Units, 0, Refusal.MostAtOnce) with { About = "units" };
        }

        return c.Units > high
            ? StockRefusal.AboveHigh(item, van, c.Units, high) with { About = "units" }
            : new PlanOverridden(c.Kind, van.Code, item.Code, c.Date, c.Units, c.Reason.Trim(), depot.Setup.Find(c.Lead)!.Code);
    }

    private static Decision Withdraw(Depot depot, WithdrawChange c) => (Given.Lead(depot.Setup, c.Lead, "changes the plan"), Given.Words("the reason", c.Reason)) switch
    {
        ({ } refused, _) => refused,
        (_, { } silent) => silent,
        _ => depot.Overrides.Any(o => o.Number == c.Number) ? new OverrideWithdrawn(c.Number, c.Reason.Trim(), depot.Setup.Find(c.Lead)!.Code) : StockRefusal.NoSuchChange(c.Number) with { About = "kind" },
    };

    private static Decision Deliver(Depot depot, ReceiveDelivery c)
    {
        if (depot.Setup.Find(c.Item) is not { } item)
        {
            return Refusal.NoSuchItem(c.Item) with { About = "item" };
        }

        if (depot.Setup.Find(c.By) is null)
        {
            return Refusal.NoSuchTechnician(c.By) with { About = "by" };
        }

        var most = Math.Min(10_000, Refusal.MostAtOnce / item.UnitsPerCarton);
        if (c.Cartons < 1 || c.Cartons > most)
        {
            return Refusal.OutOfRange("Cartons delivered", c.Cartons, 1, most) with { About = "cartons" };
        }

        var ordered = Math.Min(c.Cartons, depot.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons));
        return new DeliveryReceived(item.Code, c.Cartons, ordered, [new Move(item.Code, c.Cartons * item.UnitsPerCarton, Place.Supplier, Place.Shelf)], depot.Setup.Find(c.By)!.Code);
    }

    private static Decision Correct(Depot depot, CorrectCount c)
    {
        if (depot.Setup.Find(c.Item) is not { } item)
        {
            return Refusal.NoSuchItem(c.Item) with { About = "item" };
        }

        if (c.Place.Van != default && depot.Setup.Find(c.Place.Van) is null)
        {
            return Refusal.NoSuchVan(c.Place.Van) with { About = "place" };
        }

        var place = c.Place with { Van = c.Place.Van == default ? default : depot.Setup.Van(c.Place.Van).Code };
        if (c.Place.Van != default && depot.Shift(c.Place.Van) is { IsClosed: false })
        {
            return StockRefusal.BeingClosedOut(depot.Setup.Van(c.Place.Van)) with { About = "place" };
        }

        if (!c.Place.IsPhysical)
        {
            throw new InvalidOperationException($"nobody can count at {c.Place}");
        }

        if (depot.Setup.Find(c.By) is null)
        {
            return Refusal.NoSuchTechnician(c.By) with { About = "by" };
        }

        if (Given.Words("the reason", c.Reason) is { } silent)
        {
            return silent;
        }

        var each = c.Place.IsSealed ? item.UnitsPerCarton : 1;
        if (c.Counted < 0 || c.Counted > Refusal.MostAtOnce / each)
        {
            return Refusal.OutOfRange(c.Place.IsSealed ? "Cartons counted" : "Units counted", c.Counted, 0, Refusal.MostAtOnce / each) with { About = c.Place.IsSealed ? "sealed" : "loose" };
        }

        var (book, counted) = (depot.Ledger.Units(c.Place, item.Code), c.Counted * each);
        return new CountCorrected(place, item.Code, book, counted, c.Reason.Trim(), [.. Move.Signed(item.Code, counted - book, Place.Unexplained, place)], depot.Setup.Find(c.By)!.Code);
    }
}
