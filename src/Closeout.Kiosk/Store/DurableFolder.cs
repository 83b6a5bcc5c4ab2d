using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>Makes names durable, not only contents: a file that was flushed can still lose its name at power loss.</summary>
internal static partial class DurableFolder
{
    /// <summary>
    /// Makes a folder of a book for its owner alone, each with its name flushed: a flushed file in a folder whose own name is
    /// lost is lost with it. Those above it that are missing are made as the user's mask says.
    /// </summary>
    public static void Make(string path)
    {
        var full = Path.GetFullPath(path);
        if (!Directory.Exists(full))
            Make(full, own: true);
        else if (Path.GetDirectoryName(full) is { } above)
            Flush(above);
    }

    /// <summary>Flushes the names in a folder. On systems that cannot (Windows keeps them by its journal), does nothing.</summary>
    /// <exception cref="IOException">The disk fails or is full: the names may be lost.</exception>
    public static void Flush(string folder)
    {
        if (!OperatingSystem.IsWindows() && Open(folder, 0) is var opened and >= 0)
        {
            using var handle = new SafeFileHandle(opened, ownsHandle: true);
            RandomAccess.FlushToDisk(handle);
        }
    }

    private static void Make(string path, bool own)
    {
        if (Directory.Exists(path) || Path.GetDirectoryName(path) is not { } above)
            return;

        Make(above, own: false);
        _ = own && !OperatingSystem.IsWindows()
            ? Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute)
            : Directory.CreateDirectory(path);
        Flush(above);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);
}
