using FluentAssertions;
using Google.OrTools.Sat;

namespace Closeout.Tests.Restock;

/// <summary>The constraint solver, made to give the same answer on every run.</summary>
internal static class Solver
{
    /// <summary>The objective's best value, proved to be the best.</summary>
    public static long Best(CpModel model)
    {
        var solver = new CpSolver { StringParameters = "num_workers:1 random_seed:1 max_deterministic_time:2" };
        solver.Solve(model).Should().Be(CpSolverStatus.Optimal);
        return (long)Math.Round(solver.ObjectiveValue);
    }
}
