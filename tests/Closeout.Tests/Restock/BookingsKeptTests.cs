using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>How many of the booked visits come; the worked example of docs/methods.md.</summary>
public class BookingsKeptTests
{
    private static readonly Code<VisitKind> Install = new("INSTALL");
    private static readonly Code<VisitKind> Check = new("CHECK");

    [Fact]
    public void Nine_of_ten_come_and_every_fifth_van_day_has_one_more()
    {
        // Forty van-days of three visits each, of which 107 were made; eight came that nobody booked.
        var kept = new KindKept(120, 107, 8, 40);
        kept.Share.Should().Be(0.9);
        kept.Added.Should().Be(0.2);
        kept.Expected(3).Should().BeApproximately(2.9, 1e-12);
        kept.Variance(3).Should().BeApproximately(0.47, 1e-12);

        var use = new VisitUse(50, 2, 5);
        var demand = BookedDemand.Of([new(Install, 3, use, kept)]);
        demand.Mean.Should().BeApproximately(2.9 * 2, 1e-12);
        demand.Variance.Should().BeApproximately(2.9 * 5 + 0.47 * 4 + 2.9 * 2.9 * 5 / 50, 1e-12);
        demand.MeanAsBooked.Should().Be(6);
    }

    [Fact]
    public void With_nothing_learned_a_booking_counts_as_it_always_did()
    {
        foreach (var (n, use) in from n in Enumerable.Range(0, 9) from mean in new[] { 0.1, 1.9067, 7 / 3.0 } select (n, new VisitUse(343, mean, mean * 3.7)))
        {
            var demand = BookedDemand.Of([new(Install, n, use)]);
            demand.Mean.Should().Be(n * use.Mean);
            demand.Variance.Should().Be(n * use.Variance + (double)n * n * use.Variance / use.Weight);
        }
    }

    [Fact]
    public void Kept_bookings_change_no_bit_of_any_plan()
    {
        foreach (var seed in Enumerable.Range(1, 60))
        {
            var depot = SomeDepot.Number(seed);
            var days = from day in Enumerable.Range(1, 30)
                       from van in depot.Setup.Vans
                       let visits = (IReadOnlyList<KindVisits>)[new(Install, day % 4), new(Check, 1)]
                       select new BookedVan(Tiny.Wednesday.AddDays(-day), van.Code, true, visits, visits);
            SomeDepot.Text(RestockPlan.For(depot.Planned(p => p with { Booked = [.. days] }))).Should().Equal(SomeDepot.Text(RestockPlan.For(depot)));
        }
    }

    [Fact]
    public void Only_van_days_that_were_closed_and_reported_count_and_no_more_than_sixty_dates()
    {
        BookedVan Day(int back, bool closed, int? made) =>
            new(Tiny.Wednesday.AddDays(-back), Tiny.B1, closed, [new(Install, 2)], made is { } m ? [new(Install, m)] : null);
        Kept(Day(1, true, 1), Day(2, false, 0), Day(3, true, null), Day(4, true, 3)).Should().Be(new KindKept(4, 3, 1, 2));
        Kept([.. Enumerable.Range(1, 80).Select(d => Day(d, true, d > 60 ? 0 : 2))]).Should().Be(new KindKept(120, 120, 0, 60));
        BookingsKept.Of(Tiny.Opened()).Of(Install).Should().Be(new KindKept(0, 0, 0, 0));
    }

    [Fact]
    public void A_kind_that_nobody_booked_still_comes_to_a_van_that_has_any_booking()
    {
        var depot = Tiny.Opened(setup: Tiny.Setup with { Rates = [new(Check, Tiny.Lamp.Code, 4, 10), new(Install, Tiny.Lamp.Code, 0, 10)] })
            .Planned(p => p with
            {
                Bookings = [new(TinyDesk.Thursday, Tiny.B1, Install, 1)],
                Booked = [new(Tiny.Monday, Tiny.B1, true, [new(Install, 1)], [new(Install, 1), new(Check, 1)]), new(Tiny.Monday, Tiny.B2, true, [], [])],
            });
        depot.Line(Tiny.B1)!.Booked.Mean.Should().Be(0.5 * 4, "one check in two van-days, four lamps each");
        depot.Line(Tiny.B2)!.Booked.Mean.Should().Be(0, "a van without bookings stays as it is");
    }

    private static KindKept Kept(params BookedVan[] days) => BookingsKept.Of(Tiny.Opened().Planned(p => p with { Booked = [.. days] })).Of(Install);
}
