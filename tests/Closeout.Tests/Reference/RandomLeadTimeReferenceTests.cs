using Closeout.Restock;
using FluentAssertions;
using MathNet.Numerics.Distributions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Demand over a lead time that itself varies: mean D L, variance L v + D^2 s2. Chopra and Meindl, Supply Chain Management: Strategy,
/// Planning, and Operation (Prentice Hall), chapter on safety inventory, the example of a maker of computers: 2,500 a day with a standard
/// deviation of 500, a lead time of 7 days with one of 7; during it 17,500, give or take 17,550, and 22,491 for a cycle service of 90 %.
/// From memory.
/// </summary>
public class RandomLeadTimeReferenceTests
{
    [Fact]
    public void A_lead_time_as_uncertain_as_it_is_long()
    {
        var demand = Reorder.Over(new(2_500, 500 * 500), 0, new SupplierRecord(7, 7 * 7, 1, []));
        demand.Mean.Should().Be(17_500);
        Math.Sqrt(demand.Variance).Should().BeApproximately(17_550, 0.5);
        (Normal.InvCDF(0, 1, 0.9) * Math.Sqrt(demand.Variance)).Should().BeApproximately(22_491, 1);
    }

    [Fact]
    public void Days_drawn_by_lot_have_the_mean_and_variance_that_the_formula_says()
    {
        // Another road: 200,000 lead times of 5 days and 0, 0, 3 or 5 more, each day Poisson with mean 2.
        var lots = new Random(66);
        int[] late = [0, 0, 3, 5];
        var sums = Enumerable.Range(0, 200_000).Select(_ => (double)Poisson.Sample(lots, 2.0 * (5 + late[lots.Next(4)]))).ToList();
        var record = new SupplierRecord(2, 4.5, 1, []);
        var demand = Reorder.Over(new(2, 2), 5, record);
        sums.Average().Should().BeApproximately(demand.Mean, 0.05);
        sums.Sum(s => (s - sums.Average()) * (s - sums.Average()) / sums.Count).Should().BeApproximately(demand.Variance, 0.4);
    }
}
