using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Reference;

/// <summary>What a payload leaves for cargo, against published examples.</summary>
public class PayloadReferenceTests
{
    /// <summary>
    /// "Steps for determining correct load limit", 49 CFR 575.6 (the section from memory), steps 1 to 4, seen in several owners'
    /// manuals, which must print it: 1400 lb on the placard, five people of 150 lb, 1400 - 5 x 150 = 650 lb for cargo.
    /// </summary>
    [Fact]
    public void The_placard_example_leaves_650_pounds() => Payload.AllowanceLb(1400, 5 * 150).Should().Be(650);

    /// <summary>
    /// The table of loads in a van's owner's manual of 2020, manualshive.com, seen: of 1500 lb, 750 lb of occupants leave 750
    /// lb, and 200 lb leave 1300 lb.
    /// </summary>
    [Theory]
    [InlineData(750, 750)]
    [InlineData(200, 1300)]
    public void The_van_manual_examples_leave_what_they_say(double occupantsLb, double cargoLb) => Payload.AllowanceLb(1500, occupantsLb).Should().Be(cargoLb);

    /// <summary>
    /// 49 CFR 567.4(g)(3), seen as NHTSA's counsel quotes it, nhtsa.gov/interpretations/aiam2229: a rating counts 150 lb for
    /// each designated seat. Two seats; the other 150 lb of ladders, tools and safety kit are common practice.
    /// </summary>
    [Fact]
    public void The_default_counts_two_seats_at_the_federal_figure_and_as_much_again_for_kit() =>
        DepotSettings.DefaultCrewAndKitLb.Should().Be((2 * 150) + 150);

    /// <summary>
    /// Sentence of the placard, 49 CFR 571.110 (S4.3 from memory), seen in owners' manuals: the combined weight of occupants
    /// and cargo should never exceed it. So it is at most, not below.
    /// </summary>
    [Fact]
    public void Stock_that_weighs_just_the_allowance_does_not_exceed_it()
    {
        var van = Tiny.Van("B1", 1, "Avocet", 1000) with { PayloadLb = 1400 };
        new VanWeight(van, 750, 650, 650, 650, []).AboveLb.Should().Be(0);
        new VanWeight(van, 750, 650, 651, 651, []).AboveLb.Should().Be(1);
    }
}
