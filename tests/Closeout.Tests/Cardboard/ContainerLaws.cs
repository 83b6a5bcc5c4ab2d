using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Cardboard;

/// <summary>The container over random evenings, and when it will be full.</summary>
public sealed class ContainerLaws
{
    private static readonly Gen<YardDeed[][]> Evenings = Gen.Frequency((9, AnyYard.Boxes), (1, AnyYard.Pickups)).Array[0, 40].Array[1, 5];

    /// <summary>Earlier working days and what is in the container.</summary>
    private static readonly Gen<YardCarried> Yards = Gen.Select(Gen.Int[0, 900].Array[0, 20], Gen.Double[0, 900], (tenths, lb) => Yard(lb, tenths));

    [Fact]
    public void In_it_is_what_was_flattened_since_the_last_pickup() => Evenings.Holds(evenings =>
    {
        var (depot, since) = (AnyYard.Afternoon(), 0.0);
        foreach (var deeds in evenings)
        {
            foreach (var deed in deeds)
            {
                var (before, after) = (Flattened(depot), AnyYard.After(depot, deed));
                if (Flattened(after) < before && !depot.Yard.Emptied.IsEmpty)
                {
                    continue; // a lower count of boxes that the hauler may have taken
                }

                since = after.Yard.Emptied.Count > depot.Yard.Emptied.Count ? 0 : since + Flattened(after) - before;
                depot = after;
                Container.LoadedLb(depot).Should().BeApproximately(since, 1e-9);
                Container.LoadedCuYd(depot).Should().BeApproximately(since / 106, 1e-9);
            }

            depot = depot.NextDay();
            Container.LoadedLb(depot).Should().BeApproximately(since, 1e-9, "the next page begins with it");
        }
    });

    [Fact]
    public void It_never_holds_less_than_nothing_whatever_is_counted_anew() => Evenings.Holds(evenings =>
    {
        var depot = AnyYard.Afternoon();
        foreach (var deeds in evenings)
        {
            foreach (var deed in deeds)
            {
                depot = AnyYard.After(depot, deed);
                Container.LoadedLb(depot).Should().BeGreaterThanOrEqualTo(0);
                Container.FullPercent(depot).Should().BeGreaterThanOrEqualTo(0);
            }

            depot = depot.NextDay();
        }
    });

    [Fact]
    public void The_forecast_lies_between_its_ends_and_never_before_today() => Gen.Select(Yards, Gen.Int[0, 1]).Holds(sample =>
    {
        var depot = AnyYard.Afternoon(yard: sample.Item1);
        if (Container.Full(depot) is not { } full)
        {
            (sample.Item1.BoxDays.Count < Container.LeastDays || sample.Item1.BoxDays.All(d => d.WeightLb == 0)).Should().BeTrue("else there is a forecast");
            return;
        }

        full.Earliest.Should().BeOnOrAfter(depot.Date).And.BeOnOrBefore(full.On);
        (full.Latest ?? DateOnly.MaxValue).Should().BeOnOrAfter(full.On);
        (full.On == depot.Date).Should().Be(Container.AsksForHauler(depot), "today is the day on which the hauler is asked");
    }, samples: 2_000);

    [Fact]
    public void More_in_the_container_never_makes_it_later() => Gen.Select(Yards, Gen.Double[0, 300]).Holds(sample =>
    {
        var (yard, more) = sample;
        var (less, full) = (Container.Full(AnyYard.Afternoon(yard: yard)), Container.Full(AnyYard.Afternoon(yard: yard with { ContainerLb = yard.ContainerLb + more })));
        (full is null).Should().Be(less is null);
        if (less is { } later && full is { } sooner)
        {
            sooner.On.Should().BeOnOrBefore(later.On);
            sooner.Earliest.Should().BeOnOrBefore(later.Earliest);
            (sooner.Latest ?? DateOnly.MaxValue).Should().BeOnOrBefore(later.Latest ?? DateOnly.MaxValue);
        }
    }, samples: 2_000);

    /// <summary>Once the evening counts as a day, every box more brings the expected date nearer or leaves it.</summary>
    [Fact]
    public void A_box_more_tonight_never_makes_it_later() => Gen.Select(Yards, Gen.Int[1, 60], Gen.Int[1, 60]).Holds((yard, boxes, more) =>
    {
        var depot = AnyYard.Afternoon(yard: yard).At(Tiny.B1, Step.Cardboard);
        var (less, full) = (Container.Full(depot.Did(new CountBoxes(Tiny.B1, Tiny.Lamp.Code, boxes))), Container.Full(depot.Did(new CountBoxes(Tiny.B1, Tiny.Lamp.Code, boxes + more))));
        if (less is { } later)
        {
            full!.On.Should().BeOnOrBefore(later.On);
        }
    }, samples: 1_000);

    /// <summary>The expected date by a walk over the calendar: a day's mean each working day until it is enough.</summary>
    [Fact]
    public void The_expected_date_is_the_working_day_on_which_the_mean_has_filled_it() => Yards.Holds(yard =>
    {
        var depot = AnyYard.Afternoon(yard: yard);
        if (Container.Full(depot) is not { } full || full.Days > 400)
        {
            return;
        }

        var mean = yard.BoxDays.Average(d => d.WeightLb);
        var (date, lb) = (depot.Date, yard.ContainerLb);
        while (lb < 0.80 * 8 * 106 - 1e-6)
        {
            date = date.AddDays(1);
            lb += date.DayOfWeek == DayOfWeek.Sunday ? 0 : mean;   // the tiny crew works Monday to Saturday between them
        }

        full.On.Should().Be(date);
    }, samples: 1_000);

    [Fact]
    public void Days_that_vary_not_at_all_leave_no_range()
    {
        var full = Container.Full(AnyYard.Afternoon(yard: Yard(0, [530, 530, 530, 530, 530])))!;
        (full.Earliest, full.Latest).Should().Be((full.On, (DateOnly?)full.On));
        full.Days.Should().BeApproximately(0.80 * 8 * 106 / 53, 1e-9);
    }

    private static YardCarried Yard(double lb, int[] tenths) => YardCarried.Empty with
    {
        ContainerLb = lb, BoxDays = [.. tenths.Select((t, n) => new BoxDay(Tiny.Wednesday.AddDays(n - 30), 1, 1, t / 10.0))],
    };

    private static double Flattened(Depot depot) => CardboardTotals.Rows(depot).Sum(r => r.WeightLb);
}
