using Closeout.Restock;
using FluentAssertions;
using Google.OrTools.Sat;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Packing for dozens of vans against a constraint solver, one wish after the other: fewest opened, most loose, fewest up.</summary>
public class SolverPackingTests
{
    private sealed record Case(IReadOnlyList<Portion> Vans, int C, int Bin, int Shelf);

    /// <summary>Cases 2, 4 and 19 agree as well, but the solver takes seconds to prove them.</summary>
    private static readonly IEnumerable<int> Quick = Enumerable.Range(1, 24).Except([2, 4, 19]);

    public static TheoryData<int> Cases => [.. Quick];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_solver_finds_no_better_packing(int seed)
    {
        var t = Drawn(new Random(seed));
        var plan = Packing.Pack(t.Vans, t.C, t.Bin, t.Shelf);

        var (model, wishes) = Model(t);
        foreach (var (wish, ours) in wishes.Zip([plan.Opened, -plan.Vans.Sum(v => v.Loose), plan.Vans.Count(v => v.Up)]))
        {
            model.Minimize(wish);
            ((long)ours).Should().Be(Solver.Best(model));
            model.Add(wish == ours);
        }
    }

    [Fact]
    public void The_cases_drawn_open_cartons_and_round_up()
    {
        var plans = Quick.Select(seed => Drawn(new Random(seed))).Select(t => Packing.Pack(t.Vans, t.C, t.Bin, t.Shelf)).ToList();
        plans.Count(p => p.Opened > 0).Should().BeGreaterThan(4);
        plans.Count(p => p.Vans.Any(v => v.Up)).Should().BeGreaterThan(4);
        plans.Count(p => p.Vans.Any(v => v.Loose > 0)).Should().BeGreaterThan(4);
    }

    private static (CpModel Model, IReadOnlyList<LinearExpr> Wishes) Model(Case t)
    {
        var model = new CpModel();
        var opened = model.NewIntVar(0, t.Shelf, "opened");
        var (packed, loose, ups) = (new List<LinearExpr>(), new List<LinearExpr>(), new List<LinearExpr>());
        foreach (var van in t.Vans)
        {
            // Exact: r units and j cartons' worth are loose, f - j cartons go sealed. Up: f + 1 go, and nothing is loose.
            var (f, r) = Math.DivRem(van.Given, t.C);
            var j = model.NewIntVar(0, f, "");
            var up = model.NewBoolVar("");
            model.Add(j + f * up <= f);
            if (r == 0 || van.Aboard + (f + 1) * t.C > van.High)
            {
                model.Add(up == 0);
            }

            packed.Add(f - j + up);
            loose.Add(r - r * up + t.C * j);
            ups.Add(up);
        }

        model.Add(LinearExpr.Sum(loose) <= opened * t.C + t.Bin);
        model.Add(LinearExpr.Sum(packed) + opened <= t.Shelf);
        return (model, [opened, -LinearExpr.Sum(loose), LinearExpr.Sum(ups)]);
    }

    private static Case Drawn(Random lots)
    {
        var c = lots.Next(2, 13);
        var vans = Enumerable.Range(0, lots.Next(20, 61)).Select(_ =>
        {
            var (given, aboard) = (lots.Next(0, 3 * c), lots.Next(0, 20));
            return new Portion(given, aboard, aboard + given + lots.Next(0, 2 * c));
        }).ToList();
        var bin = lots.Next(0, vans.Count * c / 2);
        return new(vans, c, bin, Math.Max(0, (vans.Sum(v => v.Given) - bin + c - 1) / c) + (lots.Next(2) == 0 ? 0 : lots.Next(1, 10)));
    }
}
