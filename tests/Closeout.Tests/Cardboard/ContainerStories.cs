using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

/// <summary>The container and lost boxes at their limits, and a forecast reckoned by hand.</summary>
public sealed class ContainerStories
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;

    /// <summary>8 cubic yards at 106 lb a cubic yard; the hauler is asked at 75 percent, which are 636 lb.</summary>
    [Theory]
    [InlineData(636, true)]
    [InlineData(635.9, false)]
    public void The_hauler_is_asked_as_soon_as_the_filling_is_the_depots_limit(double lb, bool asked)
    {
        var setup = Tiny.Setup with { Depot = Tiny.Settings with { ContainerFullPercent = 75 } };

        Container.AsksForHauler(Tiny.Opened(setup: setup, yard: YardCarried.Empty with { ContainerLb = lb })).Should().Be(asked);
    }

    /// <summary>
    /// Five days of 0.05, 0.35, 0.2, 0.1 and 0.3 cubic yards: mean 0.2, sample deviation 0.12748 (divisor 4), z s = 0.20969.
    /// 6.4 less the 0.17 in it leave 6.23: 31.15 days, root 2.24231, earliest (2.03262 / 0.4)^2 = 25.8, latest
    /// (2.452 / 0.4)^2 = 37.6. The crew works from Monday to Saturday.
    /// </summary>
    [Fact]
    public void A_forecast_reckoned_by_hand_comes_out()
    {
        BoxDay[] days = [.. new[] { 0.05, 0.35, 0.2, 0.1, 0.3 }.Select((v, n) => new BoxDay(Tiny.Wednesday.AddDays(n - 7), 1, 1, 106 * v))];
        var full = Container.Full(Tiny.Opened(yard: YardCarried.Empty with { ContainerLb = 106 * 0.17, BoxDays = days }))!;

        full.Days.Should().BeApproximately(31.15, 1e-9);
        (full.Earliest, full.On, full.Latest).Should().Be((new(2026, 12, 18), new(2026, 12, 25), new DateOnly(2027, 1, 1)), "the 26th, 32nd and 38th working day");
    }

    [Fact]
    public void Boxes_missing_again_are_missing_since_the_first_evening()
    {
        var depot = Missing(1).At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0))
            .At(Tiny.B1, Step.Cardboard).Did(new CountBoxes(Tiny.B1, Lamp, 1), new ConfirmCardboard(Tiny.B1));

        LostBoxes.Of(depot, Tiny.B1).Should().Equal(new MissingBoxes(Lamp, 2, Tiny.Monday));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(null)]
    public void All_that_is_missing_may_be_written_off(int? boxes) =>
        LostBoxes.Of(Missing(2).Did(new WriteOffBoxes(Tiny.B1, Lamp, boxes, "never found", Tiny.Lead)), Tiny.B1).Should().BeEmpty();

    /// <summary>Heaped up, as full as 120 percent, and as heavy as 100,000 lb.</summary>
    [Fact]
    public void A_pickup_may_be_as_full_and_as_heavy_as_its_limits()
    {
        var emptied = Tiny.Opened().Did(new EmptyContainer(120, EmptyContainer.MostPickupLb, Tiny.T1)).Yard.Emptied;

        emptied.Should().ContainSingle().Which.Should().Match<ContainerEmptied>(e => e.FullPercent == 120 && e.WeighedLb == 100_000);
    }

    private static Depot Missing(int boxes) => Tiny.Opened("B1: 2+0 LAMP", carried: v => v with { MissingBoxes = v.Van == Tiny.B1 ? [new(Lamp, boxes, Tiny.Monday)] : [] });
}
