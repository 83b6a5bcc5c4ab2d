using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>Makes names durable, not only contents: a file that was flushed can still lose its name at power loss.</summary>
internal static partial class Disk
{
    private const int WindowsSharingViolation = unchecked((int)0x80070020);

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

    /// <summary>Writes a file whole: beside its place, flushed, then renamed in.</summary>
    /// <param name="own">Whether the file belongs to a book, and only its owner may read it; otherwise the user's own mask decides.</param>
    public static void WriteWhole(string path, ReadOnlySpan<byte> bytes, bool own)
    {
        var beside = path + ".new";
        try
        {
            using (var file = Open(beside, FileMode.Create, FileAccess.Write, FileShare.None, own))
            {
                file.Write(bytes);
                file.Flush(flushToDisk: true);
            }

            File.Move(beside, path, overwrite: true);
        }
        catch (ArgumentOutOfRangeException e)
        {
            File.Delete(beside);
            throw TooLong(e);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }

        FlushFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
    }

    /// <summary>Whether a file could not be opened because another program holds it, and not for want of room or a fault of the disk.</summary>
    public static bool IsHeld(IOException e) => e.HResult is WindowsSharingViolation or LinuxWouldBlock or MacWouldBlock;

    /// <summary>Opens a file of a book; one that is made is for its owner alone. On Windows the profile's rights decide.</summary>
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

        return new(path, options);
    }

    /// <summary>A file that may not become so long is told as a wrong argument; it is the disk's limit, or the user's.</summary>
    private static IOException TooLong(ArgumentOutOfRangeException e) => new(e.Message, e);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}

/// <summary>A line is in the page or is not: the disk failed in the middle of it, and again when it was to be taken back.</summary>
internal sealed class HalfWrittenException(string message, Exception inner) : IOException(message, inner);
