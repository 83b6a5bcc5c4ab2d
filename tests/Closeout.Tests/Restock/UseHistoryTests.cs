using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>A use that changed is noticed, and one that did not is left alone; the worked example of docs/methods.md.</summary>
public class UseHistoryTests
{
    private static readonly DateOnly Begin = new(2026, 6, 1);

    [Fact]
    public void A_doubled_use_is_noticed_on_its_fifth_day_and_dated_to_its_first()
    {
        // Planned 1 a visit, worth 30 visits; ten visits a day, 10 units, then 20.
        var days = Days(10, 10, 10, 20, 20, 20, 20, 20);
        var history = UseHistory.Of(days, 1, 30, 8, Begin);
        history.Changes.Should().ContainSingle().Which.Should().Match<ChangedUse>(c => c.From == Begin.AddDays(3) && c.SeenOn == Begin.AddDays(7));
        history.Use.Mean.Should().Be(2, "fifty visits since, and nothing older");
        history.Use.Weight.Should().Be(50);
    }

    [Fact]
    public void The_sums_are_those_of_the_example()
    {
        // After three even days m = 1 and s2 = 1 / 1 by the prior: 30 Poisson visits and 30 of exactly 1, (30 + 30 - 2 x 30 + 30) / 60 = 0.5; max(s2, m) = 1.
        // Fourth day: z = (20 - 10) / sqrt(10) = 3.162, C+ = 2.662. Then m = (30 + 50) / 70 = 1.143 ...: 2.662 + (20 - 11.43) / sqrt(11.43) - 0.5 = 4.697.
        UseHistory.Of(Days(10, 10, 10, 20), 1, 30, 2.67, Begin).Changes.Should().BeEmpty();
        UseHistory.Of(Days(10, 10, 10, 20), 1, 30, 2.65, Begin).Changes.Should().ContainSingle();
        UseHistory.Of(Days(10, 10, 10, 20, 20), 1, 30, 4.70, Begin).Changes.Should().BeEmpty();
        UseHistory.Of(Days(10, 10, 10, 20, 20), 1, 30, 4.69, Begin).Changes.Should().ContainSingle();
    }

    [Fact]
    public void A_use_that_stopped_is_noticed_too()
    {
        var history = UseHistory.Of(Days(40, 40, 40, 0, 0, 0, 0), 4, 30, 8, Begin);
        history.Changes.Should().ContainSingle().Which.From.Should().Be(Begin.AddDays(3));
        history.Use.Mean.Should().BeLessThan(0.01);
    }

    [Fact]
    public void A_few_visits_after_a_change_still_lean_on_what_was_thought_before()
    {
        var days = new List<DayOfUse>(Days(10, 10, 10)) { new(Begin.AddDays(3), 1, 40, 1600) };
        var history = UseHistory.Of(days, 1, 30, 8, Begin);
        history.Changes.Should().ContainSingle().Which.From.Should().Be(Begin.AddDays(3));
        history.Use.Weight.Should().Be(9, "one visit and the eight that the old use is worth");
        history.Use.Mean.Should().BeApproximately((8 * 1.0 + 40) / 9, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(8)]
    public void Without_a_change_it_is_the_mean_of_all_to_the_bit(double limit)
    {
        var lots = new Random(7);
        foreach (var _ in Enumerable.Range(0, 200))
        {
            var days = Enumerable.Range(0, 40).Select(d => new DayOfUse(Begin.AddDays(d), 5, lots.Next(8, 13), lots.Next(20, 40))).ToList();
            var history = UseHistory.Of(days, 2, 20, limit, Begin);
            history.Changes.Should().BeEmpty();
            history.Use.Should().Be(VisitUse.Of(2, 20, 200, days.Sum(d => d.Units), days.Sum(d => d.Squares)));
        }
    }

    [Fact]
    public void Nothing_is_known_until_something_was_seen()
    {
        UseHistory.Of([], 0, 0, 8, Begin).Use.Should().Be(default(VisitUse));
        UseHistory.Of(Days(0, 0, 50), 0, 0, 8, Begin).Changes.Should().BeEmpty("a date is passed over while nothing says what to expect");
    }

    [Fact]
    public void That_none_was_used_says_nothing_while_no_van_had_any()
    {
        // Short for a week: without the second line the use would be taken for gone, none be planned, and so none ever be used again.
        IReadOnlyList<DayOfUse> none = [.. Days(40, 40, 0, 0, 0, 0, 0)];
        UseHistory.Of(none, 4, 30, 8, Begin).Changes.Should().NotBeEmpty();
        UseHistory.Of([.. none.Select(d => d with { WasNowhere = d.Units == 0 })], 4, 30, 8, Begin).Changes.Should().BeEmpty();
    }

    [Fact]
    public void The_book_knows_on_which_mornings_no_van_had_an_item()
    {
        var evening = Tiny.Opened("B1: 1+0 LAMP").At(Tiny.B1, Closeout.DayBook.Step.Closed);
        CountedDays.NotAboard(evening).Should().Equal(Tiny.Shower.Code, Tiny.Wrap.Code);
        evening.Next(TinyDesk.Thursday).Planning.NotAboard.Should().ContainSingle().Which.Date.Should().Be(Tiny.Wednesday);
    }

    [Fact]
    public void No_limit_looks_for_no_change() => UseHistory.Of(Days(10, 10, 90, 90, 90), 1, 30, 0, Begin).Changes.Should().BeEmpty();

    /// <summary>Ten visits a day, all alike.</summary>
    private static IReadOnlyList<DayOfUse> Days(params int[] units) =>
        [.. units.Select((u, d) => new DayOfUse(Begin.AddDays(d), 10, u, (long)u * u / 10))];
}
