using System.Reflection;
using System.Text.RegularExpressions;
using Closeout.Cardboard;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Tests.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Rules;

/// <summary>What holds of every refusal, whoever makes it.</summary>
public sealed partial class EveryRefusalTests
{
    /// <summary>Every method that makes a refusal.</summary>
    public static IReadOnlyList<MethodInfo> Factories { get; } =
    [
        .. new[] { typeof(Refusal), typeof(MileageRefusal), typeof(StockRefusal), typeof(YardRefusal), typeof(LeadRefusal) }
            .SelectMany(t => t.GetMethods(BindingFlags.Public | BindingFlags.Static))
            .Where(m => m.ReturnType == typeof(Refusal)),
    ];

    public static TheoryData<int> Catalogue => [.. Enumerable.Range(0, Met.All.Count)];

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void The_refusal_of_the_catalogue_is_met_and_nothing_is_recorded(int index) =>
        Met.All[index].Refused().Code.Should().Be(Met.All[index].Code, Met.All[index].ToString());

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void A_refusal_is_one_short_line_of_whole_sentences(int index) =>
        Met.All[index].Refused().Text.Should().MatchRegex(@"^[^\n]{10,260}\.$").And.NotMatchRegex(@"\b(anew|whoever|as booked|0 are|is enough)\b");

    [Fact]
    public void Every_refusal_that_can_be_made_is_met_in_a_catalogue() =>
        Met.All.Select(m => m.Factory).Distinct().Should().BeEquivalentTo(Factories.Select(m => m.Name));

    [Fact]
    public void Every_refusal_has_one_code_of_its_own_in_small_letters()
    {
        var codes = Met.All.Select(m => (m.Factory, m.Code)).Distinct().ToList();
        codes.Select(c => c.Code).Should().OnlyHaveUniqueItems().And.OnlyContain(c => Small().IsMatch(c));
        codes.Select(c => c.Factory).Should().OnlyHaveUniqueItems();
    }

    [Fact]
    public void Only_what_only_a_person_can_know_is_asked_again() => Met.All
        .Where(m => m.Refused().AskAgain).Select(m => m.Code).Distinct()
        .Should().BeEquivalentTo("above-the-book", "blind-above-the-book", "odometer-below-start", "odometer-too-far", "wrong-fuel", "used-not-driven", "driven-not-used",
            "fueled-not-driven", "more-than-the-tank", "odd-economy", "all-holds", "far-correction");

    /// <summary>A number and its noun agree: no "1 boxes", no "1 to 0".</summary>
    [Theory]
    [MemberData(nameof(Catalogue))]
    public void One_thing_is_not_said_in_the_plural_and_no_range_is_empty(int index) =>
        Met.All[index].Refused().Text.Should().NotMatchRegex(@"(?<![\d.,])1 (boxes|cartons|vans|visits|items|pictures|holds|units|pieces|damages)\b").And.NotMatchRegex(@"\b1 to 0\b");

    [GeneratedRegex("^[a-z]+(-[a-z]+)*$")]
    private static partial Regex Small();
}
