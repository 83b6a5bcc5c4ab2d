using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Words;

public sealed class ShapesTests
{
    [Theory]
    [InlineData(0, "    ")]
    [InlineData(0.5, "██  ")]
    [InlineData(0.53125, "██▏ ")]
    [InlineData(1, "████")]
    [InlineData(7, "████")]
    [InlineData(-1, "    ")]
    [InlineData(double.NaN, "    ")]
    public void A_bar_is_as_long_as_its_part_to_an_eighth_of_a_column(double part, string bar) => Shapes.Bar(part, 4).Should().Be(bar);

    [Fact]
    public void A_sparkline_has_a_column_for_each_number_and_the_highest_is_full() =>
        Shapes.Sparkline([0, 35, 70]).Should().Be("▁▅█");

    [Fact]
    public void Nothing_at_all_is_a_flat_line() => Shapes.Sparkline([0, 0]).Should().Be("▁▁");

    [Fact]
    public void Without_UTF_8_each_shape_is_one_ASCII_character() =>
        Shapes.Plain("┌─┐ ● done ◐ now ○ later ▲ note ■ stop ███▌ cut…").Should().Be("+-+ * done ~ now . later ! note # stop #### cut~");

    [Theory]
    [InlineData(true, "en_US.UTF-8", null, null)]
    [InlineData(true, null, null, null)]
    [InlineData(true, "", "", "de_DE.utf8")]
    [InlineData(false, "C", null, "en_US.UTF-8")]
    [InlineData(false, null, null, "POSIX")]
    public void The_first_of_the_locale_that_is_set_says_whether_UTF_8_is_shown(bool shown, string? all, string? type, string? lang) =>
        Shapes.AreShown(all, type, lang).Should().Be(shown);

    [Theory]
    [InlineData("LED lamp A19, 9 W, 2700 K", 25, "LED lamp A19, 9 W, 2700 K")]
    [InlineData("LED candelabra B11, E12, 4 W, 2700 K", 24, "LED candelabra B1…2700 K")]
    [InlineData("LED lamp A19", 5, "LED …")]
    public void A_long_name_loses_its_middle_because_its_end_decides(string name, int columns, string cut)
    {
        Cells.Middle(name, columns).Should().Be(cut);
        Cells.Count(Cells.Middle(name, columns)).Should().BeLessThanOrEqualTo(columns);
    }
}
