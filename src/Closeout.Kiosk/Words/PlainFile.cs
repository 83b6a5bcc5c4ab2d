using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Words;

/// <summary>In the place of a file there is something else, or more than is read there; the message names the file and says what.</summary>
/// <param name="found">The same without the name.</param>
internal sealed class NoPlainFileException(string message, string found) : IOException(message)
{
    public string Found { get; } = found;
}

/// <summary>
/// Opens files in whose place somebody may have put something else. What is no plain file - a folder, a pipe, a device - and what
/// is longer than allowed is an error at once, never a wait, an endless read or a machine without memory. A link to a file is that file.
/// </summary>
internal static partial class PlainFile
{
    private const int AtCurrentFolder = -100;
    private const uint ModeAsked = 1;
    private const int KindOfFile = 0xF000;
    private const int Folder = 0x4000;
    private const int Regular = 0x8000;

    /// <summary>Opens for reading without waiting for a writer, in the numbers of macOS and its relatives.</summary>
    private const int WithoutWaiting = 0x4;

    /// <summary>All bytes of a file that has at most so many.</summary>
    public static byte[] Read(string path, long most)
    {
        using var file = Open(path, most);

        // As long as it says and no longer: a file that grows meanwhile is read as it was.
        var bytes = new byte[file.Length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Opens a file of at most so many bytes for reading.</summary>
    public static FileStream Open(string path, long most = long.MaxValue) =>
        new(OpenHandle(path, FileAccess.Read, most, FileShare.Read | FileShare.Delete), FileAccess.Read);

    /// <summary>Opens or makes a file in any way.</summary>
    public static FileStream Open(string path, FileStreamOptions how)
    {
        Refuse(path);
        return new(path, how);
    }

    /// <summary>Opens a file of at most so many bytes for access anywhere in it; others may write to it meanwhile.</summary>
    /// <exception cref="IOException">It is missing, is no plain file, has more bytes, or cannot be opened.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be opened.</exception>
    public static SafeFileHandle OpenHandle(
        string path, FileAccess access, long most, FileShare share = FileShare.ReadWrite | FileShare.Delete)
    {
        Refuse(path);
        var file = File.OpenHandle(path, FileMode.Open, access, share);
        var length = RandomAccess.GetLength(file);
        if (length <= most)
            return file;

        file.Dispose();
        throw new NoPlainFileException(T($"{path} has {length} bytes, and {most} are the most."), T($"{length} bytes"));
    }

    /// <summary>Refuses what is there and is no plain file. Asked before it is opened: opening may wait, or work on a device.</summary>
    /// <exception cref="NoPlainFileException">It is a folder, a pipe or a device.</exception>
    public static void Refuse(string path)
    {
        if (OperatingSystem.IsLinux())
        {
            if (Stat(AtCurrentFolder, path, 0, ModeAsked, out var told) == 0 && (told.Mode & KindOfFile) is var kind and not Regular)
                throw Other(path, kind == Folder);
        }
        else if (Directory.Exists(path))
        {
            throw Other(path, folder: true);
        }
        else if (!OperatingSystem.IsWindows() && Open(path, WithoutWaiting) is var opened and >= 0)
        {
            // Where it could not be opened, opening it in the usual way fails too, and says why.
            using var file = new SafeFileHandle(opened, ownsHandle: true);
            if (!IsPlain(file))
                throw Other(path, folder: false);
        }
    }

    private static NoPlainFileException Other(string path, bool folder) =>
        folder
            ? new(T($"{path} is a folder, and no file."), T("a folder"))
            : new(T($"{path} is a pipe or a device, and no file."), T("a pipe or a device, and no file"));

    /// <summary>Pipes and terminals have no places; devices have, and give more than their length of nothing.</summary>
    private static bool IsPlain(SafeFileHandle file)
    {
        try
        {
            return RandomAccess.GetLength(file) > 0 || RandomAccess.Read(file, stackalloc byte[1], 0) == 0;
        }
        catch (NotSupportedException)
        {
            return false;
        }
    }

    [LibraryImport("libc", EntryPoint = "statx", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Stat(int folder, string path, int flags, uint asked, out Told told);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);

    /// <summary>struct statx of Linux, the same on every processor (man 2 statx): stx_mode, 16 bits, stands at its byte 28.</summary>
    [StructLayout(LayoutKind.Explicit, Size = 256)]
    private struct Told
    {
        [FieldOffset(28)]
        public ushort Mode;
    }
}
