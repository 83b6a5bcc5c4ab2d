namespace Closeout.Bench.Kiosk;

public static class AppendBench
{
    public static void Run() => throw new NotSupportedException();
}
