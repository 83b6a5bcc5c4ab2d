namespace Closeout.Bench.Kiosk;

public static class StartBench
{
    public static void Run() => throw new NotSupportedException();
}
