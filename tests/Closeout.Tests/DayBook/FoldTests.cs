using Closeout.DayBook;
using Closeout.Facts;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.DayBook;

/// <summary>A fold that meets an impossible entry throws and names it; it never skips one.</summary>
public class FoldTests
{
    private static readonly Depot Page = Tiny.Opened("B1: 2+5 LAMP");

    [Theory]
    [InlineData(0)]
    [InlineData(1)]    // the number of the page's own entry
    [InlineData(3)]    // a hole
    public void A_number_that_does_not_follow_is_refused_and_named(int number) =>
        FluentActions.Invoking(() => Page.Apply(new Recorded(number, Tiny.FiveOClock, new VanCameIn(Tiny.B1, Tiny.T1, false, []))))
            .Should().Throw<InvalidOperationException>().WithMessage($"*entry {number} *entry 1*");

    [Fact]
    public void A_page_without_entries_is_none() =>
        FluentActions.Invoking(() => Depot.Fold([])).Should().Throw<InvalidOperationException>();

    [Fact]
    public void A_page_begins_with_what_is_carried_forward() =>
        FluentActions.Invoking(() => Depot.Fold([new(41, Tiny.FiveOClock, new LeftoversConfirmed(Tiny.B1))]))
            .Should().Throw<InvalidOperationException>().WithMessage($"entry 41 *{nameof(LeftoversConfirmed)}*");

    [Fact]
    public void A_page_is_not_opened_twice() => Impossible(Page, new PageOpened(Tiny.Friday, false, new(Tiny.Setup, [], [], [], [], [], [], [], [], [], [], [], YardCarried.Empty, 0, [], [])));

    [Fact]
    public void Nothing_is_answered_of_a_van_on_the_road() => Impossible(Page, new LeftoversConfirmed(Tiny.B1));

    [Fact]
    public void A_van_does_not_come_in_twice() => Impossible(Page.At(Tiny.B1, Step.Leftovers), new VanCameIn(Tiny.B1, Tiny.T2, false, []));

    public static TheoryData<Step, Entry> OutOfOrder => new()
    {
        { Step.Leftovers, new MileageLogged(Tiny.B1, Tiny.T1, 1000, 1040, null, null, false) },
        { Step.Leftovers, new BoxesCounted(Tiny.B1, Tiny.Lamp.Code, 0, 1) },
        { Step.Cardboard, new DamageFound(Tiny.B1, 1, Tiny.T1, "rear door", Severity.Note, "scratch", true, "", null) },
        { Step.Damage, new KitCounted(Tiny.B1, Tiny.Cones.Code, 3, null, null) },
        { Step.Kit, new Signed(Tiny.B1, Tiny.T1, Proof.Pin) },
        { Step.Kit, new WeeklyChecked(Tiny.B1, null, 0, true, []) },
        { Step.Closed, new LeftoversConfirmed(Tiny.B1) },
        { Step.Closed, new Signed(Tiny.B1, Tiny.T1, Proof.Pin) },
        { Step.Closed, new LeftoverCounted(Tiny.B1, Tiny.Lamp.Code, new(2, 0, 5), null, 0, 0, 0, []) },
    };

    [Theory]
    [MemberData(nameof(OutOfOrder), DisableDiscoveryEnumeration = true)]
    public void An_entry_that_the_flow_does_not_have_there_is_refused_and_named(Step at, Entry entry) => Impossible(Page.At(Tiny.B1, at), entry);

    [Fact]
    public void A_van_that_the_depot_does_not_have_cannot_come_in() => Impossible(Page, new VanCameIn(new("B9"), Tiny.T1, false, []));

    [Fact]
    public void A_fold_is_the_entries_one_after_the_other()
    {
        var entries = new List<Recorded>
        {
            new(7, Tiny.FiveOClock, new PageOpened(Tiny.Wednesday, true, new(Tiny.Setup, TinyStock.Read(Tiny.Setup, "B1: 1+0 LAMP"), [], [], [], [], [], [], [], [], [], [], YardCarried.Empty, 0, [], []))),
            new(8, Tiny.FiveOClock, new VanCameIn(Tiny.B1, Tiny.T1, false, [])),
            new(9, Tiny.FiveOClock, new LeftoversConfirmed(Tiny.B1)),
        };

        var depot = Depot.Fold(entries);
        (depot.Number, depot.Date, depot.Rehearsal).Should().Be((9, Tiny.Wednesday, true));
        depot.Shift(Tiny.B1)!.Story.Select(e => e.Entry).Should().Equal(entries.Skip(1).Select(e => e.Entry));
        depot.Shift(new("b1")).Should().BeSameAs(depot.Shift(Tiny.B1), "a code is the same in any case");
    }

    [Fact]
    public void A_folder_loaded_replaces_the_dates_it_names_and_no_other()
    {
        var (today, tomorrow) = (Tiny.Wednesday, Tiny.Wednesday.AddDays(1));
        var kind = new Code<VisitKind>("HOME");
        var depot = Page
            .Take(Loaded([today, tomorrow], [new(today, Tiny.B1, kind, 4), new(tomorrow, Tiny.B1, kind, 5)], [new(Tiny.Lamp.Code, 3, today)]))
            .Take(Loaded([tomorrow], [new(tomorrow, Tiny.B2, kind, 6)], null));

        depot.Planning.Bookings.Should().Equal(new Booking(today, Tiny.B1, kind, 4), new Booking(tomorrow, Tiny.B2, kind, 6));
        depot.Stock.Orders.Should().ContainSingle("the second folder says nothing of orders");
    }

    private static DayFolderLoaded Loaded(IReadOnlyList<DateOnly> dates, IReadOnlyList<Booking> bookings, IReadOnlyList<Order>? orders) =>
        new(Tiny.Setup, dates, bookings, [], [], [], [], orders);

    private static void Impossible(Depot depot, Entry entry) => FluentActions.Invoking(() => depot.Take(entry))
        .Should().Throw<InvalidOperationException>().WithMessage($"*entry {depot.Number + 1}*");
}
