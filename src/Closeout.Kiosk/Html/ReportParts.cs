using Closeout.Files;

namespace Closeout.Html;

/// <summary>What the printed reports share.</summary>
internal static class ReportParts
{
    public static string Caution => T("This report repeats what people confirmed. It does not say that the van is safe.");

    public static readonly string Style =
        $$"""
        {{Tones.Style}}
        {{PagePhotos.Style}}
        h1 { font-size: 16pt; margin: 0 0 .2em; }
        h1 b { font-size: 44pt; line-height: 1; margin-right: .2em; }
        h2 { font-size: 13pt; margin: 1em 0 .2em; }
        td.w { font-weight: bold; min-width: 5em; white-space: nowrap; }
        .sign span { display: inline-block; width: 46%; border-bottom: 1px solid; padding-top: 1.6em; margin-right: 2%; }
        @page { margin: 15mm; }
        @media print { body { margin: 0; font-size: 10pt; } h2 { margin-top: .5em; } p { margin: .3em 0; } }
        """;

    public static string Row((string Word, string Sentence) row) =>
        $"<td class=\"w\">{HtmlPage.Safe(row.Word)}</td><td>{HtmlPage.Safe(row.Sentence)}</td>";

    /// <summary>Somebody's code and, where the crew has it, name.</summary>
    public static string Who(Depot depot, Code<Technician> code) =>
        depot.Setup.Find(code) is { } person ? $"{person.Code} {person.Name}" : code.Text;

    /// <summary>Lines for two names.</summary>
    public static string Sign(string one, string other) =>
        $"<p class=\"sign\"><span>{HtmlPage.Safe(one)}</span> <span>{HtmlPage.Safe(other)}</span></p>";
}
