using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

public sealed class CloseoutByKeys
{
    private static bool IsBlind(SampleKiosk kiosk) => kiosk.Depot.Shift(kiosk.Closeout.Van)! is var shift
        && kiosk.Closeout.Item is { } item && shift.SpotItems.Contains(item) && !shift.Counts.ContainsKey(item);

    /// <summary>One key for the item asked for: unchanged; blind, its counts.</summary>
    private static void Count(SampleKiosk kiosk, int items)
    {
        for (; items > 0; items--)
            kiosk.Press(IsBlind(kiosk) ? Blind(kiosk) : "=");
    }

    /// <summary>The numbers that a blind count must say, as the book has them.</summary>
    private static string Blind(SampleKiosk kiosk)
    {
        var booked = Leftovers.BeforeOf(kiosk.Depot.Shift(kiosk.Closeout.Van)!, kiosk.Depot.Setup.Item(kiosk.Closeout.Item!.Value));
        return booked.Sealed > 0 ? $"{booked.Sealed}{{Enter}}{booked.Loose}{{Enter}}" : $"{booked.Loose}{{Enter}}";
    }

    [Fact]
    public void An_untouched_item_is_one_key()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}/THERM{Enter}");

        kiosk.Press("=");

        kiosk.Entries.OfType<LeftoverCounted>().Should().ContainSingle().Which.Change.Should().BeEmpty();
    }

    [Fact]
    public void Leaving_in_the_middle_and_starting_again_goes_on_at_the_next_item()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}");
        Count(kiosk, 3);
        var next = kiosk.Closeout.Item;

        kiosk.Restart().Press("B5{Enter}");

        kiosk.Closeout.Item.Should().Be(next);
        kiosk.Entries.OfType<LeftoverCounted>().Should().HaveCount(3);
    }

    [Fact]
    public void Two_vans_can_be_half_way_at_once()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}");
        Count(kiosk, 2);
        kiosk.Press("{Escape}B1{Enter}{Enter}");
        Count(kiosk, 1);
        kiosk.Press("**{Enter}{Escape}B5{Enter}");

        kiosk.Closeout.At.Should().Be(Step.Leftovers);
        kiosk.Depot.Shift(new("B1"))!.Step.Should().Be(Step.Mileage);
    }

    [Fact]
    public void Esc_loses_no_confirmed_answer_and_keeps_nothing_that_was_only_typed()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}");
        Count(kiosk, 1);
        kiosk.Press("{Escape}");
        var confirmed = kiosk.Entries.Count;

        kiosk.Press("B5{Enter}7{Escape}");

        kiosk.Entries.Should().HaveCount(confirmed);
        kiosk.Depot.Shift(new("B5"))!.Counts.Should().HaveCount(1);
    }

    [Fact]
    public void Stepping_back_and_changing_mileage_keeps_the_later_answers()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}**{Enter}=n=={Enter}{Enter}{Enter}");
        kiosk.Closeout.At.Should().Be(Step.SignOff);

        kiosk.Press("{PageUp}{PageUp}{PageUp}{PageUp}");
        kiosk.Closeout.At.Should().Be(Step.Mileage);
        var odometer = (int)kiosk.Depot.Van(new("B5")).OdometerMi + 20;
        kiosk.Press($"{odometer}{{Enter}}{{Enter}}");

        kiosk.Closeout.At.Should().Be(Step.SignOff);
        kiosk.Depot.Shift(new("B5"))!.Mileage!.DistanceMi.Should().Be(20);
    }

    [Fact]
    public void A_recount_that_empties_another_carton_asks_the_cardboard_again()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}**{Enter}=");
        var item = kiosk.Depot.Shift(new("B5"))!.Before.First(b => b.Value.Sealed > 0);

        kiosk.Press($"{{PageUp}}{{PageUp}}{{PageUp}}/{item.Key}{{Enter}}{item.Value.Sealed - 1}{{Enter}}0{{Enter}}0{{Enter}}");
        kiosk.Session.Model.Said.Should().Be("Changed. PgDn goes on.");
        kiosk.Press("{PageDown}");

        kiosk.Closeout.At.Should().Be(Step.Cardboard);
        kiosk.Press("==n");
        kiosk.Depot.Shift(new("B5"))!.Step.Should().Be(Step.Kit);
    }

    [Fact]
    public void An_implausible_odometer_is_asked_again_with_both_numbers_and_the_same_answer_again_is_recorded()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B5{Enter}{Enter}**{Enter}12{Enter}{Enter}");
        var start = kiosk.Depot.Van(new("B5")).OdometerMi;

        kiosk.Session.Model.Said.Should().Contain("12 mi").And.Contain($"{start} mi");
        kiosk.Entries.OfType<MileageLogged>().Should().BeEmpty();

        kiosk.Press("{Enter}{Enter}{Enter}").Entries.OfType<MileageLogged>().Should().BeEmpty("Enter alone confirms nothing");
        kiosk.Press("12{Enter}");
        kiosk.Entries.OfType<MileageLogged>().Should().ContainSingle().Which.Should().Match<MileageLogged>(m => m.Sure && m.DistanceMi == 0);
    }

    [Theory]
    [InlineData("T14")]
    [InlineData("t14")]
    public void A_scanned_technician_code_replaces_the_name_in_the_field(string scanned)
    {
        using var kiosk = new SampleKiosk();

        kiosk.Press($"B5{{Enter}}{scanned}{{Enter}}");

        kiosk.Depot.Shift(new("B5"))!.Technician.Text.Should().Be("T14");
    }

    [Fact]
    public void A_scanned_label_finds_its_item_whatever_field_has_the_caret()
    {
        using var kiosk = new SampleKiosk();
        kiosk.Press("B1{Enter}{Enter}");

        kiosk.Press("LED-G25{Enter}");

        kiosk.Closeout.Item.Should().Be(new Code<Item>("LED-G25"));
    }

    [Fact]
    public void A_van_that_nobody_has_is_told_and_the_wall_stays()
    {
        using var kiosk = new SampleKiosk();

        kiosk.Press("B9{Enter}");

        kiosk.Session.Model.Said.Should().Contain("No van and nobody here is called B9");
        kiosk.Entries.Should().BeEmpty();
    }
}
