using System.Runtime.InteropServices;

namespace Closeout.Words;

/// <summary>In the place of a file there is something else; the message says what.</summary>
internal sealed class NoPlainFileException(string message) : IOException(message);

/// <summary>
/// Reads files that somebody else put there. What is no plain file - a folder, a pipe, a device - is an error at once, never a wait and
/// never an endless read.
/// </summary>
internal static partial class PlainFile
{
    // statx of Linux, whose layout is the same on every processor (man 2 statx): stx_mode, 16 bits, is its 28th byte.
    private const int StatSize = 256;
    private const int ModeAt = 28;
    private const uint ModeAsked = 1;
    private const int AtCurrentFolder = -100;
    private const int KindOfFile = 0xF000;
    private const int Regular = 0x8000;

    /// <summary>Opens for reading without waiting for a writer, in the numbers of macOS and its relatives.</summary>
    private const int WithoutWaiting = 0x4;

    /// <summary>All bytes of a file that has at most so many.</summary>
    /// <exception cref="FileNotFoundException">There is nothing of that name.</exception>
    /// <exception cref="IOException">It is no plain file, has more bytes, or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static byte[] Read(string path, long most)
    {
        using var file = Open(path);
        var length = file.Length;
        if (length > most)
            throw new IOException($"{length} bytes");

        // As long as it says and no longer: a file that grows meanwhile is read as it was.
        var bytes = new byte[length];
        file.ReadExactly(bytes);
        return bytes;
    }

    /// <summary>Opens a file for reading.</summary>
    /// <exception cref="FileNotFoundException">There is nothing of that name.</exception>
    /// <exception cref="IOException">It is no plain file, or cannot be read.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    public static FileStream Open(string path)
    {
        if (Directory.Exists(path))
            throw new NoPlainFileException("a folder");

        Refuse(path);
        return new(path, FileMode.Open, FileAccess.Read, FileShare.Read | FileShare.Delete);
    }

    /// <summary>Refuses what is there and is no plain file.</summary>
    /// <exception cref="IOException">It is a pipe or a device.</exception>
    public static void Refuse(string path)
    {
        if (OperatingSystem.IsWindows())
            return;

        if (OperatingSystem.IsLinux())
        {
            var told = new byte[StatSize];
            if (Stat(AtCurrentFolder, path, 0, ModeAsked, told) == 0 && (BitConverter.ToUInt16(told, ModeAt) & KindOfFile) != Regular)
                throw new NoPlainFileException("a pipe or a device, and no file");

            return;
        }

        var opened = Open(path, WithoutWaiting);
        if (opened < 0)
        {
            // Whatever it is, opening it in the usual way fails too, and says why.
            return;
        }

        using var file = new Microsoft.Win32.SafeHandles.SafeFileHandle(opened, ownsHandle: true);
        if (!IsPlain(file))
            throw new NoPlainFileException("a pipe or a device, and no file");
    }

    /// <summary>Pipes and terminals have no places; devices have, and give more than their length of nothing.</summary>
    private static bool IsPlain(Microsoft.Win32.SafeHandles.SafeFileHandle file)
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
    private static partial int Stat(int folder, string path, int flags, uint asked, byte[] told);

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8)]
    private static partial int Open(string path, int flags);
}
