using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Closeout.Tests;

/// <summary>
/// What work costs: processor time of the thread that does it, so that a busy machine makes little difference. Elsewhere than
/// on Linux the time that passes.
/// </summary>
internal static class Worked
{
    /// <summary>CLOCK_THREAD_CPUTIME_ID of Linux.</summary>
    private const int ThreadTime = 3;

    public static TimeSpan Over(Action work)
    {
        var begun = Now();
        work();
        return Now() - begun;
    }

    private static TimeSpan Now()
    {
        if (!OperatingSystem.IsLinux())
        {
            return Stopwatch.GetElapsedTime(0);
        }

        return Read(ThreadTime, out var now) == 0
            ? new TimeSpan((now.Seconds * TimeSpan.TicksPerSecond) + (now.Nanoseconds / 100))
            : throw new InvalidOperationException("the clock cannot be read");
    }

    [DllImport("libc", EntryPoint = "clock_gettime")]
    private static extern int Read(int clock, out Moment moment);

    [StructLayout(LayoutKind.Sequential)]
    private struct Moment
    {
        public nint Seconds;
        public nint Nanoseconds;
    }
}
