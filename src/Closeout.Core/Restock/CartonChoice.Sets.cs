namespace Closeout.Restock;

/// <summary>Which vans are rounded up: the sets that exist, and walks through the vans that keep to them.</summary>
internal sealed partial class CartonChoice
{
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
            new([.. choice.vans.Select(v => v.MayUp ? (v.R, v.F * sign) : (-1, 0))], (int)Math.Min(limit, choice.sumR - choice.fixedR),
                sign);
    }

    /// <summary>
    /// The set is rounded up. Sets of c or more vans need no look: some of them sum to whole cartons and could stay exact.
    /// </summary>
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

        /// <summary>
        /// Whether the van may stay exact when the later ones must hand out so many cartons' worth loose; if so, it does.
        /// </summary>
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
                return true;

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
