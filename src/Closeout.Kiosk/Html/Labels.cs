using System.Text.RegularExpressions;
using Closeout.Files;

namespace Closeout.Html;

/// <summary>One label: what it is for, its code, and what people read.</summary>
/// <param name="Kind">Where it is stuck.</param>
/// <param name="Name">Large.</param>
/// <param name="Tells">What tells it from its neighbours: watts, kelvin, flow, size.</param>
/// <param name="Rest">What else its description says.</param>
public sealed record Label(string Kind, string Code, string Name, string Tells, string Rest);

/// <summary>Labels to print for what the kiosk scans: carton boxes, bins, shelf places, vans and badges.</summary>
public static partial class Labels
{
    /// <summary>The sheets by name: US Letter, two labels side by side.</summary>
    public static IReadOnlyList<(string Name, Func<Setup, IEnumerable<Label>> Labels)> Sheets =>
    [
        ("boxes", s => s.Items.Select(i => Of(i, T("CARTON BOX"), T($"{i.UnitsPerCarton} in a carton")))),
        ("bins", s => s.Items.Select(i => Of(i, T("BIN"), T("loose")))),
        ("shelf", s => s.Items.Select(i => Of(i, T("SHELF"), T("sealed cartons")))),
        ("vans", s => s.Vans.Select(v => new Label(T("VAN"), v.Code.Text, v.Code.Text, v.Name, T($"bay {v.Bay}")))),
        ("badges",
            s => s.Crew.Select(t => new Label(T("BADGE"), t.Code.Text, t.Name, t.IsLead ? T("lead") : T("technician"), s.Depot.Name))),
    ];

    /// <summary>A label is 4 x 2 inches, ten on a sheet of 8.5 x 11 with margins of 0.25 and 0.5.</summary>
    private const int OnASheet = 10;

    /// <summary>How far the bars may reach across it, in inches.</summary>
    private const double CodeIn = 3.7;

    /// <summary>Black on white whatever the screen, for it is scanned from there too.</summary>
    private static readonly string Style =
        $$"""
        @page { size: letter; margin: .5in .25in; }
        .sheet { display: grid; grid-template-columns: repeat(auto-fill, minmax(min(100%, 4in), 4in)); }
        .label { height: 2in; max-width: 100%; box-sizing: border-box; padding: .08in .15in;
          background: {{Tones.Light}}; color: {{Tones.Dark}}; overflow: hidden; break-inside: avoid;
          display: grid; grid-template: auto 1fr .45in auto / minmax(0, 1fr) .95in; }
        .label svg { fill: {{Tones.Dark}}; display: block; shape-rendering: crispEdges; }
        .label .qr { grid-row: 1 / 3; grid-column: 2; width: .95in; height: .95in; }
        .label .c128 { grid-row: 3; grid-column: 1 / 3; height: .45in; max-width: 100%; }
        .label p { margin: 0; line-height: 1.1; }
        .label .kind { font-size: 8pt; letter-spacing: .1em; }
        .label .name { font-size: 20pt; font-weight: bold; display: block; }
        .label .tells { font-size: 18pt; font-weight: bold; }
        .label .rest { font-size: 9pt; }
        .label .code { grid-row: 4; grid-column: 1 / 3; font: bold 11pt monospace; }
        @media print { body { margin: 0; } section { margin: 0; } .sheet { grid-template-columns: 4in 4in; } }
        """;

    public static string Html(Depot depot, string sheet, IEnumerable<Label> labels)
    {
        var page = new HtmlPage(T($"{depot.Setup.Depot.Name}, labels: {sheet}"), $"{Tones.Style}\n{Style}", $"\n{Tones.Head}");
        foreach (var these in labels.Chunk(OnASheet))
        {
            page.Add("<section><div class=\"sheet\">");
            foreach (var label in these)
                page.Add(Html(label));

            page.Add("</div></section>");
        }

        return page.End();
    }

    /// <summary>An item's label: its description to the first comma, then what measures it, then the rest.</summary>
    public static Label Of(Item item, string kind, string more)
    {
        var parts = item.Description.Split(", ", StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        var (measures, others) = (parts.Skip(1).Where(p => Measure().IsMatch(p)), parts.Skip(1).Where(p => !Measure().IsMatch(p)));
        var tells = string.Join(", ", parts.Length > 1 ? measures : Measure().Matches(item.Description).Select(m => m.Value));
        return new(kind, item.Code.Text, parts.FirstOrDefault(item.Code.Text), tells, string.Join(", ", others.Append(more)));
    }

    private static string Html(Label label) =>
        $"<div class=\"label\"><p><span class=\"kind\">{HtmlPage.Safe(label.Kind)}</span> <span "
            + $"class=\"name\">{HtmlPage.Safe(label.Name)}</span></p>{Symbol.Qr(label.Code)}<p><span "
            + $"class=\"tells\">{HtmlPage.Safe(label.Tells)}</span> <span "
            + $"class=\"rest\">{HtmlPage.Safe(label.Rest)}</span></p>{Symbol.Code128(label.Code, CodeIn)}<p "
            + $"class=\"code\">{HtmlPage.Safe(label.Code)}</p></div>";

    /// <summary>A number and a unit of this trade, in US customary or SI units.</summary>
    [GeneratedRegex(@"\d+(?:[./]\d+)?[ -]?(?:W|K|V|A|lm|gpm|in|ft|gal|gallons?|oz|lb|years?|outlets?)\b")]
    private static partial Regex Measure();
}
