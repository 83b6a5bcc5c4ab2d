using Closeout.DayBook;
using Closeout.Shifts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>A depot that reads kilometres, litres and kilograms; its book keeps miles.</summary>
public sealed class MetricKiosk
{
    [Fact]
    public void The_close_out_asks_and_says_kilometres_and_the_book_keeps_miles()
    {
        using var kiosk = new SampleKiosk(given => given with { Setup = given.Setup with { Depot = given.Setup.Depot with { Metric = true } } });
        kiosk.Press("B3{Enter}{Enter}**{Enter}");
        var start = kiosk.Depot.Van(new("B3")).OdometerMi;
        var km = (int)Math.Round(start * UnitSystem.KmPerMile) + 64;
        kiosk.Closeout.At.Should().Be(Step.Mileage);
        kiosk.Show().Should().Contain($"{km - 64} km").And.NotContain(" mi").And.NotContain("gal");

        kiosk.Press($"{km}{{Enter}}40{{Enter}}{{Enter}}");

        var logged = kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which;
        logged.DistanceMi.Should().BeApproximately(64 / UnitSystem.KmPerMile, 0.4m);
        logged.FuelGal.Should().Be(10.57m);
        kiosk.Show().Should().Contain($"64 km, odometer {km} km");
        kiosk.Press("{PageUp}").Show().Should().Contain($"{km}").And.Contain("km").And.Contain("40");
    }
}
