namespace Closeout.Facts;

/// <summary>
/// What a technician counted of one item at the end of the day: cartons still sealed aboard, loose units put in the bin, loose units kept
/// aboard.
/// </summary>
public readonly record struct LeftoverCount(int Sealed, int Bin, int Kept)
{
    /// <summary>Everything aboard as the book has it, nothing to the bin.</summary>
    public static LeftoverCount AsBooked(Holding book) => new(book.Sealed, 0, book.Loose);
}

/// <summary>The arithmetic of a count against the book.</summary>
public static class Counting
{
    /// <summary>Units used: before - sealed * c - kept - bin. Below zero the count is above the book.</summary>
    public static int Used(Holding before, LeftoverCount count, int unitsPerCarton) =>
        before.Units(unitsPerCarton) - count.Sealed * unitsPerCarton - count.Kept - count.Bin;

    /// <summary>Cartons emptied in a van: sealed before less sealed after, never below 0. Each leaves one box to flatten.</summary>
    public static int Emptied(Holding before, LeftoverCount count) => Math.Max(0, before.Sealed - count.Sealed);

    /// <summary>
    /// Book minus count, in units; positive: more in the book. Where visits report what was installed, the book expects
    /// before - installed; where they do not, only a count above the book is a gap.
    /// </summary>
    public static int Gap(int used, int? installed) => installed is { } said ? used - said : Math.Min(used, 0);

    /// <summary>The same count, against another figure of what was aboard before.</summary>
    public static LeftoverCounted Against(Holding before, LeftoverCounted count, int unitsPerCarton)
    {
        var used = Used(before, count.Count, unitsPerCarton);
        return count with { Used = used, Gap = Gap(used, count.Installed), Emptied = Emptied(before, count.Count), Change = [] };
    }

    /// <summary>
    /// The moves that bring the ledger from what was aboard before to what was counted. No place falls below zero on the way.
    /// </summary>
    public static IEnumerable<Move> Moves(Code<Van> van, Item item, Holding before, LeftoverCount count, int? installed)
    {
        var (c, code) = (item.UnitsPerCarton, item.Code);
        var (boxed, loose) = (Place.Sealed(van), Place.Loose(van));
        var used = Used(before, count, c);
        var home = installed ?? Math.Max(used, 0);
        var lost = used - home;
        return
        [
            .. Move.Signed(code, Math.Max(-lost, 0), Place.Unexplained, loose),
            .. Move.Signed(code, (before.Sealed - count.Sealed) * c, boxed, loose),
            .. Move.Signed(code, count.Bin, loose, Place.Bin),
            .. Move.Signed(code, home, loose, Place.Homes),
            .. Move.Signed(code, Math.Max(lost, 0), loose, Place.Unexplained),
        ];
    }

    /// <summary>
    /// A second count replaces the first: what the first moved and the second does not, goes back; one net move for each pair of places.
    /// </summary>
    public static IReadOnlyList<Move> Replace(IEnumerable<Move> first, IEnumerable<Move> second)
    {
        var old = first.Select(m => m.Back()).ToList();
        return [.. old.Concat(second)
            .GroupBy(m => (m.Item, Low: Lower(m.From, m.To), High: Upper(m.From, m.To)))
            .SelectMany(g => Move.Signed(g.Key.Item, g.Sum(m => m.From == g.Key.Low ? m.Units : -m.Units), g.Key.Low, g.Key.High))];
    }

    private static Place Lower(Place a, Place b) => a.Kind < b.Kind ? a : b;

    private static Place Upper(Place a, Place b) => a.Kind < b.Kind ? b : a;
}
