using Closeout.Facts;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Statistics;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>A van's usual day: median and median absolute deviation, against published examples and a general library.</summary>
public sealed class RobustSpreadReferenceTests
{
    /// <summary>
    /// R, documentation of stats::mad, seen: constant 1.4826, approximately 1/qnorm(3/4), so that it agrees with the standard
    /// deviation of a normal.
    /// </summary>
    [Fact]
    public void The_factor_is_one_over_the_upper_quartile_of_a_normal() =>
        ((double)HabitOf([1, 2, 3, 4, 5, 6, 7, 8, 9])!.SpreadMi / 2).Should().BeApproximately(1 / Normal.InvCDF(0, 1, 0.75), 0.00005);

    /// <summary>
    /// The same documentation's example, seen: <c>mad(1:9)</c> and <c>mad(c(1:8, 100))</c> with constant 1 are both 2, one wild
    /// value changes nothing. R-help, 17 September 2007, seen: <c>mad(1:10, constant = 1)</c> is 2.5.
    /// </summary>
    [Theory]
    [InlineData(5, 2, 1, 2, 3, 4, 5, 6, 7, 8, 9)]
    [InlineData(5, 2, 1, 2, 3, 4, 5, 6, 7, 8, 100)]
    [InlineData(5.5, 2.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10)]
    public void Published_examples_come_out(double median, double mad, params int[] miles)
    {
        var habit = HabitOf(miles.Select(m => (decimal)m))!;
        (habit.MedianMi, habit.SpreadMi).Should().Be(((decimal)median, 1.4826m * (decimal)mad));
    }

    /// <summary>
    /// Wikipedia, "Median absolute deviation", example: the row 1, 1, 2, 2, 4, 6, 9 has median 2 and deviation 1; an R
    /// package's example prints 1.48258 for it, seen. Twice over it is long enough to be a habit.
    /// </summary>
    [Fact]
    public void The_textbook_row_comes_out() => HabitOf([1, 1, 2, 2, 4, 6, 9, 1, 1, 2, 2, 4, 6, 9]).Should().Be(new DrivingHabit(2, 1.4826m, 14));

    [Fact]
    public void It_agrees_with_the_library_on_any_days() => Gen.Int[1, 4000].Array[DrivingHabit.LeastDays, DrivingHabit.DaysKept].Holds(tenths =>
    {
        var miles = tenths.Select(t => t / 10.0).ToArray();
        var habit = HabitOf(tenths.Select(t => t / 10m))!;
        var median = miles.Median();
        ((double)habit.MedianMi).Should().BeApproximately(median, 1e-9);
        ((double)habit.SpreadMi).Should().BeApproximately(1.4826 * miles.Select(m => Math.Abs(m - median)).Median(), 1e-9);
    });

    [Fact]
    public void A_day_on_which_it_stood_still_is_no_day_of_its_habit()
    {
        HabitOf([5, 5, 5, 5, 5, 5, 5, 0, 0]).Should().BeNull("only seven days were driven");
        HabitOf([5, 5, 5, 5, 5, 5, 5, 5, 0, 0])!.Days.Should().Be(8);
    }

    private static DrivingHabit? HabitOf(IEnumerable<decimal> miles)
    {
        var (driven, at) = (new List<DrivenDay>(), 1000m);
        foreach (var mi in miles)
        {
            driven.Add(new(Tiny.Monday.AddDays(driven.Count - 100), at, at + mi, null));
            at += mi;
        }

        return DrivingHabit.Of(Tiny.Opened(carried: v => v with { Driven = driven }), Tiny.B1);
    }
}
