namespace Closeout.Bench.Year;

public static class YearBench
{
    public static void Run() => throw new NotSupportedException();
}
