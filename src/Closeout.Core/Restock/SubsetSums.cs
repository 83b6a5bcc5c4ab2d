namespace Closeout.Restock;

/// <summary>
/// All sums of r that subsets of the vans reach, for every tail of the vans; for each sum the pairs (count, sum of f) that
/// no other pair betters, less being better in both. With sign -1 counts and f go below zero: then more is better.
/// </summary>
internal sealed class SubsetSums
{
    /// <summary>Where the pairs of a sum begin, for each tail; one more at the end.</summary>
    private readonly int[][] starts;
    private readonly (int Count, int F)[][] pairs;
    private readonly int limit;

    /// <param name="vans">r and f of each van, f with its sign; r below 0: the van is in no subset.</param>
    /// <param name="limit">Sums above it are not kept.</param>
    /// <param name="sign">What a van adds to the count: 1 or -1.</param>
    public SubsetSums((int R, int F)[] vans, int limit, int sign)
    {
        this.limit = limit;
        (starts, pairs) = (new int[vans.Length + 1][], new (int, int)[vans.Length + 1][]);
        var empty = new int[Math.Max(0, limit) + 2];
        empty.AsSpan(1).Fill(1);
        (starts[^1], pairs[^1]) = (empty, [(0, 0)]);
        for (var v = vans.Length - 1; v >= 0; v--)
            (starts[v], pairs[v]) = vans[v].R < 0 ? (starts[v + 1], pairs[v + 1]) : With(v + 1, vans[v].R, vans[v].F, sign);
    }

    /// <summary>The sums of all vans with their pairs.</summary>
    public IEnumerable<(int Sum, int Count, int F)> All
    {
        get
        {
            for (var sum = 0; sum <= limit; sum++)
            {
                for (var i = starts[0][sum]; i < starts[0][sum + 1]; i++)
                    yield return (sum, pairs[0][i].Count, pairs[0][i].F);
            }
        }
    }

    /// <summary>The least sum of f of a subset of the vans from one on, of just that sum and count; null: none that matters.</summary>
    public int? Least(int from, int sum, int count)
    {
        if (sum < 0 || sum > limit)
            return null;

        foreach (var pair in pairs[from].AsSpan(starts[from][sum]..starts[from][sum + 1]))
        {
            if (pair.Count == count)
                return pair.F;
        }

        return null;
    }

    private (int[] Starts, (int, int)[] Pairs) With(int later, int r, int f, int sign)
    {
        var (oldStarts, oldPairs) = (starts[later], pairs[later]);
        var newStarts = new int[oldStarts.Length];
        var kept = new List<(int Count, int F)>(oldPairs.Length + oldPairs.Length / 2);
        for (var sum = 0; sum <= limit; sum++)
        {
            newStarts[sum] = kept.Count;
            var without = oldPairs.AsSpan(oldStarts[sum]..oldStarts[sum + 1]);
            var with = sum < r ? [] : oldPairs.AsSpan(oldStarts[sum - r]..oldStarts[sum - r + 1]);
            Merge(kept, without, with, sign, f);
        }

        newStarts[limit + 1] = kept.Count;
        return (newStarts, [.. kept]);
    }

    /// <summary>Both lists run from the least count on with falling f; so does what is kept of them.</summary>
    private static void Merge(
        List<(int Count, int F)> kept, ReadOnlySpan<(int Count, int F)> without, ReadOnlySpan<(int Count, int F)> with, int count, int f)
    {
        var (a, b, leastF) = (0, 0, int.MaxValue);
        while (a < without.Length || b < with.Length)
        {
            var first = b >= with.Length || (a < without.Length && Before(without[a], (with[b].Count + count, with[b].F + f)));
            var next = first ? without[a++] : (with[b].Count + count, with[b++].F + f);
            if (next.Item2 < leastF)
            {
                kept.Add(next);
                leastF = next.Item2;
            }
        }
    }

    private static bool Before((int Count, int F) one, (int Count, int F) other) =>
        one.Count < other.Count || (one.Count == other.Count && one.F <= other.F);
}
