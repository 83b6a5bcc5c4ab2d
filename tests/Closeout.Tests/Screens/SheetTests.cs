using Closeout.Screens.Parts;
using Closeout.Words;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens;

public sealed class SheetTests
{
    [Fact]
    public void A_wide_grapheme_takes_two_cells_and_is_never_cut_in_half()
    {
        var sheet = new Sheet(5, 1);

        sheet.Write(0, 0, "漢字漢").Should().Be(4);

        sheet.ToString().Should().Be("漢字\n");
    }

    [Theory]
    [InlineData("\u001b[31mred", "·[31mred")]
    [InlineData("a\r\nb", "a··b")]
    [InlineData("\u202egnp", "·gnp")]
    public void What_steers_a_terminal_becomes_a_dot(string text, string shown)
    {
        var sheet = new Sheet(20, 1);
        sheet.Write(0, 0, text);

        sheet.ToString().Should().Be(shown + "\n");
    }

    [Theory]
    [InlineData(-3, 0)]
    [InlineData(0, -2)]
    [InlineData(0, 40)]
    [InlineData(9, 0)]
    public void Off_the_sheet_nothing_is_written(int row, int column)
    {
        var sheet = new Sheet(4, 2);

        sheet.Invoking(s => s.Write(row, column, "x")).Should().NotThrow();

        sheet.ToString().Trim().Should().BeEmpty();
    }

    [Fact]
    public void Sentences_break_between_words()
    {
        Cells.Wrap("one two three", 8).Should().Equal("one two", "three");
    }

    [Fact]
    public void A_word_longer_than_a_line_breaks_within_and_nothing_of_it_is_lost()
    {
        Cells.Wrap("one twothreefour five", 8).Should().Equal("one", "twothree", "four", "five");
        Cells.Wrap("漢字漢字漢", 5).Should().Equal("漢字", "漢字", "漢");
    }

    [Theory]
    [InlineData("Saltmarsh", 9, "Saltmarsh")]
    [InlineData("Saltmarsh", 8, "Saltmar…")]
    [InlineData("漢字漢字", 6, "漢字…")]
    [InlineData("Saltmarsh", 1, "…")]
    [InlineData("Saltmarsh", 0, "")]
    [InlineData("Saltmarsh", -3, "")]
    public void What_is_too_long_ends_with_an_ellipsis(string text, int columns, string cut) => Cells.Cut(text, columns).Should().Be(cut);
}
