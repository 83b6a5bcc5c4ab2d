using FluentAssertions;
using Google.OrTools.Sat;
using Xunit;

namespace Closeout.Tests.Restock;

/// <summary>Sharing among dozens of vans, where all ways are too many, against a constraint solver (CP-SAT, Apache 2.0).</summary>
public class SolverSharingTests
{
    /// <summary>Chances as whole numbers for the solver. Rounding keeps their order.</summary>
    private const double Scale = 1e9;

    public static TheoryData<int> Cases => [.. Enumerable.Range(1, 24)];

    [Theory]
    [MemberData(nameof(Cases))]
    public void A_solver_finds_no_better_way_to_share(int seed)
    {
        var t = Drawn(new Random(seed));
        var ours = t.Given;
        ours.Sum().Should().Be(Math.Min(t.Supply, t.Needs));
        var met = t.Vans.Zip(ours).Sum(v => Worth(v.First).Take(v.Second).Sum());
        met.Should().Be(MostMet(t));
    }

    /// <summary>The most that the chances of all units given can add up to: so much less is unmet.</summary>
    private static long MostMet(SharingCase t)
    {
        var model = new CpModel();
        var (given, worth) = (new List<LinearExpr>(), new List<LinearExpr>());
        foreach (var van in t.Vans)
        {
            foreach (var chance in Worth(van))
            {
                var unit = model.NewBoolVar("");
                given.Add(unit);
                worth.Add(unit * chance);
            }
        }

        model.Add(LinearExpr.Sum(given) <= t.Supply);
        model.Maximize(LinearExpr.Sum(worth));
        return Solver.Best(model);
    }

    private static List<long> Worth(Wanting van) => [.. Enumerable.Range(0, van.Need).Select(g => (long)Math.Round(Scale * van.Claim.Above(van.Aboard + g)))];

    private static SharingCase Drawn(Random lots)
    {
        var vans = Enumerable.Range(0, lots.Next(20, 61)).Select(_ =>
        {
            var mean = lots.Next(5) == 0 ? 0 : lots.NextDouble() * 20;
            return new Wanting(mean, mean * (lots.Next(3) == 0 ? 1 : 1 + lots.NextDouble() * 4), lots.Next(0, 15), lots.Next(0, 16));
        }).ToList();
        return new(vans, lots.Next(0, vans.Sum(v => v.Need)));
    }
}
