using System.Collections.Immutable;

namespace Closeout.Facts;

/// <summary>Units of an item in a place; below zero only at a far end.</summary>
public readonly record struct Balance(Place Place, Code<Item> Item, int Units);

/// <summary>
/// Units of every item in every place, folded from moves. Over all places an item's units sum to zero: what is here came from somewhere.
/// </summary>
public sealed class Ledger
{
    public static readonly Ledger Empty = new(ImmutableDictionary<(Place, Code<Item>), int>.Empty);

    private readonly ImmutableDictionary<(Place Place, Code<Item> Item), int> units;

    private Ledger(ImmutableDictionary<(Place, Code<Item>), int> units) => this.units = units;

    /// <summary>Units of the item in the place; 0 where nothing was ever moved.</summary>
    public int Units(Place place, Code<Item> item) => units.GetValueOrDefault((place, item));

    /// <summary>What the book says lies in a van of an item.</summary>
    public Holding Aboard(Code<Van> van, Item item) =>
        new(Units(Place.Sealed(van), item.Code) / item.UnitsPerCarton, Units(Place.Loose(van), item.Code));

    /// <summary>All balances that are not zero, in no order.</summary>
    public IEnumerable<Balance> Balances => units.Select(b => new Balance(b.Key.Place, b.Key.Item, b.Value));

    /// <summary>The ledger after these moves, in their order. Balances that come to zero vanish.</summary>
    public Ledger Post(IEnumerable<Move> moves)
    {
        var after = units.ToBuilder();
        foreach (var move in moves)
        {
            Add(after, move.From, move.Item, -move.Units);
            Add(after, move.To, move.Item, move.Units);
        }

        return new(after.ToImmutable());
    }

    /// <summary>The ledger that a page carried forward.</summary>
    public static Ledger Carried(IEnumerable<Balance> balances) =>
        new(balances.ToImmutableDictionary(b => (b.Place, b.Item), b => b.Units));

    /// <summary>Physical places that hold less than nothing: a count contradicts the book there, and it must be shown as a gap.</summary>
    public IEnumerable<Balance> BelowZero => Balances.Where(b => b.Units < 0 && b.Place.IsPhysical);

    /// <summary>Items whose units do not sum to zero over all places. Always none; the check of the book asks.</summary>
    public IEnumerable<(Code<Item> Item, int Sum)> Unbalanced =>
        Balances.GroupBy(b => b.Item).Select(g => (g.Key, g.Sum(b => b.Units))).Where(s => s.Item2 != 0);

    private static void Add(ImmutableDictionary<(Place, Code<Item>), int>.Builder balances, Place place, Code<Item> item, int change)
    {
        var sum = balances.GetValueOrDefault((place, item)) + change;
        if (sum == 0)
            balances.Remove((place, item));
        else
            balances[(place, item)] = sum;
    }
}
