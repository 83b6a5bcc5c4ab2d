using System.Xml.Linq;
using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Store;
using Closeout.Tests.Screens;
using FluentAssertions;
using Terminal.Gui.Text;
using Xunit;

namespace Closeout.Tests.Files;

/// <summary>The morning sheet as text and as a page.</summary>
public sealed class MorningSheetTests
{
    private const string Caution = "This sheet repeats what people confirmed. It does not say that a van is safe";

    [Fact]
    public void Every_page_of_the_sample_evening_fits_80_columns_names_its_date_and_clears_nobody()
    {
        using var kiosk = Sample();
        var (depot, plan) = (kiosk.Depot, kiosk.Session.Desk.Plan);
        foreach (var page in depot.Setup.Vans.Select(v => MorningSheet.OfVan(new(depot), v)).Append(MorningSheet.OfDepot(new(depot))))
        {
            var text = MorningSheet.Text(page);
            text.Split('\n').Should().OnlyContain(line => line.GetColumns() <= 80 && line == line.TrimEnd());
            text.Should().Contain("MORNING SHEET for Thu 19 Nov 2026").And.Contain(Caution);
            text.Should().EndWith("\n").And.NotContain("\r");
        }
    }

    [Fact]
    public void What_holds_a_van_stands_first_and_again_to_be_ticked()
    {
        using var kiosk = Sample();
        var van = kiosk.Depot.Setup.Van(new("B6"));
        var lines = MorningSheet.OfVan(kiosk.Session.Desk.Tonight, van).ToList();

        lines[0].Should().Be(new SheetLine("B6", "Fulmar, bay 6", Part: SheetPart.Van));
        lines.Skip(2).TakeWhile(l => l.Part == SheetPart.Held).Select(l => l.Sentence).Should().Equal(
            "Fire extinguisher: 0 of 1, since 2026-11-18", "refueled with diesel, takes regular: do not start it, ask the shop, since 2026-11-18");
        lines[4].Should().Be(new SheetLine("Morning", "held"));
        lines.Where(l => l.Word == "HELD" && l.Tick).Should().HaveCount(2).And.OnlyContain(l => l.Sentence.EndsWith("a lead lifts it, or it stays", StringComparison.Ordinal));
    }

    [Fact]
    public void As_text_the_van_stands_between_lines_the_holds_in_a_frame_and_there_is_room_for_names()
    {
        using var kiosk = Sample();
        var text = MorningSheet.Text(MorningSheet.OfVan(kiosk.Session.Desk.Tonight, kiosk.Depot.Setup.Van(new("B4"))));

        text.Should().StartWith(new string('=', 78) + "\nB4   Dunlin, bay 4\n" + new string('=', 78) + "\n\nMORNING SHEET for Thu 19 Nov 2026\n+- HELD ---");
        text.Should().Contain("| A lead lifts each hold, or the van stays in. ").And.Contain("[ ] ____ ").And.Contain("\nLoaded by ____").And.Contain(" Checked by ____");
        text.Split('\n').Where(l => l.StartsWith('|') || l.StartsWith('+')).Should().HaveCountGreaterThan(3).And.OnlyContain(l => l.Length == 78);
    }

    [Fact]
    public void A_sentence_to_tick_goes_on_below_itself() => MorningSheet.Text([new("Word", string.Join(' ', Enumerable.Repeat("0123456", 30)), Tick: true)]).Should().Be(
        string.Concat(
            "Word        [ ] 0123456 0123456 0123456 0123456 0123456 0123456 0123456 0123456\n",
            "                0123456 0123456 0123456 0123456 0123456 0123456 0123456 0123456\n",
            "                0123456 0123456 0123456 0123456 0123456 0123456 0123456 0123456\n",
            "                0123456 0123456 0123456 0123456 0123456 0123456\n"));

    [Theory]
    [InlineData("n", 58)]
    [InlineData("long words of a long name ", 7)]
    public void Long_names_and_codes_of_24_characters_fit_80_columns(string piece, int times)
    {
        var text = string.Concat(Enumerable.Repeat(piece, times)).Trim();
        var depot = Named(text);
        foreach (var page in new[] { MorningSheet.OfVan(new(depot), depot.Setup.Vans[0]), MorningSheet.OfDepot(new(depot)) })
        {
            MorningSheet.Text(page).Split('\n').Max(l => l.GetColumns()).Should().BeLessThanOrEqualTo(80);
        }
    }

