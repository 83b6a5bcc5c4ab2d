using System.Runtime.InteropServices;

namespace Closeout.Store;

/// <summary>Makes names durable, not only contents: a file that was flushed can still lose its name at power loss.</summary>
internal static partial class Disk
{
    /// <summary>Writes behind what a file holds, and flushes. Where that fails, the file is as long as before.</summary>
    /// <param name="offset">How long the file is.</param>
    /// <exception cref="IOException">There is no room, or the disk fails.</exception>
    public static void Append(string path, long offset, ReadOnlySpan<byte> bytes)
    {
        // Unbuffered: a buffer is tried again when the file is cut and when it is closed, after we said that nothing was written.
        using var file = new FileStream(path, FileMode.Open, FileAccess.Write, FileShare.ReadWrite, bufferSize: 0);
        try
        {
            file.Position = offset;
            file.Write(bytes);
            file.Flush(flushToDisk: true);
        }
        catch (ArgumentOutOfRangeException e)
        {
            file.SetLength(offset);
            throw TooLong(e);
        }
        catch
        {
            file.SetLength(offset);
            throw;
        }
    }

    /// <summary>Writes a file whole: beside its place, flushed, then renamed in.</summary>
    public static void WriteWhole(string path, ReadOnlySpan<byte> bytes)
    {
        var beside = path + ".new";
        try
        {
            using (var file = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None))
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

    /// <summary>Flushes what another part of the program wrote to a file.</summary>
    public static void FlushFile(string path)
    {
        using var file = new FileStream(path, FileMode.Open, FileAccess.ReadWrite, FileShare.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    /// <summary>Makes a folder and those above it, each with its name flushed: a flushed file in a folder whose own name is lost is lost with it.</summary>
    public static void MakeFolder(string path)
    {
        var full = Path.GetFullPath(path);
        var above = Path.GetDirectoryName(full);
        if (above is not null && !Directory.Exists(full))
        {
            MakeFolder(above);
            Directory.CreateDirectory(full);
        }

        if (above is not null)
        {
            FlushFolder(above);
        }
    }

    /// <summary>Flushes the names in a folder. On systems that cannot (Windows keeps them by its journal), does nothing.</summary>
    public static void FlushFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var handle = Open(folder, 0);
        if (handle >= 0)
        {
            _ = Sync(handle);
            _ = Close(handle);
        }
    }

    /// <summary>A file that may not become so long is told as a wrong argument; it is the disk's limit, or the user's.</summary>
    private static IOException TooLong(ArgumentOutOfRangeException e) => new(e.Message, e);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
