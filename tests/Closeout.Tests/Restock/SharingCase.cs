using Closeout.Restock;
using CsCheck;

namespace Closeout.Tests.Restock;

/// <summary>A van of a case: the demand's mean and variance, what is aboard, and what it lacks.</summary>
internal sealed record Wanting(double Mean, double Variance, int Aboard, int Need)
{
    public Claim Claim => new(Need, Aboard, (Mean > 0 ? new Demand(Mean, Variance) : Demand.Nothing).Above);
}

/// <summary>Vans that want an item, in bay order, and what the depot has of it.</summary>
internal sealed record SharingCase(IReadOnlyList<Wanting> Vans, int Supply)
{
    public int[] Given => Sharing.ByChance([.. Vans.Select(v => v.Claim)], Supply);

    public int Needs => Vans.Sum(v => v.Need);

    /// <summary>Vans of one kind of depot: quiet or busy, steady or lumpy, some without a booking, some with the same bookings.</summary>
    public static Gen<SharingCase> Of(int mostVans, int mostNeed, double mostMean) =>
        from vans in Van(mostNeed, mostMean).Array[1, mostVans]
        from twins in Gen.Frequency((3, Gen.Const(false)), (1, Gen.Const(true)))
        let all = twins && vans.Length > 1 ? [.. vans[1..], vans[^1]] : vans
        from supply in Gen.Int[0, Math.Max(1, all.Sum(v => v.Need))]
        select new SharingCase(all, supply);

    private static Gen<Wanting> Van(int mostNeed, double mostMean) =>
        from mean in Gen.Frequency((4, Gen.Double[0.01, mostMean]), (1, Gen.Const(0.0)), (1, Gen.OneOf(Gen.Const(0.5), Gen.Const(2.0))))
        from lumpy in Gen.Frequency((1, Gen.Const(1.0)), (2, Gen.Double[1.001, 4]))
        from aboard in Gen.Int[0, (int)(mostMean * 0.7)]
        from need in Gen.Int[0, mostNeed]
        select new Wanting(mean, mean * lumpy, aboard, need);
}
