using System.Globalization;
using Closeout.Files;
using Closeout.Vans;

namespace Closeout.Html;

/// <summary>When a wall's file was written, and when it is written again.</summary>
/// <param name="At">Local time.</param>
/// <param name="EverySeconds">Null: it is not written again by itself.</param>
/// <param name="Ended">Whether the program that wrote it anew has ended.</param>
public sealed record WallMoment(DateTimeOffset At, int? EverySeconds = null, bool Ended = false);

/// <summary>The bay wall as one self-contained page that loads itself anew: for a big display in the bay, or a phone.</summary>
public static class WallPage
{
    /// <summary>Seconds between two looks of the display at a file of which nobody said how often it changes.</summary>
    public const int UsualSeconds = 60;

    public static string Caution => T("The wall repeats what people confirmed. It does not say that a van is safe.");

    /// <summary>Notes shown of a van; all holds are.</summary>
    private const int MostNotes = 4;

    /// <summary>A card is 20 letters wide or as wide as the screen, so that it is one column on a phone and several in the bay.</summary>
    private const string Layout =
        """
        html { font-size: clamp(15px, 10px + .8vw, 40px); }
        body { font-size: 1rem; margin: .6rem; }
        header { display: flex; flex-wrap: wrap; gap: .2rem 1rem; align-items: baseline; }
        h1 { font-size: 1.4rem; margin: 0; }
        header p, .total p { margin: 0; }
        .counts { font-size: 1.2rem; }
        .bays { list-style: none; padding: 0; margin: .6rem 0; display: grid; gap: .6rem;
          grid-template-columns: repeat(auto-fill, minmax(min(100%, 20rem), 1fr)); }
        .van { border: 1px solid; border-left: .5rem solid var(--tone); padding: .3rem .6rem; min-width: 0; }
        .van h2 { display: flex; flex-wrap: wrap; gap: 0 .6rem; align-items: baseline; font-size: 1rem; margin: 0; font-weight: normal; }
        .van h2 b { font-size: 2rem; line-height: 1.1; }
        .van h2 .b { margin-left: auto; font-size: 1.2rem; }
        .van p, .van ul { margin: .1rem 0; }
        .van ul { padding-left: 1.1rem; }
        .total { display: grid; grid-template-columns: minmax(5.5rem, max-content) minmax(0, 1fr); gap: .1rem .8rem; margin: .6rem 0; }
        .total dt { font-weight: bold; }
        .total dd { margin: 0; }
        """;

    public static string Html(Tonight t, WallMoment moment)
    {
        var (depot, name) = (t.Depot, HtmlPage.Safe(t.Depot.Setup.Depot.Name));
        var seconds = (moment.EverySeconds ?? UsualSeconds).ToString(CultureInfo.InvariantCulture);
        var page = new HtmlPage(
            T($"{t.Depot.Setup.Depot.Name}, bay wall"), $"{Tones.Style}\n{Layout}",
            $"\n{Tones.Head}" + (moment.Ended ? "" : $"\n<meta http-equiv=\"refresh\" content=\"{seconds}\"/>"));
        page.Add($"<header>\n<h1>{name}{Tones.Rehearsal(depot)}</h1>");
        page.Paragraph(T($"{Spell.Day(depot.Date)}, as of {Spell.Weekday(moment.At)} {moment.At:HH:mm:ss}"));
        page.Add($"<p class=\"counts\">{string.Join(' ', Counts(t.Vans))}</p>\n</header>");
        page.Add($"<p class=\"caution\"><b>{Caution}</b></p>");
        if (moment.Ended)
            page.Add($"<p>{Tones.Badge(Tone.Stop, T("ENDED"))} {T("Nobody writes this wall anew: the program that did has ended.")}</p>");

        page.Add("<ol class=\"bays\">");
        foreach (var state in t.Vans)
            Card(page, depot, state, moment.At);

        page.Add("</ol>\n<dl class=\"total\">");
        foreach (var (word, sentence) in t.Totals)
            page.Add($"<dt>{HtmlPage.Safe(word)}</dt><dd>{HtmlPage.Safe(sentence)}</dd>");

        page.Add("</dl>");
        var anew = T($"This page loads itself anew every {seconds} s. When its time stands still, ask whoever runs it.");
        page.Add($"<p class=\"mark quiet\">{HtmlPage.Safe(anew)}</p>");
        return page.End();
    }

    /// <summary>The word of a van's morning, and its tone.</summary>
    public static (Tone Tone, string Word) Morning(VanState state) => state.Morning switch
    {
        Vans.Morning.Held => (Tone.Stop, T("HELD")),
        Vans.Morning.ReadyWithNotes => (Tone.Note, T($"NOTES {state.Notes.Count}")),
        Vans.Morning.NotClosed => (Tone.Quiet, T("OPEN")),
        Vans.Morning.Ready => (Tone.Good, T("READY")),
        var morning => throw new InvalidOperationException($"no such readiness: {morning}"),
    };

    /// <summary>How many vans have each word; those that need somebody first. A word that no van has is left out.</summary>
    private static IEnumerable<string> Counts(IReadOnlyList<VanState> vans) =>
        from morning in new[] { Vans.Morning.Held, Vans.Morning.NotClosed, Vans.Morning.ReadyWithNotes, Vans.Morning.Ready }
        let these = vans.Where(v => v.Morning == morning).ToList()
        where these.Count > 0
        let badge = Morning(these[0])
        select Tones.Badge(badge.Tone, string.Create(CultureInfo.InvariantCulture, $"{these.Count} {badge.Word.Split(' ')[0]}"));

    private static void Card(HtmlPage page, Depot depot, VanState state, DateTimeOffset now)
    {
        var (tone, word) = Morning(state);
        var van = state.Van;
        page.Add(
            $"<li class=\"van {Tones.Name(tone)}\">\n<h2><span>{T($"bay {van.Bay}")}</span> <b>{HtmlPage.Safe(van.Code.Text)}</b> "
                + $"<span>{HtmlPage.Safe(van.Name)}</span> {Tones.Badge(tone, word)}</h2>");
        var with = state.With is { } who ? $", {who}" : "";
        page.Add(
            $"<p><span aria-hidden=\"true\">{Mark(depot, state)}</span> {HtmlPage.Safe(WallWords.Where(depot, state, now) + with)}</p>");
        var left = state.Notes.Count - MostNotes;
        List<string> why =
        [
            .. state.Holds.Select(h => $"<b>{HtmlPage.Safe(h)}</b>"),
            .. state.Notes.Take(left == 1 ? MostNotes + 1 : MostNotes).Select(HtmlPage.Safe),
            .. left > 1 ? new[] { T($"and {left} more notes") } : [],
        ];
        if (why.Count > 0)
            page.Add($"<ul>{string.Concat(why.Select(w => $"<li>{w}</li>"))}</ul>");

        page.Add("</li>");
    }

    /// <summary>Done, under way, not yet: a shape beside the words.</summary>
    private static char Mark(Depot depot, VanState state) => depot.IsDone(state.Van.Code) ? '●' : state.Shift is null ? '○' : '◐';
}
