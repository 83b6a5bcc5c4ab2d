using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given vans and what their payloads leave for stock, then what the plan cuts, and how it says so. A lamp weighs 0.2 lb, a showerhead 0.5, a piece of wrap 0.3.</summary>
public class PayloadStories
{
    private static readonly Code<Item> Shower = Tiny.Shower.Code;
    private static readonly Code<Item> Wrap = Tiny.Wrap.Code;

    /// <summary>All that one van lacks, loose in the bin: 10 lamps, 4 showerheads, 2 pieces of wrap weigh 2 + 2 + 0.6 = 4.6 lb. Priorities 1, 2, 3.</summary>
    private const string Bin = "bin: 10 LAMP, 4 SHOWER, 2 WRAP";

    [Theory]
    [InlineData(4.6, 10, 4, 2)]
    [InlineData(4.59, 10, 4, 1)]    // 0.01 too heavy: one piece
    [InlineData(4.3, 10, 4, 1)]
    [InlineData(4.2, 10, 4, 0)]
    [InlineData(4.0, 10, 4, 0)]
    [InlineData(3.9, 10, 3, 0)]     // and one showerhead
    [InlineData(2.0, 10, 0, 0)]
    [InlineData(1.9, 9, 0, 0)]
    [InlineData(0.3, 1, 0, 0)]
    [InlineData(0.1, 0, 0, 0)]
    [InlineData(-50, 0, 0, 0)]      // the payload does not even take crew and kit
    public void What_is_too_heavy_is_cut_back_from_the_lowest_priority_in_whole_units(double allowance, int lamps, int showers, int wraps)
    {
        var depot = One(allowance, Bin);
        (depot.Given(Tiny.B1), depot.Given(Tiny.B1, Shower), depot.Given(Tiny.B1, Wrap)).Should().Be((lamps, showers, wraps));
        Weight(depot, Tiny.B1).LoadedLb.Should().BeApproximately((lamps * 0.2) + (showers * 0.5) + (wraps * 0.3), 1e-9);
        Weight(depot, Tiny.B1).UncutLb.Should().BeApproximately(4.6, 1e-9);
    }

    [Fact]
    public void A_cut_line_says_payload_and_its_need_follows()
    {
        var line = One(3.9, Bin).Line(Tiny.B1, Shower)!;
        (line.Target, line.Need, line.Units, line.Short, line.CutUnits).Should().Be((new Target(3, Basis.Payload), 3, 3, 0, 1));
        line.Cut!.Target.Should().Be(new Target(4, Basis.Low));
    }

    [Fact]
    public void A_line_cut_to_nothing_stays_in_sight_and_out_of_the_csv()
    {
        var depot = One(3.9, Bin);
        depot.Line(Tiny.B1, Wrap)!.Should().Match<RestockLine>(l => l.Need == 0 && l.Units == 0 && l.CutUnits == 2);
        var csv = System.Text.Encoding.UTF8.GetString(RestockCsv.Write(RestockPlan.For(depot)));
        csv.Should().Contain(",3,payload,3,").And.NotContain("WRAP");
    }

    [Fact]
    public void The_plan_tells_what_was_cut_by_item_and_what_each_van_weighs()
    {
        var weight = Weight(One(3.9, Bin + "; B1: 0+1 LAMP"), Tiny.B1);
        weight.Cut.Select(c => (c.Item.Code.Text, c.Units)).Should().Equal(("SHOWER", 1), ("WRAP", 2));
        weight.AllowanceLb!.Value.Should().BeApproximately(3.9, 1e-9);
        weight.AboardLb.Should().BeApproximately(0.2, 1e-9);
        weight.AboveLb.Should().Be(0);
    }

