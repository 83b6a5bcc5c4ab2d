using System.Runtime.InteropServices;
using Closeout.Words;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>Makes names durable, not only contents: a file that was flushed can still lose its name at power loss.</summary>
internal static partial class Disk
{
    private const int WindowsSharingViolation = unchecked((int)0x80070020);
    private const int WindowsLockViolation = unchecked((int)0x80070021);

    // errno EWOULDBLOCK, which the runtime hands on as it is.
    private const int LinuxWouldBlock = 11;
    private const int MacWouldBlock = 35;

    // errno EIO, ENOSPC, EDQUOT; others say that a folder cannot be flushed on this file system.
    private const int InputOutputError = 5;
    private const int NoSpace = 28;
    private const int NoQuota = 122;

    /// <summary>Writes behind what a file holds, and flushes. Where that fails, the file is as long as before, or it is said that it is not.</summary>
    /// <param name="file">Without a buffer: one is tried again when the file is cut and when it is closed, after we said that nothing was written.</param>
    /// <param name="offset">How long the file is.</param>
    /// <exception cref="IOException">There is no room, or the disk fails.</exception>
    /// <exception cref="HalfWrittenException">The disk fails so that what was written could not even be taken back.</exception>
    public static void Append(SafeFileHandle file, long offset, ReadOnlySpan<byte> bytes)
    {
        try
        {
            RandomAccess.Write(file, bytes, offset);
            RandomAccess.FlushToDisk(file);
        }
        catch (ArgumentOutOfRangeException e)
        {
            TakeBack(file, offset, e);
            throw TooLong(e);
        }
        catch (Exception e)
        {
            TakeBack(file, offset, e);
            throw;
        }
    }

    private static void TakeBack(SafeFileHandle file, long offset, Exception why)
    {
        try
        {
            RandomAccess.SetLength(file, offset);
        }
        catch (IOException e)
        {
            throw new HalfWrittenException($"{why.Message} {e.Message}", e);
        }
    }

    /// <summary>What a file that is being written whole is called until it is: a name of each writer's own, so that none takes away another's.</summary>
    public static string Beside(string path) => $"{path}.{Guid.NewGuid():N}.new";

    /// <summary>Whether it is called so: a writer that died left it, and it is nothing.</summary>
    public static bool IsLeftover(string path) => path.EndsWith(".new", StringComparison.Ordinal);

    public static string Leftover(string path) => $"{path} was begun by a program that died, and is not read; it may be deleted.";

    /// <summary>Writes a file whole: beside its place, flushed, then renamed in.</summary>
    /// <param name="own">Whether the file belongs to a book, and only its owner may read it; otherwise the user's own mask decides.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void WriteWhole(string path, ReadOnlySpan<byte> bytes, bool own)
    {
        var (beside, made) = (Beside(path), false);
        try
        {
            using (var file = Open(beside, FileMode.CreateNew, FileAccess.Write, FileShare.None, own))
            {
                made = true;
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or ArgumentOutOfRangeException)
        {
            if (made)
            {
                File.Delete(beside);
            }

            // Nobody knows the name beside: what is told is the file's own.
            var message = e.Message.Replace(Path.GetFullPath(beside), Path.GetFullPath(path), StringComparison.Ordinal);
            throw e switch
            {
                ArgumentOutOfRangeException tooLong => TooLong(tooLong),
                UnauthorizedAccessException => new UnauthorizedAccessException(message, e),
                _ => new IOException(message, e),
            };
        }

        FlushFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
    }

    /// <summary>Writes to files in any way.</summary>
    /// <exception cref="IOException">A file may not become so long; that is told as a wrong argument, and only here nothing else is.</exception>
    public static void Writing(Action write)
    {
        try
        {
            write();
        }
        catch (ArgumentOutOfRangeException e)
        {
            throw TooLong(e);
        }
    }

    /// <summary>Whether a file could not be opened because another program holds it, and not for want of room or a fault of the disk.</summary>
    public static bool IsHeld(IOException e) => e.HResult is WindowsSharingViolation or WindowsLockViolation or LinuxWouldBlock or MacWouldBlock;

    /// <summary>Opens a plain file of a book; one that is made is for its owner alone. On Windows the profile's rights decide.</summary>
    /// <exception cref="IOException">It is no plain file, or cannot be opened.</exception>
    public static FileStream Own(string path, FileMode mode, FileAccess access, FileShare share) => Open(path, mode, access, share, own: true);

    /// <summary>
    /// Makes a folder of a book for its owner alone, each with its name flushed: a flushed file in a folder whose own name is
    /// lost is lost with it. Those above it that are missing are made as the user's mask says.
    /// </summary>
    public static void MakeFolder(string path)
    {
        var full = Path.GetFullPath(path);
        var above = Path.GetDirectoryName(full);
        if (!Directory.Exists(full))
        {
            MakeAbove(above);
            if (OperatingSystem.IsWindows())
            {
                Directory.CreateDirectory(full);
            }
            else
            {
                Directory.CreateDirectory(full, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
            }
        }

        if (above is not null)
        {
            FlushFolder(above);
        }
    }

    private static void MakeAbove(string? path)
    {
        if (path is not null && !Directory.Exists(path))
        {
            MakeAbove(Path.GetDirectoryName(path));
            Directory.CreateDirectory(path);
            FlushFolder(Path.GetDirectoryName(path)!);
        }
    }

    /// <summary>Flushes the names in a folder. On systems that cannot (Windows keeps them by its journal), does nothing.</summary>
    /// <exception cref="IOException">The disk fails or is full: the names may be lost.</exception>
    public static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Open(folder, 0);
        if (handle >= 0)
        {
            var (failed, error) = (Sync(handle) != 0, Marshal.GetLastPInvokeError());
            _ = Close(handle);
            if (failed && error is InputOutputError or NoSpace or NoQuota)
            {
                throw new IOException($"The names in {folder} could not be flushed to the disk: error {error}.");
            }
        }
    }

    private static FileStream Open(string path, FileMode mode, FileAccess access, FileShare share, bool own)
    {
        var options = new FileStreamOptions { Mode = mode, Access = access, Share = share };
        if (own && mode is not FileMode.Open && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return PlainFile.Open(path, options);
    }

    /// <summary>The system tells a file that may not become so long as a wrong argument.</summary>
    private static IOException TooLong(ArgumentOutOfRangeException e) => new("The file may not become so long: the disk has a limit for one file, or the user has.", e);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}

/// <summary>A line is in the page or is not: the disk failed in the middle of it, and again when it was to be taken back.</summary>
internal sealed class HalfWrittenException(string message, Exception inner) : IOException(message, inner);
