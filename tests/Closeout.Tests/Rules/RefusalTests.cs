using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Rules;

/// <summary>What single refusals tell. What holds of all of them: <see cref="EveryRefusalTests"/>.</summary>
public class RefusalTests
{
    [Fact]
    public void A_count_above_the_book_says_both_numbers_and_the_gap() =>
        Seen().Refuses(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0))
            .Text.Should().Contain("You count 30 ").And.Contain("only 25 are on record").And.Contain("the gap is -5.");

    [Theory]
    [InlineData(null)]
    [InlineData(3)]
    public void The_gap_that_is_told_is_the_gap_that_is_recorded(int? installed)
    {
        var depot = Seen();
        var count = new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0, installed);

        var told = depot.Refuses(count).Text;
        var recorded = (LeftoverCounted)depot.Accepts(count with { Sure = true });

        told.Should().Contain($"the gap is {recorded.Gap}.");
    }

    [Fact]
    public void Of_an_item_counted_blind_the_books_figure_is_not_told() =>
        Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers).Refuses(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0))
            .Text.Should().Contain("You count 30 ").And.NotContain("25").And.NotContain("-5");

    /// <summary>The lamps were counted once tonight, so that the book's figure is no secret.</summary>
    private static Depot Seen() => Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 2, 0, 5));
}
