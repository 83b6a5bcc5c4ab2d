using System.Text.RegularExpressions;
using System.Xml.Linq;
using Closeout.Commands;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using Closeout.Store;
using Closeout.Tests.Screens;
using Closeout.Vans;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Files;

public sealed partial class PickSheetTests
{
    /// <summary>B1 lacks 10 lamps and 4 showerheads of which one is there, B2 lacks cones; WRAP lies with the lamps.</summary>
    private static readonly Depot Evening = Tiny.Opened("shelf: 1 LAMP, 9 WRAP; bin: 3 LAMP, 1 SHOWER; B1: 0+1 LAMP, 0+1 WRAP; B2: 1+0 LAMP, 1+0 SHOWER, 0+2 WRAP; B3: 1+0 LAMP, 1+0 SHOWER, 0+2 WRAP")
        .At(Tiny.B1, Step.Damage).Did(new ReportDamage(Tiny.B1, "left door", Severity.Repair, "dent"), new ConfirmDamage(Tiny.B1, false))
        .At(Tiny.B1, Step.Kit).Did(new CountKit(Tiny.B1, Tiny.Cones.Code, 1)).At(Tiny.B1, Step.Closed);

    [Fact]
    public void The_sheet_is_in_stow_order_with_what_is_sealed_binned_opened_short_lacking_and_noted() => Text(Evening, Tiny.B1).Should().Be(
        """
        ==============================================================================
        B1   Avocet, bay 1
        ==============================================================================
        Tiny Row: TO LOAD for Thu 19 Nov 2026

                                          taken  to load
        rear left
          [ ] LAMP   LED lamp A19 2700 K  ____   1 sealed
          [ ] WRAP   pipe wrap, one piece ____   1 sealed
        rear right
          [ ] SHOWER showerhead 1.5 gpm   ____   1 from the bin

        SHORT 3 showerhead 1.5 gpm: the depot has no more.
        Weight: aboard 0.5 lb, with this load 4.7 lb of 1550.0 lb for stock (payload
          2000.0 lb less crew and kit 450.0 lb).
        KIT bring 2 traffic cones.
        Van: ready, note: left door, to repair: dent (incident 1); traffic cones: 1
          of 3.
        Lift heavy cartons with two; ladder tied. This sheet does not say that the
          van is safe.

        Loaded by __________________________   Checked by __________________________

        """.ReplaceLineEndings("\n"));

    [Fact]
    public void What_comes_out_of_an_opened_carton_is_said() =>
        Text(Tiny.Opened("shelf: 1 LAMP; B1: 0+9 LAMP; B2: 0+8 LAMP; B3: 1+0 LAMP", setup: Lamps(12)), Tiny.B2).Should().Contain("2 of an opened one");

    [Fact]
    public void A_van_with_nothing_to_load_is_told_so() => Text(Evening, Tiny.B3).Should().Contain("Nothing to load.").And.NotContain("[ ]");

    [Fact]
    public void A_van_that_is_not_closed_says_so_on_its_sheet() => Text(Evening, Tiny.B2).Should().Contain("Van: not closed");

    [Fact]
    public void A_held_van_has_its_reasons_in_a_frame_on_top_and_a_rehearsal_is_marked()
    {
        var depot = Evening.Did(new PlaceHold(Tiny.B2, "recall", Tiny.Lead)) with { Rehearsal = true };

        Text(depot, Tiny.B2).Should().Contain("Nov 2026, REHEARSAL\n+- HELD ---").And.Contain("| recall   ").And.Contain("| A lead lifts each hold, or the van stays in.");
        var sections = Parsed(PickSheet.Html(new(depot))).Descendants("section").ToList();
        sections.Should().OnlyContain(s => s.Element("h2")!.Value.EndsWith(", REHEARSAL") && s.Value.Contains("Loaded by") && s.Value.Contains("Checked by"));
        sections.Select(s => s.Element("div")?.Value).Should().Equal(null, "HELDrecallA lead lifts each hold, or the van stays in.", null);
        PickSheet.Html(new(Evening)).Should().NotContain("REHEARSAL");
    }

