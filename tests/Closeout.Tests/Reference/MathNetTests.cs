using Closeout.Restock;
using Closeout.Tests.Restock;
using FluentAssertions;
using MathNet.Numerics;
using MathNet.Numerics.Distributions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Against a general library, MathNet.Numerics 5.0.0: Poisson by its incomplete gamma function, negative binomial by its
/// incomplete beta function.
/// </summary>
public class MathNetTests
{
    private static readonly double[] Means = [0.01, 0.3, 1, 2.5, 7, 20, 55, 130, 420, 900, 2_500];

    [Fact]
    public void Poisson_agrees_over_a_grid_of_means() => Worst(1).Should().BeLessThan(4e-12);

    [Theory]
    [InlineData(1.05, 1e-10)]
    [InlineData(1.3, 1e-11)]
    [InlineData(2, 6e-12)]
    [InlineData(6, 6e-12)]
    [InlineData(40, 6e-12)]
    public void Negative_binomial_agrees_over_a_grid_of_means_and_variances(double lumpy, double within) => Worst(lumpy).Should().BeLessThan(within);

    /// <summary>
    /// Why the product sums terms itself. The closer the variance is to the mean, the larger the size, and the logarithms of
    /// gamma functions of such sizes cancel: the library's chance is wrong in the sixth decimal, then in the first, then is no
    /// chance at all, and a quantile by it is hundreds of units off. Ours stays right. When this fails, the library got better.
    /// </summary>
    [Theory]
    [InlineData(50, 1e-6, 1e-8)]
    [InlineData(50, 1e-9, 1e-5)]
    [InlineData(50, 1e-12, 1e-2)]
    [InlineData(20_000, 1e-6, 1e-6)]
    [InlineData(20_000, 1e-9, 1e-3)]
    [InlineData(20_000, 1e-12, 2)]
    public void The_library_fails_where_the_variance_is_hardly_above_the_mean(double mean, double hair, double atLeast)
    {
        var variance = mean * (1 + hair);
        var exact = new ExactDemand(mean, variance);
        var around = Enumerable.Range((int)(mean - 4 * Math.Sqrt(mean)), (int)(8 * Math.Sqrt(mean))).ToList();
        around.Max(x => Math.Abs(Library(mean, variance, x) - exact.AtMost(x))).Should().BeGreaterThan(atLeast);
        around.Max(x => Math.Abs(new Demand(mean, variance).AtMost(x) - exact.AtMost(x))).Should().BeLessThan(1e-11);
    }

    private static double Worst(double lumpy) => Means.Max(mean =>
    {
        var ours = new Demand(mean, mean * lumpy);
        return Enumerable.Range(0, ours.Quantile(0.9999) + 1).Max(x => Math.Abs(ours.AtMost(x) - Library(mean, mean * lumpy, x)));
    });

    private static double Library(double mean, double variance, int x) => variance <= mean
        ? Poisson.CDF(mean, x)
        : SpecialFunctions.BetaRegularized(mean * mean / (variance - mean), x + 1.0, mean / variance);
}
