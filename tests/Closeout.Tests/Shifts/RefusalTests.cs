using System.Reflection;
using System.Text.RegularExpressions;
using Closeout.DayBook;
using Closeout.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

public partial class RefusalTests
{
    public static TheoryData<int> Catalogue => [.. Enumerable.Range(0, RefusalCatalogue.All.Count)];

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void The_refusal_of_the_catalogue_is_met_and_nothing_is_recorded(int index)
    {
        var met = RefusalCatalogue.All[index];
        met.Given().Refuses(met.When).Code.Should().Be(met.Code, met.ToString());
    }

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void A_refusal_ends_with_what_to_do_next(int index)
    {
        var met = RefusalCatalogue.All[index];
        met.Given().Refuses(met.When).Text.Should().MatchRegex(@"[.?] (Type|Choose|Open|Say|Ask|Answer|Count|Read)\b[^\n]*\.$");
    }

    [Fact]
    public void Every_refusal_that_can_be_made_is_in_the_catalogue() => RefusalCatalogue.All.Select(m => m.Factory).Distinct()
        .Should().BeEquivalentTo(typeof(Refusal).GetMethods(BindingFlags.Public | BindingFlags.Static)
            .Where(m => m.ReturnType == typeof(Refusal)).Select(m => m.Name));

    [Fact]
    public void Every_refusal_has_one_code_of_its_own_in_small_letters()
    {
        var codes = RefusalCatalogue.All.Select(m => (m.Factory, m.Code)).Distinct().ToList();
        codes.Select(c => c.Code).Should().OnlyHaveUniqueItems().And.OnlyContain(c => Small().IsMatch(c));
        codes.Select(c => c.Factory).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Only_what_only_a_person_can_know_is_asked_again() => RefusalCatalogue.All
        .Where(m => m.Given().Refuses(m.When).AskAgain).Select(m => m.Code).Distinct()
        .Should().BeEquivalentTo("above-the-book", "blind-above-the-book", "odometer-below-start", "odometer-too-far");

    [Fact]
    public void A_count_above_the_book_says_both_numbers_and_the_gap() =>
        Seen().Refuses(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0))
            .Text.Should().Contain("You count 30 ").And.Contain("had 25 aboard").And.Contain("gap of -5.");

    [Theory]
    [InlineData(null)]
    [InlineData(3)]
    public void The_gap_that_is_told_is_the_gap_that_is_recorded(int? installed)
    {
        var depot = Seen();
        var count = new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0, installed);

        var told = depot.Refuses(count).Text;
        var recorded = (LeftoverCounted)depot.Accepts(count with { Sure = true });

        told.Should().Contain($"gap of {recorded.Gap}.");
    }

    [Fact]
    public void Of_an_item_counted_blind_the_books_figure_is_not_told() =>
        Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers).Refuses(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 3, 0, 0))
            .Text.Should().Contain("You count 30 ").And.NotContain("25").And.NotContain("-5");

    /// <summary>The lamps were counted once tonight, so that the book's figure is no secret.</summary>
    private static Depot Seen() => Tiny.Opened("B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 2, 0, 5));

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex Small();
}
