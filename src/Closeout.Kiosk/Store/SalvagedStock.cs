namespace Closeout.Store;

/// <summary>What the stock of a saved page is brought to, whatever was lost on the way there.</summary>
internal sealed class SalvagedStock
{
    private readonly Dictionary<(Place Place, Code<Item> Item), int> owed = [];

    /// <summary>A new page begins, which says what there is.</summary>
    public void Clear() => owed.Clear();

    /// <summary>A count is worth what it says, whatever was lost before it: its moves only say the difference to a lost book.</summary>
    public void Counted(Entry entry, Depot depot)
    {
        void Owe(Place place, Code<Item> item, int counted) => owed[(place, item)] = counted - depot.Stock.Ledger.Units(place, item);

        if (entry is LeftoverCounted aboard)
        {
            Owe(Place.Sealed(aboard.Van), aboard.Item, aboard.Count.Sealed * depot.Setup.Item(aboard.Item).UnitsPerCarton);
            Owe(Place.Loose(aboard.Van), aboard.Item, aboard.Count.Kept);
        }
        else if (entry is CountCorrected corrected)
        {
            Owe(corrected.Place, corrected.Item, corrected.Counted);
        }
    }

    /// <summary>The moves that lead to the balances that the next page carried forward.</summary>
    public static List<Move> ByCarried(Ledger ledger, IReadOnlyList<Balance> carried)
    {
        var target = carried.ToDictionary(b => (b.Place, b.Item), b => b.Units);
        return Moves(ledger.Balances.Select(b => (b.Place, b.Item)).Union(target.Keys)
            .Where(k => k.Place != Place.Unexplained)
            .Select(k => (k.Place, k.Item, target.GetValueOrDefault(k) - ledger.Units(k.Place, k.Item))));
    }

    /// <summary>The moves that lead to what was counted, and to nothing below zero, where no page tells more.</summary>
    public List<Move> ByCounts(Ledger ledger)
    {
        var moves = Moves(owed.Select(o => (o.Key.Place, o.Key.Item, o.Value)));
        return [.. moves, .. Moves(ledger.Post(moves).BelowZero.Select(b => (b.Place, b.Item, -b.Units)))];
    }

    private static List<Move> Moves(IEnumerable<(Place Place, Code<Item> Item, int Units)> missing) =>
    [
        .. missing.OrderBy(m => m.Item).ThenBy(m => m.Place.Kind).ThenBy(m => m.Place.Van)
            .SelectMany(m => Move.Signed(m.Item, m.Units, Place.Unexplained, m.Place)),
    ];
}
