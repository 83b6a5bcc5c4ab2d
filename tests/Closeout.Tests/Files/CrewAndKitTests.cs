using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>What of a payload is not for stock: a setting of depot.csv that may be left out.</summary>
public sealed class CrewAndKitTests
{
    [Fact]
    public void Left_out_or_empty_it_is_two_people_and_their_kit()
    {
        SmallDay.Given().Setup.Depot.CrewAndKitLb.Should().Be(450).And.Be(DepotSettings.DefaultCrewAndKitLb);
        With("").Should().Be(450);
    }

    [Theory]
    [InlineData("0", 0)]
    [InlineData("612.5", 612.5)]
    [InlineData("10000", 10_000)]
    public void It_is_pounds_from_none_to_ten_thousand(string value, double lb) => With(value).Should().Be(lb);

    private static double With(string value) => SmallDay.Given(("depot.csv", SmallDay.Text("depot.csv") + $"crew_and_kit_lb,{value}\n")).Setup.Depot.CrewAndKitLb;
}
