using System.Globalization;
using System.Xml.Linq;

namespace Closeout.Tests.Docs;

/// <summary>A golden screen as an SVG picture: its text, cell by cell, on a rounded dark panel.</summary>
internal static class ScreenPicture
{
    private const decimal CellWidth = 8.4m;
    private const decimal CellHeight = 18m;
    private const decimal Edge = 16m;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    /// <param name="label">What it shows, for whoever cannot see it.</param>
    public static string Of(string screen, string label)
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
                lines.Select((text, row) => (text, row)).Where(l => l.text.Length > 0).Select(l => Line(l.text, l.row))));
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

    private static string Number(decimal number) => number.ToString("0.#", CultureInfo.InvariantCulture);
}
