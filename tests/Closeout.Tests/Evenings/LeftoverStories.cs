using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Evenings;

/// <summary>B1 goes out with 2 cartons of 10 lamps and 3 loose ones, the bin holds 7.</summary>
public sealed class LeftoverStories
{
    private const string Today = "date,van,visit,visit_kind,item,units\n2026-03-04,B1,1,install,LAMP,12\n";

    [Fact]
    public void What_is_counted_leaves_the_rest_to_homes_and_the_bin_grows()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,1", "B1,T1,leftovers,bin,LAMP,4", "B1,T1,leftovers,kept,LAMP,2");

        evening.Units("homes").Should().Be(23 - 10 - 4 - 2);
        evening.Units("bin").Should().Be(7 + 4);
        evening.Units("B1 sealed").Should().Be(10);
        evening.Units("B1 loose").Should().Be(2);
        evening.Units("unexplained").Should().Be(0);
    }

    [Fact]
    public void An_item_not_mentioned_is_as_booked()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,kept,LAMP,0", "B1,T1,sign,,,");

        evening.Units("B1 sealed", "HEAD").Should().Be(4);
        evening.Units("homes", "HEAD").Should().Be(0);
        evening.Units("B1 sealed").Should().Be(20, "'sealed' was not given: the book's cartons");
        evening.Units("homes").Should().Be(3, "'bin' and 'kept' were not given or 0");
    }

    [Fact]
    public void A_second_count_replaces_the_first()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,0", "B1,T1,leftovers,bin,LAMP,6", "B1,T1,leftovers,bin,LAMP,1", "B1,T1,leftovers,kept,LAMP,0");

        evening.Units("bin").Should().Be(8);
        evening.Units("B1 sealed").Should().Be(20, "the second answer does not say 'sealed'");
        evening.Units("B1 loose").Should().Be(0);
        evening.Units("homes").Should().Be(23 - 20 - 1);
        evening.Entries.OfType<LeftoverCounted>().Should().HaveCount(2, "nothing is edited");
    }

    [Fact]
    public void Where_installed_is_given_it_moves_to_homes_and_the_rest_is_unexplained()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,1", "B1,T1,leftovers,kept,LAMP,3", "B1,T1,leftovers,installed,LAMP,8");

        evening.Units("homes").Should().Be(8);
        evening.Units("unexplained").Should().Be(2, "10 are used and 8 were installed");
        evening.Entries.OfType<LeftoverCounted>().Single().Should().Match<LeftoverCounted>(c => c.Used == 10 && c.Gap == 2 && c.Installed == 8);
    }

    [Fact]
    public void Where_more_was_installed_than_used_the_difference_comes_from_unexplained()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,2", "B1,T1,leftovers,kept,LAMP,1", "B1,T1,leftovers,installed,LAMP,5");

        evening.Units("homes").Should().Be(5);
        evening.Units("unexplained").Should().Be(-3, "2 are used and 5 were installed");
    }

    [Fact]
    public void What_the_days_visits_report_counts_as_installed_unless_the_evening_says_otherwise()
    {
        using var reported = Rehearsed.With("B1,T1,leftovers,sealed,LAMP,1\nB1,T1,leftovers,kept,LAMP,3", ("usage.csv", Today));
        using var said = Rehearsed.With("B1,T1,leftovers,sealed,LAMP,1\nB1,T1,leftovers,kept,LAMP,3\nB1,T1,leftovers,installed,LAMP,10", ("usage.csv", Today));

        (reported.Units("homes"), reported.Units("unexplained")).Should().Be((12, -2));
        (said.Units("homes"), said.Units("unexplained")).Should().Be((10, 0));
    }

    [Fact]
    public void A_count_above_the_book_comes_from_unexplained()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,2", "B1,T1,leftovers,bin,LAMP,2", "B1,T1,leftovers,kept,LAMP,6");

        evening.Units("unexplained").Should().Be(-5, "23 were booked and 28 counted");
        evening.Units("homes").Should().Be(0);
        evening.Entries.OfType<LeftoverCounted>().Single().Should().Match<LeftoverCounted>(c => c.Used == -5 && c.Gap == -5);
    }

    [Fact]
    public void Cartons_emptied_are_boxes_and_are_never_fewer_than_none()
    {
        using var emptied = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,0", "B1,T1,leftovers,kept,LAMP,1", "B1,T1,cardboard,,,");
        using var more = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,3", "B1,T1,cardboard,,,");

        emptied.Rows("cardboard")[0].Should().StartWith("2026-03-04,B1,LAMP,2,2,0,");
        more.Entries.OfType<LeftoverCounted>().Single().Emptied.Should().Be(0);
        more.Rows("cardboard").Should().Equal("2026-03-04,,,0,0,0,0.000,0.0000");
    }

    [Fact]
    public void Boxes_counted_short_are_missing()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,0", "B1,T1,cardboard,flattened,LAMP,1", "B1,T1,sign,,,");

        evening.Rows("cardboard")[0].Should().StartWith("2026-03-04,B1,LAMP,2,1,1,");
    }

    [Fact]
    public void Every_item_sums_to_zero_over_all_places_after_any_of_it()
    {
        using var evening = Rehearsed.Evening("B1,T1,leftovers,sealed,LAMP,0", "B2,T2,leftovers,kept,LAMP,40", "B1,T1,leftovers,kept,LAMP,9", "B2,T2,leftovers,bin,LAMP,3", "B1,T1,leftovers,installed,HEAD,2");

        evening.Depot.Stock.Ledger.Unbalanced.Should().BeEmpty();
        evening.Depot.Stock.Ledger.BelowZero.Should().BeEmpty();
    }
}
