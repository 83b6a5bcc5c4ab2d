using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>Poisson and negative binomial against published values, all seen in a copy of the source.</summary>
public class DistributionReferenceTests
{
    /// <summary>
    /// Cumulative Poisson Distribution Table, scribd.com/document/96601458, mean 10 scribd.com/document/37416648: four
    /// decimals. For mean 4 also Stevenson, Operations Management, 14th ed., 2021, p. 537.
    /// </summary>
    [Theory]
    [InlineData(0.5, "0.6065 0.9098 0.9856 0.9982 0.9998 1.0000")]
    [InlineData(1, "0.3679 0.7358 0.9197 0.9810 0.9963 0.9994")]
    [InlineData(2, "0.1353 0.4060 0.6767 0.8571 0.9473 0.9834 0.9955 0.9989 0.9998")]
    [InlineData(3, "0.0498 0.1991 0.4232 0.6472 0.8153 0.9161 0.9665 0.9881 0.9962 0.9989")]
    [InlineData(4, "0.0183 0.0916 0.2381 0.4335 0.6288 0.7851 0.8893 0.9489 0.9786 0.9919")]
    [InlineData(5, "0.0067 0.0404 0.1247 0.2650 0.4405 0.6160 0.7622 0.8666 0.9319 0.9682 0.9863")]
    [InlineData(10, "0.0000 0.0005 0.0028 0.0103 0.0293")]
    public void The_table_of_poisson_says_the_same(double mean, string table) => Are(new(mean, mean), table, 0.5e-4);

    /// <summary>
    /// Tests of Apache Commons Statistics, values computed with R: github.com/apache/commons-statistics at 033dc76,
    /// test.poisson.*.properties.
    /// </summary>
    [Theory]
    [InlineData(0.75, "0.47236655274101469 0.82664146729677568 0.95949456025518609 0.99270783349478875")]
    [InlineData(4, "0.01831563888873418 0.09157819444367089 0.23810330555354428 0.4334701203667089 0.6288369351798735 0.7851303870304054")]
    public void Poisson_to_the_last_digits_that_r_prints(double mean, string values) => Are(new(mean, mean), values, 1e-15);

    /// <summary>The same source: mean 10 at 5, 10, 15, 20.</summary>
    [Fact]
    public void Poisson_of_mean_ten_as_r_prints_it() =>
        new[] { 5, 10, 15, 20 }.Select(new Demand(10, 10).AtMost).Zip([0.06708596287903189, 0.5830397501929849, 0.9512595966960212, 0.9984117393381420])
            .Should().AllSatisfy(v => v.First.Should().BeApproximately(v.Second, 1e-15));

    /// <summary>
    /// University of Massachusetts, Warring States Project, statistics tables, umass.edu/wsp/statistics/tables/poisson2.html:
    /// single chances of mean 10, four decimals.
    /// </summary>
    /// <remarks>Single chances, not cumulated: the first two columns alone would pass as either.</remarks>
    [Fact]
    public void Single_chances_of_mean_ten() =>
        Enumerable.Range(0, 6).Select(x => new Demand(10, 10).AtMost(x) - new Demand(10, 10).AtMost(x - 1)).Zip([0, 0.0005, 0.0023, 0.0076, 0.0189, 0.0378])
            .Should().AllSatisfy(v => v.First.Should().BeApproximately(v.Second, 0.5e-4));

    /// <summary>Cachon and Terwiesch, Matching Supply with Demand, 3rd ed., 2013, Statistics Tutorial, p. 431.</summary>
    [Fact]
    public void A_night_s_shortfall_by_what_is_aboard()
    {
        var demand = new Demand(1.25, 1.25);
        Are(demand, "0.286505 0.644636 0.868468 0.961731 0.990876 0.998162", 0.5e-6);
        Enumerable.Range(0, 7).Select(x => Unmet(demand, x)).Zip([1.25000, 0.53650, 0.18114, 0.04961, 0.01134, 0.00221, 0.00038])
            .Should().AllSatisfy(v => v.First.Should().BeApproximately(v.Second, 0.5e-5));
    }

    /// <summary>
    /// Loss functions after Zipkin, Foundations of Inventory Management, 2000, and Snyder and Shen, 2019, as the latter's
    /// library tests them: github.com/LarrySnyder/stockpyl at 0bae176, loss_functions. Expected units unmet, expected units
    /// left.
    /// </summary>
    [Theory]
    [InlineData(15, 15, 18, 0.5176095282584724, 3.5176095282584723)]
    [InlineData(200, 200, 220, 0.536005857158494, 20.536005857158482)]
    [InlineData(7, 7, 5, 2.292600125697305, 0.292600125697305)]
    [InlineData(47, 47, 50, 1.514546939496945, 4.514546939496945)]
    [InlineData(23, 64, 14, 9.326459980156931, 0.32645998015693145)]    // negative binomial, mean 23 sd 8
    [InlineData(16, 80, 14, 4.447304632028364, 2.447304632028364)]    // r = 4, p = 0.2
    [InlineData(70 / 3.0, 700 / 9.0, 28, 1.805485505752903, 6.472154141707762, 1e-5)] // mean and sd printed as 23.3333 and 8.81917
    public void The_expected_shortfall_is_as_published(double mean, double variance, int units, double unmet, double left, double within = 1e-11)
    {
        var demand = new Demand(mean, variance);
        Unmet(demand, units).Should().BeApproximately(unmet, within);
        (units - mean + Unmet(demand, units)).Should().BeApproximately(left, within);
    }

    /// <summary>
    /// Stevenson, Operations Management, table 13.3, unit normal loss, seen at holooly.com, question 13.P.7 (its typing errors
    /// left out); from the loss functions above at 0.3, 1.3 and -1.4. A Poisson demand of mean 10,000 is nearly normal: what it
    /// leaves unmet at mean + z sd, in sd, differs from the table by its skewness, 0.01 / 6 * z * density, 0.0005 at most, and
    /// by the table's last digit.
    /// </summary>
    [Theory]
    [InlineData(-2.40, 2.403)]
    [InlineData(-2.00, 2.008)]
    [InlineData(-1.40, 1.436668)]
    [InlineData(-0.40, 0.630)]
    [InlineData(0.30, 0.266761)]
    [InlineData(0.80, 0.120)]
    [InlineData(1.00, 0.083)]
    [InlineData(1.28, 0.048)]
    [InlineData(1.30, 0.045528)]
    [InlineData(1.40, 0.037)]
    [InlineData(2.40, 0.003)]
    [InlineData(3.00, 0.0004)]
    public void A_great_poisson_demand_has_the_normal_loss(double z, double loss) =>
        (Unmet(new(10_000, 10_000), 10_000 + (int)Math.Round(100 * z)) / 100).Should().BeApproximately(loss, 0.0005 + 0.0005);

    private static void Are(Demand demand, string table, double within) => table.Split(' ').Select(double.Parse).Index()
        .Should().AllSatisfy(v => demand.AtMost(v.Index).Should().BeApproximately(v.Item, within, $"x = {v.Index}"));

    /// <summary>E[(D - units)+] = sum of P(D > x) from x = units on.</summary>
    internal static double Unmet(Demand demand, int units)
    {
        var sum = 0.0;
        for (var x = units; x < demand.Mean || demand.Above(x) > 1e-17; x++)
        {
            sum += demand.Above(x);
        }

        return sum;
    }
}
