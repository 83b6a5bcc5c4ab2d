using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>What holds of every plan, on depots drawn by lot.</summary>
public class PlanLawsTests
{
    private static readonly IReadOnlyList<Depot> Depots = [.. Enumerable.Range(1, 150).Select(seed => SomeDepot.Number(seed))];

    [Fact]
    public void The_depots_drawn_are_short_lumpy_full_and_beyond_high_often_enough()
    {
        var lines = Depots.SelectMany(d => RestockPlan.For(d).Lines).ToList();
        lines.Count(l => l.Short > 0).Should().BeGreaterThan(50);
        lines.Count(l => l.AboveHigh > 0).Should().BeGreaterThan(50);
        lines.Count(l => l.FromOpened > 0).Should().BeGreaterThan(50);
        lines.Count(l => l.Demand.Spread == Spread.NegativeBinomial).Should().BeGreaterThan(50);
        lines.Select(l => l.Target.Basis).Distinct().Should().BeEquivalentTo([Basis.Low, Basis.Booked, Basis.High]);
        Depots.SelectMany(d => RestockPlan.For(d).Shelf).Count(s => s.Order.Cartons > 0).Should().BeGreaterThan(20);
    }

    [Fact]
    public void Units_only_move_from_the_depot_to_the_vans() => Depots.Should().AllSatisfy(AddsUp);

    internal static void AddsUp(Depot depot)
    {
        var plan = RestockPlan.For(depot);
        foreach (var s in plan.Shelf)
        {
            var (c, lines) = (s.Item.UnitsPerCarton, plan.Lines.Where(l => l.Item == s.Item).ToList());
            (s.ShelfBefore * c, s.BinBefore).Should().Be((depot.Stock.Ledger.Units(Place.Shelf, s.Item.Code), depot.Stock.Ledger.Units(Place.Bin, s.Item.Code)));
            s.SealedOut.Should().Be(lines.Sum(l => l.Sealed));
            s.LooseOut.Should().Be(lines.Sum(l => l.FromBin + l.FromOpened));
            s.ShelfAfter.Should().Be(s.ShelfBefore - s.SealedOut - s.Opened).And.BeGreaterThanOrEqualTo(0);
            s.BinAfter.Should().Be(s.BinBefore + s.Opened * c - s.LooseOut).And.BeGreaterThanOrEqualTo(0);
            (s.ShelfAfter * c + s.BinAfter).Should().Be(s.ShelfBefore * c + s.BinBefore - lines.Sum(l => l.Units));
            lines.Sum(l => l.FromBin).Should().Be(Math.Min(s.BinBefore, s.LooseOut), "the bin goes first");
            s.Short.Should().Be(lines.Sum(l => l.Short)).And.Be(Math.Max(0, lines.Sum(l => l.Need) - s.ShelfBefore * c - s.BinBefore));
            s.Order.Position.Should().Be(s.ShelfAfter * c + s.BinAfter + s.OnOrder);
        }
    }

    [Fact]
    public void No_van_gets_beyond_its_high_or_more_than_a_carton_beyond_its_need() => Depots.SelectMany(d => RestockPlan.For(d).Lines).Should().AllSatisfy(l =>
    {
        (l.Aboard + l.Units).Should().BeLessThanOrEqualTo(l.High, "what was above before needs nothing and has no line");
        l.Need.Should().Be(l.Target.Units - l.Aboard).And.BeGreaterThan(0);
        (l.Units - (l.Need - l.Short)).Should().BeInRange(0, l.Item.UnitsPerCarton - 1);
        l.Short.Should().BeInRange(0, l.Need);
    });

