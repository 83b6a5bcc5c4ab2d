namespace Closeout.Restock;

/// <summary>The packing of one item once the number of opened cartons is fixed. Exact; see <see cref="Packing"/>.</summary>
internal sealed class CartonChoice
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
            {
                (fixedF, fixedR) = (fixedF + f, fixedR + r);
            }
            else
            {
                mayUp++;
            }
        }

        oddUnits = [.. vans.Where(v => v.MayUp).Select(v => v.R).Order()];
    }

    /// <summary>Below so many opened cartons there is no packing: the odd units that cannot be rounded up would not suffice.</summary>
    public int LeastOpened(int bin) => (int)Math.Max(0, (fixedR - bin + c - 1) / c);

    /// <summary>The best packing with at most so many loose units and sealed cartons; null: there is none.</summary>
    public Packed[]? Best(long mostLoose, long mostSealed)
    {
        if (!MayExist(mostLoose, mostSealed))
        {
            return null;
        }

        // Nobody rounded up, and the loose units all used or all handed out: nothing is better.
        var none = Loose(0, 0, 0, mostLoose, mostSealed);
        if (none >= 0 && none == Math.Min(mostLoose, sumR + c * sumF))
        {
            return Build(new NobodyUp(this), none);
        }

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
            {
                break;
            }

            (room, saved) = (room - r, saved + 1);
        }

        return room >= 0 && saved + room / c >= sumF + mayUp - mostSealed;
    }

    /// <summary>The most loose units when vans of that many, sum of r and sum of f are rounded up; below 0: impossible.</summary>
    private long Loose(int ups, long rUps, long fUps, long mostLoose, long mostSealed)
    {
        var odd = sumR - rUps;
        if (odd > mostLoose)
        {
            return -1;
        }

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
            {
                continue;
            }

            if (loose > best || u < ups)
            {
                sums.Clear();
            }

            (best, ups) = (loose, u);
            if (!sums.Contains((sum, count)))
            {
                sums.Add((sum, count));
            }
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
            {
                return a[v].Loose > b[v].Loose;
            }
        }

        return false;
    }

    /// <summary>Subsets of the vans that may be rounded up, told by size, sum of r and sum of f.</summary>
    private abstract class Sets(CartonChoice choice, SubsetSums sums)
    {
        protected CartonChoice Choice => choice;

        protected SubsetSums Sums => sums;

        public IEnumerable<(int Sum, int Count, int F)> All => sums.All;

        /// <summary>Size, sum of r and sum of f of the vans rounded up by that set.</summary>
        public abstract (int Ups, long R, long F) Ups(int sum, int count, int f);

        public abstract Walk Of(int sum, int count);

        protected static SubsetSums SumsOf(CartonChoice choice, long limit, int sign) =>
            new([.. choice.vans.Select(v => v.MayUp ? (v.R, v.F * sign) : (-1, 0))], (int)Math.Min(limit, choice.sumR - choice.fixedR), sign);
    }

    /// <summary>The set is rounded up. Sets of c or more vans need no look: some of them sum to whole cartons and could stay exact.</summary>
    private sealed class UpSets(CartonChoice choice, long room)
        : Sets(choice, SumsOf(choice, Math.Max((long)choice.c * choice.c, room % choice.c), 1))
    {
        public override (int Ups, long R, long F) Ups(int sum, int count, int f) => (count, sum, f);

        public override Walk Of(int sum, int count) => new UpWalk(Choice, Sums, sum, count);
    }

    /// <summary>The set stays exact, all others that may be are rounded up.</summary>
    private sealed class ExactSets(CartonChoice choice, long room) : Sets(choice, SumsOf(choice, room, -1))
    {
        public override (int Ups, long R, long F) Ups(int sum, int count, int f) =>
            (Choice.mayUp + count, Choice.sumR - Choice.fixedR - sum, Choice.sumF - Choice.fixedF + f);

        public override Walk Of(int sum, int count) => new ExactWalk(Choice, Sums, sum, count);
    }

    /// <summary>Goes through the vans and keeps to sets that exist.</summary>
    private abstract class Walk
    {
        /// <summary>Sum of r of all vans not rounded up.</summary>
        public abstract long ExactR { get; }

        /// <summary>Whether the van may stay exact when the later ones must hand out so many cartons' worth loose; if so, it does.</summary>
        public abstract bool Stays(int v, long cartonsLater);
    }

    private sealed class NobodyUp(CartonChoice choice) : Walk
    {
        private long laterF = choice.sumF;

        public override long ExactR => choice.sumR;

        public override bool Stays(int v, long cartonsLater)
        {
            laterF -= choice.vans[v].F;
            return cartonsLater <= laterF;
        }
    }

    private sealed class UpWalk(CartonChoice choice, SubsetSums sums, int sum, int count) : Walk
    {
        private readonly long exactR = choice.sumR - sum;
        private (int Sum, int Count) left = (sum, count);
        private long laterF = choice.sumF;

        public override long ExactR => exactR;

        public override bool Stays(int v, long cartonsLater)
        {
            var van = choice.vans[v];
            laterF -= van.F;
            if (sums.Least(v + 1, left.Sum, left.Count) is { } f && cartonsLater <= laterF - f)
            {
                return true;
            }

            left = (left.Sum - van.R, left.Count - 1);
            return false;
        }
    }

    private sealed class ExactWalk(CartonChoice choice, SubsetSums sums, int sum, int count) : Walk
    {
        private readonly long exactR = choice.fixedR + sum;
        private (int Sum, int Count) left = (sum, count);
        private long laterFixedF = choice.fixedF;

        public override long ExactR => exactR;

        public override bool Stays(int v, long cartonsLater)
        {
            var van = choice.vans[v];
            if (!van.MayUp)
            {
                laterFixedF -= van.F;
                return true;
            }

            if (sums.Least(v + 1, left.Sum - van.R, left.Count + 1) is { } f && cartonsLater <= laterFixedF - f)
            {
                left = (left.Sum - van.R, left.Count + 1);
                return true;
            }

            return false;
        }
    }
}
