using Closeout.Html;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

public sealed class ToneTests
{
    public static TheoryData<Tone> All => [.. Enum.GetValues<Tone>()];

    [Theory]
    [InlineData("#000000", "#ffffff", 21)]
    [InlineData("#ffffff", "#ffffff", 1)]
    [InlineData("#777777", "#ffffff", 4.48)]
    [InlineData("#ff0000", "#ffffff", 4.00)]
    public void The_formula_gives_the_figures_that_are_widely_known(string one, string other, double ratio) => Wcag.Contrast(one, other).Should().BeApproximately(ratio, 0.005);

    [Theory]
    [MemberData(nameof(All))]
    public void A_tone_is_read_on_white_and_on_black_and_white_letters_on_it(Tone tone)
    {
        Wcag.Contrast(Tones.Colour(tone), Tones.Light).Should().BeGreaterThanOrEqualTo(Wcag.Text);
        Wcag.Contrast(Tones.Colour(tone), Tones.Dark).Should().BeGreaterThanOrEqualTo(Wcag.Text);
    }

    [Fact]
    public void Every_tone_has_a_badge_of_its_own_colour_and_white_letters()
    {
        foreach (var tone in Enum.GetValues<Tone>())
            Tones.Style.Should().Contain($".b.{Tones.Name(tone)} {{ background: {Tones.Colour(tone)}; }}");

        Tones.Style.Should().Contain($".b {{ display: inline-block; padding: 0 .5em; border-radius: .2em; color: {Tones.Light};");
        Enum.GetValues<Tone>().Select(Tones.Colour).Should().OnlyHaveUniqueItems();
    }
}
