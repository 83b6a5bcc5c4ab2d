namespace Closeout.Restock;

/// <summary>What a van is to get of an item: units given, units aboard already, and the most it may carry.</summary>
public readonly record struct Portion(int Given, int Aboard, int High);

/// <summary>How one van's portion is packed.</summary>
/// <param name="Sealed">Sealed cartons.</param>
/// <param name="Loose">Loose units, from the bin or an opened carton.</param>
/// <param name="Up">Rounded up to a whole carton beyond what was given.</param>
public readonly record struct Packed(int Sealed, int Loose, bool Up);

/// <summary>Cartons opened at the depot, and every van's packing, in bay order.</summary>
public sealed record PackingPlan(int Opened, IReadOnlyList<Packed> Vans);

/// <summary>
/// Chooses cartons and loose units: fewest cartons opened; then most loose units handed out; then fewest vans rounded up;
/// then the lexicographically largest loose units in bay order. Exact.
/// </summary>
/// <remarks>
/// With f = given / c and r = given % c, a set U of vans rounded up and J cartons' worth handed out loose, loose units are
/// R(not U) + c * J and sealed cartons F + |U| - J, whichever vans the J fall on. So only U's size, its sum of r and its
/// least sum of f matter: a dynamic programme over (van, sum of r) that keeps the pairs (size, sum of f) nobody betters.
/// </remarks>
public static class Packing
{
    /// <param name="vans">Portions in bay order; together no more than bin + shelf * c.</param>
    /// <param name="unitsPerCarton">c, at least 1.</param>
    /// <param name="bin">Loose units at the depot.</param>
    /// <param name="shelf">Sealed cartons at the depot.</param>
    /// <exception cref="InvalidOperationException">More was given than there is.</exception>
    public static PackingPlan Pack(IReadOnlyList<Portion> vans, int unitsPerCarton, int bin, int shelf)
    {
        var remainders = new Remainders(vans, unitsPerCarton);
        for (var opened = 0; opened <= shelf; opened++)
        {
            if (remainders.Best(bin + opened * unitsPerCarton, shelf - opened) is { } packed)
            {
                return new(opened, packed);
            }
        }

        throw new InvalidOperationException($"{vans.Sum(v => v.Given)} units were given of {bin} loose and {shelf} cartons of {unitsPerCarton}");
    }
}

/// <summary>The choice for one item once the number of opened cartons is fixed.</summary>
file sealed class Remainders
{
    private readonly int c;
    private readonly (int F, int R, bool MayUp)[] vans;
    private readonly int sumF;
    private readonly int sumR;
    private Dictionary<int, List<(int Size, int F)>>[]? suffixes;

    public Remainders(IReadOnlyList<Portion> portions, int unitsPerCarton)
    {
        c = unitsPerCarton;
        vans = [.. portions.Select(p => (p.Given / c, p.Given % c, p.Given % c > 0 && p.Aboard + (p.Given / c + 1) * c <= p.High))];
        sumF = vans.Sum(v => v.F);
        sumR = vans.Sum(v => v.R);
    }

    /// <summary>The best packing with at most so many loose units and sealed cartons; null: there is none.</summary>
    public Packed[]? Best(int mostLoose, int mostSealed)
    {
        var none = Reach(0, 0, 0, mostLoose, mostSealed);
        if (none == Math.Min(mostLoose, sumR + c * sumF))
        {
            return Build(0, 0, none);
        }

        var ways = Suffixes[0]
            .SelectMany(s => s.Value.Select(w => (Rho: s.Key, w.Size, Loose: Reach(s.Key, w.Size, w.F, mostLoose, mostSealed))))
            .Where(w => w.Loose >= 0)
            .ToList();
        if (ways.Count == 0)
        {
            return null;
        }

        var loose = ways.Max(w => w.Loose);
        var size = ways.Where(w => w.Loose == loose).Min(w => w.Size);
        return ways.Where(w => w.Loose == loose && w.Size == size)
            .Select(w => w.Rho)
            .Distinct()
            .Select(rho => Build(rho, size, loose))
            .Aggregate((a, b) => Larger(a, b) ? a : b);
    }

    /// <summary>The most loose units with rounded-up vans of that many, sum of r and sum of f; below 0: impossible.</summary>
    private int Reach(int rho, int size, int f, int mostLoose, int mostSealed)
    {
        var room = mostLoose - (sumR - rho);
        if (room < 0)
        {
            return -1;
        }

        var cartons = Math.Min(sumF - f, room / c);
        return cartons < Math.Max(0, sumF + size - mostSealed) ? -1 : sumR - rho + c * cartons;
    }

    /// <summary>The lexicographically largest loose units with so many vans rounded up, of that sum of r.</summary>
    private Packed[] Build(int rho, int size, int loose)
    {
        var cartons = (loose - (sumR - rho)) / c;
        var laterF = sumF;
        var packed = new Packed[vans.Length];
        for (var v = 0; v < vans.Length; v++)
        {
            var (f, r, _) = vans[v];
            laterF -= f;
            var here = Math.Min(f, cartons);
            if (LeastF(v + 1, rho, size) is { } least && cartons - here <= laterF - least)
            {
                packed[v] = new(f - here, r + c * here, false);
                cartons -= here;
            }
            else
            {
                packed[v] = new(f + 1, 0, true);
                (rho, size) = (rho - r, size - 1);
            }
        }

        return packed;
    }

    private int? LeastF(int from, int rho, int size)
    {
        if (size == 0)
        {
            return rho == 0 ? 0 : null;
        }

        return Suffixes[from].TryGetValue(rho, out var ways)
            ? ways.Where(w => w.Size == size).Select(w => (int?)w.F).Min()
            : null;
    }

    /// <summary>For each van, over it and the later ones: sum of r of a rounded-up set -> its sizes, each with the least sum of f.</summary>
    private Dictionary<int, List<(int Size, int F)>>[] Suffixes
    {
        get
        {
            if (suffixes is not null)
            {
                return suffixes;
            }

            suffixes = new Dictionary<int, List<(int, int)>>[vans.Length + 1];
            suffixes[^1] = new() { [0] = [(0, 0)] };
            for (var v = vans.Length - 1; v >= 0; v--)
            {
                suffixes[v] = vans[v].MayUp ? With(suffixes[v + 1], vans[v].F, vans[v].R) : suffixes[v + 1];
            }

            return suffixes;
        }
    }

    private static Dictionary<int, List<(int Size, int F)>> With(Dictionary<int, List<(int Size, int F)>> later, int f, int r)
    {
        var ways = later.ToDictionary(s => s.Key, s => s.Value.ToList());
        foreach (var (rho, pairs) in later)
        {
            if (!ways.TryGetValue(rho + r, out var list))
            {
                ways[rho + r] = list = [];
            }

            foreach (var (size, sum) in pairs)
            {
                var at = list.FindIndex(w => w.Size == size + 1);
                if (at < 0)
                {
                    list.Add((size + 1, sum + f));
                }
                else if (list[at].F > sum + f)
                {
                    list[at] = (size + 1, sum + f);
                }
            }
        }

        return ways;
    }

    private static bool Larger(Packed[] a, Packed[] b)
    {
        for (var v = 0; v < a.Length; v++)
        {
            if (a[v].Loose != b[v].Loose)
            {
                return a[v].Loose > b[v].Loose;
            }
        }

        return true;
    }
}
