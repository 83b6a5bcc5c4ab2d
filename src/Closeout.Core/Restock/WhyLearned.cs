using System.Globalization;

namespace Closeout.Restock;

/// <summary>What was learned that a line of the plan, or an order, rests on, each a heading and a sentence with its numbers.</summary>
public static class WhyLearned
{
    /// <summary>Of a van's line: how bookings are kept, what changed, what replaced what, what could be moved, what is ordered.</summary>
    public static IEnumerable<(string Heading, string Sentence)> Of(Setup setup, RestockPlan plan, RestockLine line)
    {
        if (Told(line).Any())
            yield return (T("Kept"), Kept(line));

        foreach (var visits in line.Booked.Visits)
        {
            var history = plan.Learned.History.HistoryOf(visits.Kind, line.Item.Code);
            if (history.Changes is [.., var last])
            {
                yield return (T("Changed"), T($"for each {visits.Kind} it changed about {Day(last.From)}: from {Number(last.Before)} to "
                    + $"{Number(history.Use.Mean)}"));
            }
        }

        var old = Replacement.All(setup).Where(r => setup.Now(r.Old) == line.Item.Code).Select(r => r.Old).Order().ToList();
        if (old.Count > 0)
            yield return (T("Replaces"), T($"{string.Join(", ", old)}: what visits used of it counts too"));

        foreach (var move in plan.Moves.Where(m => m.Item == line.Item && (m.From.Van == line.Van || m.To?.Van == line.Van)))
            yield return (T("Move"), Of(move));

        foreach (var order in Of(setup, plan, plan.Shelf.First(s => s.Item == line.Item)))
            yield return order;
    }

    /// <summary>Of an item: what is ordered and why, and how its supplier delivers.</summary>
    public static IEnumerable<(string Heading, string Sentence)> Of(Setup setup, RestockPlan plan, ShelfLine shelf)
    {
        var (order, item) = (shelf.Order, shelf.Item);
        var use = plan.Learned.Working.UseOf(item.Code);
        if (use.Mean > 0)
        {
            yield return (T("Order"), T($"{Number(order.Position)} left and on order, reorder point {order.ReorderPoint}: "
                + $"{(order.Cartons == 0 ? T("nothing to order") : T($"{order.Cartons} of {item.UnitsPerCarton}, up to {order.UpTo}"))}"
                + $"{(plan.Learned.Working.AreCounted ? T("; by what was counted, for no visit reports say more") : "")}")
                + Cost(setup, plan, shelf, use));
        }

        var supplier = plan.Learned.Suppliers.Of(item.Supplier);
        if (supplier.Delays.Count > 0)
        {
            yield return (T("Supplier"), T($"{supplier.LateOnes} of {supplier.Delays.Count} deliveries came late and the first brings "
                + $"{Why.Percent(supplier.Fill)} of an order, so {Number(supplier.Late)} working days more are planned for"));
        }

        if (WhyNot(shelf) is { } why)
            yield return (T("No order"), why);
    }

    /// <summary>Why nothing is ordered of an item that is short and of which nothing is on order; null: it is, or something is.</summary>
    public static string? WhyNot(ShelfLine shelf) =>
        shelf.Short == 0 || shelf.OnOrder > 0 || shelf.Order.Cartons > 0 ? null
        : T($"{shelf.Item.Code} is short and nothing is on order, but its use in the last {PlanningWindow.Days} days asks for none: order "
            + $"{(shelf.Short + shelf.Item.UnitsPerCarton - 1) / shelf.Item.UnitsPerCarton} of {shelf.Item.UnitsPerCarton} by hand");

    /// <summary>A proposal in a sentence.</summary>
    public static string Of(MoveProposal move) => (move.To is { } to
            ? T($"{move.From.Van.Code} to {to.Van.Code}: {Amount(move)}; missed there with a chance of {Why.Percent(move.MissedTo)}, "
                + $"in {move.From.Van.Code} then of {Why.Percent(move.MissedFrom)}")
            : T($"{move.From.Van.Code} to the shelf: {Amount(move)} above its target of {move.From.Target.Units}"))
        + (move.Provisional ? T("; not counted yet") : "");

    private static string Amount(MoveProposal move) => (move.Cartons, move.Loose) switch
    {
        (var cartons, 0) => T($"{cartons} sealed"),
        (0, var loose) => T($"{loose} loose"),
        var (cartons, loose) => T($"{cartons} sealed and {loose} loose"),
    } + (move.Opened > 0 ? T(", one carton opened") : "");

    private static string Kept(RestockLine line) => string.Join("; ", Told(line).Select(v =>
            T($"of {v.Kept.Booked} {v.Kind} booked {v.Kept.Made} were made")
            + (v.Kept.Beyond > 0 ? T($", and {Number(v.Kept.Added)} more come on a van's day") : "")))
        + T($": so {Number(line.Booked.Mean)} and not {Number(line.Booked.MeanAsBooked)} units");

    /// <summary>The kinds that use the item and of which something was learned.</summary>
    private static IEnumerable<BookedVisits> Told(RestockLine line) =>
        line.Booked.Visits.Where(v => v.Kept.IsLearned && v.Use.Mean > 0);

    /// <summary>What another promise for ordering than the item's own costs in stock; empty: it has none.</summary>
    private static string Cost(Setup setup, RestockPlan plan, ShelfLine shelf, WorkingDays.Use use)
    {
        var own = setup.Depot.Service(shelf.Item.Priority);
        if (setup.Depot.OrderService is not { } ordering || ordering == own)
            return "";

        var otherwise = Reorder.Of(shelf.Item, use, own, 0, 0, plan.Learned.Suppliers.Of(shelf.Item.Supplier)).UpTo;
        return T(
            $"; ordering promises {Why.Percent(ordering)} and not {Why.Percent(own)}, which is {shelf.Order.UpTo - otherwise} units more");
    }

    private static string Day(DateOnly date) => date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static string Number(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
