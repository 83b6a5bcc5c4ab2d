using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class SharingTests
{
    private static readonly Gen<SharingCase> Small = SharingCase.Of(mostVans: 4, mostNeed: 5, mostMean: 8);
    private static readonly Gen<SharingCase> Any = SharingCase.Of(mostVans: 12, mostNeed: 20, mostMean: 25);

    [Theory]
    [InlineData(9, "4 3 2")]    // all of it
    [InlineData(8, "3 3 2")]
    [InlineData(5, "2 2 1")]
    [InlineData(1, "1 0 0")]
    [InlineData(0, "0 0 0")]
    [InlineData(-3, "0 0 0")]   // a bin below nothing gives nothing
    public void Vans_with_the_same_chance_take_turns_in_bay_order(int supply, string given)
    {
        // Each with a chance of 1 - aboard/10 to miss the next unit.
        double Above(int aboard) => 1 - aboard / 10.0;
        string.Join(' ', Sharing.ByChance([new(4, 0, Above), new(3, 0, Above), new(2, 0, Above)], supply)).Should().Be(given);
    }

    // 2 units, both vans Poisson of mean 2. B1 has 1 aboard, B2 none: P(D > 1) = 0.594, P(D > 0) = 0.865.
    // The first goes to B2, which then stands as B1 does; the second is a tie and goes to B1.
    [Fact]
    public void A_unit_goes_where_it_is_most_likely_missed() =>
        Sharing.ByChance([new(3, 1, new Demand(2, 2).Above), new(4, 0, new Demand(2, 2).Above)], 2).Should().Equal(1, 1);

    [Theory]
    [InlineData(0, 1)]
    [InlineData(0.9e-12, 1)]
    [InlineData(1.1e-12, 0)]
    public void Chances_within_the_tie_go_to_the_smaller_bay(double more, int first) =>
        Sharing.ByChance([new(1, 0, _ => 0.5), new(1, 0, _ => 0.5 + more)], 1).Should().Equal(first, 1 - first);

    [Fact]
    public void Bookings_that_are_met_leave_the_rest_to_the_lows_in_bay_order() =>
        Sharing.ByChance([new(2, 5, Demand.Nothing.Above), new(2, 0, Demand.Nothing.Above)], 3).Should().Equal(2, 1);

    [Fact]
    public void No_other_way_to_share_leaves_fewer_units_unmet() => Small.Holds(
        t => EverySharing.Unmet(t, t.Given).Should().BeApproximately(EverySharing.Least(t), 1e-10), 3000);

    [Fact]
    public void Nobody_gets_more_than_the_need_and_all_together_what_there_is() => Any.Holds(
        t =>
        {
            t.Given.Zip(t.Vans).Should().NotContain(g => g.First < 0 || g.First > g.Second.Need);
            t.Given.Sum().Should().Be(Math.Min(t.Supply, t.Needs));
        });

    [Fact]
    public void More_supply_makes_nobody_worse_off() => Any.Holds(
        t => (t with { Supply = t.Supply + 1 }).Given.Zip(t.Given).Should().NotContain(g => g.First < g.Second));

    [Fact]
    public void More_aboard_never_brings_more() => Any.Holds(t =>
    {
        var fuller = t with { Vans = [t.Vans[0] with { Aboard = t.Vans[0].Aboard + 1, Need = Math.Max(0, t.Vans[0].Need - 1) }, .. t.Vans.Skip(1)] };
        (t.Vans[0].Aboard + t.Given[0]).Should().BeLessThanOrEqualTo(fuller.Vans[0].Aboard + fuller.Given[0]);
        fuller.Given.Skip(1).Zip(t.Given.Skip(1)).Should().NotContain(g => g.First < g.Second, "what the first leaves is the others'");
    });

    [Fact]
    public void The_order_of_the_bays_only_decides_ties()
    {
        var told = 0;
        Any.Holds(t =>
        {
            var chances = t.Vans.SelectMany(v => Enumerable.Range(v.Aboard, v.Need).Select(v.Claim.Above)).Order().ToList();
            if (chances.Zip(chances.Skip(1)).All(c => c.Second - c.First > 2 * Sharing.Tie))
            {
                told++;
                (t with { Vans = [.. t.Vans.Reverse()] }).Given.Reverse().Should().Equal(t.Given);
            }
        });
        told.Should().BeGreaterThan(50, "many cases have no tie");
    }
}
