using System.Globalization;
using System.Xml.Linq;
using Closeout.Cardboard;
using Closeout.Commands;
using Closeout.Facts;
using Closeout.Html;
using Closeout.Store;
using Closeout.Tests.Screens;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Html;

/// <summary>The charts, the tables below them, and the commands that write both.</summary>
public sealed class ChartPageTests
{
    private static readonly ChartPart[] Two = [new("kept", Tone.Good), new("lost", Tone.Stop)];

    [Fact]
    public void A_small_chart_looks_as_its_picture() => PageText.MustBeGolden(
        Chart.Svg("boxes", Two, [new("W46", [12, 3]), new("W47", [0, 0], 14), new("a <label> too long", [7, 0], 5)], n => $"{n}", "promised"), "chart.svg.html");

    [Fact]
    public void Bars_are_as_high_as_their_numbers_and_stand_on_each_other()
    {
        var bars = Rects([new("a", [30, 10]), new("b", [15, 0])]);

        bars.Select(b => b.Height).Should().SatisfyRespectively(
            h => h.Should().BeApproximately(11.7 * 30 / 40, 0.002), h => h.Should().BeApproximately(11.7 * 10 / 40, 0.002), h => h.Should().BeApproximately(11.7 * 15 / 40, 0.002));
        (bars[1].Top + bars[1].Height).Should().BeApproximately(bars[0].Top, 0.002);
        (bars[0].Top + bars[0].Height).Should().BeApproximately(13.2, 0.002);
        bars[2].Left.Should().BeGreaterThan(bars[0].Left + bars[0].Width);
    }

    [Theory]
    [InlineData(0, "0 1")]
    [InlineData(1, "0 0.2 0.4 0.6 0.8 1")]
    [InlineData(7, "0 2 4 6 8")]
    [InlineData(12, "0 5 10 15")]
    [InlineData(100, "0 20 40 60 80 100")]
    [InlineData(101, "0 50 100 150")]
    [InlineData(0.003, "0 0.001 0.002 0.003")]
    public void The_scale_goes_in_round_steps_to_the_highest_bar_or_just_above(double most, string scale) =>
        Svg([new("a", [most, 0])]).Descendants("text").Where(t => (string?)t.Attribute("text-anchor") == "end").Select(t => t.Value).Should().Equal(scale.Split(' '));

    [Fact]
    public void Only_the_last_bars_are_drawn_and_the_last_is_named()
    {
        var svg = Svg([.. Enumerable.Range(1, 60).Select(n => new ChartBar($"W{n}", [n, 0]))]);

        svg.Descendants("rect").Should().HaveCount(Chart.MostBars);
        svg.Descendants("text").Last().Value.Should().Be("W60");
        svg.Descendants("text").Count(t => t.Value.StartsWith('W')).Should().BeInRange(3, 11);
        Svg([]).Descendants("rect").Should().BeEmpty();
    }

    [Fact]
    public void The_tables_of_recycling_say_what_the_file_says()
    {
        using var kiosk = SampleKiosk.Evening();
        var boxes = new Archive(kiosk.Folder).Boxes(DateOnly.MinValue, kiosk.Depot.Date);
        var tables = PageText.Parsed(RecyclingPage.Html(kiosk.Depot, boxes)).Descendants("tbody").Select(Cells).ToList();

        foreach (var (table, period) in tables.Zip([Period.Week, Period.Month, Period.Van, Period.Item]))
        {
            var totals = RecyclingTotals.By(period, kiosk.Depot.Setup.Depot, boxes);
            table.SkipLast(1).Select(r => (r[1], r[3], r[4])).Should().Equal(totals.Select(t => ($"{t.Days}", $"{t.Sum.Flattened}", $"{t.Sum.Missing}")));
            table.SkipLast(1).Select(r => r[0]).Where(n => n is not ("depot, or earlier" or "earlier records")).Should().Equal(totals.Select(t => t.Name).Where(n => n.Length > 0));
            table[^1].Take(5).Should().Equal("all", $"{boxes.Select(b => b.Date).Distinct().Count()}", $"{boxes.Sum(b => b.Row.Expected)}", $"{boxes.Sum(b => b.Row.Flattened)}", $"{boxes.Sum(b => b.Row.Expected - b.Row.Flattened)}");
        }
    }

