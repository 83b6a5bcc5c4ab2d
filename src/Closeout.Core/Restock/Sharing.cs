namespace Closeout.Restock;

/// <summary>Who gets what when the depot is short of an item.</summary>
public static class Sharing
{
    /// <summary>Each van, in bay order, gets its need until nothing is left.</summary>
    /// <param name="needs">Units each van lacks, in bay order.</param>
    /// <param name="supply">Units at the depot: the bin and all cartons on the shelf.</param>
    /// <returns>Units given to each van: never above its need, never above supply in all.</returns>
    public static int[] InBayOrder(IReadOnlyList<int> needs, int supply)
    {
        var left = Math.Max(0, supply);
        var given = new int[needs.Count];
        for (var v = 0; v < needs.Count; v++)
        {
            given[v] = Math.Min(needs[v], left);
            left -= given[v];
        }

        return given;
    }
}
