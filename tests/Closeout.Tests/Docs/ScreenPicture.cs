using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Closeout.Tests.Docs;

/// <summary>A golden screen as an SVG picture: its text, cell by cell, on a rounded dark panel.</summary>
internal static partial class ScreenPicture
{
    private const decimal CellWidth = 8.4m;
    private const decimal CellHeight = 18m;
    private const decimal Edge = 16m;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <summary>Letters and ground of each tone, and the contrast of a terminal's own colors.</summary>
    private static readonly Dictionary<string, (string Letters, string Ground)> Colors = new()
    {
        ["Good"] = ("#000000", "#4fb35b"), ["Note"] = ("#000000", "#e0b13c"), ["Stop"] = ("#ffffff", "#c03a2b"),
    };

    /// <param name="label">What it shows, for whoever cannot see it.</param>
    /// <param name="tones">What of it has a tone, as <c>tones.txt</c> says it; empty: nothing.</param>
    public static string Of(string screen, string label, string tones = "")
    {
        var lines = screen.ReplaceLineEndings("\n").TrimEnd('\n').Split('\n').Select(l => l.TrimEnd()).ToList();
        var (width, height) = (lines.Max(l => l.Length) * CellWidth + 2 * Edge, lines.Count * CellHeight + 2 * Edge);
        var picture = new XElement(Svg + "svg",
            new XAttribute("viewBox", $"0 0 {Number(width)} {Number(height)}"),
            new XAttribute("width", Number(width)), new XAttribute("height", Number(height)),
            new XAttribute("role", "img"), new XAttribute("aria-label", label),
            new XElement(Svg + "rect",
                new XAttribute("width", "100%"), new XAttribute("height", "100%"),
                new XAttribute("rx", "10"), new XAttribute("fill", "#16181d")),
            new XElement(Svg + "g",
                new XAttribute("font-family", "ui-monospace, Menlo, Consolas, 'DejaVu Sans Mono', monospace"),
                new XAttribute("font-size", "14"), new XAttribute("fill", "#d8dee9"),
                lines.Select((text, row) => (text, row)).Where(l => l.text.Length > 0).Select(l => Line(l.text, l.row)),
                Badge().Matches(tones).SelectMany(Toned)));
        return picture.ToString().ReplaceLineEndings("\n") + "\n";
    }

    /// <summary>A row begins at its first sign; its length is given, so that columns stand below each other in any font.</summary>
    private static XElement Line(string text, int row)
    {
        var signs = text.TrimStart();
        return new(Svg + "text",
            new XAttribute(XNamespace.Xml + "space", "preserve"),
            new XAttribute("x", Number(Edge + (text.Length - signs.Length) * CellWidth)),
            new XAttribute("y", Number(Edge + row * CellHeight + 13)),
            new XAttribute("textLength", Number(signs.Length * CellWidth)), new XAttribute("lengthAdjust", "spacingAndGlyphs"),
            signs);
    }

    /// <summary>A word on its ground, over the same word without.</summary>
    private static IEnumerable<XElement> Toned(Match badge)
    {
        var (row, column, word) = (int.Parse(badge.Groups[1].Value, CultureInfo.InvariantCulture), int.Parse(badge.Groups[2].Value, CultureInfo.InvariantCulture), badge.Groups[4].Value);
        var (letters, ground) = Colors[badge.Groups[3].Value];
        yield return new(Svg + "rect",
            new XAttribute("x", Number(Edge + column * CellWidth)), new XAttribute("y", Number(Edge + row * CellHeight)),
            new XAttribute("width", Number(word.Length * CellWidth)), new XAttribute("height", Number(CellHeight - 1)), new XAttribute("fill", ground));
        var text = Line(new string(' ', column) + word.TrimEnd(), row);
        text.SetAttributeValue("fill", letters);
        text.SetAttributeValue("font-weight", "bold");
        yield return text;
    }

    [GeneratedRegex(@"(\d+),(\d+) (Good|Note|Stop):([^;]*)")]
    private static partial Regex Badge();

    private static string Number(decimal number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
