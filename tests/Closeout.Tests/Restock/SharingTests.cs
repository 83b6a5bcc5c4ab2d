using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class SharingTests
{
    private static readonly Gen<(int[] Needs, int Supply)> Any = Gen.Select(Gen.Int[0, 40].Array[0, 12], Gen.Int[0, 300]);

    [Theory]
    [InlineData(9, "4 3 2")]    // all of it
    [InlineData(8, "4 3 1")]
    [InlineData(5, "4 1 0")]
    [InlineData(0, "0 0 0")]
    [InlineData(-3, "0 0 0")]   // a bin below nothing gives nothing
    public void Vans_get_their_need_in_bay_order_until_nothing_is_left(int supply, string given) =>
        string.Join(' ', Sharing.InBayOrder([4, 3, 2], supply)).Should().Be(given);

    [Fact]
    public void Nobody_gets_more_than_the_need_and_all_together_what_there_is() => Any.Holds(t =>
    {
        var given = Sharing.InBayOrder(t.Needs, t.Supply);
        given.Zip(t.Needs).Should().NotContain(g => g.First < 0 || g.First > g.Second);
        given.Sum().Should().Be(Math.Min(t.Supply, t.Needs.Sum()));
    });

    [Fact]
    public void More_supply_makes_nobody_worse_off() => Any.Holds(t =>
        Sharing.InBayOrder(t.Needs, t.Supply + 1).Zip(Sharing.InBayOrder(t.Needs, t.Supply)).Should().NotContain(g => g.First < g.Second));

    [Fact]
    public void A_later_bay_never_changes_what_an_earlier_one_gets() => Any.Holds(t =>
        Sharing.InBayOrder([.. t.Needs, 7], t.Supply)[..t.Needs.Length].Should().Equal(Sharing.InBayOrder(t.Needs, t.Supply)));
}
