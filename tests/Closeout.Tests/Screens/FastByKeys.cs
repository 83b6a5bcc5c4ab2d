using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Screens;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>What makes an evening short, played at the kiosk.</summary>
public sealed class FastByKeys : IDisposable
{
    private const string Mileage = "B3{Enter}{Enter}**=";

    private readonly SampleKiosk kiosk = new();

    /// <summary>Before the day's visit reports are loaded.</summary>
    private readonly SampleKiosk early = new(given => given with { Used = given.Used with { ByVan = [] } });

    [Theory]
    [InlineData("153", 28153)]
    [InlineData("114", 28114)]
    [InlineData("001", null)]
    [InlineData("900", null)]
    public void The_last_three_digits_of_the_odometer_will_do_where_the_van_can_have_come_so_far(string digits, int? reading)
    {
        kiosk.Press($"{Mileage}{digits}{{Enter}}");

        kiosk.Closeout.Form["odometer"].Text.Should().Be(reading?.ToString(System.Globalization.CultureInfo.InvariantCulture) ?? digits);
        kiosk.Session.Model.IsDone.Should().Be(reading is not null, "the whole reading is said, to be looked at");
    }

    [Fact]
    public void A_van_that_nobody_used_is_asked_for_damage_alone_and_signed()
    {
        early.Press("B1{Enter}{F4}").Closeout.At.Should().Be(Step.Damage);
        early.Press("n").Closeout.At.Should().Be(Step.SignOff);

        early.Entries.Select(e => e.GetType()).Should().Equal(
            typeof(VanCameIn), typeof(LeftoversConfirmed), typeof(CardboardConfirmed), typeof(MileageLogged), typeof(DamageConfirmed), typeof(KitConfirmed));
    }

    [Fact]
    public void Said_of_the_wrong_van_it_is_taken_back_while_nothing_else_is_recorded()
    {
        early.Press("B1{Enter}{F4}{F2}").Depot.Shift(new("B1")).Should().BeNull();

        early.Press("B1{Enter}{F4}n{F2}").Session.Model.Said.Should().Contain("has answers already");
    }

    [Fact]
    public void Where_visits_used_something_the_van_was_used()
    {
        kiosk.Press("B1{Enter}{F4}").Session.Model.Said.Should().Contain("Visit reports say that B1 was used today");

        kiosk.Entries.Should().BeEmpty();
    }

    [Fact]
    public void A_code_is_chosen_by_a_piece_of_its_name()
    {
        kiosk.Press("{F5}globe{Enter}").Session.Model.Screen.ToString().Should().NotBeNull();
        kiosk.Show().Should().Contain("[LED-G25");

        kiosk.Press("{Escape}{F5}led{Down}{Down}{Enter}").Show().Should().Contain("[LED-A19-27");
    }

    [Fact]
    public void Who_brings_the_van_in_is_chosen_by_a_piece_of_the_name()
    {
        var name = kiosk.Depot.Setup.Find(new Code<Technician>("T14"))!.Name.Split(' ')[0];
        kiosk.Press($"B3{{Enter}}{name}{{Enter}}");

        kiosk.Entries.Should().ContainSingle().Which.Should().BeOfType<VanCameIn>().Which.Technician.Text.Should().Be("T14");
    }

    [Fact]
    public void Who_is_known_stands_on_the_first_line_and_in_the_next_form()
    {
        kiosk.Press("{F5}CO-10Y{Enter}5{Enter}L1{Enter}");
        kiosk.Show().Split('\n')[0].Should().Contain("L1 2 min");

        kiosk.Press("{Escape}{F5}CO-10Y{Enter}1{Enter}").Show().Should().Contain("Your code              [L1");
        kiosk.Press("{Enter}").Entries.OfType<DeliveryReceived>().Should().HaveCount(2, "no PIN and no code is typed again");

        kiosk.Clock.Pass(121);
        kiosk.Session.Refresh();
        kiosk.Show().Split('\n')[0].Should().NotContain("min");
    }

    [Fact]
    public void Several_counts_are_corrected_in_one_trip()
    {
        early.Press("B5{Enter}{Enter}**={PageUp}{PageUp}").Closeout.At.Should().Be(Step.Leftovers);
        early.Press("/THERM{Enter}=");
        early.Session.Model.Said.Should().Be("Changed. PgDn goes on.");
        early.Closeout.At.Should().Be(Step.Leftovers);

        early.Press("/LED-G25{Enter}={PageDown}{PageDown}").Closeout.At.Should().Be(Step.Mileage);
        early.Entries.OfType<LeftoverCounted>().Should().HaveCount(2);
    }

    [Fact]
    public void What_is_signed_says_fuel_spot_counts_kit_dates_and_the_weekly_check()
    {
        early.Press("T02{Enter}27{Enter}*").Closeout.Should().NotBeNull();
        early.Press("*=41298{Enter}11.2{Enter}{Enter}n=");

        early.Show(120, 40).Should().Contain("Fuel        11.2 gal regular").And.Contain("Spot counts ").And.Contain("Safety kit  all there; First aid kit: no date").And.Contain("Weekly      last 2026-11-13, not due");
    }

    [Fact]
    public void In_Spanish_S_is_yes()
    {
        using var spanish = Language.Choosing("es", () => new SampleKiosk(given => given with
        {
            Setup = given.Setup with { Handover = [new(new("SWEPT"), "¿Barrida?")] },
        }));
        spanish.Press("B3{Enter}{Enter}**{Enter}=n=s");

        spanish.Entries.OfType<HandoverAnswered>().Should().ContainSingle().Which.Answers.Should().ContainSingle().Which.Yes.Should().BeTrue();
        spanish.Session.Model.Screen.Should().BeOfType<CloseoutScreen>();
    }

    public void Dispose()
    {
        kiosk.Dispose();
        early.Dispose();
    }
}
