using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Files;
using Closeout.Restock;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given a plan, when a lead changes it, then an entry or a refusal, and a plan that says so.</summary>
public class ChangePlanStories
{
    private static readonly Depot Plenty = Tiny.Opened("shelf: 20 LAMP; bin: 9 LAMP; B1: 0+4 LAMP; B2: 0+5 LAMP; B3: 1+0 LAMP");
    private static readonly Depot Scarce = Tiny.Opened("bin: 12 LAMP");

    [Fact]
    public void A_target_is_recorded_with_its_reason_and_the_plan_follows_on_the_basis_lead()
    {
        Plenty.Accepts(Change(OverrideKind.Target, Tiny.B1, 25))
            .Should().Be(new PlanOverridden(OverrideKind.Target, Tiny.B1, Lamp, Thursday, 25, "open house", Tiny.Lead));

        var line = Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 25)).Line(Tiny.B1)!;
        (line.Target, line.Need, line.Units).Should().Be((new Target(25, Basis.Lead), 21, 21));
        line.Overrides.Should().ContainSingle().Which.Change.Reason.Should().Be("open house");
    }

    [Fact]
    public void More_once_comes_on_top_of_what_the_plan_says_and_on_top_of_a_target()
    {
        Plenty.Did(Change(OverrideKind.Extra, Tiny.B1, 7)).Line(Tiny.B1)!.Target.Should().Be(new Target(17, Basis.Lead));
        Plenty.Did(Change(OverrideKind.Extra, Tiny.B1, 7), Change(OverrideKind.Target, Tiny.B1, 20)).Line(Tiny.B1)!.Target
            .Should().Be(new Target(27, Basis.Lead), "whichever came first");
    }

    [Fact]
    public void A_second_change_of_the_same_thing_replaces_the_first()
    {
        var depot = Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 25), Change(OverrideKind.Target, Tiny.B1, 15));
        depot.Planning.Overrides.Should().ContainSingle();
        depot.Line(Tiny.B1)!.Target.Units.Should().Be(15);
    }

    [Fact]
    public void A_change_of_one_date_leaves_the_plan_of_another_alone() =>
        Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 25, date: Tiny.Friday)).Line(Tiny.B1)!.Target.Should().Be(new Target(10, Basis.Low));

    [Fact]
    public void The_csv_says_lead_where_a_lead_changed_a_line()
    {
        var csv = System.Text.Encoding.UTF8.GetString(RestockCsv.Write(RestockPlan.For(Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 25)))));
        var (header, row) = (csv.Split("\r\n")[0].Split(',').ToList(), csv.Split("\r\n").Single(r => r.Contains(",B1,", StringComparison.Ordinal) && r.Contains(",LAMP,", StringComparison.Ordinal)));
        row.Split(',')[header.IndexOf("basis") - header.Count + row.Split(',').Length].Should().Be("lead");
    }

    [Fact]
    public void An_excluded_van_gets_nothing_and_its_share_goes_to_the_others()
    {
        // 12 lamps for three vans that lack 10 each; nothing is booked, so the smaller bay goes first.
        Given(Scarce).Should().Equal(10, 2, 0);
        Given(Scarce.Did(Change(OverrideKind.Exclude, Tiny.B2))).Should().Equal(10, 0, 2);
        Given(Scarce.Did(Change(OverrideKind.Exclude, Tiny.B1))).Should().Equal(0, 10, 2);
    }

    [Fact]
    public void What_was_withdrawn_no_longer_counts()
    {
        var changed = Scarce.Did(Change(OverrideKind.Exclude, Tiny.B2));
        var withdrawn = changed.Did(new WithdrawChange(changed.Number, "it goes out after all", Tiny.Lead));

        withdrawn.Planning.Overrides.Should().BeEmpty();
        Given(withdrawn).Should().Equal(10, 2, 0);
        withdrawn.Refuses(new WithdrawChange(changed.Number, "once more", Tiny.Lead)).Code.Should().Be("no-such-change");
    }

    [Theory]
    [InlineData(OverrideKind.Target)]
    [InlineData(OverrideKind.Extra)]
    public void A_van_never_gets_more_than_its_high(OverrideKind kind)
    {
        Plenty.Refuses(Change(kind, Tiny.B1, 41)).Text.Should().Contain("at most 40").And.Contain("not 41");
        Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 40), Change(OverrideKind.Extra, Tiny.B1, 40)).Line(Tiny.B1)!.Target.Units.Should().Be(40);
    }

    [Fact]
    public void A_lead_may_take_a_van_below_its_low() =>
        Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 6)).Line(Tiny.B1)!.Need.Should().Be(2);

    [Fact]
    public void An_excluded_van_and_its_reason_are_still_seen_in_the_plan() =>
        RestockPlan.For(Plenty.Did(Change(OverrideKind.Exclude, Tiny.B1))).Lines.Where(l => l.Van.Code == Tiny.B1)
            .Should().Contain(l => l.Overrides.Count == 1 && l.Units == 0, "a change that nobody sees is lost, and only what is seen can be withdrawn");

    [Fact]
    public void A_target_that_leaves_no_need_is_still_seen_in_the_plan() =>
        Plenty.Did(Change(OverrideKind.Target, Tiny.B1, 3)).Line(Tiny.B1).Should().NotBeNull("a change that nobody sees is lost, and only what is seen can be withdrawn");

    [Fact]
    public void An_excluded_van_is_promised_nothing()
    {
        var booked = Scarce with { Setup = Tiny.Setup with { Rates = [new(new("HOME"), Lamp, 5, 10)] }, Planning = Scarce.Planning with { Bookings = [new(Thursday, Tiny.B1, new("HOME"), 2), new(Thursday, Tiny.B2, new("HOME"), 2)] } };
        booked.Next(Thursday).Planning.Promises.Select(p => p.Van.Text).Should().Equal("B1", "B2");
        booked.Did(Change(OverrideKind.Exclude, Tiny.B2)).Next(Thursday).Planning.Promises.Select(p => p.Van.Text).Should().Equal(["B1"], "it does not go out, so nothing it did not use was a promise kept");
    }

    [Fact]
    public void Codes_in_other_letters_are_recorded_in_the_depots_spelling()
    {
        var entry = (PlanOverridden)Plenty.Accepts(new ChangePlan(OverrideKind.Target, new("b1"), new("lamp"), Thursday, 25, " open house ", new("l1")));
        (entry.Van.Text, entry.Item!.Value.Text, entry.Reason, entry.Lead.Text).Should().Be(("B1", "LAMP", "open house", "L1"));
    }

    private static IEnumerable<int> Given(Depot depot) => new[] { Tiny.B1, Tiny.B2, Tiny.B3 }.Select(van => depot.Given(van));
}
