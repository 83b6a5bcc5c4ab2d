using System.Text.RegularExpressions;
using Closeout.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

/// <summary>F8 after the sample evening: every entry can be read to its end.</summary>
public sealed partial class DayBookByKeys : IDisposable
{
    private readonly SampleKiosk kiosk = SampleKiosk.Evening();

    [Theory]
    [InlineData(80, 24)]
    [InlineData(120, 40)]
    public void The_chosen_entry_stands_whole_below_the_list(int width, int height)
    {
        kiosk.Press("{F8}");
        var lines = ((DayBookScreen)kiosk.Session.Model.Screen).Lines;
        lines.Should().Contain(l => l.Line.What.Length > width - 45, "there is something to cut");
        foreach (var (_, line) in lines)
        {
            OneLine(kiosk.Show(width, height)).Should().Contain(OneLine(line.What));
            kiosk.Press("{Down}");
        }
    }

    [Fact]
    public void A_reason_of_one_long_word_is_broken_and_a_load_of_many_items_is_whole()
    {
        var word = new string('r', 80);
        kiosk.Press($"B1{{F7}}h{word}{{Enter}}L1{{Enter}}{{Escape}}").Press("B6{F4}=").Press("{F8}");

        kiosk.Show().Should().Contain("> ").And.Contain("loaded ");
        var load = ((DayBookScreen)kiosk.Session.Model.Screen).Lines[0].Line.What;
        OneLine(kiosk.Show()).Should().Contain(OneLine(load));
        kiosk.Press("{Down}").Show().Replace("\n ", "", StringComparison.Ordinal).Should().Contain(word);
    }

    [Fact]
    public void Keys_choose_and_a_filter_begins_at_the_newest()
    {
        kiosk.Press("{F8}{End}").Show().Should().Contain(">    1");
        kiosk.Press("{Home}{Down}{Down}{Up}");
        ((DayBookScreen)kiosk.Session.Model.Screen).Selected.Should().Be(1);

        kiosk.Press("led-g");
        ((DayBookScreen)kiosk.Session.Model.Screen).Selected.Should().Be(0);
    }

    public void Dispose() => kiosk.Dispose();

    private static string OneLine(string text) => Blanks().Replace(text, " ");

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();
}