    [Fact]
    public void Within_a_priority_the_line_least_likely_to_be_missed_goes_first()
    {
        // Both of priority 2 and 0.5 lb. Nine of B are wanted by visits, A is there for its low alone.
        var (a, b) = (Tiny.Shower with { Code = new("A"), Low = 9 }, Tiny.Shower with { Code = new("B"), Low = 0 });
        var setup = Van(4, Tiny.Setup with { Items = [a, b], Rates = [new(new("HOME"), b.Code, 5, 10)] });
        var depot = Tiny.Opened("bin: 20 A, 20 B", setup: setup).Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, new("HOME"), 1)] });
        (depot.Given(Tiny.B1, a.Code), depot.Given(Tiny.B1, b.Code)).Should().Be((0, 8), "A goes wholly, and of B only what is still too heavy");

        var neither = depot.Planned(p => p with { Bookings = [] });
        (neither.Given(Tiny.B1, a.Code), neither.Given(Tiny.B1, b.Code)).Should().Be((8, 0), "nothing is wanted by visits: only the low of A counts");
    }

    [Fact]
    public void Where_chances_are_alike_the_smaller_item_code_is_cut_first()
    {
        var setup = Van(3, Tiny.Setup with { Items = [Tiny.Shower with { Code = new("B") }, Tiny.Shower with { Code = new("A") }] });
        var depot = Tiny.Opened("bin: 4 A, 4 B", setup: setup);
        (depot.Given(Tiny.B1, new("A")), depot.Given(Tiny.B1, new("B"))).Should().Be((2, 4));
    }

    [Fact]
    public void A_sealed_carton_weighs_with_its_box_and_loose_units_without()
    {
        // Ten lamps sealed weigh 2 lb and the box 0.897: (2 x 20 + 2 x 10 + 1.5) x (10 + 10) / 144000 x 105.
        Weight(One(100, "shelf: 1 LAMP"), Tiny.B1).LoadedLb.Should().BeApproximately(2.896875, 1e-9);
        Weight(One(100, "B1: 1+3 LAMP"), Tiny.B1).AboardLb.Should().BeApproximately(2.896875 + 0.6, 1e-9);

        // 0.397 lb too heavy: two lamps less. Eight are no carton, so the box stays too.
        var cut = One(2.5, "shelf: 1 LAMP");
        cut.Line(Tiny.B1)!.Should().Match<RestockLine>(l => l.Sealed == 0 && l.FromOpened == 8);
        Weight(cut, Tiny.B1).LoadedLb.Should().BeApproximately(1.6, 1e-9);
    }

    [Fact]
    public void A_carton_is_not_rounded_up_beyond_what_the_van_may_carry()
    {
        // Seven aboard, three needed: a sealed carton would do without opening one, but seven more than needed are too heavy.
        One(100, "shelf: 1 LAMP; B1: 0+7 LAMP").Line(Tiny.B1)!.Should().Match<RestockLine>(l => l.Sealed == 1 && l.Units == 10);
        var line = One(4, "shelf: 1 LAMP; B1: 0+7 LAMP").Line(Tiny.B1)!;
        (line.Sealed, line.FromOpened, line.Target, line.CutUnits).Should().Be((0, 3, new Target(10, Basis.Low), 7), "it gets what it needs, and weight set no target");
    }

    [Fact]
    public void What_one_van_gives_up_another_gets_and_may_have_to_give_up_in_its_turn()
    {
        // 12 lamps for three vans that lack 10 each. B1 may carry 4 of them, B2 7: 1 is left for B3.
        var depot = Three("bin: 12 LAMP", 0.8, 1.4, 100);
        new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Select(v => depot.Given(v)).Should().Equal(4, 7, 1);
        depot.Line(Tiny.B2)!.Should().Match<RestockLine>(l => l.Cut!.Units == 8 && l.Target == new Target(7, Basis.Payload) && l.Short == 0, "it had two at first, and eight when it became too heavy");
        depot.Line(Tiny.B3)!.Short.Should().Be(9);
        Weight(depot, Tiny.B2).UncutLb.Should().BeApproximately(1.6, 1e-9);
    }

    [Fact]
    public void What_others_give_up_does_not_come_to_a_van_that_gave_up_something_more_important()
    {
        // The two pieces of wrap go to B1, which must give them up. B2 gave up a showerhead and has 0.4 lb to spare: no wrap for it.
        var setup = Tiny.Setup with { Items = [Tiny.Shower, Tiny.Wrap] };
        var depot = Three("bin: 12 SHOWER, 2 WRAP", 2, 1.9, 100, setup);
        new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Select(v => (depot.Given(v, Shower), depot.Given(v, Wrap))).Should().Equal((4, 0), (3, 0), (4, 2));
        depot.Line(Tiny.B2, Wrap)!.Target.Basis.Should().Be(Basis.Payload);
    }

    [Fact]
    public void A_line_cut_twice_tells_what_it_would_have_got_at_first()
    {
        // B2 gives up a showerhead; then it gets the six lamps that B1 cannot carry, and gives up two more.
        var depot = Three("bin: 10 LAMP, 12 SHOWER", 0.8, 1.9, 100, Tiny.Setup with { Items = [Tiny.Lamp, Tiny.Shower] });
        (depot.Given(Tiny.B2), depot.Given(Tiny.B2, Shower)).Should().Be((6, 1));
        depot.Line(Tiny.B2, Shower)!.Should().Match<RestockLine>(l => l.CutUnits == 3 && l.Cut!.Target == new Target(4, Basis.Low));
    }

    [Fact]
    public void A_van_too_heavy_with_what_it_has_aboard_gets_nothing_that_weighs_and_the_plan_says_so()
    {
        var setup = Van(1, Tiny.Setup with { Items = [Tiny.Lamp, Tiny.Shower with { UnitWeightLb = 0 }] });
        var depot = Tiny.Opened("bin: 10 LAMP, 4 SHOWER; B1: 0+6 LAMP", setup: setup);
        (depot.Given(Tiny.B1), depot.Given(Tiny.B1, Shower)).Should().Be((0, 4), "showerheads weigh nothing here");
        Weight(depot, Tiny.B1).AboveLb.Should().BeApproximately(0.2, 1e-9);
        Said(depot, depot.Line(Tiny.B1)!).Should().Be("4 are left out: the stock aboard weighs 1.2 lb already, and 1.0 lb is what the payload leaves for it (451.0 lb less crew and kit 450.0 lb); so target 10 (low) is cut to 6");
    }

    [Fact]
    public void A_van_whose_payload_is_not_stated_is_never_checked()
    {
        var depot = Tiny.Opened(Bin, setup: Of(Tiny.Setup with { Vans = Tiny.Setup.Vans.Take(1).ToList() }, 0));
        depot.Given(Tiny.B1, Wrap).Should().Be(2);
        Weight(depot, Tiny.B1).Should().Match<VanWeight>(w => w.AllowanceLb == null && w.AboveLb == 0 && w.LoadedLb > 4);
    }

    [Fact]
    public void Crew_and_kit_are_the_depots_own_figure()
    {
        var light = Van(4.6) with { Depot = Tiny.Settings with { CrewAndKitLb = 451 } };
        Tiny.Opened(Bin, setup: light).Given(Tiny.B1, Wrap).Should().Be(0, "a pound more for the crew is a pound less for stock");
    }

    [Fact]
    public void A_leads_target_is_cut_like_any_other_and_says_so()
    {
        var depot = One(3, "bin: 40 LAMP").Did(Change(OverrideKind.Target, Tiny.B1, 25));
        var line = depot.Line(Tiny.B1)!;
        (line.Target, line.Units).Should().Be((new Target(15, Basis.Payload), 15));
        Said(depot, line).Should().Be("10 are left out: all that was planned would make 5.0 lb of stock, and 3.0 lb is what the payload leaves for it (453.0 lb less crew and kit 450.0 lb); so target 25 (lead) is cut to 15");
    }

    [Fact]
    public void What_a_lead_added_counts_as_missed_for_certain_and_goes_last_of_its_priority()
    {
        var setup = Van(3, Tiny.Setup with { Items = [Tiny.Shower with { Code = new("A") }, Tiny.Shower with { Code = new("B") }] });
        var depot = Tiny.Opened("bin: 4 A, 8 B", setup: setup).Did(Change(OverrideKind.Target, Tiny.B1, 0, new("A")), Change(OverrideKind.Extra, Tiny.B1, 4, new("A")));
        (depot.Given(Tiny.B1, new("A")), depot.Given(Tiny.B1, new("B"))).Should().Be((4, 2));
    }

    [Fact]
    public void Why_says_when_only_a_carton_is_not_rounded_up()
    {
        var depot = One(4, "shelf: 1 LAMP; B1: 0+7 LAMP");
        Said(depot, depot.Line(Tiny.B1)!).Should().StartWith("7 are left out: all that was planned would make 4.3 lb of stock, and 4.0 lb is").And.EndWith("so no carton is rounded up");
    }

    [Fact]
    public void A_line_that_nothing_was_cut_of_does_not_speak_of_weight() =>
        Why.Of(Tiny.Setup, One(4.3, Bin).Line(Tiny.B1)!, Weight(One(4.3, Bin), Tiny.B1)).Select(w => w.Heading).Should().NotContain("Payload");

    [Fact]
    public void The_next_page_promises_the_targets_as_cut()
    {
        var setup = Van(2, Tiny.Setup with { Rates = [new(new("HOME"), Lamp, 5, 10), new(new("HOME"), Shower, 1, 10)] });
        var depot = Tiny.Opened("bin: 40 LAMP, 9 SHOWER", setup: setup).Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, new("HOME"), 2)] });
        depot.Next(Thursday).Planning.Promises.Should().Equal(new Promise(Tiny.B1, Lamp, 10), new Promise(Tiny.B1, Shower, 0));
        (depot with { Setup = Of(setup, 2000) }).Next(Thursday).Planning.Promises.Should().HaveCount(2).And.OnlyContain(p => p.Target > 3);
    }

    private static Setup Of(Setup setup, double payload) => setup with { Vans = [.. setup.Vans.Select(v => v with { PayloadLb = payload })] };

    /// <summary>One van whose payload leaves so much for stock.</summary>
    internal static Setup Van(double allowance, Setup? setup = null) => Of((setup ?? Tiny.Setup) with { Vans = Tiny.Setup.Vans.Take(1).ToList() }, 450 + allowance);

    private static Depot One(double allowance, string stock) => Tiny.Opened(stock, setup: Van(allowance));

    private static Depot Three(string stock, double b1, double b2, double b3, Setup? setup = null)
    {
        setup ??= Tiny.Setup with { Items = [Tiny.Lamp] };
        return Tiny.Opened(stock, setup: setup with { Vans = [.. setup.Vans.Zip([b1, b2, b3], (v, a) => v with { PayloadLb = 450 + a })] });
    }

    private static VanWeight Weight(Depot depot, Code<Van> van) => RestockPlan.For(depot).Weight(van);

    private static string Said(Depot depot, RestockLine line) => Why.Of(depot.Setup, line, Weight(depot, line.Van.Code)).Single(w => w.Heading == "Payload").Sentence;
}
