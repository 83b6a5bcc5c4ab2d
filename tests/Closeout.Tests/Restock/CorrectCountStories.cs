using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using FluentAssertions;
using Xunit;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>Given the book, when somebody counts a place, then the book follows and the difference stays visible.</summary>
public class CorrectCountStories
{
    private static readonly Depot Book = Tiny.Opened("shelf: 3 LAMP; bin: 4 LAMP; B1: 2+5 LAMP");

    public static TheoryData<Place, int, int, int> Places => new()
    {
        // place, counted, units before, units after
        { Place.Shelf, 2, 30, 20 },
        { Place.Shelf, 5, 30, 50 },
        { Place.Shelf, 0, 30, 0 },
        { Place.Bin, 3, 4, 3 },
        { Place.Bin, 40, 4, 40 },
        { Place.Sealed(Tiny.B1), 1, 20, 10 },
        { Place.Loose(Tiny.B1), 6, 5, 6 },
        { Place.Loose(Tiny.B2), 1, 0, 1 },
    };

    [Theory]
    [MemberData(nameof(Places), DisableDiscoveryEnumeration = true)]
    public void The_place_holds_what_was_counted_and_the_difference_is_unexplained(Place place, int counted, int before, int after)
    {
        var entry = (CountCorrected)Book.Accepts(Count(place, counted));

        (entry.Place, entry.Book, entry.Counted, entry.Reason).Should().Be((place, before, after, "counted twice"));
        var next = Book.Take(entry);
        next.Stock.Ledger.Units(place, Lamp).Should().Be(after);
        next.Stock.Ledger.Units(Place.Unexplained, Lamp).Should().Be(before - after);
        next.Stock.Ledger.Balances.Where(b => b.Place != place && b.Place != Place.Unexplained)
            .Should().BeEquivalentTo(Book.Stock.Ledger.Balances.Where(b => b.Place != place), "no other place is touched");
    }

    [Fact]
    public void A_count_that_agrees_is_recorded_and_moves_nothing()
    {
        var entry = (CountCorrected)Book.Accepts(Count(Place.Shelf, 3));
        entry.Moves.Should().BeEmpty();
        (entry.Book, entry.Counted).Should().Be((30, 30));
        Book.Take(entry).Number.Should().Be(Book.Number + 1);
    }

    [Fact]
    public void A_bin_below_nothing_is_put_right_by_counting_it()
    {
        var depot = Tiny.Opened("bin: -3 LAMP").Did(Count(Place.Bin, 0));
        depot.Stock.Ledger.BelowZero.Should().BeEmpty();
        depot.Stock.Ledger.Units(Place.Unexplained, Lamp).Should().Be(-3);
    }

    [Fact]
    public void Correcting_a_van_while_its_close_out_is_open_does_not_let_the_count_take_units_that_are_not_there()
    {
        // The close-out counts against what was aboard when the van came in.
        var open = Book.At(Tiny.B1, Step.Leftovers);
        var decision = Count(Place.Loose(Tiny.B1), 0).Decide(open);
        var corrected = decision.Entry is { } entry ? open.Take(entry) : open;

        corrected.Did(new CountLeftover(Tiny.B1, Lamp, 2, 0, 0)).Stock.Ledger.BelowZero.Should().BeEmpty();
    }

    [Fact]
    public void The_place_and_the_person_are_recorded_in_the_depots_spelling()
    {
        var entry = (CountCorrected)Book.Accepts(new CorrectCount(Place.Loose(new("b1")), new("lamp"), 4, " fell out ", new("t2")));
        (entry.Place.Van.Text, entry.Item.Text, entry.Reason, entry.By.Text).Should().Be(("B1", "LAMP", "fell out", "T2"));
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(10_000)]    // 100 000 lamps in cartons
    public void A_count_that_no_shelf_holds_is_refused(int cartons) => Book.Refuses(Count(Place.Shelf, cartons)).Code.Should().Be("out-of-range");

    [Fact]
    public void Nobody_counts_at_a_far_end() =>
        FluentActions.Invoking(() => Count(Place.Homes, 1).Decide(Book)).Should().Throw<InvalidOperationException>();

    private static CorrectCount Count(Place place, int counted) => new(place, Lamp, counted, "counted twice", Tiny.T2);
}
