using System.Reflection;
using Closeout.Restock;
using Closeout.Shifts;
using Closeout.Tests.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class StockRefusalTests
{
    public static TheoryData<int> Catalogue => [.. Enumerable.Range(0, StockRefusalCatalogue.All.Count)];

    private static IEnumerable<string> Factories => typeof(StockRefusal).GetMethods(BindingFlags.Public | BindingFlags.Static)
        .Where(m => m.ReturnType == typeof(Refusal)).Select(m => m.Name);

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void The_refusal_of_the_catalogue_is_met_and_nothing_is_recorded(int index)
    {
        var met = StockRefusalCatalogue.All[index];
        met.Given().Refuses(met.When).Code.Should().Be(met.Code, met.ToString());
    }

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void A_refusal_ends_with_what_to_do_next_and_is_never_asked_again(int index)
    {
        var met = StockRefusalCatalogue.All[index];
        var refusal = met.Given().Refuses(met.When);
        refusal.Text.Should().MatchRegex(@"[.,?:] (Type|Choose|Open|Say|Ask|Answer|Count|Read|Close|Correct|type|correct)\b[^\n]*\.$");
        refusal.AskAgain.Should().BeFalse("a stock desk records what was typed or nothing");
    }

    [Fact]
    public void Every_refusal_of_the_stock_desk_is_in_the_catalogue() =>
        Factories.Should().NotBeEmpty().And.BeSubsetOf(StockRefusalCatalogue.All.Select(m => m.Factory));

    [Fact]
    public void No_code_is_given_to_two_refusals()
    {
        var codes = StockRefusalCatalogue.All.Select(m => (m.Factory, m.Code)).Concat(RefusalCatalogue.All.Select(m => (m.Factory, m.Code))).Distinct().ToList();
        codes.Select(c => c.Code).Should().OnlyHaveUniqueItems().And.OnlyContain(c => c.All(l => char.IsAsciiLetterLower(l) || l == '-'));
    }
}
