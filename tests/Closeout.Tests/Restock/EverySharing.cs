namespace Closeout.Tests.Restock;

/// <summary>All ways to give what the depot has to vans that lack it, and how many units each leaves unmet on average.</summary>
internal static class EverySharing
{
    /// <summary>The least expected unmet units of all ways to hand out the supply.</summary>
    public static double Least(SharingCase t)
    {
        var unmet = t.Vans.Select(Table).ToList();
        return Ways(t, 0, Math.Min(t.Supply, t.Needs)).Min(given => given.Select((g, v) => unmet[v][g]).Sum());
    }

    /// <summary>The expected unmet units of one way.</summary>
    public static double Unmet(SharingCase t, IReadOnlyList<int> given) => t.Vans.Select((van, v) => Table(van)[given[v]]).Sum();

    private static double[] Table(Wanting van)
    {
        var unmet = new UnmetUnits(van.Mean, van.Variance);
        return [.. Enumerable.Range(0, van.Need + 1).Select(g => unmet.Above(van.Aboard + g))];
    }

    private static IEnumerable<int[]> Ways(SharingCase t, int v, int left)
    {
        if (v == t.Vans.Count)
        {
            return left == 0 ? [[]] : [];
        }

        return Enumerable.Range(0, Math.Min(left, t.Vans[v].Need) + 1).SelectMany(g => Ways(t, v + 1, left - g).Select(rest => (int[])[g, .. rest]));
    }
}
