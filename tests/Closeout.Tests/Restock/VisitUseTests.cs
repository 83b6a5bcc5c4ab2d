using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class VisitUseTests
{
    private const double Hair = 1e-12;

    // Planned 6 units, worth 10 visits; five visits used 4, 8, 6, 0, 7: S1 = 25, S2 = 16 + 64 + 36 + 0 + 49 = 165. W = 15.
    // m = (60 + 25) / 15 = 17/3. s2 = (60 + 165 - 2 * 17/3 * 25 + 5 * 289/9) / 15 = (2025 - 2550 + 1445) / 9 / 15 = 920/135.
    [Fact]
    public void A_planning_rate_and_visits_weigh_together() => Is(VisitUse.Of(6, 10, 5, 25, 165), 15, 17 / 3.0, 920 / 135.0);

    // Four visits used 2, 0, 0, 6: m = 8 / 4 = 2. s2 = (40 - 2 * 2 * 8 + 4 * 4) / 4 = 6: the mean square about the mean.
    [Fact]
    public void Without_a_rate_it_is_mean_and_variance_of_the_visits() => Is(VisitUse.Of(0, 0, 4, 8, 40), 4, 2, 6);

    // A rate alone counts as Poisson visits: variance as large as the mean.
    [Fact]
    public void Without_visits_it_is_the_rate_with_the_spread_of_poisson() => Is(VisitUse.Of(6, 10, 0, 0, 0), 10, 6, 6);

    // 10 planned visits of none, 5 that used 2 each: m = 10 / 15 = 2/3, s2 = (0 + 20 - 2 * 2/3 * 10 + 5 * 4/9) / 15 = 80/135.
    [Fact]
    public void A_rate_of_nothing_weighs_as_well() => Is(VisitUse.Of(0, 10, 5, 10, 20), 15, 2 / 3.0, 80 / 135.0);

    [Fact]
    public void Where_nothing_is_planned_and_nothing_seen_nothing_is_known()
    {
        VisitUse.Of(0, 0, 0, 0, 0).Should().Be(new VisitUse(0, 0, 0));
        VisitUse.Of(6, 0, 0, 0, 0).Should().Be(new VisitUse(0, 0, 0), "a rate without weight says nothing");
    }

    [Fact]
    public void A_visit_that_used_nothing_lowers_the_mean() =>
        VisitUse.Of(6, 10, 6, 25, 165).Mean.Should().BeLessThan(VisitUse.Of(6, 10, 5, 25, 165).Mean);

    [Fact]
    public void The_mean_lies_between_the_rate_and_what_was_seen_and_the_variance_is_not_below_nothing() =>
        Gen.Select(Gen.Double[0, 20], Gen.Double[0, 40], Gen.Int[0, 30].Array[1, 40]).Holds((rate, weight, used) =>
        {
            var use = VisitUse.Of(rate, weight, used.Length, used.Sum(), used.Sum(x => (long)x * x));
            use.Mean.Should().BeInRange(Math.Min(rate, used.Average()) - Hair, Math.Max(rate, used.Average()) + Hair);
            use.Variance.Should().BeGreaterThan(-1e-9);

            // As the formula says it in words: planned visits spread as Poisson about their rate, and all of them about the mean.
            var about = used.Sum(x => (x - use.Mean) * (x - use.Mean));
            use.Variance.Should().BeApproximately((weight * rate + about) / (weight + used.Length), 1e-9);
        });

    private static void Is(VisitUse use, double weight, double mean, double variance)
    {
        use.Weight.Should().Be(weight);
        use.Mean.Should().BeApproximately(mean, Hair);
        use.Variance.Should().BeApproximately(variance, Hair);
    }
}
