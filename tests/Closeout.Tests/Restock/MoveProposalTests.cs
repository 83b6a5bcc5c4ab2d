using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Google.OrTools.Sat;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Proposals to move stock of what is short from vans that can better do without; the worked example of docs/methods.md.</summary>
public class MoveProposalTests
{
    private static readonly Code<VisitKind> Install = new("INSTALL");
    private static readonly Item Lamp = Tiny.Lamp with { Low = 0, High = 40 };

    [Fact]
    public void Sealed_cartons_above_a_target_go_back_first_from_the_van_with_most_of_them()
    {
        // Targets 0 (nothing booked) but for B3: its visit asks for 20 lamps and 26 are enough. B2 has two cartons to spare, B1 one.
        var depot = Booked("B1: 1+0 LAMP; B2: 2+3 LAMP", (Tiny.B3, 20));
        Said(depot).Should().Equal("B2 to shelf: 2 sealed, 0 loose", "B1 to shelf: 1 sealed, 0 loose");
        Said(Booked("B1: 1+0 LAMP; B2: 2+3 LAMP; shelf: 1 LAMP", (Tiny.B3, 20))).Should().Equal("B2 to shelf: 2 sealed, 0 loose");
    }

    [Fact]
    public void Then_each_unit_goes_where_it_is_likeliest_to_be_missed_loose_ones_first()
    {
        // B1 has 9 loose and asks for as many as B3, which has none: 9 = 5 + 4, and the tie goes to the smaller bay.
        var depot = Booked("B1: 0+9 LAMP", (Tiny.B1, 20), (Tiny.B3, 20));
        Said(depot).Should().Equal("B1 to B3: 0 sealed, 4 loose");
        Said(Booked("B1: 1+0 LAMP", (Tiny.B1, 20), (Tiny.B3, 20))).Should().Equal("B1 to B3: 0 sealed, 5 loose, 1 opened");
    }

    [Fact]
    public void Nothing_is_proposed_where_nothing_is_short_nor_of_what_was_loaded_tonight()
    {
        Said(Booked("B1: 4+0 LAMP; shelf: 9 LAMP", (Tiny.B3, 20))).Should().BeEmpty();
        var loaded = Booked("B1: 0+0 LAMP; shelf: 3 LAMP", (Tiny.B1, 20), (Tiny.B3, 20)).AllClosed().Did(new LoadVan(Tiny.B1, [new(Lamp.Code, 2, 0)], Tiny.T1));
        Said(loaded).Should().BeEmpty();
    }

    [Fact]
    public void No_other_way_to_spread_an_item_leaves_less_unmet() => Cases.Holds(t =>
    {
        var depot = Drawn(t);
        var after = Carried(depot);
        var most = t.Vans.Select(v => v.Aboard).Sum() + t.Supply;
        var wants = RestockPlan.Promises(depot, TinyDesk.Thursday).ToDictionary(p => p.Van, p => p.Target);
        var targets = t.Vans.Select((_, v) => wants.GetValueOrDefault(new Code<Van>($"B{v + 1}"))).ToArray();
        if (RestockPlan.For(depot).Shelf.First(s => s.Item.Code == Lamp.Code).Short == 0 || RestockPlan.For(after).Shelf.First(s => s.Item.Code == Lamp.Code).Short == 0)
            return;

        Unmet(t, Ending(after)).Should().BeLessThanOrEqualTo(Best(t, targets, most) + 1e-9);
    }, samples: 120);

    [Fact]
    public void A_constraint_solver_finds_no_better_spread_among_many_vans()
    {
        foreach (var seed in Enumerable.Range(1, 12))
        {
            var lots = new Random(seed);
            var t = new Case([.. Enumerable.Range(0, 20).Select(_ => new Has(1 + lots.NextDouble() * 15, lots.Next(0, 20)))], lots.Next(0, 40));
            var depot = Drawn(t);
            var after = Carried(depot);
            if (RestockPlan.For(after).Shelf.First(s => s.Item.Code == Lamp.Code).Short == 0)
                continue;

            var ending = Ending(after);
            var model = new CpModel();
            var (units, worth) = (new List<LinearExpr>(), new List<LinearExpr>());
            long ours = 0;
            foreach (var (v, want) in t.Vans.Index())
            {
                var demand = DemandOf(want);
                for (var g = 0; g < demand.Quantile(0.98); g++)
                {
                    var unit = model.NewBoolVar("");
                    var chance = (long)Math.Round(1e9 * demand.Above(g));
                    units.Add(unit);
                    worth.Add(unit * chance);
                    ours += g < ending[v] ? chance : 0;
                }
            }

            model.Add(LinearExpr.Sum(units) <= t.Vans.Sum(v => v.Aboard) + t.Supply);
            model.Maximize(LinearExpr.Sum(worth));
            ours.Should().BeGreaterThanOrEqualTo(Solver.Best(model) - 100, $"seed {seed}");
        }
    }

