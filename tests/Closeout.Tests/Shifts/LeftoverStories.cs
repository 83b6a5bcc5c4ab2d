using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Given a close-out, when something is counted, then an entry or a refusal.</summary>
public class LeftoverStories
{
    private static readonly Code<Item> Lamp = Tiny.Lamp.Code;

    private static readonly Depot Counting = Tiny.Opened("bin: 7 LAMP; B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers);

    [Fact]
    public void The_van_comes_in_and_the_book_remembers_what_was_aboard()
    {
        var shift = Counting.Shift(Tiny.B1)!;
        shift.Step.Should().Be(Step.Leftovers);
        shift.Technician.Should().Be(Tiny.T1);
        shift.Before.Should().ContainSingle().Which.Should().Be(KeyValuePair.Create(Lamp, new Holding(2, 5)));
    }

    [Fact]
    public void One_carton_opened_and_three_loose_kept_says_twelve_used_and_one_box_to_flatten()
    {
        var counted = (LeftoverCounted)Counting.Accepts(new CountLeftover(Tiny.B1, Lamp, 1, 0, 3));

        (counted.Used, counted.Gap, counted.Emptied).Should().Be((12, 0, 1));
        counted.Moves.Should().Equal(
            new Move(Lamp, 10, Place.Sealed(Tiny.B1), Place.Loose(Tiny.B1)),
            new Move(Lamp, 12, Place.Loose(Tiny.B1), Place.Homes));
    }

    [Fact]
    public void Sealed_not_said_means_the_cartons_of_the_book() =>
        ((LeftoverCounted)Counting.Accepts(new CountLeftover(Tiny.B1, Lamp, null, 4, 1))).Count.Should().Be(new LeftoverCount(2, 4, 1));

    [Fact]
    public void An_item_that_the_book_does_not_have_aboard_counts_from_nothing()
    {
        var found = new CountLeftover(Tiny.B1, Tiny.Wrap.Code, null, 0, 2);
        Counting.Refuses(found).Code.Should().Be("above-the-book");
        var after = Counting.Did(found with { Sure = true });
        after.Stock.Ledger.Aboard(Tiny.B1, Tiny.Wrap).Should().Be(new Holding(0, 2));
        after.Stock.Ledger.Units(Place.Unexplained, Tiny.Wrap.Code).Should().Be(-2);
    }

    [Theory]
    [InlineData(2, 0, 6)]
    [InlineData(2, 1, 5)]
    [InlineData(3, 0, 0)]
    public void What_is_above_the_book_by_a_unit_or_more_is_asked_again(int boxed, int bin, int kept) =>
        Counting.Refuses(new CountLeftover(Tiny.B1, Lamp, boxed, bin, kept)).Should().Match<Refusal>(r => r.Code == "blind-above-the-book" && r.AskAgain);

    /// <summary>99,999 of the loose ones, and as many cartons, or fewer where they would hold more than ten million units.</summary>
    [Fact]
    public void The_most_that_an_answer_may_say_is_taken_and_one_more_is_not()
    {
        // A carton of ten lamps and its box weigh a little over 2 lb, and the van carries 2,000 lb.
        var most = new CountLeftover(Tiny.B1, Lamp, Payload.MostCartons(Tiny.Setup, Tiny.Setup.Van(Tiny.B1), Tiny.Lamp), 99_999, 99_999, 99_999, Sure: true);
        most.Sealed.Should().BeInRange(600, 999);
        Counting.Accepts(most);
        Counting.Refuses(most with { Sealed = most.Sealed + 1 }).Text.Should().EndWith($"Type 0 to {most.Sealed}.");
        foreach (var more in new[] { most with { Bin = 100_000 }, most with { Kept = 100_000 }, most with { Installed = 100_000 } })
        {
            Counting.Refuses(more).Should().Match<Refusal>(r => r.Code == "out-of-range" && r.Text.Contains("100000"));
        }
    }

    [Fact]
    public void Just_what_the_book_has_is_not_asked_again() =>
        ((LeftoverCounted)Counting.Accepts(new CountLeftover(Tiny.B1, Lamp, 2, 1, 4))).Should().Match<LeftoverCounted>(c => c.Used == 0 && c.Gap == 0 && c.Emptied == 0);

    [Fact]
    public void A_second_count_replaces_the_first()
    {
        var after = Counting.Did(new CountLeftover(Tiny.B1, Lamp, 0, 5, 0), new CountLeftover(Tiny.B1, Lamp, 1, 2, 3));

        after.Stock.Ledger.Aboard(Tiny.B1, Tiny.Lamp).Should().Be(new Holding(1, 3));
        after.Stock.Ledger.Units(Place.Bin, Lamp).Should().Be(9);
        after.Stock.Ledger.Units(Place.Homes, Lamp).Should().Be(10);
        after.Shift(Tiny.B1)!.ExpectedOf(Lamp).Should().Be(1);
    }

    [Fact]
    public void What_visits_report_is_taken_where_the_technician_does_not_say()
    {
        var reported = Counting.Planned(p => p with { ByVan = p.ByVan.Add((Counting.Date, Tiny.B1), new(Counting.Date, Tiny.B1, [new(Lamp, 10)], [])) });

        var counted = (LeftoverCounted)reported.Accepts(new CountLeftover(Tiny.B1, Lamp, 1, 0, 3));
        (counted.Installed, counted.Used, counted.Gap).Should().Be((10, 12, 2));

        var said = (LeftoverCounted)reported.Accepts(new CountLeftover(Tiny.B1, Lamp, 1, 0, 3, 12));
        (said.Installed, said.Gap).Should().Be((12, 0));

        var unmentioned = (LeftoverCounted)reported.Accepts(new CountLeftover(Tiny.B1, Tiny.Wrap.Code, 0, 0, 0));
        unmentioned.Installed.Should().Be(0, "reports were loaded and say nothing of it");
    }

    [Fact]
    public void A_code_in_other_letters_is_recorded_in_the_depots_spelling()
    {
        var counted = (LeftoverCounted)Counting.Accepts(new CountLeftover(new("b1"), new("lamp"), 2, 0, 5));
        (counted.Van.Text, counted.Item.Text).Should().Be(("B1", "LAMP"));
    }

    [Fact]
    public void Items_to_count_follow_the_stow_and_those_counted_are_among_them()
    {
        var depot = Tiny.Opened("B1: 2+5 LAMP, 1+0 SHOWER").At(Tiny.B1, Step.Leftovers)
            .Did(new CountLeftover(Tiny.B1, Tiny.Wrap.Code, 0, 0, 2, Sure: true));

        Leftovers.ToCount(depot, depot.Shift(Tiny.B1)!).Select(i => i.Code.Text).Should().Equal("LAMP", "WRAP", "SHOWER");
    }

    [Fact]
    public void A_bin_below_nothing_does_not_stop_units_from_going_into_it()
    {
        var depot = Tiny.Opened("bin: -3 LAMP; B1: 2+5 LAMP").At(Tiny.B1, Step.Leftovers);

        new CountLeftover(Tiny.B1, Lamp, 2, 5, 0).Decide(depot).Refusal.Should().BeNull("it takes nothing out");
    }

    [Fact]
    public void Huge_cartons_counted_in_huge_numbers_are_refused_or_recorded_and_never_break_the_kiosk()
    {
        var huge = Tiny.Lamp with { UnitsPerCarton = 100_000 };
        var depot = Tiny.Opened("B1: 2+5 LAMP", setup: Tiny.Setup with { Items = [huge] }).At(Tiny.B1, Step.Leftovers);

        FluentActions.Invoking(() => new CountLeftover(Tiny.B1, Lamp, Refusal.MostAtOnce, 0, 0).Decide(depot)).Should().NotThrow();
    }
}
