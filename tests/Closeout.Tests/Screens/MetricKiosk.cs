using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>A depot that reads kilometres, litres and kilograms; its book keeps miles.</summary>
public sealed class MetricKiosk : IDisposable
{
    private readonly SampleKiosk kiosk = new(given => given with { Setup = given.Setup with { Depot = given.Setup.Depot with { Metric = true } } });

    public void Dispose() => kiosk.Dispose();

    [Fact]
    public void The_close_out_asks_and_says_kilometres_and_the_book_keeps_miles()
    {
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

    [Fact]
    public void A_doubtful_reading_and_the_one_suggested_are_kilometres()
    {
        // 28114 mi this morning are 45245 km; 45380 was read and 45830 typed.
        kiosk.Press("B3{Enter}{Enter}**=45830{Enter}{Enter}");
        kiosk.Session.Model.Said.Should().Contain("From 45245 km to 45830 km is 585 km in one day").And.Contain("45380 km is in the field").And.NotContain(" mi");

        kiosk.Press("{Enter}{Enter}");
        var logged = kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which;
        (logged.EndMi, logged.Sure).Should().Be((28197.8m, false));
        kiosk.Show().Should().Contain("odometer 45380 km");
    }

    [Fact]
    public void Film_is_typed_in_kilograms_kept_in_pounds_and_shown_as_it_was_typed()
    {
        kiosk.Press("B3{Enter}{Enter}**{Down}{Down}{Down}2.5{Enter}");
        kiosk.Entries.OfType<StreamCounted>().Should().Equal(new StreamCounted(new("B3"), new("film"), 5.51m));

        kiosk.Press("{Up}").Show().Should().Contain("[2.5").And.Contain("kg").And.Contain("Plastic film: 2.5 kg");
        kiosk.Press("{Enter}{Escape}{F3}{Tab}{Tab}{Tab}{Tab}{Tab}{Tab}").Show(120).Should().Contain("Plastic film: 2.5 kg tonight").And.NotContain(" lb");
    }

    [Theory]
    [InlineData("{F3}")]
    [InlineData("{F3}{Tab}")]
    [InlineData("{F3}p")]
    [InlineData("{F3}s")]
    [InlineData("B4{F7}")]
    [InlineData("B1{F7}l")]
    public void The_yard_and_a_vans_page_say_kilometres_kilograms_and_cubic_metres(string keys)
    {
        // The density keeps the unit of its setting in depot.csv.
        kiosk.Press(keys);
        kiosk.Show(120, 40).Replace("106 lb a cubic yard", "").Should().MatchRegex("( km| kg| m3|[a-z] )").And.NotMatchRegex(@"\d (mi|lb|cu yd|gal)\b").And.NotContain("mpg");
    }

    [Fact]
    public void A_weighed_pickup_typed_in_kilograms_is_kept_in_pounds()
    {
        kiosk.Press("{F3}p{Enter}100{Enter}T02{Enter}");
        kiosk.Entries.OfType<ContainerEmptied>().Single().WeighedLb.Should().Be(220.46);
    }
}
