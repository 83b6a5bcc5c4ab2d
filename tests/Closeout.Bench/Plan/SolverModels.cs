using Closeout.Restock;
using Google.OrTools.Sat;

namespace Closeout.Bench.Plan;

/// <summary>What the solver came to. All values are such that less is better.</summary>
internal sealed record Solved(long Value, bool IsProved, double Milliseconds)
{
    private const string Limits = "max_time_in_seconds:10";

    public static Solved Least(CpModel model, LinearExpr value)
    {
        model.Minimize(value);
        var solver = new CpSolver { StringParameters = Limits };
        return solver.Solve(model) switch
        {
            CpSolverStatus.Optimal => new((long)Math.Round(solver.ObjectiveValue), true, solver.WallTime() * 1000),
            CpSolverStatus.Feasible => new((long)Math.Round(solver.ObjectiveValue), false, solver.WallTime() * 1000),
            CpSolverStatus.Unknown => new(long.MaxValue, false, solver.WallTime() * 1000),
            var status => throw new InvalidOperationException($"CP-SAT says {status}"),
        };
    }
}

/// <summary>Units one by one: a yes-or-no for each unit of each van's need, worth the chance that it is missed.</summary>
internal static class SharingModel
{
    /// <summary>Chances are whole numbers to the solver.</summary>
    private const double Scale = 1e12;

    public static Solved Solve(Claim[] claims, long supply)
    {
        var model = new CpModel();
        var units = new List<BoolVar>();
        var worth = new List<long>();
        for (var v = 0; v < claims.Length; v++)
        {
            for (var k = 0; k < claims[v].Need; k++)
            {
                units.Add(model.NewBoolVar(""));
                worth.Add(-Worth(claims[v], k));
            }
        }

        model.Add(LinearExpr.Sum(units) == supply);
        return Solved.Least(model, LinearExpr.WeightedSum(units, worth));
    }

    public static long Value(Claim[] claims, int[] given) =>
        -given.Select((g, v) => Enumerable.Range(0, g).Sum(k => Worth(claims[v], k))).Sum();

    private static long Worth(Claim claim, int k) => (long)Math.Round(claim.Above(claim.Aboard + k) * Scale);
}

/// <summary>
/// Per van: whether it is rounded up, and how many of its whole cartons it gets loose instead; what is sealed and loose
/// follows. Fewest cartons opened, then most loose units, then fewest rounded up: three solves, each keeping the last.
/// </summary>
internal static class PackingModel
{
    public static List<Solved> Solve(Portion[] vans, int c, int bin, int shelf)
    {
        var model = new CpModel();
        var opened = model.NewIntVar(0, shelf, "opened");
        var (boxed, loose, ups) = (new List<LinearExpr>(), new List<LinearExpr>(), new List<BoolVar>());
        foreach (var van in vans)
        {
            var (f, r) = Math.DivRem(van.Given, c);
            var unpacked = model.NewIntVar(0, f, "");
            if (r > 0 && van.Aboard + (f + 1) * c <= van.High)
            {
                var up = model.NewBoolVar("");
                ups.Add(up);
                model.Add(unpacked + f * up <= f);
                boxed.Add(f - unpacked + up);
                loose.Add(r - r * up + c * unpacked);
            }
            else
            {
                boxed.Add(f - unpacked);
                loose.Add(r + c * unpacked);
            }
        }

        model.Add(LinearExpr.Sum(loose) <= bin + opened * c);
        model.Add(LinearExpr.Sum(boxed) + opened <= shelf);
        var found = new List<Solved>();
        foreach (var aim in new[] { opened, -LinearExpr.Sum(loose), LinearExpr.Sum(ups) })
        {
            found.Add(Solved.Least(model, aim));
            if (!found[^1].IsProved)
            {
                break;
            }

            model.Add(aim == found[^1].Value);
        }

        return found;
    }

    /// <summary>The three values of a packing.</summary>
    public static long[] Values(PackingPlan plan) => [plan.Opened, -plan.Vans.Sum(v => v.Loose), plan.Vans.Count(v => v.Up)];
}
