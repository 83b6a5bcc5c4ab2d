using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using CsCheck;
using FluentAssertions;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>What holds of every plan that was weighed, on depots drawn by lot.</summary>
public class PayloadLaws
{
    [Fact]
    public void The_depots_drawn_are_cut_shared_anew_and_too_heavy_often_enough()
    {
        var (cut, zero, gained, heavy, fits, lead, rounded) = (0, 0, 0, 0, 0, 0, 0);
        HeavyDepot.Any.Holds(drawn =>
        {
            var depot = drawn.Depot();
            var (plan, before) = (RestockPlan.For(depot), Given(RestockPlan.For(HeavyDepot.Unweighed(depot))));
            var lines = plan.Lines.Where(l => l.Cut is not null).ToList();
            cut += lines.Count;
            zero += lines.Count(l => l.Need == 0);
            lead += lines.Count(l => l.Cut!.Target.Basis == Basis.Lead);
            rounded += lines.Count(l => l.Target == l.Cut!.Target);
            gained += Given(plan).Count(g => g.Value > before.GetValueOrDefault(g.Key));
            heavy += plan.Weights.Count(w => w.AboveLb > 0);
            fits += plan.Weights.Count(w => w.Cut.Count == 0);
        });
        new[] { cut, zero, gained, heavy, fits }.Should().OnlyContain(n => n > 50);
        new[] { lead, rounded }.Should().OnlyContain(n => n > 10);
    }

    [Fact]
    public void No_van_is_too_heavy_after_the_plan_unless_nothing_that_weighs_could_be_taken_off() => Each((depot, plan) =>
    {
        foreach (var weight in plan.Weights.Where(w => w.AboveLb > 0))
        {
            plan.Lines.Where(l => l.Van == weight.Van && l.Item.UnitWeightLb > 0).Sum(l => l.Units).Should().Be(0);
        }
    });

    [Fact]
    public void Nothing_is_cut_of_a_van_that_was_not_too_heavy() => Each((depot, plan) =>
        plan.Weights.Should().NotContain(w => w.Cut.Count > 0 && w.UncutLb <= w.AllowanceLb));

    [Fact]
    public void Vans_that_nothing_was_cut_of_are_given_at_least_what_they_were_item_by_item() => Each((depot, plan) =>
    {
        var (before, after) = (Given(RestockPlan.For(HeavyDepot.Unweighed(depot))), Given(plan));
        foreach (var (line, given) in before.Where(g => plan.Weight(g.Key.Van).Cut.Count == 0))
        {
            after.GetValueOrDefault(line).Should().BeGreaterThanOrEqualTo(given);
        }
    });

    [Fact]
    public void A_less_important_unit_is_never_kept_where_a_more_important_one_was_cut() => Each((depot, plan) =>
    {
        foreach (var van in plan.Weights.Where(w => w.Cut.Count > 0))
        {
            var most = van.Cut.Min(c => c.Item.Priority);
            plan.Lines.Where(l => l.Van == van.Van && l.Item.UnitWeightLb > 0 && l.Item.Priority > most).Sum(l => l.Units).Should().Be(0);
        }
    });

    [Fact]
    public void The_weights_told_are_those_of_the_lines() => Each((depot, plan) =>
    {
        foreach (var weight in plan.Weights)
        {
            var boxes = plan.Lines.Where(l => l.Van == weight.Van).Sum(l => l.Sealed * Closeout.Cardboard.BoxBlank.WeightLb(depot.Setup, l.Item));
            (weight.AboardLb + plan.Lines.Where(l => l.Van == weight.Van).Sum(l => l.Units * l.Item.UnitWeightLb) + boxes).Should().BeApproximately(weight.LoadedLb, 1e-9);
            weight.Cut.Should().Equal(plan.Lines.Where(l => l.Van == weight.Van && l.Cut is not null).Select(l => new CutUnits(l.Item, l.CutUnits)));
        }
    });

    [Fact]
    public void A_cut_line_stays_within_its_cap_and_says_how_much_was_cut() => Each((depot, plan) =>
    {
        foreach (var l in plan.Lines.Where(l => l.Cut is not null))
        {
            l.Item.UnitWeightLb.Should().BeGreaterThan(0, "what weighs nothing is not cut");
            (l.Aboard + l.Units).Should().BeLessThanOrEqualTo(l.Cut!.Most);
            l.CutUnits.Should().BeGreaterThan(0);
            l.Target.Should().Be(l.Cut.Most < l.Cut.Target.Units ? new Target(l.Cut.Most, Basis.Payload) : l.Cut.Target);
            l.Need.Should().Be(l.Target.Need(l.Aboard));
        }
    });

    [Fact]
    public void Units_still_only_move_from_the_depot_to_the_vans() => Each((depot, _) => PlanLawsTests.AddsUp(depot));

    [Fact]
    public void A_plan_that_overloads_nobody_is_what_it_was_before_anybody_weighed() => Each((depot, plan) =>
    {
        var before = RestockPlan.For(HeavyDepot.Unweighed(depot));
        var ample = depot with { Setup = depot.Setup with { Vans = [.. before.Weights.Select(w => w.Van with { PayloadLb = w.CrewAndKitLb + w.LoadedLb + 1e-9 })] } };
        SomeDepot.Text(RestockPlan.For(ample)).Should().Equal(SomeDepot.Text(before));
        SomeDepot.Text(RestockPlan.For(ample)).Should().NotContain(l => l.Contains("Payload", StringComparison.Ordinal));
    });

