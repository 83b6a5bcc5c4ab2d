namespace Closeout.Facts;

/// <summary>Units of an item from one place to another. Stock changes in no other way.</summary>
public sealed record Move
{
    /// <param name="units">Above zero: the direction says the sign.</param>
    /// <exception cref="ArgumentException">Nothing would move.</exception>
    public Move(Code<Item> item, int units, Place from, Place to)
    {
        if (units <= 0)
            throw new ArgumentOutOfRangeException(nameof(units), units, "a move has units above zero");

        if (from == to)
            throw new ArgumentException($"a move from {from} to itself", nameof(to));

        (Item, Units, From, To) = (item, units, from, to);
    }

    public Code<Item> Item { get; }

    public int Units { get; }

    public Place From { get; }

    public Place To { get; }

    /// <summary>The move that undoes this one.</summary>
    public Move Back() => new(Item, Units, To, From);

    /// <summary>A move, or none where there is nothing to move; below zero it goes the other way.</summary>
    public static IEnumerable<Move> Signed(Code<Item> item, int units, Place from, Place to) => units switch
    {
        > 0 => [new Move(item, units, from, to)],
        < 0 => [new Move(item, -units, to, from)],
        _ => [],
    };

    public override string ToString() => $"{Units} {Item} {From} -> {To}";
}
