using System.Runtime.InteropServices;

namespace Closeout.Store;

/// <summary>Makes names durable, not only contents: a file that was flushed can still lose its name at power loss.</summary>
internal static partial class Disk
{
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
        catch
        {
            File.Delete(beside);
            throw;
        }

        FlushFolder(Path.GetDirectoryName(Path.GetFullPath(path))!);
    }

    /// <summary>Opens a file of a book; one that is made is for its owner alone. On Windows the profile's rights decide.</summary>
    public static FileStream Own(string path, FileMode mode, FileAccess access, FileShare share) => Open(path, mode, access, share, own: true);

    /// <summary>Makes a folder of a book for its owner alone. Those above it that are missing are made as the user's mask says.</summary>
    public static void MakeFolder(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
        }
        else
        {
            Directory.CreateDirectory(path, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
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

    private static FileStream Open(string path, FileMode mode, FileAccess access, FileShare share, bool own)
    {
        var options = new FileStreamOptions { Mode = mode, Access = access, Share = share };
        if (own && mode is not FileMode.Open && !OperatingSystem.IsWindows())
        {
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        }

        return new(path, options);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync")]
    private static partial int Sync(int handle);

    [LibraryImport("libc", EntryPoint = "close")]
    private static partial int Close(int handle);
}
