using System.Net;
using System.Text;

namespace Closeout.Files;

/// <summary>A self-contained HTML file of sections, a sheet of paper each when printed.</summary>
internal sealed class HtmlPage
{
    private readonly StringBuilder html = new();

    /// <param name="style">Rules beside those that all sheets share.</param>
    /// <param name="head">More markup of the head.</param>
    public HtmlPage(string title, string style, string head = "") => Add(
        $$"""
        <!DOCTYPE html>
        <html lang="{{T("en")}}">
        <head>
        <meta charset="utf-8"/>{{head}}
        <title>{{Safe(title)}}</title>
        <style>
        body { font: 11pt/1.35 sans-serif; color: #000; background: #fff; margin: 1.5em; }
        section { break-after: page; margin-bottom: 2em; }
        section:last-child { break-after: auto; }
        {{style}}
        </style>
        </head>
        <body>
        """);

    /// <summary>Text from outside, fit for a page.</summary>
    public static string Safe(string text) => WebUtility.HtmlEncode(Harmless.Line(text));

    /// <summary>Adds markup and a line feed.</summary>
    public void Add(string markup) => html.Append(markup).Append('\n');

    /// <summary>Adds a heading of words.</summary>
    public void Heading(string words) => Add($"<h2>{Safe(words)}</h2>");

    /// <summary>Adds a paragraph of sentences.</summary>
    public void Paragraph(string sentences) => Add($"<p>{Safe(sentences)}</p>");

    /// <summary>The heads of columns of words.</summary>
    public static string Heads(params string[] words) => string.Concat(words.Select(w => $"<th>{Safe(w)}</th>"));

    /// <summary>The heads of columns of numbers.</summary>
    public static string NumberHeads(params string[] words) => string.Concat(words.Select(w => $"<th class=\"n\">{Safe(w)}</th>"));

    /// <summary>Adds a table between its heads and its rows.</summary>
    public void Table(string head, IEnumerable<string> rows)
    {
        Add(head.Length == 0 ? "<table>" : $"<table>\n<thead><tr>{head}</tr></thead>\n<tbody>");
        foreach (var row in rows)
            Add($"<tr>{row}</tr>");

        Add(head.Length == 0 ? "</table>" : "</tbody>\n</table>");
    }

    /// <summary>The whole file.</summary>
    public string End()
    {
        Add("</body>\n</html>");
        return html.ToString();
    }
}
