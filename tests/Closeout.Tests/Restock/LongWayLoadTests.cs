using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>The plan within the vans' payloads agrees with a reckoning the long way, to the unit.</summary>
public class LongWayLoadTests
{
    [Theory]
    [InlineData(1, 4, 3, 200)]
    [InlineData(2, 4, 4, 150)]
    [InlineData(3, 3, 5, 150)]
    [InlineData(3, 4, 10, 150)]
    [InlineData(4, 3, 12, 100)]
    public void Every_line_is_what_the_long_way_finds(int vans, int items, int unitsPerCarton, int samples)
    {
        var cut = 0;
        HeavyDepot.Of(vans, items, unitsPerCarton).Holds(
            drawn =>
            {
                var depot = drawn.Depot();
                var (plan, longWay) = (RestockPlan.For(depot), new LongWayLoad(depot));
                plan.Lines.Select(l => (l.Van.Code, l.Item.Code, l.Target.Units, l.Sealed, l.FromBin + l.FromOpened, l.Short)).Should().BeEquivalentTo(
                    longWay.Loads.Select(l => (l.Want.Van.Code, l.Item.Code, l.Target, l.Sealed, l.Loose, l.Short)));
                foreach (var weight in plan.Weights)
                {
                    weight.LoadedLb.Should().BeApproximately((double)longWay.Weight(weight.Van), 1e-9);
                    cut += weight.Cut.Count;
                }
            },
            samples);
        cut.Should().BeGreaterThan(50);
    }
}
