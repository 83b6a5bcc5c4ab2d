using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Shifts.Steps;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Many evenings, each van asked for at most three items: every item is counted within its time.</summary>
/// <remarks>
/// Condition: an item may be asked for from three quarters of its time on, so in the worst case a van with a, b and c items
/// of the classes A, B and C needs a/7.5 + b/15 + c/30 counts a working evening (its times are 10, 20 and 40 working days).
/// Three are asked for; while that sum is at most 2.4 nothing is late, whatever comes due together.
/// </remarks>
public class SpotCountInTime
{
    private const double Most = 2.4;
    private static readonly int[] Days = [14, 28, 56];

    [Theory]
    [InlineData(4, 6, 18)]     // an ordinary van
    [InlineData(8, 9, 20)]     // 2.33
    [InlineData(18, 0, 0)]     // only A
    [InlineData(0, 36, 0)]     // only B
    [InlineData(0, 0, 72)]     // only C
    [InlineData(1, 1, 60)]
    public void Every_item_of_a_van_is_counted_within_its_time(int a, int b, int c)
    {
        (a / 7.5 + b / 15.0 + c / 30.0).Should().BeLessThanOrEqualTo(Most, "the condition");
        var counted = Evenings([a, b, c], 200, gaps: _ => false);
        foreach (var (item, dates) in counted)
        {
            // The first round takes as many evenings as it takes: three items each.
            var from = dates.FindIndex(d => d >= Tiny.Monday.AddDays(FirstRound(a + b + c)));
            from.Should().BeGreaterThanOrEqualTo(0, $"{item.Code} was counted");
            Longest(dates.Skip(Math.Max(0, from - 1))).Should().BeLessThanOrEqualTo(Days[item.Class], $"{item.Code} is of class {item.Class}");
        }
    }

    [Fact]
    public void Whatever_the_mix_within_the_condition() => Gen.Select(Gen.Int[0, 10], Gen.Int[0, 16], Gen.Int[1, 40]).Where(n => n.Item1 / 7.5 + n.Item2 / 15.0 + n.Item3 / 30.0 <= Most).Holds(
        Every_item_of_a_van_is_counted_within_its_time, 12);

    [Fact]
    public void Every_item_is_counted_once_in_the_first_evenings()
    {
        var counted = Evenings([4, 6, 20], 10, gaps: _ => false);
        counted.Should().HaveCount(30);
        counted.Values.Should().OnlyContain(dates => dates.Count > 0, "30 items, three an evening");
    }

    [Fact]
    public void An_item_whose_counts_have_gaps_is_counted_twice_as_often()
    {
        var counted = Evenings([3, 3, 6], 200, gaps: code => code.EndsWith('0'));
        foreach (var ofClass in counted.GroupBy(c => c.Key.Class))
        {
            var often = ofClass.Single(c => c.Key.Code.EndsWith('0')).Value;
            Longest(often.Skip(2)).Should().BeLessThanOrEqualTo(Days[ofClass.Key] / 2);
            often.Count.Should().BeGreaterThan((int)(1.6 * ofClass.Where(c => !c.Key.Code.EndsWith('0')).Max(c => c.Value.Count)));
        }
    }

    /// <summary>Calendar days that the first round takes.</summary>
    private static int FirstRound(int items) => (items + 2) / 3 * 7 / 5 + 7;

    private static int Longest(IEnumerable<DateOnly> dates) => dates.Zip(dates.Skip(1), (d, next) => next.DayNumber - d.DayNumber).DefaultIfEmpty(0).Max();

    /// <summary>The dates on which each item of the van was counted, over so many working days.</summary>
    private static Dictionary<(string Code, int Class), List<DateOnly>> Evenings(int[] ofClass, int evenings, Func<string, bool> gaps)
    {
        var codes = ofClass.SelectMany((n, k) => Enumerable.Range(0, n).Select(i => (Code: $"{"ABC"[k]}{i}", Class: k))).ToList();
        var counted = codes.ToDictionary(c => c, _ => new List<DateOnly>());
        var setup = Tiny.Setup with { Items = [.. codes.Select(c => Tiny.Lamp with { Code = new(c.Code), Low = 0 })] };
        var depot = Tiny.Opened("B1: " + string.Join(", ", codes.Select(c => $"0+9 {c.Code}")), Tiny.Monday, setup);
        while (evenings > 0)
        {
            if (depot.Date.DayOfWeek is not (DayOfWeek.Saturday or DayOfWeek.Sunday))
            {
                // What visits report makes the classes.
                depot = depot.Planned(p => p with { Use = [new(depot.Date, new("HOME"), 1, Moved(ofClass))] });
                var classes = SpotCount.Classes(depot);
                codes.Should().OnlyContain(c => classes[new Code<Item>(c.Code)] == c.Class);
                var shift = depot.Did(new ComeIn(Tiny.B1, Tiny.T1)).Shift(Tiny.B1)!;
                shift.SpotItems.Count.Should().BeLessThanOrEqualTo(SpotCount.Most);
                foreach (var item in shift.SpotItems)
                {
                    counted.Single(c => c.Key.Code == item.Text).Value.Add(depot.Date);
                    depot = depot.Stocked(s => s with { SpotCounts = s.SpotCounts.SetItem((Tiny.B1, item), new(Tiny.B1, item, depot.Date, gaps(item.Text) ? 1 : 0)) });
                }

                evenings--;
            }

            depot = depot with { Date = depot.Date.AddDays(1) };
        }

        return counted;
    }

    /// <summary>Units of each item such that its class is the one wanted; items that are not aboard fill up the classes.</summary>
    private static IReadOnlyList<ItemUse> Moved(int[] ofClass)
    {
        int[] members = [Math.Max(1, ofClass[0]), Math.Max(20, ofClass[1]), Math.Max(100, ofClass[2])];
        double[] share = [0.805, 0.147, 0.048];
        return [.. from k in new[] { 0, 1, 2 } from i in Enumerable.Range(0, members[k]) select new ItemUse(new($"{"ABC"[k]}{i}"), (long)(share[k] * 1e9 / members[k]), 1)];
    }
}
