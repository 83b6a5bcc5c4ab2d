using System.Globalization;
using System.Text;
using Closeout.Files;

namespace Closeout.Html;

/// <summary>A part of every bar of a chart: what it is, and its tone.</summary>
public sealed record ChartPart(string Word, Tone Tone);

/// <summary>One bar: its parts from the bottom up, and perhaps what it is held against.</summary>
/// <param name="Label">Below it.</param>
/// <param name="Parts">As many as the chart has, each at least 0.</param>
/// <param name="Mark">A line across the bar; null: none.</param>
public sealed record ChartBar(string Label, IReadOnlyList<double> Parts, double? Mark = null);

/// <summary>A chart of bars as inline SVG, with its key; the numbers stand in a table that the page puts below.</summary>
/// <remarks>
/// Across it is drawn in percent and upwards in the height of the letters: so it is as wide as the page, on a phone too, and its words keep
/// their size. What plotting libraries write has a width, fonts and black lines of its own, which no dark page shows.
/// </remarks>
public static class Chart
{
    public static readonly string Style =
        $$"""
        figure { margin: 0 0 .5em; max-width: 60em; }
        figure svg { display: block; width: 100%; height: 15em; overflow: hidden; }
        figure text { fill: currentColor; font-size: .85em; }
        figure .grid { stroke: {{Tones.Colour(Tone.Quiet)}}; stroke-width: 1px; }
        figure .line { stroke: currentColor; stroke-width: .2em; }
        h2 { font-size: 1.15em; margin: 1.2em 0 .3em; }
        """;

    /// <summary>Bars shown, the last ones; the table has them all.</summary>
    public const int MostBars = 26;

    /// <summary>More letters than this do not fit side by side on a phone.</summary>
    private const int MostLetters = 44;
    private const int LongestLabel = 9;

    // In em, from the top; and in percent, from the left.
    private const double Top = 1.5;
    private const double Bottom = 13.2;
    private const double Left = 16;
    private const double Right = 92;

    /// <param name="mark">What the bars' marks are; null: they have none.</param>
    /// <param name="most">The top of the scale; null: as the bars need it.</param>
    /// <param name="number">How a number of the scale is written.</param>
    public static string Svg(
        string title, IReadOnlyList<ChartPart> parts, IReadOnlyList<ChartBar> all, Func<double, string> number, string? mark = null,
        double? most = null)
    {
        var bars = all.TakeLast(MostBars).ToList();
        var highest = most ?? bars.Select(b => Math.Max(b.Parts.Sum(), b.Mark ?? 0)).DefaultIfEmpty().Max();
        var step = Step(highest);
        var lines = Math.Max(1, (int)Math.Ceiling(highest / step - 1e-9));
        double Height(double value) => Bottom - (Bottom - Top) * value / (step * lines);

        var what = T($"{title}: {string.Join(T(" and "), parts.Select(p => p.Word))}, {bars.Count} bars; the numbers are in the table");
        var svg = new StringBuilder($"<figure>\n<p>{Key(parts, mark)}</p>\n<svg role=\"img\" aria-label=\"{HtmlPage.Safe(what)}\">\n");
        for (var line = 0; line <= lines; line++)
        {
            Line(svg, "grid", Left, 100, Height(line * step));
            Text(svg, Left - 1, Height(line * step) + .3, "end", number(line * step));
        }

        var wide = (Right - Left) / Math.Max(1, bars.Count);
        var labels = bars.Select(b => Cells.Cut(b.Label, LongestLabel)).ToList();
        var every = Math.Max(1, (labels.Sum(l => l.Length + 1) + MostLetters - 1) / MostLetters);
        foreach (var (i, bar) in bars.Index())
        {
            var (x, from) = (Left + i * wide, 0.0);
            foreach (var (part, value) in parts.Zip(bar.Parts))
            {
                if (value > 0)
                    Rect(svg, part.Tone, x + wide * .15, wide * .7, Height(from + value), Height(from));

                from += value;
            }

            if (bar.Mark is { } at)
                Line(svg, "line", x + wide * .05, x + wide * .95, Height(at));

            // Counted from the last, which is what people look for.
            if ((bars.Count - 1 - i) % every == 0)
                Text(svg, x + wide / 2, Bottom + 1.2, "middle", labels[i]);
        }

        return svg.Append("</svg>\n</figure>").ToString();
    }

    private static void Line(StringBuilder svg, string kind, double x1, double x2, double y) => svg.Append(
        Culture, $"<line class=\"{kind}\" x1=\"{x1:0.###}%\" x2=\"{x2:0.###}%\" y1=\"{y:0.###}em\" y2=\"{y:0.###}em\"/>\n");

    private static void Rect(StringBuilder svg, Tone tone, double x, double width, double top, double bottom) => svg.Append(
        Culture,
        $"<rect class=\"mark {Tones.Name(tone)}\" x=\"{x:0.###}%\" width=\"{width:0.###}%\" y=\"{top:0.###}em\" "
            + $"height=\"{bottom - top:0.###}em\"/>\n");

    /// <summary>Letters have a size of their own, in which their height is measured.</summary>
    private static void Text(StringBuilder svg, double x, double y, string anchor, string text) => svg.Append(
        Culture, $"<text x=\"{x:0.###}%\" y=\"{y / .85:0.###}em\" text-anchor=\"{anchor}\">{HtmlPage.Safe(text)}</text>\n");

    /// <summary>1, 2 or 5 times a power of ten, so that at most five lines reach the most.</summary>
    private static double Step(double most)
    {
        if (most <= 0)
            return 1;

        var power = Math.Pow(10, Math.Floor(Math.Log10(most / 5)));
        return new[] { 1, 2, 5, 10 }.Select(n => n * power).First(s => most / s <= 5 + 1e-9);
    }

    private static string Key(IReadOnlyList<ChartPart> parts, string? mark) => string.Join(
        ' ', parts.Select(p => Tones.Badge(p.Tone, p.Word)).Concat(mark is null ? [] : [$"<b>━ {HtmlPage.Safe(mark)}</b>"]));

    private static IFormatProvider Culture => CultureInfo.InvariantCulture;
}