    [Fact]
    public void The_page_of_accuracy_holds_every_row_and_the_promise_as_a_line()
    {
        KeptPromises[] kept = [new(Tiny.Monday, 1, 10, 9, 2, 1, 80, 40), new(Tiny.Monday, 2, 4, 4, 0, 0, 30, 10)];
        var depot = Tiny.Opened().Planned(p => p with { Kept = [.. kept] });
        var page = PageText.Parsed(AccuracyPage.Html(new(depot)));

        var tables = page.Descendants("tbody").Select(Cells).ToList();
        tables[0].Select(r => string.Join(' ', r)).Should().Equal("1 98 % 90 % 10 9 1 40 2 80", "2 95 % 100 % 4 4 0 10 0 30");
        tables[1].Select(r => string.Join(' ', r)).Should().Equal("2026-11-16 1 98 % 90 % 10 9 1 40 2 80", "2026-11-16 2 95 % 100 % 4 4 0 10 0 30");
        var chart = page.Descendants("svg").First();
        Number(chart.Of("line", "line").First().Attribute("y1")!).Should().BeApproximately(13.2 - 11.7 * 0.98, 0.002);
        Number(chart.Descendants("rect").First().Attribute("y")!).Should().BeApproximately(13.2 - 11.7 * 0.9, 0.002);
    }

    [Fact]
    public void A_book_with_nothing_yet_says_so()
    {
        AccuracyPage.Html(new(Tiny.Opened())).Should().Contain("Nothing yet").And.NotContain("<svg");
        RecyclingPage.Html(Tiny.Opened(), []).Should().Contain("No boxes yet").And.NotContain("<svg");
    }

    [Theory]
    [InlineData("recycling")]
    [InlineData("accuracy")]
    public void A_command_writes_the_file_the_page_or_both_and_neither_into_a_book(string command)
    {
        using var kiosk = SampleKiosk.Evening();
        using var temp = new TempFolder();
        Spoken Run(params string[] args) => Spoken.By(() => CommandLine.Build(kiosk.Clock).Parse(["--book", kiosk.Folder.Path, command, .. args]).Invoke());

        Run("--html", temp["a.html"], "--out", temp["a.csv"]).Should().Be(new Spoken(0, "", ""));
        Run("--html", temp["b.html"]).Code.Should().Be(0);
        Run("--out", temp["b.csv"]).Code.Should().Be(0);
        File.ReadAllText(temp["a.html"]).Should().Be(File.ReadAllText(temp["b.html"])).And.EndWith("</html>\n");
        File.ReadAllText(temp["a.csv"]).Should().Be(File.ReadAllText(temp["b.csv"])).And.Contain(",");
        Run().Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith($"{command} needs --out or --html"));
        Run("--html", temp["c.html"], "--final").Should().Match<Spoken>(s => s.Code == 1 && !File.Exists(temp["c.html"]));
        Run("--html", Path.Combine(kiosk.Folder.Pages, "x.html")).Should().Match<Spoken>(s => s.Code == 2 && s.Err.StartsWith("--html is inside a book"));
    }

    private static XElement Svg(IReadOnlyList<ChartBar> bars) => XElement.Parse(Chart.Svg("t", Two, bars, n => n.ToString("0.###", CultureInfo.InvariantCulture))).Element("svg")!;

    private static List<(double Left, double Width, double Top, double Height)> Rects(IReadOnlyList<ChartBar> bars) =>
        [.. Svg(bars).Descendants("rect").Select(r => (Number(r.Attribute("x")!), Number(r.Attribute("width")!), Number(r.Attribute("y")!), Number(r.Attribute("height")!)))];

    private static double Number(XAttribute a) => double.Parse(a.Value.Replace("em", "").Replace("%", ""), CultureInfo.InvariantCulture);

    private static List<List<string>> Cells(XElement body) => [.. body.Elements("tr").Select(r => r.Elements("td").Select(d => d.Value).ToList())];
}