    [Fact]
    public void Target_quantile_and_chance_follow_from_what_the_line_shows() => Depots.Should().AllSatisfy(depot =>
    {
        foreach (var l in RestockPlan.For(depot).Lines)
        {
            var (mean, variance) = (0.0, 0.0);
            foreach (var (_, n, use, _) in l.Booked.Visits.Where(v => v.Use.Weight > 0))
            {
                mean += n * use.Mean;
                variance += n * use.Variance * (1 + n / use.Weight);
            }

            l.Booked.Mean.Should().BeApproximately(mean, 1e-9);
            l.Booked.Variance.Should().BeApproximately(variance, 1e-9);
            l.Q.Should().Be(mean == 0 ? 0 : new Demand(l.Booked.Mean, l.Booked.Variance).Quantile(depot.Setup.Depot.Service(l.Item.Priority)));
            l.Target.Should().Be(Target.Of(l.Low, l.High, l.Q));
            l.AboveHigh.Should().Be(Math.Max(0, l.Q - l.High));
            l.MissChance.Should().Be(l.Demand.Above(l.Aboard + l.Units));
            (l.MissChance <= 1 - depot.Setup.Depot.Service(l.Item.Priority) + 1e-12).Should().Be(l.Q <= l.Aboard + l.Units);
        }
    });

    [Fact]
    public void In_what_order_things_were_written_does_not_matter()
    {
        foreach (var (seed, depot) in Depots.Index())
        {
            var lots = new Random(seed);
            T[] Shuffled<T>(IEnumerable<T> list)
            {
                var array = list.ToArray();
                lots.Shuffle(array);
                return array;
            }

            var other = depot with
            {
                Setup = depot.Setup with { Items = Shuffled(depot.Setup.Items), Rates = Shuffled(depot.Setup.Rates), Limits = Shuffled(depot.Setup.Limits) },
                Planning = depot.Planning with { Bookings = [.. Shuffled(depot.Planning.Bookings)], Use = [.. Shuffled(depot.Planning.Use)] }, Stock = depot.Stock with { Orders = [.. Shuffled(depot.Stock.Orders)] },
            };
            SomeDepot.Text(RestockPlan.For(other)).Should().Equal(SomeDepot.Text(RestockPlan.For(depot)));
        }
    }

    [Fact]
    public void A_booking_in_two_rows_is_one_of_both_together()
    {
        foreach (var depot in Depots)
        {
            var split = depot.Planned(p => p with { Bookings = [.. p.Bookings.SelectMany(b => new[] { b with { Visits = b.Visits / 2 }, b with { Visits = b.Visits - b.Visits / 2 } })] });
            SomeDepot.Text(RestockPlan.For(split)).Should().Equal(SomeDepot.Text(RestockPlan.For(depot)));
        }
    }

    [Fact]
    public void Items_do_not_look_at_each_other()
    {
        foreach (var depot in Depots.Where(d => d.Setup.Items.Count > 1))
        {
            var alone = depot with { Setup = depot.Setup with { Items = [depot.Setup.Items[^1]] } };
            SomeDepot.Text(RestockPlan.For(depot)).Should().Contain(SomeDepot.Text(RestockPlan.For(alone)));
        }
    }

    [Fact]
    public void A_depot_with_cartons_of_one_opens_none_and_rounds_nothing_up()
    {
        foreach (var depot in Enumerable.Range(500, 40).Select(seed => SomeDepot.Number(seed, unitsPerCarton: 1)))
        {
            AddsUp(depot);
            RestockPlan.For(depot).Lines.Should().NotContain(l => l.Units != l.Need - l.Short, "nothing is rounded up");
            RestockPlan.For(depot).Shelf.Should().OnlyContain(s => s.Opened == 0);
        }
    }

    [Fact]
    public void One_van_gets_all_there_is_up_to_its_need()
    {
        foreach (var depot in Enumerable.Range(600, 60).Select(seed => SomeDepot.Number(seed, vans: 1)))
        {
            AddsUp(depot);
            RestockPlan.For(depot).Lines.Should().NotContain(l =>
                l.Need - l.Short != Math.Min(l.Need, depot.Stock.Ledger.Units(Place.Bin, l.Item.Code) + depot.Stock.Ledger.Units(Place.Shelf, l.Item.Code)));
        }
    }

    [Fact]
    public void Two_hundred_vans_add_up_as_well_and_in_a_blink()
    {
        var depot = SomeDepot.Number(7, vans: 200, items: 3);
        Worked.Over(() => RestockPlan.For(depot).Lines.Should().HaveCountGreaterThan(200)).Should().BeLessThan(TimeSpan.FromSeconds(10));
        AddsUp(depot);
    }
}
