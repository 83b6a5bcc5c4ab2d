using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class TargetTests
{
    [Theory]
    [InlineData(10, 40, 0, 10, Basis.Low)]
    [InlineData(10, 40, 10, 10, Basis.Low)]       // booked needs no more than low
    [InlineData(10, 40, 11, 11, Basis.Booked)]
    [InlineData(10, 40, 40, 40, Basis.Booked)]    // exactly high is still what is booked
    [InlineData(10, 40, 41, 40, Basis.High)]
    [InlineData(10, 10, 10, 10, Basis.Low)]
    [InlineData(10, 10, 11, 10, Basis.High)]
    [InlineData(0, 0, 0, 0, Basis.Low)]
    [InlineData(0, 0, 5, 0, Basis.High)]          // the van carries none of it
    [InlineData(0, 5, 5, 5, Basis.Booked)]
    public void The_target_lies_between_low_and_high_and_says_what_set_it(int low, int high, int q, int units, Basis basis) =>
        Target.Of(low, high, q).Should().Be(new Target(units, basis));

    [Theory]
    [InlineData(10, 3, 7)]
    [InlineData(10, 10, 0)]
    [InlineData(10, 25, 0)]    // more aboard than wanted stays aboard
    public void The_need_is_what_lacks_to_the_target_and_never_below_zero(int target, int aboard, int need) =>
        new Target(target, Basis.Low).Need(aboard).Should().Be(need);

    [Theory]
    [InlineData(10, 9, 9, Basis.Payload)]
    [InlineData(10, 10, 10, Basis.Low)]
    [InlineData(10, 17, 10, Basis.Low)]    // only a carton is not rounded up
    public void A_cap_by_weight_lowers_a_target_and_never_raises_it(int target, int most, int units, Basis basis) =>
        new Target(target, Basis.Low).Within(new PayloadCut(most, 20, default)).Should().Be(new Target(units, basis));

    [Fact]
    public void More_booked_never_lowers_the_target_and_never_leaves_the_limits() =>
        Gen.Select(Gen.Int[0, 50], Gen.Int[0, 50], Gen.Int[0, 120]).Holds((low, more, q) =>
        {
            var high = low + more;
            Target.Of(low, high, q).Units.Should().BeInRange(low, high);
            Target.Of(low, high, q + 1).Units.Should().BeGreaterThanOrEqualTo(Target.Of(low, high, q).Units);
        });

    [Fact]
    public void Every_basis_has_a_word() =>
        Enum.GetValues<Basis>().Select(Target.Words).Should().Equal("low", "booked", "high", "lead", "payload");
}
