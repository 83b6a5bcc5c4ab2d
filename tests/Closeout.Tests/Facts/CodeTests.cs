using Closeout.Facts;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Facts;

public class CodeTests
{
    private static readonly Gen<string> AnyCode =
        Gen.Char["ABab01-._"].Array[1, 24].Select(letters => new string(letters));

    [Fact]
    public void Two_codes_that_differ_by_case_alone_are_the_same()
    {
        var (upper, lower) = (new Code<Item>("LED-A19"), new Code<Item>("led-a19"));

        (upper == lower).Should().BeTrue();
        upper.GetHashCode().Should().Be(lower.GetHashCode());
        new HashSet<Code<Item>> { upper, lower }.Should().HaveCount(1);
    }

    [Fact]
    public void Codes_that_differ_by_more_than_case_are_two() =>
        new Code<Item>("LED-A19").Should().NotBe(new Code<Item>("LED.A19"));

    [Fact]
    public void The_spelling_first_written_is_kept()
    {
        var known = new Dictionary<Code<Item>, Code<Item>>();
        foreach (var written in new[] { "Led-A19", "LED-A19" })
        {
            known.TryAdd(new(written), new(written));
        }

        known[new("led-a19")].ToString().Should().Be("Led-A19");
    }

    [Fact]
    public void Order_is_ordinal_by_the_spelling() =>
        new[] { "b", "10", "A", "9", "B" }.Select(t => new Code<Item>(t)).Order().Select(c => c.Text)
            .Should().Equal("10", "9", "A", "B", "b");

    [Fact]
    public void Whatever_the_case_a_code_equals_itself_and_hashes_the_same() => AnyCode.Holds(text =>
    {
        var (kept, lower) = (Code<Item>.Of(text), Code<Item>.Of(text.ToLowerInvariant()));
        lower.Should().Be(kept);
        lower.GetHashCode().Should().Be(kept.GetHashCode());
        kept.Text.Should().Be(text);
    });

    [Theory]
    [InlineData("A")]
    [InlineData("9")]
    [InlineData("LED-A19_27.K")]
    [InlineData("-")]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWX")]
    public void Letters_digits_dot_underscore_and_hyphen_make_a_code_of_up_to_24(string text) =>
        Code<Item>.IsValid(text).Should().BeTrue();

    [Theory]
    [InlineData("")]
    [InlineData(" ")]
    [InlineData("A B")]
    [InlineData("A\n")]
    [InlineData("A,B")]
    [InlineData("Ä")]
    [InlineData("١")]
    [InlineData("ABCDEFGHIJKLMNOPQRSTUVWXY")]
    public void Anything_else_is_no_code(string text)
    {
        Code<Item>.IsValid(text).Should().BeFalse();
        FluentActions.Invoking(() => Code<Item>.Of(text)).Should().Throw<ArgumentException>();
    }

    [Fact]
    public void A_code_never_given_reads_as_nothing_and_equals_only_itself()
    {
        default(Code<Item>).ToString().Should().BeEmpty();
        default(Code<Item>).Should().Be(default(Code<Item>)).And.NotBe(new Code<Item>("A"));
    }
}