    [Fact]
    public void More_on_the_shelf_never_leaves_more_unmet() => Cases.Holds(t =>
    {
        var unmet = Enumerable.Range(0, 12).Select(more => Unmet(t, Ending(Carried(Drawn(t with { Supply = more * 3 }))))).ToList();
        unmet.Zip(unmet.Skip(1)).Should().OnlyContain(p => p.Second <= p.First + 1e-9);
    }, samples: 40);

    [Fact]
    public void No_van_gives_what_its_own_visits_need_more() => Cases.Holds(t =>
    {
        foreach (var move in RestockPlan.For(Drawn(t)).Moves.Where(m => m.To is not null))
            move.MissedFrom.Should().BeLessThanOrEqualTo(move.MissedTo + Sharing.Tie);
    });

    /// <summary>A van: the demand of its visit, Poisson, and the loose units aboard.</summary>
    private sealed record Has(double Mean, int Aboard);

    private sealed record Case(IReadOnlyList<Has> Vans, int Supply);

    private static Gen<Case> Cases =>
        from vans in Gen.Select(Gen.Double[0.5, 5], Gen.Int[0, 7], (m, a) => new Has(m, a)).Array[2, 3]
        from supply in Gen.Int[0, 4]
        select new Case(vans, supply);

    private static Demand DemandOf(Has has) => new(has.Mean, has.Mean);

    /// <summary>One kind a van, each with its rate as good as known, so that the demand is Poisson.</summary>
    private static Depot Drawn(Case t)
    {
        var vans = t.Vans.Select((_, v) => Tiny.Van($"B{v + 1}", v + 1, $"van {v + 1}", 1000)).ToList();
        var setup = Tiny.Setup with
        {
            Vans = vans, Items = [Lamp with { UnitsPerCarton = 1000 }], Crew = [.. Tiny.Setup.Crew.Select(c => c with { Van = null })],
            Rates = [.. t.Vans.Select((has, v) => new PlanningRate(new($"K{v + 1}"), Lamp.Code, has.Mean, 1e12))],
        };
        return Tiny.Opened(string.Join("; ", t.Vans.Select((has, v) => $"B{v + 1}: 0+{has.Aboard} LAMP").Append($"bin: {t.Supply} LAMP")), setup: setup)
            .Planned(p => p with { Bookings = [.. vans.Select((v, i) => new Booking(TinyDesk.Thursday, v.Code, new($"K{i + 1}"), 1))] });
    }

    private static Depot Booked(string stock, params (Code<Van> Van, double Lamps)[] visits) =>
        Tiny.Opened(stock, setup: Tiny.Setup with
        {
            Items = [Lamp, Tiny.Shower, Tiny.Wrap], Rates = [.. visits.Select(v => new PlanningRate(new(v.Van.Text), Lamp.Code, v.Lamps, 1e12))],
        }).Planned(p => p with { Bookings = [.. visits.Select(v => new Booking(TinyDesk.Thursday, v.Van, new(v.Van.Text), 1))] });

    private static IEnumerable<string> Said(Depot depot) => RestockPlan.For(depot).Moves.Where(m => m.Item.Code == Lamp.Code).Select(m =>
        $"{m.From.Van.Code} to {m.To?.Van.Code.Text ?? "shelf"}: {m.Cartons} sealed, {m.Loose} loose{(m.Opened > 0 ? $", {m.Opened} opened" : "")}");

    /// <summary>The depot once its proposals were carried out.</summary>
    private static Depot Carried(Depot depot) => RestockPlan.For(depot).Moves.Aggregate(depot, (d, m) => d with
    {
        Stock = d.Stock with
        {
            Ledger = d.Stock.Ledger.Post(m.To is { } to ? [new Move(m.Item.Code, m.Units, Place.Loose(m.From.Van.Code), Place.Loose(to.Van.Code))] : []),
        },
    });

    /// <summary>What is aboard each van once the plan was loaded too.</summary>
    private static int[] Ending(Depot depot)
    {
        var plan = RestockPlan.For(depot);
        return [.. depot.Setup.Vans.Select(v =>
            depot.Stock.Ledger.Aboard(v.Code, depot.Setup.Item(Lamp.Code)).Units(1000) + plan.Lines.Where(l => l.Van == v).Sum(l => l.Units))];
    }

    private static double Unmet(Case t, int[] ending) => t.Vans.Select((v, i) => new UnmetUnits(v.Mean, v.Mean).Above(ending[i])).Sum();

    /// <summary>The least unmet of all ways to spread so many units, none beyond its target.</summary>
    private static double Best(Case t, int[] targets, int units)
    {
        var tables = t.Vans.Select(v => new UnmetUnits(v.Mean, v.Mean)).ToList();
        return Ways(0, units).Min();

        IEnumerable<double> Ways(int v, int left) => v == targets.Length
            ? [0.0]
            : Enumerable.Range(0, Math.Min(left, targets[v]) + 1).SelectMany(g => Ways(v + 1, left - g).Select(rest => tables[v].Above(g) + rest));
    }
}
