using System.Text.RegularExpressions;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Html;
using Closeout.Shifts.Steps;
using Closeout.Tests.Screens;
using Closeout.Vans;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary>What holds for every page, whatever people and files put into it.</summary>
public sealed partial class PageLaws
{
    private static readonly Gen<string> AnyText = Gen.OneOf(
        Gen.OneOf("\x1b[2J", "\r", "\n", "\t", "\0", "\x7f", "\u0085", "\u2028", "\u202e", "\u200f", "\ufeff", "\ud800", "漢", "<b>", "</style>", "<script>", "\"", "'", "&", "&amp;", "]]>", "<!--", "a", " "),
        Gen.Char.Select(c => c.ToString())).Array[0, 12].Select(string.Concat);

    private static readonly Lazy<IReadOnlyDictionary<string, string>> Sample = new(() =>
    {
        using var kiosk = SampleKiosk.Evening();
        return SamplePages.Of(kiosk);
    });

    public static TheoryData<string> Pages => [.. SamplePages.Names];

    [Theory]
    [MemberData(nameof(Pages))]
    public void A_page_stands_alone_in_the_colours_of_the_tones_and_clears_no_van(string page)
    {
        var html = Sample.Value[page];

        PageText.MustStandAlone(html);
        Wcag.ColoursOf(html).Should().BeSubsetOf([.. Enum.GetValues<Tone>().Select(Tones.Colour), Tones.Light, Tones.Dark]);
        html.Should().EndWith("</html>\n").And.NotContain("\r");
    }

    [Fact]
    public void No_text_of_people_or_files_becomes_markup_or_steers_anything() => AnyText.Holds(
        text =>
        {
            foreach (var html in Of(Named(text)))
            {
                Harmful().IsMatch(html.Replace("\n", "", StringComparison.Ordinal)).Should().BeFalse();
                PageText.MustStandAlone(html.Replace("\ufffd", "?", StringComparison.Ordinal));
            }
        },
        samples: 100);

    private static IEnumerable<string> Of(Depot depot) =>
    [
        WallPage.Html(new(depot), new(Tiny.FiveOClock)), AccuracyPage.Html(new(depot)), RecyclingPage.Html(depot, [.. RecyclingTotals.Tonight(depot)]),
        StowCard.Html(depot, depot.Setup.Vans[0]), .. Labels.Sheets.Select(s => Labels.Html(depot, s.Name, s.Labels(depot.Setup))),
        IncidentReport.Of(depot, IncidentLog.Of(depot)[0], depot.Shift(Tiny.B1)!.Photos, _ => [0xFF, 0xD8, 0xFF]).Html,
        WeeklyReport.Of([depot], depot.Setup.Vans[0], _ => []).Html,
    ];

    private static Depot Named(string text) => Tiny.Opened("shelf: 1 LAMP; B1: 0+1 LAMP", setup: Tiny.Setup with
    {
        Depot = Tiny.Setup.Depot with { Name = text },
        Items = [.. Tiny.Setup.Items.Select(i => i with { Description = text, Stow = text })],
        Vans = [.. Tiny.Setup.Vans.Select(v => v with { Name = text })],
        Kit = [.. Tiny.Setup.Kit.Select(k => k with { Description = text })],
        Crew = [.. Tiny.Setup.Crew.Select(t => t with { Name = text })],
    }).At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "left door", Severity.Repair, "dent"), new ConfirmDamage(Tiny.B1, false))
        .Take(new PhotoAttached(Tiny.B1, new string('a', 64), text, 3));

    [GeneratedRegex("[\u0000-\u001f\u007f-\u009f\u061c\u200e\u200f\u2028-\u202e\u2066-\u2069\ufeff]")]
    private static partial Regex Harmful();
}
