using Closeout.Restock;
using FluentAssertions;
using MathNet.Numerics.Distributions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// Reorder points and order-up-to levels against textbooks. They take demand for normal; ours is Poisson or negative binomial,
/// of the same mean and variance but skewed: at z sd above the mean the quantile moves by skewness * (z^2 - 1) / 6 sd (Cornish
/// and Fisher, first term, from memory). With that, ours must be within a unit for being whole, and the second term, less than
/// half a percent of the sd squared over the mean here.
/// </summary>
/// <remarks>(1): as the author's library tests it, github.com/LarrySnyder/stockpyl at 0bae176.</remarks>
public class ReorderReferenceTests
{
    public static TheoryData<string, double, double, int, int, double, double> Textbooks => new()
    {
        { "Chase, Aquilano and Jacobs, Operations Management, inventory exercise, from memory: 1164, exact z", 250, 40, 4, 0, 0.98, 1164.3 },
        { "problem at homeworksource.com/p/974828, seen; its own 246.6 forgets the lead time: 800 + 2.0537 x 40", 200, 20, 4, 0, 0.98, 882.1 },
        { "Bozarth and Handfield, Operations and Supply Chain Management, Valentina's Pizza, seen solved at smartsolve.ai: 1938 by z 2.06; exact z", 160, 26, 5, 6, 0.98, 1937.09 },
        { "problem at homeworksource.com/p/1110943, seen; its own 94 is the safety stock: 600 + 94.15", 100, 30, 5, 1, 0.90, 694.15 },
        { "Chopra and Meindl, Supply Chain Management, periodic review, from memory", 2500, 500, 2, 4, 0.90, 16570 },
        { "Snyder and Shen, Fundamentals of Supply Chain Theory, 2nd ed., 2019, example 4.4, seen (1): 50 a period, sd 8, lead 4 and the period itself, ratio 0.70 / 0.88", 50, 8, 4, 1, 0.70 / 0.88, 264.7668943741548 },
        { "the same, problem 4.1, seen (1): N(900, 60), ratio 79 / 122", 900, 60, 1, 0, 79 / 122.0, 922.7214038234755 },
        { "the same, example 4.3, seen (1): N(50, 8), ratio 0.70 / 0.88", 50, 8, 1, 0, 0.70 / 0.88, 56.60395592743389 },
        { "Cachon and Terwiesch, Matching Supply with Demand, 3rd ed., Q12.1 d, solution seen at scribd.com/document/324382828: 235.2 by rounding z up; exact z", 200, 80, 1, 0, 2 / 3.0, 234.46 },
    };

    [Theory]
    [MemberData(nameof(Textbooks))]
    public void The_level_is_the_textbook_s_plus_what_skewness_adds(string source, double mean, double sd, int lead, int review, double service, double published)
    {
        var (m, v) = (mean * (lead + review), sd * sd * (lead + review));
        var level = Level(mean, sd, lead, review, service);
        var z = Normal.InvCDF(0, 1, service);

        var skewness = (2 * v / m - 1) / Math.Sqrt(v);
        level.Should().BeInRange(
            (int)(published + (z * z - 1) / 6 * skewness * Math.Sqrt(v) - 1 - 0.005 * v / m), (int)Math.Ceiling(published + (z * z - 1) / 6 * skewness * Math.Sqrt(v) + 1 + 0.005 * v / m), source);
        new Demand(m, v).AtMost(level).Should().BeGreaterThanOrEqualTo(service, "it is the smallest that keeps the promise");
        new Demand(m, v).AtMost(level - 1).Should().BeLessThan(service);
    }

    /// <summary>
    /// Where the textbook's demand is steadier than Poisson, variance below the mean, ours takes Poisson and asks for more.
    /// Stevenson, Operations Management, 14th ed., 2021, seen: example 8, p. 528, N(50, 5), 3 percent: 59.40; example 10, p. 532,
    /// 30 a day sd 3, 2 + 7 days, 99 percent: 220 + 71 on hand.
    /// </summary>
    [Theory]
    [InlineData(50, 5, 1, 0, 0.97, 59.40)]
    [InlineData(30, 3, 2, 7, 0.99, 291)]
    public void Steadier_demand_than_poisson_is_still_taken_for_poisson(double mean, double sd, int lead, int review, double service, double published)
    {
        var m = mean * (lead + review);
        var level = Level(mean, sd, lead, review, service);
        level.Should().BeGreaterThan((int)published).And.Be(new Demand(m, m).Quantile(service));
    }

    /// <summary>
    /// Chopra and Meindl, Supply Chain Management, exercise 11-4, solution seen at scribd.com/document/457113184: 250 a week sd
    /// 150, two weeks, reorder at 600: service 0.68. From memory: 2500 sd 500 at 6000: 0.92.
    /// </summary>
    /// <remarks>The skew adds up to 0.04 to the chance at these points: skewness * (1 - z^2) / 6 * density.</remarks>
    [Theory]
    [InlineData(250, 150, 2, 600, 0.68)]
    [InlineData(2500, 500, 2, 6000, 0.92)]
    public void The_service_of_a_reorder_point_is_near_the_textbook_s(double mean, double sd, int lead, int point, double service) =>
        new Demand(mean * lead, sd * sd * lead).AtMost(point).Should().BeApproximately(service, 0.045);

    /// <summary>
    /// Cachon and Terwiesch, Matching Supply with Demand, test bank, chapter 13, Furniture Store a and b, problem seen at
    /// examlex.com (deck 139279), answers derived: up to 220, position 185: order 35; position 225: none.
    /// </summary>
    [Theory]
    [InlineData(100 + 85, 35)]
    [InlineData(160 + 65, 0)]
    public void The_order_fills_up_to_the_level_and_counts_what_is_on_order(int position, int order)
    {
        var use = Enumerable.Range(150, 70).Select(m => new WorkingDays.Use(m, m)).First(u => new Demand(u.Mean, u.Variance).Quantile(0.9) == 220);
        Reorder.Of(Tiny.Wrap with { LeadDays = 1, ReviewDays = 0, MinOrderCartons = 1 }, use, 0.9, position).Cartons.Should().Be(order);
    }

    private static int Level(double mean, double sd, int lead, int review, double service) =>
        Reorder.Of(Tiny.Lamp with { LeadDays = lead, ReviewDays = review }, new(mean, sd * sd), service, 0).UpTo;
}
