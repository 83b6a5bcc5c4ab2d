namespace Closeout.Files;

/// <summary>What the printed sheets share: the van large, what holds it in a frame, and lines for who loaded and who checked.</summary>
internal static class SheetParts
{
    /// <summary>Columns of a sheet of text.</summary>
    public const int Columns = 80;

    /// <summary>What is said in the frame below the reasons.</summary>
    public static string Stays => T("A lead lifts each hold, or the van stays in.");

    public const string Style =
        """
        h1 { font-size: 16pt; margin: .4em 0 .2em; }
        h1 b { font-size: 44pt; line-height: 1; margin-right: .2em; }
        h2 { font-size: 13pt; margin: .8em 0 .2em; }
        .held { border: 3pt solid #000; padding: .3em .6em; margin: .4em 0; break-inside: avoid; }
        .held b { font-size: 16pt; }
        .held p { margin: .1em 0; }
        table { border-collapse: collapse; }
        th, td { border-bottom: 1px solid #000; padding: .25em 1em .25em 0; text-align: left; vertical-align: top; }
        th.n, td.n { text-align: right; }
        td.t span { display: block; width: .9em; height: .9em; border: 1px solid #000; }
        td.k { min-width: 4em; border: 1px solid #000; }
        .sign span { display: inline-block; width: 46%; border-bottom: 1px solid #000; padding-top: 1.6em; margin-right: 2%; }
        @page { margin: 15mm; }
        """;

    private static string Loaded => T("Loaded by");
    private static string Checked => T("Checked by");

    /// <summary>The van between two lines, so that it is seen from afar even as text.</summary>
    public static IEnumerable<string> Head(string van, string rest)
    {
        var line = new string('=', Columns - 2);
        return [line, Cells.Cut($"{van}   {rest}", Columns), line];
    }

    /// <summary>The same on a page.</summary>
    public static string HeadHtml(string van, string rest) => $"<h1><b>{HtmlPage.Safe(van)}</b> {HtmlPage.Safe(rest)}</h1>";

    /// <summary>Sentences in a frame; none: no frame.</summary>
    public static IEnumerable<string> Held(IReadOnlyList<string> reasons)
    {
        if (reasons.Count == 0)
            yield break;

        const int Inner = Columns - 6;
        var head = $"+- {T("HELD")} ";
        yield return head + new string('-', Inner + 3 - Cells.Count(head)) + "+";
        foreach (var line in reasons.Append(Stays).SelectMany(r => Cells.Wrap(r, Inner)))
            yield return $"| {line}{new string(' ', Math.Max(0, Inner - Cells.Count(line)))} |";

        yield return "+" + new string('-', Inner + 2) + "+";
    }

    /// <summary>The same on a page.</summary>
    public static void Held(HtmlPage page, IReadOnlyList<string> reasons)
    {
        if (reasons.Count > 0)
        {
            page.Add($"<div class=\"held\"><b>{T("HELD")}</b>{string.Concat(reasons.Select(r => $"<p>{HtmlPage.Safe(r)}</p>"))}"
                + $"<p>{HtmlPage.Safe(Stays)}</p></div>");
        }
    }

    /// <summary>Lines for two names.</summary>
    public static string Sign() => $"{Loaded} {new string('_', 26)}   {Checked} {new string('_', 26)}";

    /// <summary>The same on a page.</summary>
    public static string SignHtml() => $"<p class=\"sign\"><span>{Loaded}</span> <span>{Checked}</span></p>";
}
