using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Vans;

/// <summary>Whatever odometers say, evening after evening, nothing breaks and no distance is below zero.</summary>
public sealed class OdometerLaws
{
    /// <summary>One evening: readings one after another, each perhaps with fuel, and whether the typist insists; and days until the next.</summary>
    private sealed record Night(Reading[] Readings, int Days);

    private sealed record Reading(decimal? Mi, decimal? Gal, string? Grade, bool Sure);

    private static readonly Gen<decimal> AnyMi = Gen.Frequency(
        (6, Gen.Int[0, 9000].Select(t => 1000 + t / 10m)),
        (3, Gen.Int[0, 20_000_000].Select(t => t / 10m)),
        (1, Gen.OneOf(0m, 0.0000000000000000000000000001m, 1000.0000000000000000000000001m, 1000.0000000000000000000000002m, 1999999.9999999999999999999999m, 2_000_000m)));

    private static readonly Gen<Reading> AnyReading = Gen.Select(
        AnyMi.Select(m => (decimal?)m), Gen.OneOf(Gen.Const((decimal?)null), Gen.OneOf(0.0000000000000000000000000001m, 0.001m, 12.5m, 100m).Select(g => (decimal?)g)),
        Gen.OneOf<string?>("petrol", "diesel", "regular", "", null), Gen.Bool, (mi, gal, grade, sure) => new Reading(mi, gal, grade, sure));

    private static readonly Gen<Night[]> Nights = Gen.Select(
        Gen.Frequency((4, AnyReading), (1, Gen.Const(new Reading(null, null, null, false)))).Array[0, 3], Gen.Int[1, 4], (readings, days) => new Night(readings, days)).Array[1, 14];

    [Fact]
    public void No_readings_crash_and_none_makes_a_distance_below_zero() => Gen.Select(Nights, Gen.Bool).Holds(evenings =>
    {
        var (nights, metric) = evenings;
        var depot = Tiny.Opened(setup: Tiny.Setup with { Depot = Tiny.Settings with { Metric = metric } });
        var last = 1000m;
        foreach (var night in nights)
        {
            depot = depot.At(Tiny.B1, Step.Mileage);
            depot.Van(Tiny.B1).OdometerMi.Should().Be(last, "a start is what was read last, whatever it was");
            foreach (var reading in night.Readings)
            {
                if (Read(depot, reading) is { } logged)
                {
                    depot = depot.Take(logged);
                    last = logged.EndMi;
                    logged.DistanceMi.Should().BeGreaterThanOrEqualTo(0);
                }

                HoldsOf(depot);
            }

            depot = depot.NextDay(depot.Date.AddDays(night.Days));
            HoldsOf(depot);
        }
    });

    /// <summary>What is recorded of a reading; what is asked again is said again by whoever insists.</summary>
    private static MileageLogged? Read(Depot depot, Reading r)
    {
        var decision = new LogMileage(Tiny.B1, r.Mi, r.Gal, r.Grade, r.Sure).Decide(depot);
        if (decision.Refusal is { } refusal)
        {
            if (refusal.Code == "odometer-impossible")
                return null;

            refusal.AskAgain.Should().BeTrue($"{r} is in range: {refusal.Text}");
            refusal.InsteadMi.GetValueOrDefault().Should().BeInRange(0, Refusal.MostMiles);
            decision = new LogMileage(Tiny.B1, r.Mi, r.Gal, r.Grade, Sure: true).Decide(depot);
        }

        return (MileageLogged?)decision.Entry;
    }

    private static void HoldsOf(Depot depot)
    {
        var van = depot.Setup.Van(Tiny.B1);
        DrivingHabit.Known(depot, Tiny.B1).Should().NotContain(d => d.DistanceMi < 0).And.HaveCountLessThanOrEqualTo(DrivingHabit.DaysKept);
        DrivingHabit.FarOf(depot, Tiny.B1).Should().BePositive();
        DrivingHabit.PaceMi(depot, Tiny.B1).GetValueOrDefault().Should().BeGreaterThanOrEqualTo(0);
        if (FuelEconomy.Of(depot, Tiny.B1) is { } economy)
        {
            (economy.MilesPerGallon, economy.GallonsPer100Miles).Should().Match<(decimal Mpg, decimal Gal)>(e => e.Mpg > 0 && e.Gal >= 0);
            economy.Words(new(false)).Should().Contain("mpg");
            economy.Words(new(true)).Should().Contain("L/100 km");
        }

        _ = Service.NoteOf(depot, van, depot.Setup.Units);
        if (Service.ExpectedOf(depot, van) is { } on && on < depot.Date)
        {
            on.Should().Be(Service.Of(van).DueOn, "only the date of the interval can lie behind");
        }

        MileageLog.Of(depot).Should().NotContain(m => m.DistanceMi < 0);
        MileageCsv.Write(depot).Should().NotBeEmpty();
        MileageLogCsv.Write(depot, [.. MileageLog.Of(depot)]).Should().NotBeEmpty();
        Readiness.Of(depot).Should().HaveCount(3);
    }
}