    [Fact]
    public void In_what_order_things_were_written_does_not_matter() => Each((depot, plan) =>
    {
        var other = depot with
        {
            Setup = depot.Setup with { Items = [.. depot.Setup.Items.Reverse()], Limits = [.. depot.Setup.Limits.Reverse()] },
            Stock = depot.Stock with { Ledger = Ledger.Carried(depot.Stock.Ledger.Balances.OrderByDescending(b => b.Item).ThenByDescending(b => b.Place.Van)) },
        };
        SomeDepot.Text(RestockPlan.For(other)).Should().Equal(SomeDepot.Text(plan));
        RestockPlan.For(other).Weights.Select(w => (w.AboardLb, w.UncutLb, w.LoadedLb)).Should().Equal(plan.Weights.Select(w => (w.AboardLb, w.UncutLb, w.LoadedLb)), "to the last bit");
    });

    [Fact]
    public void Promises_are_the_targets_of_the_plan_for_the_same_date() => Each((depot, plan) =>
    {
        var promises = RestockPlan.Promises(depot, plan.Date).ToDictionary(p => (p.Van, p.Item), p => p.Target);
        foreach (var l in plan.Lines.Where(l => promises.ContainsKey((l.Van.Code, l.Item.Code))))
        {
            promises[(l.Van.Code, l.Item.Code)].Should().Be(l.Target.Units);
        }
    });

    [Fact]
    public void Loading_vans_as_planned_makes_no_van_heavier_than_the_plan_said() => HeavyDepot.Any.Holds(
        drawn =>
        {
            var depot = drawn.Depot();
            foreach (var van in depot.Setup.Vans.Where(v => depot.AsPlanned(v.Code).Lines.Count > 0).ToList())
            {
                var planned = RestockPlan.For(depot).Weight(van.Code).LoadedLb;
                depot = depot.AsPlanned(van.Code) is { Lines.Count: > 0 } take ? depot.At(van.Code, Step.Closed).Did(take) : depot;
                RestockPlan.For(depot).Weight(van.Code).AboardLb.Should().BeApproximately(planned, 1e-9);
            }
        },
        60);

    [Fact]
    public void A_van_loaded_as_planned_is_done_and_what_weight_cut_is_not_short()
    {
        var cut = 0;
        Each((depot, plan) =>
        {
            foreach (var van in depot.Setup.Vans.Where(v => depot.AsPlanned(v.Code).Lines.Count > 0).Take(3))
            {
                var after = RestockPlan.For(depot.At(van.Code, Step.Closed).Did(depot.AsPlanned(van.Code)));
                var (before, left) = (plan.Lines.Where(l => l.Van == van).ToList(), after.Lines.Where(l => l.Van == van).ToList());
                left.Sum(l => l.Units).Should().Be(0);
                left.Should().NotContain(l => l.Short > before.Where(b => b.Item == l.Item).Sum(b => b.Short));
                after.Weight(van.Code).Cut.Where(c => before.Any(b => b.Item == c.Item && b.Target.Basis == Basis.Payload))
                    .Should().Equal(plan.Weight(van.Code).Cut.Where(c => before.Any(b => b.Item == c.Item && b.Target.Basis == Basis.Payload)));
                cut += after.Weight(van.Code).Cut.Count;
            }
        });
        cut.Should().BeGreaterThan(50);
    }

    [Fact]
    public void Whatever_happens_at_the_stock_desk_the_plan_keeps_to_the_payloads()
    {
        var (cut, loaded, heavy) = (0, 0, 0);
        AnyStockDesk.Doings.Holds(
            doings =>
            {
                var depot = AnyStockDesk.Afternoon().AllClosed();
                depot = depot with { Setup = depot.Setup with { Vans = [.. depot.Setup.Vans.Select(v => v with { PayloadLb = 450 + (v.Bay == 3 ? 2 : 12) })] } };
                depot = doings.Aggregate(depot, (d, doing) => doing.On(d).Entry is { } entry ? d.Take(entry) : d);
                var plan = RestockPlan.For(depot);
                foreach (var weight in plan.Weights.Where(w => w.AboveLb > 0))
                {
                    plan.Lines.Where(l => l.Van == weight.Van).Sum(l => l.Units).Should().Be(0);
                    heavy++;
                }

                cut += plan.Weights.Sum(w => w.Cut.Count);
                loaded += depot.Stock.Loaded.Count;
                depot.Next(TinyDesk.Thursday).Planning.Promises.Should().NotContain(p => p.Target < 0);
            },
            200);
        new[] { cut, loaded, heavy }.Should().OnlyContain(n => n > 50);
    }

    private static void Each(Action<Depot, RestockPlan> law) => HeavyDepot.Any.Holds(drawn =>
    {
        var depot = drawn.Depot();
        law(depot, RestockPlan.For(depot));
    });

    /// <summary>Units given by the sharing: what a line needs and is not short of.</summary>
    private static Dictionary<(Code<Van> Van, Code<Item> Item), int> Given(RestockPlan plan) =>
        plan.Lines.ToDictionary(l => (l.Van.Code, l.Item.Code), l => l.Need - l.Short);
}
