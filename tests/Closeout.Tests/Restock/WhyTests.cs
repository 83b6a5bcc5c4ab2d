using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>What the plan says of a line, in a stock keeper's words.</summary>
public class WhyTests
{
    private static readonly Code<VisitKind> Home = new("HOME");

    /// <summary>Four visits of 3 lamps: mean 12, and with 20 visits known variance 12 + 16 * 3 / 20 = 14.4.</summary>
    private static readonly Depot Booked = Tiny.Opened("bin: 9 LAMP; shelf: 3 LAMP; B1: 0+4 LAMP", setup: Tiny.Setup with { Rates = [new(Home, Lamp, 3, 20)] })
        .Planned(p => p with { Bookings = [new(Thursday, Tiny.B1, Home, 4), new(Thursday, Tiny.B2, new("NEW"), 1)] });

    [Fact]
    public void A_target_by_bookings_names_the_visits_the_demand_and_the_promise()
    {
        var line = Booked.Line(Tiny.B1)!;
        Said(Booked, line, "Booked").Should().Be("4 HOME at 3 each");
        Said(Booked, line, "Demand").Should().Be("about 12, give or take 3.79: lumpy (negative binomial: mean 12, variance 14.4)");
        Said(Booked, line, "Promise").Should().Be($"enough in 98 % of such days (priority 1): that takes {line.Q}");
        Said(Booked, line, "Limits").Should().Be($"the van carries 10 to 40; target {line.Q} (booked)");
        Said(Booked, line, "Aboard").Should().Be($"4 on record, not counted yet: provisional, so {line.Q - 4} are needed");
    }

    [Fact]
    public void A_target_by_the_low_says_that_no_visit_is_booked()
    {
        var line = Booked.Line(Tiny.B3)!;
        Said(Booked, line, "Booked").Should().Be("no visit for this van");
        Said(Booked, line, "Demand").Should().Be("none");
        Said(Booked, line, "Promise").Should().Be("no demand is booked, so only the van's low counts (priority 1)");
        Said(Booked, line, "Limits").Should().Be("the van carries 10 to 40; target 10 (low)");
    }

    [Fact]
    public void A_kind_of_visit_that_nobody_knows_is_said_to_be_unknown()
    {
        var line = Booked.Line(Tiny.B2)!;
        Said(Booked, line, "Booked").Should().Be("1 NEW at no planning rate each");
        Said(Booked, line, "Demand").Should().Be("no planning rate and no visit on record, so none is foreseen");
    }

    [Fact]
    public void A_target_by_the_high_says_by_how_much_it_falls_short()
    {
        var tight = Booked with { Setup = Booked.Setup with { Items = [Tiny.Lamp with { High = 12 }] } };
        var line = tight.Line(Tiny.B1)!;
        Said(tight, line, "Limits").Should().Be($"the van carries 10 to 12; target 12 (high), {line.Q - 12} less than the promise takes: plan a top-up at mid-day");
    }

    [Fact]
    public void A_target_by_a_lead_names_the_lead_what_was_changed_and_why()
    {
        var changed = Booked.Did(Change(OverrideKind.Target, Tiny.B1, 15), Change(OverrideKind.Extra, Tiny.B1, 5));
        var line = changed.Line(Tiny.B1)!;
        Sentences(changed, line).Where(w => w.Heading == "Lead").Select(w => w.Sentence).Should().Equal("L1 set the target to 15: open house", "L1 added 5: open house");
        Said(changed, line, "Limits").Should().EndWith("target 20 (lead)");
    }

    [Fact]
    public void What_is_given_says_from_where_and_what_is_short_says_so()
    {
        var poor = Tiny.Opened("shelf: 1 LAMP; bin: 2 LAMP").At(Tiny.B1, Step.Closed);
        Said(poor, poor.Line(Tiny.B1)!, "Given").Should().Be("1 sealed carton of 10");
        Said(poor, poor.Line(Tiny.B2)!, "Given").Should().Be("2 loose from the bin");
        Said(poor, poor.Line(Tiny.B2)!, "Short").Should().StartWith("8: the depot has no more");
        Said(poor, poor.Line(Tiny.B3)!, "Given").Should().Be("nothing");
        Said(poor, poor.Line(Tiny.B1)!, "Aboard").Should().Be("0, so 10 are needed");
        Sentences(poor, poor.Line(Tiny.B1)!).Select(w => w.Heading).Should().NotContain("Short").And.NotContain("Lead");
    }

    public static TheoryData<int> Lines => [.. Enumerable.Range(0, RestockPlan.For(AnyStockDesk.Afternoon()).Lines.Count)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Bars_lie_side_by_side_from_nothing_on_and_their_chances_sum_to_one(int index)
    {
        var line = RestockPlan.For(AnyStockDesk.Afternoon()).Lines[index];
        for (var most = 2; most <= 30; most++)
        {
            var bars = Why.Bars(line, most);
            bars[0].From.Should().Be(0);
            bars.Zip(bars.Skip(1)).Should().OnlyContain(b => b.Second.From == b.First.To + 1);
            bars.Sum(b => b.Chance).Should().BeInRange(0.999, 1 + 1e-12, "what lies beyond the last bar is less than one in a thousand");
            bars.Should().OnlyContain(b => b.Chance >= 0);
        }
    }

    [Theory]
    [MemberData(nameof(Lines))]
    public void Each_mark_stands_once_and_in_the_bar_of_its_units(int index)
    {
        var line = RestockPlan.For(AnyStockDesk.Afternoon()).Lines[index];
        foreach (var (mark, units) in new[] { ("low", line.Low), ("target", line.Target.Units), ("high", line.High), ("aboard", line.Aboard) })
        {
            for (var most = 2; most <= 30; most++)
            {
                Why.Bars(line, most).Where(b => b.Marks.Split(' ').Contains(mark)).Should().ContainSingle().Which.Should().Match<(int From, int To, double, string)>(b => b.From <= units && units <= b.To);
            }
        }
    }

    [Fact]
    public void There_are_no_more_bars_than_there_is_room_for() =>
        (from line in RestockPlan.For(AnyStockDesk.Afternoon()).Lines
         from most in Enumerable.Range(2, 40)
         where Why.Bars(line, most).Count > most
         select $"{line.Van.Code} {line.Item.Code}: more than {most}").Should().BeEmpty("the rows below belong to the keys");

    private static string Said(Depot depot, RestockLine line, string heading) => Sentences(depot, line).Single(w => w.Heading == heading).Sentence;

    private static IEnumerable<(string Heading, string Sentence)> Sentences(Depot depot, RestockLine line) => Why.Of(depot.Setup, line, RestockPlan.For(depot).Weight(line.Van.Code));
}
