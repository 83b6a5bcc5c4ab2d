using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>What stock handed from van to van does to the evening of both: it was not aboard, or was, when they came in.</summary>
internal static class Gifts
{
    /// <summary>Tonight's close-outs after an entry of the stock.</summary>
    public static ImmutableDictionary<Code<Van>, Shift> After(Depot depot, StockEntry entry)
    {
        var shifts = depot.Shifts;
        if (entry is StockGiven { Item: var code } gift)
        {
            var item = depot.Setup.Item(code);
            var loose = gift.Opened * item.UnitsPerCarton - gift.Loose;
            shifts = With(shifts, gift.From, s => s.Given(item, -gift.Sealed - gift.Opened, loose, gift.Opened));
            shifts = With(shifts, gift.To, s => s.Given(item, gift.Sealed, gift.Loose, 0));
        }

        return entry is GiftAnswered { Came: false } no && depot.Stock.Gifts.TryGetValue(no.Entry, out var gone)
            ? With(shifts, gone.To, s => s.Given(depot.Setup.Item(gone.Item), -gone.Sealed, -gone.Loose, 0))
            : shifts;
    }

    private static ImmutableDictionary<Code<Van>, Shift> With(
        ImmutableDictionary<Code<Van>, Shift> shifts, Code<Van> van, Func<Shift, Shift> change) =>
        shifts.TryGetValue(van, out var shift) ? shifts.SetItem(van, change(shift)) : shifts;
}
