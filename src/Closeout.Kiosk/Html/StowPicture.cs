using System.Globalization;
using System.Text;
using Closeout.Files;

namespace Closeout.Html;

/// <summary>A van from above with its places numbered, as far as their names say where they are.</summary>
/// <remarks>
/// Places are free words of the depot: front or cab, middle, rear or back; left, right; ceiling, roof. Others stand below it.
/// </remarks>
public static class StowPicture
{
    public const string Style =
        """
        .place { max-width: 28em; margin: .5em 0; }
        .place svg { display: block; width: 100%; }
        .place text { fill: currentColor; font-size: 11px; text-anchor: middle; }
        .place .number { font-size: 18px; font-weight: bold; }
        .place rect, .place path { fill: none; stroke: currentColor; }
        """;

    private static readonly string[][] Along = [["front", "cab"], ["middle", "center", "centre"], ["rear", "back"]];
    private static readonly string[][] Across = [["left", "driver"], ["ceiling", "roof", "aisle", "floor"], ["right", "passenger", "curb"]];

    public static string Svg(IReadOnlyList<string> places)
    {
        var cells = places.Index().ToLookup(p => Cell(p.Item), p => p.Index + 1);
        var svg = new StringBuilder("<div class=\"place\">\n<svg viewBox=\"0 0 360 172\" role=\"img\" ");
        svg.Append(Culture, $"aria-label=\"{T("the van from above; the places are in the table")}\">\n");
        svg.Append("<rect x=\"30\" y=\"18\" width=\"310\" height=\"136\" rx=\"16\"/>\n<path d=\"M62 18V154\"/>\n");
        foreach (var (x, y, word) in new[] { (14, 90, T("front")), (352, 90, T("rear")), (185, 12, T("left")), (185, 168, T("right")) })
            svg.Append(Culture, $"<text x=\"{x}\" y=\"{y}\"{(y == 90 ? $" transform=\"rotate(-90 {x} {y})\"" : "")}>{word}</text>\n");

        foreach (var cell in cells.Where(c => c.Key is not null).OrderBy(c => c.Key))
        {
            var (along, across) = cell.Key!.Value;
            var (x, y) = (68 + along * 90, 24 + across * 42);
            svg.Append(Culture, $"<rect x=\"{x}\" y=\"{y}\" width=\"84\" height=\"40\"/>");
            svg.Append(Culture, $"<text class=\"number\" x=\"{x + 42}\" y=\"{y + 26}\">{string.Join(' ', cell)}</text>\n");
        }

        svg.Append("</svg>\n");
        foreach (var number in cells[null])
            svg.Append(Culture, $"<p><b>{number}</b> {HtmlPage.Safe(places[number - 1])}: not in the picture</p>\n");

        return svg.Append("</div>").ToString();
    }

    /// <summary>Along the van 0 to 2 from the front, across it 0 to 2 from the left; null: its name says neither.</summary>
    public static (int Along, int Across)? Cell(string place)
    {
        var words = place.ToLowerInvariant().Split([' ', '-', ',', '/'], StringSplitOptions.RemoveEmptyEntries);
        var (along, across) = (Find(Along, words), Find(Across, words));
        return along is null && across is null ? null : (along ?? 1, across ?? 1);
    }

    private static int? Find(string[][] names, string[] words) =>
        Array.FindIndex(names, n => n.Any(words.Contains)) is >= 0 and var at ? at : null;

    private static IFormatProvider Culture => CultureInfo.InvariantCulture;
}
