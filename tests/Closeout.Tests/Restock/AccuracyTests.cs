using System.Text;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using Closeout.Screens;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Three evenings reckoned by hand. The highs are so low that every target is a high: 12 lamps, 4 showerheads.</summary>
public class AccuracyTests
{
    private static readonly Code<Item> Shower = Tiny.Shower.Code;
    private static readonly Code<VisitKind> Home = new("HOME");
    private static readonly Code<VisitKind> Bath = new("BATH");

    private static readonly Setup Setup = Tiny.Setup with
    {
        Items = [Tiny.Lamp with { High = 12 }, Tiny.Shower with { High = 4 }],
        Rates = [new(Home, Lamp, 10, 20), new(Bath, Shower, 4, 20)],
    };

    /// <summary>On Wednesday visits are booked for Thursday (B1 and B2) and for Friday (B1).</summary>
    private static readonly Depot Wednesday = Tiny.Opened("B1: 0+12 LAMP, 0+2 SHOWER; B2: 0+3 SHOWER; B3: 1+0 LAMP", setup: Setup)
        .Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, Home, 4), new(Thursday, Tiny.B2, Bath, 3), new(Tiny.Friday, Tiny.B1, Home, 4)] });

    /// <summary>B1's visits report 10 of its 12 lamps; B2 reports nothing and its 3 showerheads are gone.</summary>
    private static Depot ThursdayNight()
    {
        var morning = Wednesday.Next(Thursday);
        return (morning.Planned(p => p with { ByVan = p.ByVan.Add((Thursday, Tiny.B1), new(Thursday, Tiny.B1, [new(Lamp, 10)], [])) }))
            .At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 2)).At(Tiny.B1, Step.Closed)
            .At(Tiny.B2, Step.Leftovers).Did(new CountLeftover(Tiny.B2, Shower, 0, 0, 0)).At(Tiny.B2, Step.Closed);
    }

    /// <summary>B1 went out with the 2 lamps that were left, and its visits wanted 15.</summary>
    private static Depot FridayNight()
    {
        var morning = ThursdayNight().Next(Tiny.Friday);
        return (morning.Planned(p => p with { ByVan = p.ByVan.Add((Tiny.Friday, Tiny.B1), new(Tiny.Friday, Tiny.B1, [new(Lamp, 15)], [])) }))
            .At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0)).At(Tiny.B1, Step.Closed);
    }

    [Fact]
    public void The_plan_promises_its_targets_to_the_vans_that_are_booked_and_the_next_page_keeps_them()
    {
        RestockPlan.For(Wednesday).Lines.Should().NotContain(l => l.Van.Code == Tiny.B1 && l.Item.Code == Lamp, "12 are aboard: promised all the same");
        Wednesday.Next(Thursday).Planning.Promises.Should().Equal(new Promise(Tiny.B1, Lamp, 12), new Promise(Tiny.B2, Shower, 4));
        ThursdayNight().Next(Tiny.Friday).Planning.Promises.Should().Equal(new Promise(Tiny.B1, Lamp, 12));
    }

    /// <summary>12 lamps were promised.</summary>
    [Theory]
    [InlineData(12, 1)]
    [InlineData(13, 0)]
    public void A_promise_is_kept_up_to_its_very_target(int wanted, int within)
    {
        var morning = Wednesday.Next(Thursday);
        var night = (morning with { Planning = morning.Planning with { ByVan = morning.Planning.ByVan.Add((Thursday, Tiny.B1), new(Thursday, Tiny.B1, [new(Lamp, wanted)], [])) } })
            .At(Tiny.B1, Step.Leftovers).Did(new CountLeftover(Tiny.B1, Lamp, 0, 0, 0)).At(Tiny.B1, Step.Closed);

        Accuracy.Tonight(night).Should().ContainSingle().Which.Within.Should().Be(within);
    }

    [Fact]
    public void A_target_that_a_lead_set_is_what_is_promised() =>
        Wednesday.Did(Change(OverrideKind.Target, Tiny.B1, 7)).Next(Thursday).Planning.Promises.Should().Contain(new Promise(Tiny.B1, Lamp, 7));

    [Fact]
    public void The_close_outs_of_the_day_say_how_the_promises_were_kept() => Accuracy.Of(ThursdayNight()).Should().Equal(
        new KeptPromises(Thursday, 1, Lines: 1, Within: 1, Missed: 0, Emptied: 0, Aboard: 12, Used: 10),
        new KeptPromises(Thursday, 2, Lines: 1, Within: 1, Missed: 0, Emptied: 1, Aboard: 3, Used: 3));

    [Fact]
    public void Demand_beyond_the_target_is_not_within_and_what_was_not_aboard_is_missed() => Accuracy.Of(FridayNight())[^1].Should().Be(
        new KeptPromises(Tiny.Friday, 1, Lines: 1, Within: 0, Missed: 13, Emptied: 1, Aboard: 2, Used: 15));

    [Fact]
    public void A_van_that_is_not_closed_says_nothing_yet()
    {
        var morning = Wednesday.Next(Thursday);
        Accuracy.Of(morning).Should().BeEmpty();
        Accuracy.Of(morning.At(Tiny.B1, Step.SignOff)).Should().BeEmpty();
        Accuracy.Of(morning.At(Tiny.B1, Step.Closed)).Should().ContainSingle().Which.Used.Should().Be(0, "unchanged");
        Accuracy.Of(morning.At(Tiny.B3, Step.Closed)).Should().BeEmpty("nothing was booked for it");
    }

    [Fact]
    public void The_file_has_a_row_for_each_date_and_priority_and_then_the_sums() => Encoding.UTF8.GetString(AccuracyCsv.Write(FridayNight())).Should().Be(string.Join("\r\n",
        "date,priority,promised,lines,within,share_within,emptied,units_used,units_missed,units_aboard,aboard_per_used,units_without_promise",
        "2026-11-19,1,0.9800,1,1,1.0000,0,10,0,12,1.200,0",
        "2026-11-19,2,0.9500,1,1,1.0000,1,3,0,3,1.000,0",
        "2026-11-20,1,0.9800,1,0,0.0000,1,15,13,2,0.133,0",
        ",1,0.9800,2,1,0.5000,1,25,13,14,0.560,0",
        ",2,0.9500,1,1,1.0000,1,3,0,3,1.000,0",
        ""));

    [Fact]
    public void The_screen_says_the_same_sums_first_and_the_newest_day_on_top()
    {
        var sheet = new AccuracyScreen(new WallScreen()).Show(new(new(FridayNight()), Tiny.FiveOClock, ""), 80, 24);
        var rows = sheet.ToString().Split('\n').Select(r => string.Join(' ', r.Split(' ', StringSplitOptions.RemoveEmptyEntries))).ToList();

        rows[3].Should().Be("1 98 % 50 % 2 1 1 25 13 0.56");
        rows[4].Should().Be("2 95 % 100 % 1 1 1 3 0 1.00");
        rows.Should().ContainInOrder("11-20 1 98 % 0 % 1 0 1 15 13 0.13", "11-19 1 98 % 100 % 1 1 0 10 0 1.20");
    }

    [Fact]
    public void A_van_that_used_nothing_has_no_units_aboard_per_unit_used()
    {
        var rows = Encoding.UTF8.GetString(AccuracyCsv.Write(Wednesday.Next(Thursday).At(Tiny.B1, Step.Closed))).Split("\r\n");
        rows[1].Should().Be("2026-11-19,1,0.9800,1,1,1.0000,0,0,0,12,,0");
    }

    [Fact]
    public void It_is_carried_for_sixty_days()
    {
        var night = FridayNight();
        var next = night.Next(Tiny.Friday.AddDays(3));
        next.Planning.Kept.Should().Equal(Accuracy.Of(night));
        next.Next(Thursday.AddDays(59)).Planning.Kept.Should().HaveCount(3);
        next.Next(Thursday.AddDays(60)).Planning.Kept.Should().ContainSingle().Which.Date.Should().Be(Tiny.Friday);
        next.Next(Thursday.AddDays(61)).Planning.Kept.Should().BeEmpty();
        next.Next(Thursday.AddDays(30)).Next(Thursday.AddDays(59)).Planning.Kept.Should().HaveCount(3, "over as many pages as there are");
    }
}
