using System.Runtime.InteropServices;

namespace Closeout.Screens;

/// <summary>The terminal's input as the system sees it: whether it is there still, and whether anybody types.</summary>
/// <remarks>Never closed: it is looked at until the program ends, and a closed one would look like a terminal that went.</remarks>
public sealed partial class TerminalInput
{
    private const short Readable = 1;

    // Held: a handle that nobody holds is collected, and its number closed.
    private readonly FileStream? opened;
    private readonly int file;

    public TerminalInput()
    {
        // With its input redirected the library takes keys from the terminal all the same.
        if (!OperatingSystem.IsWindows() && IsTerminal(0) != 1)
        {
            opened = new FileStream("/dev/tty", FileMode.Open, FileAccess.Read);
            file = (int)opened.SafeFileHandle.DangerousGetHandle();
        }
    }

    /// <summary>Whether the terminal is there. Where the system cannot say so, it is.</summary>
    public bool IsThere => OperatingSystem.IsWindows() || IsTerminal(file) == 1;

    /// <summary>Waits until something is typed, at most so long. Where the system cannot say so, just as long.</summary>
    public void Wait(TimeSpan most)
    {
        if (OperatingSystem.IsWindows())
        {
            Thread.Sleep(most);
            return;
        }

        var look = new Look { File = file, For = Readable };
        _ = Poll(ref look, 1, (int)most.TotalMilliseconds);
    }

    [LibraryImport("libc", EntryPoint = "isatty")]
    private static partial int IsTerminal(int file);

    [LibraryImport("libc", EntryPoint = "poll")]
    private static partial int Poll(ref Look look, nuint count, int milliseconds);

    /// <summary>POSIX: <c>struct pollfd</c>.</summary>
    [StructLayout(LayoutKind.Sequential)]
    private struct Look
    {
        public int File;
        public short For;
        public short Found;
    }
}
