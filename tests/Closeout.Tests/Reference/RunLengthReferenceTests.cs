using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>
/// The detector of a changed use on normal data, against published average run lengths of the two-sided cumulative sum with k = 0.5:
/// Montgomery, Introduction to Statistical Quality Control (Wiley), table of the cusum's run lengths: h = 4: 168 without a shift, 8.38 with
/// one of 1 sigma; h = 5: 465 and 10.4. From memory. They go back to Brook and Evans, An approach to the probability distribution of cusum
/// run length, Biometrika 59, 1972.
/// </summary>
public class RunLengthReferenceTests
{
    private static readonly DateOnly Begin = new(1000, 1, 1);

    [Theory]
    [InlineData(4, 0, 168, 600)]
    [InlineData(5, 0, 465, 300)]
    [InlineData(4, 1, 8.38, 1500)]
    [InlineData(5, 1, 10.4, 1500)]
    public void A_change_is_cried_as_often_as_the_tables_say(double limit, double shift, double published, int runs)
    {
        var lots = new Random(1954);
        var lengths = Enumerable.Range(0, runs).Select(_ => (double)Length(lots, limit, shift, (int)(published * 12))).ToList();
        var error = Math.Sqrt(lengths.Sum(l => Math.Pow(l - lengths.Average(), 2))) / runs;
        lengths.Average().Should().BeApproximately(published, 3 * error + 0.02 * published);
    }

    /// <summary>
    /// Days until the first cry. A use of a million a visit that is worth a million million visits is as good as known, and Poisson with
    /// that mean as good as normal; one visit a day of a million and so many thousands.
    /// </summary>
    private static int Length(Random lots, double limit, double shift, int most)
    {
        var days = Enumerable.Range(0, most).Select(d =>
        {
            var normal = Math.Sqrt(-2 * Math.Log(1 - lots.NextDouble())) * Math.Cos(2 * Math.PI * lots.NextDouble());
            var units = (long)Math.Round(1e6 + 1e3 * (normal + shift));
            return new DayOfUse(Begin.AddDays(d), 1, units, units * units);
        }).ToList();
        var seen = UseHistory.Of(days, 1e6, 1e12, limit, Begin).Changes;
        return seen.Count == 0 ? most : seen[0].SeenOn.DayNumber - Begin.DayNumber + 1;
    }
}
