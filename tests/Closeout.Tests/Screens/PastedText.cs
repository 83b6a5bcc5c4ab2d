using Closeout.Screens;
using Closeout.Screens.Parts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>Pasted text is typed where the cursor stands. It records nothing: nobody looked at it yet.</summary>
public sealed class PastedText : IDisposable
{
    private readonly SampleKiosk kiosk = new(typesPins: false);

    [Fact]
    public void It_stands_in_the_field_and_an_end_of_line_within_is_a_blank()
    {
        kiosk.Press("B3{Enter}{Enter}**==d6{Enter}r{Enter}").Session.Paste("crack across\r\nthe view\n");

        kiosk.Closeout.Form.Now!.Should().Match<Field>(f => f.Name == "what" && f.Text == "crack across the view");
    }

    [Fact]
    public void It_replaces_what_is_shown_as_typing_does()
    {
        kiosk.Press("B3{Enter}").Session.Paste("T14\r");

        kiosk.Session.Model.Screen.Should().BeOfType<WhoScreen>("nobody pressed Enter").Which.Form.Now!.Text.Should().Be("T14");
    }

    [Theory]
    [InlineData("B3{Enter}{Enter}", "==**\r**\r")]
    [InlineData("B3{Enter}{Enter}**", "=")]
    [InlineData("B3{Enter}{Enter}**==", "N\r")]
    [InlineData("{F9}", "c")]
    public void It_records_nothing_and_opens_nothing(string keys, string pasted)
    {
        var before = kiosk.Press(keys).Entries.Count;
        var screen = kiosk.Session.Model.Screen.GetType();

        kiosk.Session.Paste(pasted);

        kiosk.Entries.Should().HaveCount(before);
        kiosk.Session.Model.Screen.Should().BeOfType(screen);
    }

    [Fact]
    public void A_PIN_may_be_pasted_and_Enter_is_pressed_by_hand()
    {
        kiosk.Press("B3{Enter}{Enter}**{Enter}=n={Enter}").Session.Paste(kiosk.PinOf("T07") + "\n");
        kiosk.Depot.Shift(new("B3"))!.IsClosed.Should().BeFalse();

        kiosk.Press("{Enter}").Depot.Shift(new("B3"))!.IsClosed.Should().BeTrue();
    }

    [Fact]
    public void An_emoji_is_left_out_with_a_word_and_the_rest_is_taken()
    {
        kiosk.Press("B3{Enter}{Enter}**==d6{Enter}r{Enter}").Session.Paste("crack \U0001F690 left");

        kiosk.Session.Model.Said.Should().Contain("U+FFFF").And.Contain("in words");
        kiosk.Closeout.Form.Now!.Text.Should().Be("crack  left");
        kiosk.Press("{Beyond}").Session.Model.Said.Should().Contain("U+FFFF");
    }

    public void Dispose() => kiosk.Dispose();
}