    [Fact]
    public void The_page_is_one_self_contained_file_with_a_section_for_the_depot_and_each_van()
    {
        using var kiosk = Sample();
        var html = MorningSheet.Html(kiosk.Session.Desk.Tonight);

        var page = Parsed(html);
        page.Descendants("section").Select(s => s.Element("h1")!.Value.Split(':')[0]).Should().Equal(
            "Saltmarsh Row", "B1 Avocet, bay 1", "B2 Bittern, bay 2", "B3 Curlew, bay 3", "B4 Dunlin, bay 4", "B5 Egret, bay 5", "B6 Fulmar, bay 6");
        page.Descendants("section").Should().OnlyContain(s => s.Value.Contains(Caution, StringComparison.Ordinal));
        page.Descendants("tr").Should().OnlyContain(r => r.Parent!.Name == "table" ? r.Elements("td").Count() == 3 : r.Elements().Count() == 4);
        page.Descendants("td").Count(d => (string?)d.Attribute("class") == "k").Should().Be(kiosk.Session.Desk.Plan.Lines.Count(l => l.Units > 0));
        page.Descendants("section").Skip(1).Should().OnlyContain(s => s.Value.Contains("Loaded by") && s.Value.Contains("Checked by") && s.Element("h1")!.Element("b") != null);
        page.Descendants("section").Select(s => s.Elements("div").Count(d => (string?)d.Attribute("class") == "held")).Should().Equal(1, 0, 0, 0, 1, 0, 1);
        page.Descendants("td").Count(d => (string?)d.Attribute("class") == "t" && d.Element("span") is not null)
            .Should().Be(AllLines(kiosk.Depot, kiosk.Session.Desk.Plan).Count(l => l.Tick));
        html.Should().NotContain("http").And.NotContain("<script").And.NotContain("<link").And.NotContain("src=").And.NotContain("url(").And.NotContain("@import");
    }

    [Fact]
    public void Text_from_outside_stays_text_on_the_page()
    {
        const string sly = "<script>alert(\"1\")</script> & 'x' \u001b[2J \u202e \U0001F69A";
        var depot = Named(sly);
        var html = MorningSheet.Html(new(depot));

        html.Should().NotContain("<script").And.NotContain("\u001b").And.NotContain("\u202e");
        var shown = sly.Replace('\u001b', '·').Replace('\u202e', '·');
        var page = Parsed(html);
        page.Descendants("title").Single().Value.Should().StartWith(shown);
        page.Descendants("h1").First().Value.Should().StartWith($"{shown}: MORNING SHEET");
        page.Descendants("td").Select(d => d.Value).Should().Contain(v => v.Contains(shown, StringComparison.Ordinal));
        MorningSheet.Text(MorningSheet.OfVan(new(depot), depot.Setup.Vans[0])).Should().NotContain("\u001b").And.NotContain("\u202e");
    }

    /// <summary>A van with a damage, a kit piece to buy, a box to ship and an item to load, all of that name; held, and its codes as long as codes go.</summary>
    private static Depot Named(string text)
    {
        var (van, item, piece) = (new string('B', 24), new string('I', 24), new string('K', 24));
        var setup = Tiny.Setup with
        {
            Depot = Tiny.Settings with { Name = text }, Items = [Tiny.Lamp with { Code = new(item), Description = text, Stow = text, Low = 38, High = 38 }],
            Vans = [Tiny.Van(van, 1, text, 1000)], Kit = [new(new(piece), text, 1, true, true)], Crew = [new(new(new string('T', 24)), text, true, null, [])], Limits = [],
        };
        return Tiny.Opened(setup: setup, carried: v => v with
            {
                Incidents = [new(1, Tiny.Monday, Tiny.FiveOClock, null, text, Severity.Unsafe, text, false, text, new TimeOnly(16, 1), false)],
                KitDates = [new(new(piece), Tiny.Monday, null)], KitShort = [new(new(piece), 0)],
                Driven = [.. Enumerable.Range(0, 9).Select(d => new DrivenDay(Tiny.Wednesday.AddDays(d - 9), 900 + d, 901 + d, 2))],
            },
            yard: YardCarried.Empty with { Collecting = [new(new("lamps"), Tiny.Monday.AddYears(-1), 3)] })
            .Take(new CountCorrected(Place.Shelf, new(item), 0, 50, text, Move.Signed(new(item), 50, Place.Unexplained, Place.Shelf).ToList(), new(new string('T', 24))));
    }

    private static IEnumerable<SheetLine> AllLines(Depot depot, RestockPlan plan) =>
        MorningSheet.OfDepot(new(depot)).Concat(depot.Setup.Vans.SelectMany(v => MorningSheet.OfVan(new(depot), v)));

    private static XElement Parsed(string html)
    {
        html.Should().StartWith("<!DOCTYPE html>\n");
        return XElement.Parse(html["<!DOCTYPE html>\n".Length..]);
    }

    private static SampleKiosk Sample()
    {
        var kiosk = new SampleKiosk();
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        return kiosk;
    }
}
