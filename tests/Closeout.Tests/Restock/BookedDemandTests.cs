using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

public class BookedDemandTests
{
    private static readonly Code<VisitKind> Install = new("INSTALL");
    private static readonly Code<VisitKind> Check = new("CHECK");

    // m = 17/3, s2 = 920/135, W = 15, as reckoned in VisitUseTests.
    private static readonly VisitUse Much = VisitUse.Of(6, 10, 5, 25, 165);

    // 20 planned visits of half a unit: m = s2 = 0.5, W = 20.
    private static readonly VisitUse Little = VisitUse.Of(0.5, 20, 0, 0, 0);

    // Four visits: M = 4 * 17/3 = 68/3. V = 4 * 920/135 + 16 * 920/135 / 15 = 3680/135 + 14720/2025 = 69920/2025.
    [Fact]
    public void Visits_vary_and_their_mean_is_not_known_either() => Is(Demand((Install, 4, Much)), 68 / 3.0, 69920 / 2025.0);

    // And two visits of the other kind: M + 2 * 0.5, V + 2 * 0.5 + 4 * 0.5 / 20 = V + 1.1.
    [Fact]
    public void Kinds_of_visits_add_up() => Is(Demand((Install, 4, Much), (Check, 2, Little)), 68 / 3.0 + 1, 69920 / 2025.0 + 1.1);

    [Fact]
    public void A_visit_more_of_a_kind_is_not_two_kinds() =>
        Demand((Install, 2, Much)).Variance.Should().BeGreaterThan(2 * Demand((Install, 1, Much)).Variance, "the same unknown mean strikes both visits");

    [Fact]
    public void Without_bookings_nothing_is_demanded() => Is(Demand(), 0, 0);

    [Fact]
    public void A_kind_of_which_nothing_is_known_is_told_and_adds_nothing()
    {
        var demand = Demand((Install, 4, Much), (Check, 3, default));
        Is(demand, 68 / 3.0, 69920 / 2025.0);
        demand.HasUnknownRate.Should().BeTrue();
        Demand((Install, 4, Much), (Check, 0, default)).HasUnknownRate.Should().BeFalse("no such visit is booked");
        Demand((Install, 4, Much)).HasUnknownRate.Should().BeFalse();
    }

    // Ten visits that all used 3: variance 0, so the demand is Poisson of mean 3 n, not certain.
    [Fact]
    public void Visits_that_never_varied_are_taken_for_poisson()
    {
        var demand = Demand((Install, 2, VisitUse.Of(0, 0, 10, 30, 90)));
        Is(demand, 6, 0);
        new Demand(demand.Mean, demand.Variance).Spread.Should().Be(Spread.Poisson);
    }

    private static BookedDemand Demand(params (Code<VisitKind> Kind, int Visits, VisitUse Use)[] visits) =>
        BookedDemand.Of([.. visits.Select(v => new BookedVisits(v.Kind, v.Visits, v.Use))]);

    private static void Is(BookedDemand demand, double mean, double variance)
    {
        demand.Mean.Should().BeApproximately(mean, 1e-12);
        demand.Variance.Should().BeApproximately(variance, 1e-12);
    }
}
