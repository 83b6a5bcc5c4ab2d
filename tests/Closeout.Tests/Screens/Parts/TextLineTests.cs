using Closeout.Screens.Parts;
using Closeout.Words;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Screens.Parts;

/// <summary>A line being typed, | is its caret.</summary>
public sealed class TextLineTests
{
    // One column, two columns, a letter with its accent beside it, a blank.
    private static readonly Gen<string> AnyText = Gen.OneOf("a", "漢", "e\u0301", " ", "9").Array[0, 12].Select(string.Concat);

    [Theory]
    [InlineData("cra|ck", Press.Left, "cr|ack")]
    [InlineData("|crack", Press.Left, "|crack")]
    [InlineData("cra|ck", Press.Right, "crac|k")]
    [InlineData("crack|", Press.Right, "crack|")]
    [InlineData("cra|ck", Press.Home, "|crack")]
    [InlineData("cra|ck", Press.End, "crack|")]
    [InlineData("cra|ck", Press.Backspace, "cr|ck")]
    [InlineData("|crack", Press.Backspace, "|crack")]
    [InlineData("cra|ck", Press.Delete, "cra|k")]
    [InlineData("crack|", Press.Delete, "crack|")]
    [InlineData("crack across the|", Press.WordLeft, "crack across |the")]
    [InlineData("crack across |the", Press.WordLeft, "crack |across the")]
    [InlineData("crack  |", Press.WordLeft, "|crack  ")]
    [InlineData("cr|ack  across", Press.WordRight, "crack  |across")]
    [InlineData("crack a|cross", Press.WordRight, "crack across|")]
    [InlineData("漢字|漢", Press.Backspace, "漢|漢")]
    [InlineData("cafe\u0301|s", Press.Backspace, "caf|s")]
    [InlineData("caf|e\u0301s", Press.Delete, "caf|s")]
    [InlineData("caf|e\u0301s", Press.Right, "cafe\u0301|s")]
    public void A_key_moves_the_caret_or_takes_one_grapheme(string before, Press press, string after) =>
        Told(Line(before).On(press)!.Value).Should().Be(after);

    [Theory]
    [InlineData(Press.Enter)]
    [InlineData(Press.Up)]
    [InlineData(Press.PageDown)]
    public void Other_keys_are_none_of_its(Press press) => Line("cra|ck").On(press).Should().BeNull();

    [Theory]
    [InlineData("c|k", 'r', "cr|k")]
    [InlineData("caf|s", 'e', "cafe|s")]
    [InlineData("cafe|s", '\u0301', "cafe\u0301|s")]
    public void A_character_goes_in_at_the_caret(string before, char typed, string after) => Told(Line(before).Insert(typed)).Should().Be(after);

    [Theory]
    [InlineData("|", 5, "     ", 0)]
    [InlineData("crack|", 5, "crack", 4)]
    [InlineData("crac|", 5, "crac ", 4)]
    [InlineData("crack across|", 5, "cross", 4)]
    [InlineData("crack| across", 5, "rack ", 4)]
    [InlineData("|crack across", 5, "crack", 0)]
    [InlineData("漢字|", 6, "漢字  ", 4)]
    [InlineData("漢字漢字|", 5, "漢字 ", 4)]
    [InlineData("漢|字漢字", 5, "漢字 ", 2)]
    [InlineData("cafe\u0301|", 6, "cafe\u0301  ", 4)]
    public void Of_a_line_longer_than_its_field_that_part_is_seen_in_which_the_caret_stands(string line, int columns, string shown, int column) =>
        Line(line).In(columns).Should().Be((shown, column));

    [Fact]
    public void Whatever_is_typed_fills_its_columns_just_and_its_caret_stands_among_them() => Gen.Select(AnyText, Gen.Int[0, 20], Gen.Int[2, 9]).Holds((text, at, columns) =>
    {
        var end = TextLine.Behind(text);
        var (shown, column) = (end with { Caret = Math.Min(at, end.Caret) }).In(columns);
        Cells.Count(shown).Should().Be(columns);
        column.Should().BeInRange(0, columns - 1);
    });

    [Fact]
    public void What_was_typed_goes_away_by_as_many_Backspaces_as_it_has_graphemes() => AnyText.Holds(text =>
    {
        var line = TextLine.Behind(text);
        var (graphemes, pressed) = (line.Caret, 0);
        for (; line.Text.Length > 0; pressed++)
        {
            line = line.On(Press.Backspace)!.Value;
        }

        pressed.Should().Be(graphemes);
    });

    private static TextLine Line(string told) => TextLine.Behind(told[..told.IndexOf('|', StringComparison.Ordinal)]) with { Text = told.Replace("|", "", StringComparison.Ordinal) };

    private static string Told(TextLine line) => string.Concat(Cells.Graphemes(line.Text).Take(line.Caret)) + "|" + string.Concat(Cells.Graphemes(line.Text).Skip(line.Caret));
}
