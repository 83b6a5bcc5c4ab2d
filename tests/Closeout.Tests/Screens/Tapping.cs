using Closeout.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>A tap on a van, a field or a key of the key line does what the keys do.</summary>
public sealed class Tapping
{
    private readonly SampleKiosk kiosk = new();

    [Fact]
    public void A_van_is_opened_by_a_tap_on_its_row()
    {
        Tap("Egret");

        kiosk.Session.Model.Screen.Should().BeOfType<WhoScreen>().Which.Van.Text.Should().Be("B5");
    }

    [Fact]
    public void A_key_of_the_key_line_is_pressed_by_a_tap_on_its_words()
    {
        Tap("F2 plan");
        kiosk.Session.Model.Screen.Should().BeOfType<PlanScreen>();

        Tap("back to the wall");
        kiosk.Session.Model.Screen.Should().BeOfType<WallScreen>();
    }

    [Fact]
    public void A_field_has_the_cursor_after_a_tap_on_it()
    {
        kiosk.Press("{F5}CO-10Y");
        Tap("Cartons that came");

        kiosk.Press("7").Show().Should().Contain("[7    ]");
    }

    [Fact]
    public void Where_nothing_is_a_tap_does_nothing()
    {
        kiosk.Session.Show(80, 24).Taps.At(1, 3).Should().BeEmpty();
    }

    private void Tap(string words)
    {
        var sheet = kiosk.Session.Show(80, 24);
        var lines = sheet.ToString().Split('\n');
        var row = Array.FindIndex(lines, l => l.Contains(words, StringComparison.Ordinal));
        var keys = sheet.Taps.At(row, lines[row].IndexOf(words, StringComparison.Ordinal));
        keys.Should().NotBeEmpty(words);
        foreach (var key in keys)
            kiosk.Session.Press(key);
    }
}
