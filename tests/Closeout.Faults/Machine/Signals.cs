using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Closeout.Faults.Machine;

/// <summary>Stops, continues and kills a process that this program started.</summary>
internal static partial class Signals
{
    private const int Killed = 9;
    private const int Continued = 18;
    private const int Stopped = 19;

    /// <summary>SIGKILL: gone at once, with no chance to finish anything.</summary>
    public static void Kill(int process) => Send(process, Killed);

    public static void Continue(Process process) => Send(process.Id, Continued);

    /// <summary>SIGSTOP, and waits until it stands.</summary>
    public static void Stop(Process process)
    {
        Send(process.Id, Stopped);
        while (!File.ReadAllText($"/proc/{process.Id}/stat").Contains(") T ", StringComparison.Ordinal))
        {
            Thread.Sleep(1);
        }
    }

    [LibraryImport("libc", EntryPoint = "kill")]
    private static partial int Send(int process, int signal);
}
