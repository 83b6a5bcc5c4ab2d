using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Negative binomial demand, failures before the r-th success of chance p: mean r (1-p) / p, variance mean / p. All seen.
/// </summary>
public class NegativeBinomialReferenceTests
{
    /// <summary>
    /// github.com/boostorg/math, test/test_negative_binomial.cpp, test_spots and cdf tests, 2006 (its references are
    /// MathCAD's).
    /// </summary>
    [Theory]
    [InlineData(2, 0.25, 0, 0.0625)]
    [InlineData(2, 0.5, 1, 0.5)]
    [InlineData(5, 0.4, 2, 0.096256)]    // printed 0.0962560000000002
    [InlineData(8, 0.25, 48, 0.9826582228110670)]
    [InlineData(8, 0.25, 0, 1.52587890625e-5)]
    [InlineData(8, 0.25, 1, 1.068115234375e-4)]
    [InlineData(8, 0.25, 2, 4.1580200195313e-4)]
    [InlineData(8, 0.25, 3, 1.1882781982422e-3)]
    [InlineData(8, 0.25, 4, 2.78151035308841e-3)]
    [InlineData(100, 0.9, 10, 0.4535522887695670)]
    [InlineData(100, 0.991, 1, 0.7693413044217000)]
    public void As_a_library_of_special_functions_tests_itself(double r, double p, int x, double atMost) =>
        Demand(r, p).AtMost(x).Should().BeApproximately(atMost, 1e-13);

    /// <summary>The same source: the upper tail at 48 of r = 8, p = 0.25, and the complement at 0 of r = 2, p = 0.25.</summary>
    [Fact]
    public void Upper_tails_as_that_library_has_them()
    {
        Demand(8, 0.25).Above(48).Should().BeApproximately(0.0173417771889330, 1e-14);
        Demand(2, 0.25).Above(0).Should().BeApproximately(0.9375, 1e-15);
    }

    /// <summary>
    /// Two sources that contradict each other, by the same file's comment: for r = 100, k = 100,000, p = 0.001 one system says
    /// 0.51730475342603 and another 0.51730475350683. The first is wrong from the tenth digit.
    /// </summary>
    [Fact]
    public void Of_two_published_values_ours_is_the_right_one() =>
        Demand(100, 0.001).AtMost(100_000).Should().BeApproximately(0.51730475350683, 1e-12).And.NotBeApproximately(0.51730475342603, 5e-11);

    /// <summary>
    /// Tests of Apache Commons Statistics, values computed with R: github.com/apache/commons-statistics at 033dc76,
    /// test.pascal.*.properties, r = 10, p = 0.7.
    /// </summary>
    [Theory]
    [InlineData(0, 0.0282475249)]
    [InlineData(1, 0.1129900996)]
    [InlineData(4, 0.58420118621935)]
    [InlineData(5, 0.72162144020436)]
    [InlineData(10, 0.98285518356874)]
    [InlineData(11, 0.99125984199604)]
    public void As_r_computes_it(int x, double atMost) => Demand(10, 0.7).AtMost(x).Should().BeApproximately(atMost, 1e-13);

    /// <summary>The same source.</summary>
    [Theory]
    [InlineData(4, 0.4157988137806499784)]
    [InlineData(5, 0.2783785597956361380)]
    [InlineData(10, 0.0171448164312584528)]
    [InlineData(11, 0.0087401580039625278)]
    public void The_chance_of_missing_as_r_computes_it(int x, double above) => Demand(10, 0.7).Above(x).Should().BeApproximately(above, 1e-15);

    /// <summary>The same source.</summary>
    [Theory]
    [InlineData(0.90, 8)]
    [InlineData(0.95, 9)]
    [InlineData(0.975, 10)]
    [InlineData(0.99, 11)]
    [InlineData(0.999, 14)]
    public void Quantiles_as_r_computes_them(double p, int quantile) => Demand(10, 0.7).Quantile(p).Should().Be(quantile);

    /// <summary>
    /// A published wrong value to guard against (M. Maechler, example-a.com/answer/23366503): a normal loss at 10 by 1 - cdf is
    /// 7.694599e-23 and truly 7.47456e-25. Ours takes the same difference: a tail below 1e-15 says nothing but that it is
    /// small. The screens show four decimals and sharing takes 1e-12 for a tie, so no decision hangs on it; it must never be
    /// below 0.
    /// </summary>
    [Fact]
    public void A_chance_too_small_to_tell_from_none_is_never_below_none()
    {
        foreach (var demand in new[] { new Demand(3, 3), Demand(10, 0.7), new Demand(700, 900) })
        {
            Enumerable.Range(0, 3000).Select(demand.Above).Should().OnlyContain(above => above >= 0);
            Enumerable.Range((int)demand.Mean + 600, 300).Select(demand.Above).Should().OnlyContain(above => above < 1e-12);
        }
    }

    private static Demand Demand(double r, double p) => new(r * (1 - p) / p, r * (1 - p) / p / p);
}
