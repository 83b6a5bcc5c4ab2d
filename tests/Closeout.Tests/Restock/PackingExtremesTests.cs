using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Depots far larger than any, and cartons of one: the same answer, soon.</summary>
/// <remarks>Effort is measured in bytes allocated, for a clock says little on a busy machine: a gigabyte takes about a second.</remarks>
public class PackingExtremesTests
{
    [Fact]
    public void Cartons_of_one_are_handed_out_loose_as_far_as_the_bin_goes() =>
        Packing.Pack([new(5, 0, 9), new(4, 0, 9)], 1, 6, 9)
            .Should().BeEquivalentTo(new PackingPlan(0, [new(0, 5, false), new(3, 1, false)]), o => o.WithStrictOrdering());

    [Theory]
    [InlineData(10, 0)]       // an empty bin
    [InlineData(24, 0)]
    [InlineData(24, 700)]     // a bin that serves some
    [InlineData(48, 1500)]
    [InlineData(144, 4000)]   // a gross: small parts come in such cartons
    public void Two_hundred_vans_are_packed_with_little_effort(int c, int bin)
    {
        var vans = Enumerable.Range(0, 200).Select(v => new Portion(v * 37 % (3 * c), v * 5 % 23, 5 * c)).ToList();
        var shelf = vans.Sum(v => v.Given) / c + 1;
        PackingPlan? plan = null;

        Effort(() => plan = Packing.Pack(vans, c, bin, shelf)).Should().BeLessThan(Gigabyte);

        plan!.Vans.Zip(vans).Should().NotContain(p => p.First.Sealed * c + p.First.Loose < p.Second.Given);
    }

    [Fact]
    public void Big_numbers_do_not_overflow()
    {
        var vans = new[] { new Portion(1_000_000, 0, 1_000_000), new Portion(999_999, 0, 2_000_000) };
        var plan = Packing.Pack(vans, 100_000, 50_000, 10_000);
        plan.Vans.Sum(p => p.Sealed * 100_000 + p.Loose).Should().BeGreaterThanOrEqualTo(1_999_999);
    }

    [Fact]
    public void A_supply_in_millions_of_cartons_takes_no_longer()
    {
        PackingPlan? plan = null;
        Effort(() => plan = Packing.Pack([new(15, 0, 15), new(7, 0, 7)], 10, 0, 1_000_000)).Should().BeLessThan(Gigabyte / 100);
        plan!.Opened.Should().Be(2);
    }

    private const long Gigabyte = 1_000_000_000;

    private static long Effort(Action act)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        act();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
