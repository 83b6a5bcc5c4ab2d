using Closeout.Screens.Parts;
using FluentAssertions;
using Terminal.Gui.Drawing;
using Xunit;

namespace Closeout.Tests.Screens.Parts;

/// <summary>
/// The contrast of each badge in the default palettes of six terminals, by the formula of WCAG 2.2 (W3C, 5 October 2023, "contrast ratio"
/// and "relative luminance"). Palettes: the table of the article "ANSI escape code", section Colors, en.wikipedia.org, as of 2025, from
/// memory; a terminal's owner may have set another.
/// </summary>
public sealed class PaintTests
{
    /// <summary>Black, green, yellow, red, bright white of each, as 24-bit values.</summary>
    private static readonly Dictionary<string, (int Black, int Green, int Yellow, int Red, int White)> Palettes = new()
    {
        ["VGA"] = (0x000000, 0x00AA00, 0xAA5500, 0xAA0000, 0xFFFFFF),
        ["Windows console"] = (0x0C0C0C, 0x13A10E, 0xC19C00, 0xC50F1F, 0xF2F2F2),
        ["Terminal.app"] = (0x000000, 0x00A600, 0x999900, 0x990000, 0xE5E5E5),
        ["PuTTY"] = (0x000000, 0x00BB00, 0xBBBB00, 0xBB0000, 0xFFFFFF),
        ["xterm"] = (0x000000, 0x00CD00, 0xCDCD00, 0xCD0000, 0xFFFFFF),
        ["Ubuntu"] = (0x010101, 0x39B54A, 0xFFC706, 0xDE382B, 0xFFFFFF),
    };

    public static TheoryData<string, Look> Badges
    {
        get
        {
            var data = new TheoryData<string, Look>();
            foreach (var palette in Palettes.Keys)
            {
                foreach (var look in Paint.Tones.Keys)
                    data.Add(palette, look);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Badges))]
    public void A_badge_can_be_read_in_every_palette(string palette, Look tone) => Contrast(palette, tone).Should().BeGreaterThan(3.5);

    [Fact]
    public void Most_badges_reach_what_is_asked_of_text() =>
        Badges.Count(b => Contrast((string)b[0], (Look)b[1]) >= 4.5).Should().BeGreaterThan(Badges.Count() / 2);

    /// <summary>W3C's own examples: black on white is 21 to 1; #777777 on white is 4.48, just too little for text.</summary>
    [Theory]
    [InlineData(0x000000, 0xFFFFFF, 21)]
    [InlineData(0x777777, 0xFFFFFF, 4.48)]
    public void The_formula_gives_the_published_examples(int letters, int ground, double ratio) => Ratio(letters, ground).Should().BeApproximately(ratio, 0.005);

    [Theory]
    [InlineData(false, null, "xterm-256color", true)]
    [InlineData(false, "", "xterm-256color", true)]
    [InlineData(false, "1", "xterm-256color", false)]
    [InlineData(false, null, "dumb", false)]
    [InlineData(true, null, "xterm-256color", false)]
    public void Colors_are_left_out_where_somebody_says_so(bool refused, string? noColor, string terminal, bool wanted) =>
        Paint.Wanted(refused, noColor, terminal).Should().Be(wanted);

    [Theory]
    [MemberData(nameof(Looks))]
    public void Without_colors_no_look_names_one(Look look)
    {
        var attribute = new Paint(hasColors: false).Of(look);
        (attribute.Foreground, attribute.Background).Should().Be((Color.None, Color.None));
    }

    public static TheoryData<Look> Looks => [.. Enum.GetValues<Look>()];

    private static double Contrast(string palette, Look tone) => Ratio(Rgb(palette, Paint.Tones[tone].Letters), Rgb(palette, Paint.Tones[tone].Ground));

    private static int Rgb(string palette, ColorName16 name) => name switch
    {
        ColorName16.Black => Palettes[palette].Black,
        ColorName16.Green => Palettes[palette].Green,
        ColorName16.Yellow => Palettes[palette].Yellow,
        ColorName16.Red => Palettes[palette].Red,
        ColorName16.White => Palettes[palette].White,
        _ => throw new InvalidOperationException($"no value for {name}"),
    };

    private static double Ratio(int letters, int ground)
    {
        var (a, b) = (Luminance(letters), Luminance(ground));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(int rgb) => 0.2126 * Channel(rgb >> 16) + 0.7152 * Channel(rgb >> 8) + 0.0722 * Channel(rgb);

    private static double Channel(int value) => (value & 0xFF) / 255.0 is var c && c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4);
}