    [Fact]
    public void Every_sheet_of_the_sample_evening_fits_80_columns_and_lies_in_stow_order()
    {
        using var kiosk = Sample();
        var (depot, plan) = (kiosk.Depot, kiosk.Session.Desk.Plan);
        foreach (var van in depot.Setup.Vans)
        {
            PickSheet.Text(new(depot), van).Split('\n').Should().OnlyContain(line => line.Length <= 80);
            StowOrder.ToTake(depot, plan, van.Code).Select(l => depot.Setup.Stows[l.Item.Stow]).Should().BeInAscendingOrder();
            StowOrder.ToTake(depot, plan, van.Code).Sum(l => l.Units).Should().Be(plan.Lines.Where(l => l.Van.Code == van.Code).Sum(l => l.Units));
        }
    }

    [Fact]
    public void Long_names_and_a_line_from_three_sources_fit_80_columns()
    {
        var setup = Lamps(40) with { Vans = [Tiny.Van("B1", 1, new string('n', 200), 1000)] };
        setup = setup with
        {
            Depot = setup.Depot with { Name = new string('d', 200) },
            Items = [setup.Items[0] with { Stow = new string('s', 200), Low = 38, High = 38 }],
        };
        var depot = Tiny.Opened("shelf: 4 LAMP; bin: 5 LAMP", setup: setup);
        // 38 of them: 3 sealed, 5 of the bin, 3 of an opened carton.
        var line = RestockPlan.For(depot).Lines.Single();
        (line.Sealed, line.FromBin, line.FromOpened).Should().Be((3, 5, 3));

        Text(depot, Tiny.B1).Split('\n').Select(l => l.Length).Max().Should().BeLessThanOrEqualTo(80);
    }

    [Fact]
    public void The_page_is_one_self_contained_file_with_a_section_for_each_van()
    {
        using var kiosk = Sample();
        var html = PickSheet.Html(kiosk.Session.Desk.Tonight);

        var page = Parsed(html);
        page.Descendants("section").Select(s => s.Element("h1")!.Value[..2]).Should().Equal("B1", "B2", "B3", "B4", "B5", "B6");
        page.Descendants("tbody").Elements("tr").Should().HaveCount(kiosk.Session.Desk.Plan.Lines.Count(l => l.Units > 0));
        html.Should().NotContain("http").And.NotContain("<script").And.NotContain("<link").And.NotContain("src=").And.NotContain("url(").And.NotContain("@import");
        html.Should().Contain("break-after: page").And.Contain("@page");
    }

    [Fact]
    public void Text_from_outside_stays_text_on_the_page()
    {
        const string sly = "<script>alert(\"1\")</script> & 'x' \u001b[2J \u202e \U0001F69A";
        var setup = Tiny.Setup with { Items = [Tiny.Lamp with { Description = sly, Stow = sly }], Vans = [Tiny.Van("B1", 1, sly, 1000)], Depot = Tiny.Settings with { Name = sly } };
        var depot = Tiny.Opened("shelf: 1 LAMP", setup: setup);
        var html = PickSheet.Html(new(depot));

        html.Should().NotContain("<script").And.NotContain("\u001b").And.NotContain("\u202e");
        var shown = sly.Replace('\u001b', '·').Replace('\u202e', '·');
        Parsed(html).Descendants("tr").Last().Elements("td").ElementAt(1).Value.Should().Be(shown);
        Parsed(html).Descendants("h1").Single().Value.Should().Be($"B1 {shown}, bay 1");
        Text(depot, Tiny.B1).Should().NotContain("\u001b");
    }

    /// <summary>The page after its doctype as XML; HTML lets a meta element stand open.</summary>
    private static XElement Parsed(string html)
    {
        html.Should().StartWith("<!DOCTYPE html>\n");
        return XElement.Parse(OpenMeta().Replace(html["<!DOCTYPE html>\n".Length..], "<meta$1/>"));
    }

    private static string Text(Depot depot, Code<Van> van) => PickSheet.Text(new(depot), depot.Setup.Van(van));

    private static Setup Lamps(int high) => Tiny.Setup with { Items = [Tiny.Lamp with { High = high }] };

    private static SampleKiosk Sample()
    {
        var kiosk = new SampleKiosk();
        new Rehearsal(kiosk.Session.Desk, new Attachments(kiosk.Folder)).Play(SampleDay.Answers).Should().BeEmpty();
        return kiosk;
    }

    [GeneratedRegex("<meta([^>/]*)>")]
    private static partial Regex OpenMeta();
}
