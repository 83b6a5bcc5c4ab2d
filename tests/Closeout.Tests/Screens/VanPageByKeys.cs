using Closeout.Facts;
using Closeout.Screens;
using Closeout.Screens.Forms;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>F7 after the sample evening: B4 has a crack in its windshield, B5 an old damage, B6 no extinguisher, the wrong fuel and two boxes missing.</summary>
public sealed class VanPageByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = SampleKiosk.Evening();

    [Fact]
    public void The_page_says_what_stands_against_the_van_what_is_due_and_what_to_load()
    {
        kiosk.Press("B4{F7}").Show(150, 40).Should()
            .Contain("HELD").And.Contain("windshield, unsafe: crack across the driver's view (incident 2), since 2026-11-18")
            .And.Contain("told L1, at the kiosk at 16:41")
            .And.Contain("Combustible gas detector to be tested by 2026-11-27")
            .And.Contain("To load").And.Contain("It does not say that the van is safe");
    }

    [Fact]
    public void L_lifts_the_holds_and_the_page_says_so_with_the_incident_still_open()
    {
        kiosk.Press("B4{F7}l");
        kiosk.Show().Should().Contain("LIFT A HOLD").And.Contain("B4 Dunlin is held:").And.Contain("1  windshield, unsafe").And.Contain("does not say");

        kiosk.Press("replaced, workshop slip 12{Enter}L1{Enter}");
        kiosk.Entries[^1].Should().BeEquivalentTo(new HoldsLifted(new("B4"), ["windshield, unsafe: crack across the driver's view (incident 2)"], "replaced, workshop slip 12", new("L1")));
        kiosk.Session.Model.Screen.Should().BeOfType<VanScreen>();
        kiosk.Show(100, 40).Should().NotContain("HELD").And.Contain("hold lifted by L1: replaced, workshop slip 12").And.Contain("; hold lifted");
        kiosk.Press("{Escape}").Show(160, 40).Should().NotContain("HELD: windshield");
    }

    [Fact]
    public void H_puts_the_van_on_hold_and_the_wall_says_it_at_once()
    {
        kiosk.Press("B1{F7}hsteering pulls to the left{Enter}L1{Enter}");

        kiosk.Entries[^1].Should().Be(new HoldPlaced(new("B1"), "steering pulls to the left", new("L1")));
        kiosk.Press("{Escape}").Show().Should().Contain("HELD: steering");
        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>().Which.Selected.Should().Be(0, "back on the van that was chosen");
    }

    [Fact]
    public void C_closes_the_oldest_incident_unless_another_number_is_typed()
    {
        kiosk.Press("B5{F7}c");
        kiosk.Show().Should().Contain("rear door, to repair: latch sticks, closes when lifted (incident 1)").And.Contain("[1    ]");

        kiosk.Press("{Enter}latch replaced{Enter}L1{Enter}");
        kiosk.Entries[^1].Should().Be(new IncidentClosed(new("B5"), 1, "latch replaced", new("L1")));
        kiosk.Show(100, 40).Should().NotContain("Incident").And.Contain("incident 1 closed by L1: latch replaced");

        kiosk.Press("c7{Enter}why{Enter}L1{Enter}");
        kiosk.Session.Model.Said.Should().Contain("Incident 7 of B5 Egret is not open. It has no open incident");
    }

    [Fact]
    public void W_writes_off_what_the_van_misses_all_of_an_item_or_so_many()
    {
        kiosk.Press("B6{F7}w");
        kiosk.Show().Should().Contain("WRITE BOXES OFF").And.Contain("B6 Fulmar: 2 boxes missing");
        var first = ((FormScreen)kiosk.Session.Model.Screen).Form["item"].Text;

        kiosk.Press("{Enter}{Enter}never found{Enter}L1{Enter}");
        kiosk.Entries[^1].Should().Be(new BoxesWrittenOff(new("B6"), new(first), 1, "never found", new("L1")));

        kiosk.Press("w{Enter}5{Enter}never found{Enter}L1{Enter}");
        kiosk.Session.Model.Said.Should().Contain("1 box of ").And.Contain("missing, not 5. Type 1.");
        kiosk.Press("{Up}{Up}{Backspace}1{Enter}{Enter}{Enter}").Entries[^1].Should().BeOfType<BoxesWrittenOff>();
        kiosk.Press("{Escape}").Show().Should().NotContain("2 boxes missing");
    }

    [Theory]
    [InlineData("B4{F7}lreplaced{Enter}{Enter}", "That is a lead's")]
    [InlineData("B4{F7}lreplaced{Enter}T03{Enter}", "T03 Ines Marsh is not a lead. A lead lifts a hold")]
    [InlineData("B4{F7}lreplaced{Enter}L9{Enter}", "Nobody here has the code L9")]
    [InlineData("B4{F7}l{Enter}", "Say why it may go out (1 to 80")]
    [InlineData("B4{F7}lcard 4111 1111 1111 1111{Enter}", "card number")]
    [InlineData("B1{F7}lwhy not{Enter}L1{Enter}", "B1 Avocet is not on hold")]
    [InlineData("B1{F7}h{Enter}", "Say why it must stay")]
    [InlineData("B4{F7}c{Backspace}{Enter}", "Type the incident's number")]
    [InlineData("B1{F7}w{Enter}", "Type the code of the item")]
    [InlineData("B1{F7}wLED-G25{Enter}{Enter}why{Enter}L1{Enter}", "B1 Avocet has no box of LED globe G25, 6 W, 2700 K missing")]
    public void What_is_missing_or_wrong_is_said_and_the_form_stays(string keys, string said)
    {
        var before = kiosk.Entries.Count;
        kiosk.Press(keys);

        kiosk.Session.Model.Said.Should().Contain(said);
        kiosk.Session.Model.Screen.Should().BeOfType<FormScreen>();
        kiosk.Entries.Should().HaveCount(before);
    }

    [Theory]
    [InlineData('l')]
    [InlineData('h')]
    [InlineData('c')]
    [InlineData('w')]
    public void Esc_leaves_a_form_for_the_page_and_records_nothing(char key)
    {
        var before = kiosk.Entries.Count;
        kiosk.Press($"B4{{F7}}{key}words{{Escape}}");

        kiosk.Session.Model.Screen.Should().BeOfType<VanScreen>().Which.Van.Text.Should().Be("B4");
        kiosk.Entries.Should().HaveCount(before);
    }

    [Fact]
    public void A_page_longer_than_the_screen_scrolls_to_its_end_and_no_farther()
    {
        kiosk.Press("B6{F7}");
        var top = kiosk.Show(80, 12);
        top.Should().Contain("more lines: Up and Down").And.NotContain("To load");

        kiosk.Press(string.Concat(Enumerable.Repeat("{PageDown}", 20))).Show(80, 12).Should().Contain("To load");
        kiosk.Press("{Home}").Show(80, 12).Should().Be(top);
    }

    public void Dispose() => kiosk.Dispose();
}
