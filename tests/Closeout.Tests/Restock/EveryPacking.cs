using Closeout.Restock;

namespace Closeout.Tests.Restock;

/// <summary>The best packing found the long way: every choice of every van, as docs say it, and the best of all.</summary>
public static class EveryPacking
{
    /// <summary>The best plan, or null when no choice fits.</summary>
    public static PackingPlan? Best(IReadOnlyList<Portion> vans, int c, int bin, int shelf)
    {
        PackingPlan? best = null;
        foreach (var choice in Choices(vans, c, 0, []))
        {
            var loose = choice.Sum(p => p.Loose);
            var opened = Math.Max(0, (loose - bin + c - 1) / c);
            var plan = new PackingPlan(opened, choice);
            if (choice.Sum(p => p.Sealed) + opened <= shelf && (best is null || Compare(plan, best) < 0))
            {
                best = plan;
            }
        }

        return best;
    }

    private static IEnumerable<List<Packed>> Choices(IReadOnlyList<Portion> vans, int c, int v, List<Packed> before)
    {
        if (v == vans.Count)
        {
            return [before];
        }

        return Of(vans[v], c).SelectMany(p => Choices(vans, c, v + 1, [.. before, p]));
    }

    /// <summary>Exact: s cartons and the rest loose. Up: one carton more and nothing loose, where it fits below high.</summary>
    private static IEnumerable<Packed> Of(Portion van, int c)
    {
        var f = van.Given / c;
        for (var s = 0; s <= f; s++)
        {
            yield return new(s, van.Given - s * c, false);
        }

        if (van.Given % c != 0 && van.Aboard + (f + 1) * c <= van.High)
        {
            yield return new(f + 1, 0, true);
        }
    }

    /// <summary>Below zero: a is better. Fewest opened, most loose, fewest up, then the largest loose units in bay order.</summary>
    private static int Compare(PackingPlan a, PackingPlan b)
    {
        var order = a.Opened.CompareTo(b.Opened);
        order = order != 0 ? order : b.Vans.Sum(p => p.Loose).CompareTo(a.Vans.Sum(p => p.Loose));
        order = order != 0 ? order : a.Vans.Count(p => p.Up).CompareTo(b.Vans.Count(p => p.Up));
        return order != 0 ? order : b.Vans.Zip(a.Vans).Select(p => p.First.Loose.CompareTo(p.Second.Loose)).FirstOrDefault(x => x != 0);
    }
}
