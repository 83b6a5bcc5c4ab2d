namespace Closeout.Bench.Plan;

public static class SolverBench
{
    public static void Run() => throw new NotSupportedException();
}
