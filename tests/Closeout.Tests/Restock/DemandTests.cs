using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class DemandTests
{
    /// <summary>Means from hundredths to hundreds, with variances below, at, hardly above and far above the mean.</summary>
    private static readonly Gen<(double Mean, double Variance)> Any =
        from mean in Gen.Frequency((3, Gen.Double[0.01, 5]), (2, Gen.Double[5, 60]), (1, Gen.Double[60, 900]))
        from lumpy in Gen.Frequency((1, Gen.Const(0.5)), (1, Gen.Const(1.0)), (1, Gen.Double[1, 1.0001]), (3, Gen.Double[1.0001, 12]))
        select (mean, mean * lumpy);

    /// <summary>Around 576 and 746 the first term of Poisson leaves what a double can hold, by our measure and at all.</summary>
    public static TheoryData<double> Means => [0.001, 1, 50, 575, 576, 745, 746, 5_000, 20_000];

    private static IEnumerable<(double Mean, double Variance)> Extremes(double mean) =>
        new[] { 1, 1 + 1e-12, 1 + 1e-9, 1 + 1e-6, 1.001, 1.5, 4, 30 }.Select(lumpy => (mean, mean * lumpy));

    [Theory]
    [InlineData(0, 0, Spread.None)]
    [InlineData(0, 3, Spread.None)]
    [InlineData(2, 1.9, Spread.Poisson)]
    [InlineData(2, 2, Spread.Poisson)]
    [InlineData(2, 2.0000000000000004, Spread.NegativeBinomial)]
    public void The_spread_follows_from_mean_and_variance(double mean, double variance, Spread spread) => new Demand(mean, variance).Spread.Should().Be(spread);

    [Fact]
    public void Nothing_is_demanded_where_nothing_is_booked()
    {
        foreach (var nothing in new[] { Demand.Nothing, new Demand(0, 0), new Demand(0, 5) })
        {
            (nothing.AtMost(-1), nothing.AtMost(0), nothing.Above(0), nothing.Above(-1), nothing.Quantile(0.999)).Should().Be((0, 1, 0, 1, 0));
        }
    }

    [Theory]
    [MemberData(nameof(Means))]
    public void Every_chance_is_right_to_a_part_in_ten_to_the_eleventh(double mean) =>
        Extremes(mean).Should().AllSatisfy(d => IsRight(d.Mean, d.Variance, 1e-11));

    [Fact]
    public void Whatever_the_mean_and_variance_every_chance_is_right() => Any.Holds(d => IsRight(d.Mean, d.Variance, 1e-12), 60);

    private static void IsRight(double mean, double variance, double within)
    {
        var (ours, exact) = (new Demand(mean, variance), new ExactDemand(mean, variance));
        var worst = Enumerable.Range(0, exact.Last + 2).Max(x => Math.Abs(ours.AtMost(x) - exact.AtMost(x)));
        worst.Should().BeLessThan(within);
        ours.AtMost(int.MaxValue).Should().Be(1, "and asking far out is answered at once");
    }

    [Theory]
    [MemberData(nameof(Means))]
    public void The_chances_never_fall_and_end_at_one(double mean)
    {
        foreach (var (_, variance) in Extremes(mean))
        {
            var demand = new Demand(mean, variance);
            var last = demand.Quantile(0.9999999999);
            var chances = Enumerable.Range(-1, last + 2).Select(demand.AtMost).ToList();
            chances.Zip(chances.Skip(1)).Should().NotContain(c => c.First > c.Second || c.Second > 1);
            demand.AtMost(last * 4 + 100).Should().BeInRange(1 - 1e-11, 1);
        }
    }

    [Theory]
    [MemberData(nameof(Means))]
    public void The_quantile_is_the_smallest_that_keeps_the_promise(double mean)
    {
        foreach (var (demand, p) in from d in Extremes(mean) from p in new[] { 0.001, 0.5, 0.9, 0.95, 0.98, 0.999, 0.999999 } select (new Demand(d.Mean, d.Variance), p))
        {
            var q = demand.Quantile(p);
            demand.AtMost(q).Should().BeGreaterThanOrEqualTo(p);
            demand.AtMost(q - 1).Should().BeLessThan(p);
        }
    }

    [Theory]
    [MemberData(nameof(Means))]
    public void The_quantile_is_that_of_the_exact_chances_unless_a_chance_is_the_promise_itself(double mean)
    {
        foreach (var (_, variance) in Extremes(mean))
        {
            var (ours, exact) = (new Demand(mean, variance), new ExactDemand(mean, variance));
            foreach (var p in new[] { 0.9, 0.95, 0.98, 0.999 })
            {
                var q = ours.Quantile(p);
                exact.AtMost(q).Should().BeGreaterThan(p - 1e-11);
                exact.AtMost(q - 1).Should().BeLessThan(p + 1e-11);
            }
        }
    }

    [Fact]
    public void A_higher_promise_never_asks_for_less() => Gen.Select(Any, Gen.Double[0.01, 0.98]).Holds(
        t => new Demand(t.Item1.Mean, t.Item1.Variance).Quantile(t.Item2 + 0.01)
            .Should().BeGreaterThanOrEqualTo(new Demand(t.Item1.Mean, t.Item1.Variance).Quantile(t.Item2)));

    // E D = sum of P(D > x), and E D(D-1) = 2 * sum of x * P(D > x), over x = 0, 1, ...
    [Fact]
    public void The_chances_add_up_to_the_mean_and_the_variance() => Any.Holds(d =>
    {
        var demand = new Demand(d.Mean, d.Variance);
        var (mean, pairs) = (0.0, 0.0);
        for (var x = 0; demand.Above(x) > 1e-14; x++)
        {
            (mean, pairs) = (mean + demand.Above(x), pairs + 2.0 * x * demand.Above(x));
        }

        mean.Should().BeApproximately(d.Mean, 1e-9 * Math.Max(1, d.Mean));
        (pairs + mean - mean * mean).Should().BeApproximately(Math.Max(d.Mean, d.Variance), 1e-6 * Math.Max(1, d.Variance));
    });

    [Fact]
    public void In_what_order_one_asks_does_not_matter() => Any.Holds(d =>
    {
        var (upwards, downwards) = (new Demand(d.Mean, d.Variance), new Demand(d.Mean, d.Variance));
        var asked = Enumerable.Range(0, 60).ToList();
        asked.Select(upwards.AtMost).Should().Equal(asked.AsEnumerable().Reverse().Select(downwards.AtMost).Reverse());
    });

    [Fact]
    public void A_variance_hardly_above_the_mean_is_as_good_as_poisson()
    {
        foreach (var mean in new double[] { 1, 50, 746, 20_000 })
        {
            var (poisson, hardly) = (new Demand(mean, mean), new Demand(mean, mean * (1 + 1e-12)));
            hardly.Spread.Should().Be(Spread.NegativeBinomial);
            var around = Enumerable.Range((int)mean, (int)(3 * Math.Sqrt(mean)) + 1);
            around.Max(x => Math.Abs(poisson.AtMost(x) - hardly.AtMost(x))).Should().BeLessThan(1e-10);
            new[] { 0.9, 0.95, 0.98, 0.999 }.Select(hardly.Quantile).Should().Equal(new[] { 0.9, 0.95, 0.98, 0.999 }.Select(poisson.Quantile));
        }
    }
}
