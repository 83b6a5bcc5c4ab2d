using Closeout.Screens;
using Closeout.Screens.Parts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>A field at the kiosk: its caret goes where somebody wants to mend a slip, and the fields beside it stay where they are.</summary>
public sealed class FieldByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = new SampleKiosk().Press("B3{Enter}{Enter}**==d6{Enter}r{Enter}");

    private Field What => kiosk.Closeout.Form["what"];

    [Theory]
    [InlineData("crak{Left}c", "crack")]
    [InlineData("rack{Home}c", "crack")]
    [InlineData("rack{Home}c{End}s", "cracks")]
    [InlineData("cracck{Left}{Left}{Delete}", "crack")]
    [InlineData("crack the view{WordLeft}{WordLeft}across ", "crack across the view")]
    [InlineData("crack x the{WordLeft}{Backspace}{Backspace}{WordRight}.", "crack the.")]
    public void A_slip_is_mended_in_its_place(string keys, string text)
    {
        kiosk.Press(keys);
        What.Text.Should().Be(text);
    }

    [Theory]
    [InlineData("1", "1")]
    [InlineData("{Left}1", "T017")]
    [InlineData("{End}1", "T071")]
    [InlineData("{Home}{Delete}", "07")]
    [InlineData("{Backspace}", "T0")]
    [InlineData("{Delete}", "")]
    public void Of_what_the_program_put_there_the_first_character_replaces_all_unless_the_caret_was_moved(string keys, string text)
    {
        using var before = new SampleKiosk();
        before.Press("B3{Enter}" + keys);
        ((WhoScreen)before.Session.Model.Screen).Form.Now!.Text.Should().Be(text);
    }

    [Fact]
    public void Ten_wide_characters_leave_the_card_where_it_is_and_the_caret_behind_them()
    {
        var sheet = kiosk.Session.Show(80, 24);
        var (row, column) = sheet.Caret!.Value;
        var beside = sheet.ToString().Split('\n')[row].TrimEnd();

        kiosk.Press("漢字漢字漢字漢字漢字");

        var typed = kiosk.Session.Show(80, 24);
        typed.Caret.Should().Be((row, column + 20));
        typed.ToString().Split('\n')[row].TrimEnd().Length.Should().Be(beside.Length - 10, "each of ten characters takes two columns");
    }

    [Fact]
    public void What_is_typed_in_a_field_that_is_visited_again_replaces_what_stands_there()
    {
        kiosk.Press("crack{Home}{Up}{Down}d");
        What.Text.Should().Be("d");
    }

    public void Dispose() => kiosk.Dispose();
}
