namespace Closeout.Html;

/// <summary>What a mark says, whatever its colour: a word always stands in it or beside it.</summary>
public enum Tone
{
    /// <summary>Done, ready, agrees.</summary>
    Good,

    /// <summary>To be looked at before the van goes out; a rehearsal.</summary>
    Note,

    /// <summary>Held, missing, overdue.</summary>
    Stop,

    /// <summary>What the reader is on.</summary>
    Mine,

    /// <summary>Labels and hints.</summary>
    Quiet,
}

/// <summary>The five tones on a page, and the rules that all pages of ours share.</summary>
/// <remarks>
/// One colour serves paper, a light and a dark screen: its relative luminance lies between 0.175 and 0.183, so its contrast is 4.5 to 1 or
/// more on white and on black, and that of white letters on it too. WCAG 2.2, success criterion 1.4.3, asks 4.5 of text; the formula is in
/// its definitions of contrast ratio and relative luminance (W3C Recommendation, 2023).
/// </remarks>
public static class Tones
{
    public const string Light = "#ffffff";
    public const string Dark = "#000000";

    public static string Colour(Tone tone) => tone switch
    {
        Tone.Good => "#138926",
        Tone.Note => "#a46904",
        Tone.Stop => "#e12b31",
        Tone.Mine => "#1176d3",
        Tone.Quiet => "#757575",
        _ => throw new InvalidOperationException($"no such tone: {tone}"),
    };

    public static string Name(Tone tone) => tone.ToString().ToLowerInvariant();

    /// <summary>
    /// In the head of every page: it may be as narrow as a phone, and nothing that got into it may fetch, run or send anything.
    /// </summary>
    public const string Head =
        """
        <meta name="viewport" content="width=device-width, initial-scale=1"/>
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:"/>
        """;

    /// <summary>Light or dark as the reader's system has it; on paper always light.</summary>
    public static readonly string Style =
        $$"""
        :root { color-scheme: light dark; }
        body { color: {{Dark}}; background: {{Light}}; overflow-wrap: anywhere; }
        @media screen and (prefers-color-scheme: dark) { body { color: {{Light}}; background: {{Dark}}; } }
        .b { display: inline-block; padding: 0 .5em; border-radius: .2em; color: {{Light}}; font-weight: bold; white-space: nowrap;
          print-color-adjust: exact; -webkit-print-color-adjust: exact; }
        {{string.Join('\n', Enum.GetValues<Tone>().Select(t =>
            $".b.{Name(t)} {{ background: {Colour(t)}; }} .{Name(t)} {{ --tone: {Colour(t)}; }}"))}}
        .mark { color: var(--tone); fill: var(--tone); font-weight: bold; }
        table { border-collapse: collapse; }
        th, td { border-bottom: 1px solid {{Colour(Tone.Quiet)}}; padding: .15em .8em .15em 0; text-align: left; vertical-align: top; }
        th.n, td.n { text-align: right; }
        .wide { overflow-x: auto; }
        .wide td, .wide th { overflow-wrap: normal; white-space: nowrap; }
        """;

    /// <summary>A word in its tone.</summary>
    public static string Badge(Tone tone, string word) => $"<span class=\"b {Name(tone)}\">{Files.HtmlPage.Safe(word)}</span>";

    /// <summary>The badge of a rehearsal's page; empty: it is none.</summary>
    public static string Rehearsal(Depot depot) => depot.Rehearsal ? " " + Badge(Tone.Note, T("REHEARSAL")) : "";
}
