using Closeout.Restock;

namespace Closeout.Shifts;

/// <summary>Say in the close-out that stock was handed to another van on the road. Both records follow at once.</summary>
/// <param name="Loose">Loose units; where the record has fewer, cartons were opened for them.</param>
public sealed record GiveStock(Code<Van> Van, Code<Van> To, Code<Item> Item, int Sealed, int Loose, Code<Technician> By)
    : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Leftovers;

    protected override Decision Decide(Depot depot, Shift shift)
    {
        var from = depot.Setup.Van(shift.Van);
        if (depot.Setup.Find(To) is not { } to)
            return Refusal.NoSuchVan(To) with { About = "to" };

        if (to == from)
            return StockRefusal.SameVan(from) with { About = "to" };

        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item) with { About = "item" };

        if (depot.Setup.Find(By) is not { } by)
            return Refusal.NoSuchTechnician(By) with { About = "by" };

        // What was counted is what is left: the stock left before it. Then only the record can say how much there was.
        var uncounted = GiftCounts.Uncounted(depot, shift, item);
        if (Between.NotPossible(uncounted, from, item, Sealed, Loose) is { } refused)
            return refused;

        var opened = Between.Opened(uncounted, from, item, Loose);
        var given = new StockGiven(
            from.Code, to.Code, item.Code, Sealed, Loose, opened, [.. Between.Moves(from, to, item, Sealed, Loose, opened)],
            by.Code);
        return given with { Change = GiftCounts.Follow(depot, given, [shift, depot.Shift(to.Code)], item) };
    }
}

/// <summary>The technician of the other van, or a lead, says whether stock came that somebody handed to it.</summary>
/// <param name="Entry">The number of the entry that says it was given.</param>
public sealed record AnswerGift(int Entry, bool Came, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot)
    {
        if (!depot.Stock.Gifts.TryGetValue(Entry, out var gift) || depot.Setup.Find(gift.Item) is not { } item)
            return StockRefusal.NotGiven(Entry) with { About = "number" };

        if (depot.Setup.Find(By) is not { } by)
            return Refusal.NoSuchTechnician(By) with { About = "by" };

        var (to, shift) = (depot.Setup.Van(gift.To), depot.Shift(gift.To));
        if (!by.IsLead && shift?.Technician != by.Code)
            return StockRefusal.NotYourVan(to, by) with { About = "by" };

        var answered = new GiftAnswered(Entry, to.Code, item.Code, Came, Came ? [] :
        [
            .. Move.Signed(item.Code, gift.Sealed * item.UnitsPerCarton, Place.Sealed(to.Code), Place.Unexplained),
            .. Move.Signed(item.Code, gift.Loose, Place.Loose(to.Code), Place.Unexplained),
        ], by.Code);
        return Came ? answered : answered with { Change = GiftCounts.Follow(depot, answered, [shift], item) };
    }
}
