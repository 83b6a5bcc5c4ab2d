using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Parts;
using Closeout.Store;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Two kiosks on one book, each with its own session and its own seats.</summary>
public sealed class TwoKiosks : IDisposable
{
    private readonly SampleKiosk sample = new(typesPins: false);
    private readonly VanSeats seats;
    private readonly VanSeats yardSeats;
    private readonly KioskSession bay;
    private readonly KioskSession yard;

    public TwoKiosks()
    {
        (seats, yardSeats) = (new(sample.Folder, "bay, program 7,"), new(sample.Folder, "yard, program 8,"));
        (bay, yard) = (Begin(seats, "bay"), Begin(yardSeats, "yard"));
    }

    public void Dispose()
    {
        seats.Dispose();
        yardSeats.Dispose();
        sample.Dispose();
    }

    [Fact]
    public void The_second_on_a_van_is_told_who_has_it_and_another_van_is_free()
    {
        Press(bay, "B3{Enter}{Enter}");
        bay.Model.Screen.Should().BeOfType<CloseoutScreen>();

        Press(yard, "B3{Enter}");
        yard.Model.Screen.Should().BeOfType<WallScreen>();
        yard.Model.Said.Should().Be("B3 Curlew is being closed out at bay, program 7, since 16:52. Go on there, or press Esc there first.");

        Press(yard, "B4{Enter}{Enter}");
        yard.Model.Screen.Should().BeOfType<CloseoutScreen>().Which.Question.Van.Text.Should().Be("B4");
    }

    [Fact]
    public void Who_leaves_the_van_frees_it_and_so_does_who_ends()
    {
        Press(bay, "B3{Enter}{Enter}{Escape}");
        Press(yard, "B3{Enter}");
        yard.Model.Screen.Should().BeOfType<CloseoutScreen>();

        yardSeats.Dispose();
        Press(bay, "B3{Enter}");
        bay.Model.Screen.Should().BeOfType<CloseoutScreen>();
    }

    [Fact]
    public void A_lead_elsewhere_does_not_close_out_for_somebody_a_van_that_is_being_counted()
    {
        Press(bay, "B3{Enter}{Enter}");
        Press(yard, $"B3{{F7}}bT07{{Enter}}went home ill{{Enter}}L1{{Enter}}{sample.PinOf("L1")}{{Enter}}");

        yard.Model.Said.Should().StartWith("B3 Curlew is being closed out at bay");
        sample.Entries.Should().ContainSingle().Which.Should().BeOfType<VanCameIn>();
    }

    [Fact]
    public void A_close_out_for_somebody_stays_in_the_name_of_who_brought_the_van_in()
    {
        Press(bay, "B3{Enter}{Enter}{Escape}");
        Press(yard, $"B3{{F7}}bT14{{Enter}}went home ill{{Enter}}L1{{Enter}}{sample.PinOf("L1")}{{Enter}}");

        yard.Model.Said.Should().Contain("was brought in by T07 Perrin Shoal, not T14");
        sample.Entries.Should().ContainSingle("nothing was confirmed as booked before the name was right");
    }

    [Fact]
    public void Nobody_excuses_a_van_or_ends_the_date_while_it_is_being_walked_at_another_kiosk()
    {
        Press(bay, "B3{Enter}{Enter}");
        Press(yard, $"B3{{F7}}x{{Enter}}N{{Enter}}still out{{Enter}}L1{{Enter}}{sample.PinOf("L1")}{{Enter}}");
        yard.Model.Said.Should().StartWith("B3 Curlew is being closed out at bay");

        Press(yard, "{Escape}{Escape}{F8}{F5}{Enter}L1{Enter}");
        yard.Model.Said.Should().StartWith("B3 Curlew is being closed out at bay");
        sample.Entries.Should().ContainSingle().Which.Should().BeOfType<VanCameIn>();
    }

    [Fact]
    public void Seats_that_cannot_be_kept_are_said_and_the_kiosk_goes_on()
    {
        File.WriteAllText(sample.Folder.Seats, "a file where the folder should be");

        Press(bay, "B3{Enter}{Enter}");

        bay.Model.Said.Should().Contain(sample.Folder.Path).And.Contain("cannot be written");
        Press(bay, "{Escape}");
        bay.Model.Screen.Should().BeOfType<WallScreen>();
    }

    private KioskSession Begin(VanSeats own, string name) =>
        new(new Desk(Book.Open(sample.Folder), sample.Clock), new Archive(sample.Folder), new Attachments(sample.Folder), own, pins: new Pins(1, name));

    private static void Press(KioskSession kiosk, string keys)
    {
        foreach (var key in Keystroke.Parse(keys))
        {
            kiosk.Press(key);
            kiosk.Refresh();
        }
    }
}
