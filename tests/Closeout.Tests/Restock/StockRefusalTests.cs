using Closeout.Tests.Rules;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>What holds of the stock desk's refusals alone; the rest is in <see cref="EveryRefusalTests"/>.</summary>
public class StockRefusalTests
{
    public static TheoryData<int> Catalogue => [.. Enumerable.Range(0, StockRefusalCatalogue.All.Count)];

    [Theory]
    [MemberData(nameof(Catalogue))]
    public void A_refusal_is_never_asked_again(int index) =>
        StockRefusalCatalogue.All[index].Refused().AskAgain.Should().BeFalse("a stock desk records what was typed or nothing");
}
