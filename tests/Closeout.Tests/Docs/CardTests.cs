using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Docs;

/// <summary>A card is printed and hung up: one sheet, so few words.</summary>
public sealed class CardTests
{
    private const int OneSheet = 350;

    [Theory]
    [InlineData("technician")]
    [InlineData("lead")]
    [InlineData("stock-keeper")]
    public void A_card_prints_on_one_sheet(string card) =>
        File.ReadAllText(Path.Combine(Repository.Root, "docs", "user-guide", $"card-{card}.md"))
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Length.Should().BeInRange(100, OneSheet);
}
