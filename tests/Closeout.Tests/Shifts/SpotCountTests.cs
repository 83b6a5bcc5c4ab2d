using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Shifts;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Shifts;

/// <summary>Which items an evening counts blind.</summary>
public class SpotCountTests
{
    // Units moved: LAMP 80 of 100 is class A, SHOWER the next 15 is B, WRAP is C. Due after 14, 28, 56 days; asked for from three quarters of it on.
    private static readonly Depot Used = Tiny.Opened("B1: 1+0 LAMP, 1+0 SHOWER, 0+3 WRAP").Planned(p => p with { Use = [new(Tiny.Monday, new("HOME"), 9, [new(Tiny.Lamp.Code, 80, 800), new(Tiny.Shower.Code, 15, 50), new(Tiny.Wrap.Code, 5, 5)])] });

    [Fact]
    public void Classes_are_by_units_moved_and_what_did_not_move_is_in_none() =>
        SpotCount.Classes(Used).Should().BeEquivalentTo(new Dictionary<Code<Item>, int> { [Tiny.Lamp.Code] = 0, [Tiny.Shower.Code] = 1, [Tiny.Wrap.Code] = 2 });

    [Fact]
    public void Units_of_several_days_and_kinds_are_added_up()
    {
        var days = Used.Planned(p => p with { Use = [.. p.Use, new(Tiny.Wednesday, new("RECHECK"), 1, [new(Tiny.Wrap.Code, 400, 400)])] });
        SpotCount.Classes(days)[Tiny.Wrap.Code].Should().Be(0);
    }

    [Fact]
    public void Days_that_only_the_counts_tell_of_make_classes_too()
    {
        var silent = Used.Planned(p => p with { Use = [], Counted = [new(Tiny.Monday, Tiny.B1, [new(Tiny.Lamp.Code, 80), new(Tiny.Shower.Code, 15), new(Tiny.Wrap.Code, 5)])] });
        SpotCount.Classes(silent).GetValueOrDefault(Tiny.Lamp.Code, 2).Should().Be(0, "a depot without visit reports has items of high use as well");
    }

    [Theory]
    [InlineData("LAMP", 10, 11)]
    [InlineData("SHOWER", 20, 21)]
    [InlineData("WRAP", 41, 42)]
    public void An_item_is_asked_for_from_three_quarters_of_its_time_on(string item, int notYet, int due)
    {
        Chosen(Used, (item, notYet, 0)).Should().NotContain(item);
        Chosen(Used, (item, due, 0)).Should().Contain(item);
    }

    [Theory]
    [InlineData("LAMP", 5, 6, 1)]
    [InlineData("SHOWER", 10, 11, -4)]
    [InlineData("WRAP", 20, 21, 2)]
    public void After_a_gap_of_either_sign_it_is_asked_for_in_half_the_time(string item, int notYet, int due, int gap)
    {
        Chosen(Used, (item, notYet, gap)).Should().NotContain(item);
        Chosen(Used, (item, due, gap)).Should().Contain(item);
    }

    [Fact]
    public void Never_counted_goes_first_then_what_is_furthest_through_its_time() =>
        // The lamp at 14 of 14 days, the showerhead at 56 of 28, the wrap never.
        Chosen(Used, ("LAMP", 14, 0), ("SHOWER", 56, 0)).Should().Equal("WRAP", "SHOWER", "LAMP");

    [Fact]
    public void Of_items_never_counted_the_classes_are_in_their_order() => Chosen(Used).Should().Equal("LAMP", "SHOWER", "WRAP");

    [Fact]
    public void At_most_three_are_asked_for()
    {
        var many = Tiny.Setup with { Items = [.. Enumerable.Range(0, 9).Select(n => Tiny.Lamp with { Code = new($"I{n}") })] };
        SpotCount.Choose(Tiny.Opened("B1: " + string.Join(", ", many.Items.Select(i => $"0+1 {i.Code}")), setup: many), Tiny.B1)
            .Select(i => i.Text).Should().Equal("I0", "I1", "I2");
    }

    [Fact]
    public void Only_what_the_book_has_aboard_is_asked_for()
    {
        SpotCount.Choose(Used, Tiny.B2).Should().BeEmpty();
        SpotCount.Choose(Tiny.Opened("shelf: 9 LAMP; B1: 0+3 WRAP; B2: 1+0 LAMP"), Tiny.B1).Should().Equal(Tiny.Wrap.Code);
    }

    [Fact]
    public void The_van_that_comes_in_is_asked_for_what_was_chosen_and_a_count_of_it_is_kept_with_its_gap()
    {
        var depot = Used.Stocked(s => s with { SpotCounts = s.SpotCounts.Add((Tiny.B1, Tiny.Lamp.Code), new(Tiny.B1, Tiny.Lamp.Code, Tiny.Monday, 0)) });
        depot = depot.At(Tiny.B1, Step.Leftovers);
        depot.Shift(Tiny.B1)!.SpotItems.Should().Equal(Tiny.Shower.Code, Tiny.Wrap.Code);

        depot = depot.Did(new CountLeftover(Tiny.B1, Tiny.Wrap.Code, 0, 0, 1, 1), new CountLeftover(Tiny.B1, Tiny.Lamp.Code, 1, 0, 0));
        depot.Stock.SpotCounts[(Tiny.B1, Tiny.Wrap.Code)].Should().Be(new SpotCounted(Tiny.B1, Tiny.Wrap.Code, Tiny.Wednesday, 1));
        depot.Stock.SpotCounts[(Tiny.B1, Tiny.Lamp.Code)].On.Should().Be(Tiny.Monday, "a count that saw the book's figure is no blind count");
        depot.Stock.SpotCounts.Should().NotContainKey((Tiny.B1, Tiny.Shower.Code), "it was asked for and not counted, so it is asked for again");
    }

    private static IEnumerable<string> Chosen(Depot depot, params (string Item, int DaysAgo, int Gap)[] counted) => SpotCount.Choose(
        depot.Stocked(s => s with { SpotCounts = s.SpotCounts.SetItems(counted.Select(c => KeyValuePair.Create(
                (Tiny.B1, new Code<Item>(c.Item)), new SpotCounted(Tiny.B1, new(c.Item), depot.Date.AddDays(-c.DaysAgo), c.Gap)))) }),
        Tiny.B1).Select(i => i.Text);
}
