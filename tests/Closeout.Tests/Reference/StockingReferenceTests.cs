using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>Stocking levels for one period, the quantile at the critical ratio, against textbooks.</summary>
public class StockingReferenceTests
{
    /// <summary>
    /// Stevenson, Operations Management, 14th ed., 2021, chapter 12, example 15, p. 537, seen: mean 4 dozen, shortage 3, excess
    /// 2: level 0.60, stock 4.
    /// </summary>
    [Fact]
    public void Four_dozen_for_a_mean_of_four() => new Demand(4, 4).Quantile(3 / (3 + 2.0)).Should().Be(4);

    /// <summary>
    /// Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., 2019, seen as the author's library tests it,
    /// github.com/LarrySnyder/stockpyl at 0bae176: holding h, penalty p, stock S* and its cost h E(S-D)+ + p E(D-S)+. Example
    /// 4.7, the library's doctest, problem 4.8a, problem 4.19 (18 a period over a lead time of 4 and the period itself).
    /// </summary>
    [Theory]
    [InlineData(6, 1, 4, 8, 3.570106945770946)]
    [InlineData(50, 0.18, 0.70, 56, 1.797235211809178)]
    [InlineData(18, 200, 270, 19, 786.0884409351115)]
    [InlineData(90, 0.08, 1.25, 105, 1.5450188691551778)]
    public void The_cheapest_stock_is_the_quantile_at_the_critical_ratio(double mean, double h, double p, int stock, double cost)
    {
        new Demand(mean, mean).Quantile(p / (h + p)).Should().Be(stock);
        Cost(mean, h, p, stock).Should().BeApproximately(cost, 1e-9);
        Cost(mean, h, p, stock).Should().BeLessThan(Cost(mean, h, p, stock - 1)).And.BeLessThan(Cost(mean, h, p, stock + 1));
    }

    /// <summary>The same, seen: what other stocks would cost. Example 4.7 at 5, problem 4.8a at 13.</summary>
    [Theory]
    [InlineData(6, 1, 4, 5, 6.590296024616344)]
    [InlineData(18, 200, 270, 13, 1445.751062891969)]
    public void Another_stock_costs_as_published(double mean, double h, double p, int stock, double cost) => Cost(mean, h, p, stock).Should().BeApproximately(cost, 1e-9);

    /// <summary>
    /// Cachon and Terwiesch, Matching Supply with Demand, 3rd ed., 2013, chapter 14, shirts: problem seen at solutioninn.com,
    /// answers derived. 1.5 a day over 3 + 1 days.
    /// </summary>
    [Fact]
    public void Shirts_over_four_days()
    {
        new Demand(6, 6).Above(8).Should().BeApproximately(0.1528, 0.5e-4);
        new Demand(6, 6).Quantile(6 / 6.01).Should().Be(14);
    }

    /// <summary>
    /// Stevenson, Operations Management, 14th ed., 2021, p. 537, seen: a level that is itself a cumulative chance makes that
    /// stock and the next cost the same. Ours takes the smaller.
    /// </summary>
    [Theory]
    [InlineData(4, 3)]
    [InlineData(4, 5)]
    [InlineData(18, 20)]
    public void A_level_that_is_a_chance_itself_is_met_by_its_own_stock(double mean, int stock)
    {
        var level = new Demand(mean, mean).AtMost(stock);
        new Demand(mean, mean).Quantile(level).Should().Be(stock);
        new Demand(mean, mean).Quantile(Math.BitIncrement(level)).Should().Be(stock + 1);
        Cost(mean, 1 - level, level, stock).Should().BeApproximately(Cost(mean, 1 - level, level, stock + 1), 1e-12);
    }

    /// <summary>
    /// Derived from the Poisson tables, not published: two items of means 2 and 4, six units; giving each unit where it is most
    /// likely wanted serves 4.677192 units, 2 of the one and 4 of the other, by B B A B A B. That this is best where chances
    /// fall: Federgruen and Groenevelt, "The Greedy Procedure for Resource Allocation Problems", Operations Research 34(6), 1986.
    /// </summary>
    [Fact]
    public void Six_units_shared_by_two_serve_most()
    {
        var (a, b) = (new Demand(2, 2), new Demand(4, 4));
        Claim[] claims = [new(6, 0, a.Above), new(6, 0, b.Above)];
        var order = string.Concat(Enumerable.Range(1, 6).Select(u => Sharing.ByChance(claims, u)[1] > Sharing.ByChance(claims, u - 1)[1] ? 'B' : 'A'));
        order.Should().Be("BBABAB");
        Enumerable.Range(0, 7).Max(g => Served(a, g) + Served(b, 6 - g)).Should().BeApproximately(4.677192, 0.5e-6).And.Be(Served(a, 2) + Served(b, 4));
    }

    private static double Served(Demand demand, int units) => Enumerable.Range(0, units).Sum(demand.Above);

    private static double Cost(double mean, double h, double p, int stock)
    {
        var unmet = DistributionReferenceTests.Unmet(new(mean, mean), stock);
        return h * (stock - mean + unmet) + p * unmet;
    }
}
