namespace Closeout.Restock;

/// <summary>The packing of one item once the number of opened cartons is fixed. Exact; see <see cref="Packing"/>.</summary>
internal sealed partial class CartonChoice
{
    private readonly int c;
    private readonly (int F, int R, bool MayUp)[] vans;
    private readonly long sumF;
    private readonly long sumR;

    /// <summary>Sums over the vans that cannot be rounded up.</summary>
    private readonly long fixedF;
    private readonly long fixedR;
    private readonly int mayUp;

    /// <summary>The odd units of the vans that can, the smallest first.</summary>
    private readonly int[] oddUnits;

    public CartonChoice(IReadOnlyList<Portion> portions, int unitsPerCarton)
    {
        c = unitsPerCarton;
        vans = new (int, int, bool)[portions.Count];
        for (var v = 0; v < vans.Length; v++)
        {
            var (f, r) = Math.DivRem(portions[v].Given, c);
            vans[v] = (f, r, r > 0 && portions[v].Aboard + (f + 1L) * c <= portions[v].High);
            (sumF, sumR) = (sumF + f, sumR + r);
            if (!vans[v].MayUp)
                (fixedF, fixedR) = (fixedF + f, fixedR + r);
            else
                mayUp++;
        }

        oddUnits = [.. vans.Where(v => v.MayUp).Select(v => v.R).Order()];
    }

    /// <summary>Below so many opened cartons there is no packing: the odd units that cannot be rounded up would not suffice.</summary>
    public int LeastOpened(int bin) => (int)Math.Max(0, (fixedR - bin + c - 1) / c);

    /// <summary>The best packing with at most so many loose units and sealed cartons; null: there is none.</summary>
    public Packed[]? Best(long mostLoose, long mostSealed)
    {
        if (!MayExist(mostLoose, mostSealed))
            return null;

        // Nobody rounded up, and the loose units all used or all handed out: nothing is better.
        var none = Loose(0, 0, 0, mostLoose, mostSealed);
        if (none >= 0 && none == Math.Min(mostLoose, sumR + c * sumF))
            return Build(new NobodyUp(this), none);

        // Where the odd units fit into what is loose, few vans are rounded up; where they do not, few stay exact.
        return mostLoose >= sumR
            ? Best(new UpSets(this, mostLoose - sumR), mostLoose, mostSealed)
            : Best(new ExactSets(this, mostLoose - fixedR), mostLoose, mostSealed);
    }

    /// <summary>
    /// Whether the sealed cartons could suffice at all: each van that stays exact and each carton's worth handed out loose
    /// saves one, and the smallest odd units save the most. Spares the look at hopeless numbers of opened cartons.
    /// </summary>
    private bool MayExist(long mostLoose, long mostSealed)
    {
        var room = mostLoose - fixedR;
        var saved = 0L;
        foreach (var r in oddUnits)
        {
            if (r > room)
                break;

            (room, saved) = (room - r, saved + 1);
        }

        return room >= 0 && saved + room / c >= sumF + mayUp - mostSealed;
    }

    /// <summary>The most loose units when vans of that many, sum of r and sum of f are rounded up; below 0: impossible.</summary>
    private long Loose(int ups, long rUps, long fUps, long mostLoose, long mostSealed)
    {
        var odd = sumR - rUps;
        if (odd > mostLoose)
            return -1;

        var cartons = Math.Min(sumF - fUps, (mostLoose - odd) / c);
        return cartons < Math.Max(0, sumF + ups - mostSealed) ? -1 : odd + c * cartons;
    }

    private Packed[]? Best(Sets sets, long mostLoose, long mostSealed)
    {
        var (best, ups, sums) = (-1L, int.MaxValue, new List<(int Sum, int Count)>());
        foreach (var (sum, count, f) in sets.All)
        {
            var (u, rUps, fUps) = sets.Ups(sum, count, f);
            var loose = Loose(u, rUps, fUps, mostLoose, mostSealed);
            if (loose < 0 || loose < best || (loose == best && u > ups))
                continue;

            if (loose > best || u < ups)
                sums.Clear();

            (best, ups) = (loose, u);
            if (!sums.Contains((sum, count)))
                sums.Add((sum, count));
        }

        Packed[]? largest = null;
        foreach (var (sum, count) in sums)
        {
            var packed = Build(sets.Of(sum, count), best);
            largest = largest is null || IsLarger(packed, largest) ? packed : largest;
        }

        return largest;
    }

    /// <summary>The lexicographically largest loose units among the sets that the walk still allows.</summary>
    private Packed[] Build(Walk walk, long loose)
    {
        var cartons = (loose - walk.ExactR) / c;
        var packed = new Packed[vans.Length];
        for (var v = 0; v < vans.Length; v++)
        {
            var (f, r, may) = vans[v];
            var here = (int)Math.Min(f, cartons);
            if (walk.Stays(v, cartons - here))
            {
                packed[v] = new(f - here, r + c * here, false);
                cartons -= here;
            }
            else
            {
                packed[v] = may ? new(f + 1, 0, true) : throw new InvalidOperationException("the packing found does not exist");
            }
        }

        return packed;
    }

    private static bool IsLarger(Packed[] a, Packed[] b)
    {
        for (var v = 0; v < a.Length; v++)
        {
            if (a[v].Loose != b[v].Loose)
                return a[v].Loose > b[v].Loose;
        }

        return false;
    }
}
