using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>Writes files so that they are on the disk or are not there, and says when they are not.</summary>
internal static class Disk
{
    private const int WindowsSharingViolation = unchecked((int)0x80070020);
    private const int WindowsLockViolation = unchecked((int)0x80070021);

    // errno EWOULDBLOCK, which the runtime hands on as it is.
    private const int LinuxWouldBlock = 11;
    private const int MacWouldBlock = 35;

    /// <summary>Writes behind what a file holds, and flushes. Where that fails, it is as long as before, or it is said that not.</summary>
    /// <param name="file">Without a buffer, which would be tried again when the file is closed, after it was said to be unwritten.</param>
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
        catch (Exception e)
        {
            try
            {
                RandomAccess.SetLength(file, offset);
            }
            catch (IOException again)
            {
                throw new HalfWrittenException($"{e.Message} {again.Message}", again);
            }

            if (e is ArgumentOutOfRangeException tooLong)
                throw TooLong(tooLong);

            throw;
        }
    }

    /// <summary>What a file is called until it is written whole: a name of each writer's own, so that none takes another's.</summary>
    public static string Beside(string path) => $"{path}.{Guid.NewGuid():N}.new";

    /// <summary>Whether it is called so: a writer that died left it, and it is nothing.</summary>
    public static bool IsLeftover(string path) => path.EndsWith(".new", StringComparison.Ordinal);

    /// <summary>What is odd about a file that is none of the book's.</summary>
    /// <param name="what">What its name is not.</param>
    public static string Odd(string path, string what) =>
        IsLeftover(path)
            ? T($"{path} was begun by a program that died, and is not read; it may be deleted.")
            : T($"{path} has not the name of {what}.");

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
                File.Delete(beside);

            // Nobody knows the name beside: what is told is the file's own.
            var message = e.Message.Replace(Path.GetFullPath(beside), Path.GetFullPath(path), StringComparison.Ordinal);
            throw e is ArgumentOutOfRangeException tooLong ? TooLong(tooLong)
                : e is UnauthorizedAccessException ? new UnauthorizedAccessException(message, e)
                : new IOException(message, e);
        }

        DurableFolder.Flush(Path.GetDirectoryName(Path.GetFullPath(path))!);
    }

    /// <summary>Writes to files in any way.</summary>
    /// <exception cref="IOException">A file may not become so long: the system tells that as a wrong argument.</exception>
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

    /// <summary>Makes a file of a book, fills it, and flushes it.</summary>
    /// <exception cref="IOException">It is there already, or cannot be written.</exception>
    public static void WriteNew(string path, Action<Stream> fill) => Writing(() =>
    {
        using var file = Own(path, FileMode.CreateNew, FileAccess.ReadWrite, FileShare.None);
        fill(file);
        file.Flush(flushToDisk: true);
    });

    /// <summary>Does what nothing depends on, or where something else is told already.</summary>
    /// <returns>Whether it was done.</returns>
    public static bool Try(Action act) => Try(() => { act(); return true; }, otherwise: false);

    /// <summary>What an act gives; where the system refuses it, something else.</summary>
    public static T Try<T>(Func<T> act, T otherwise)
    {
        try
        {
            return act();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return otherwise;
        }
    }

    /// <summary>Whether a file could not be opened because another program holds it, and not for another reason.</summary>
    public static bool IsHeld(IOException e) =>
        e.HResult is WindowsSharingViolation or WindowsLockViolation or LinuxWouldBlock or MacWouldBlock;

    /// <summary>Opens a plain file of a book; one that is made is for its owner alone. On Windows the profile's rights decide.</summary>
    /// <exception cref="IOException">It is no plain file, or cannot be opened.</exception>
    public static FileStream Own(string path, FileMode mode, FileAccess access, FileShare share) =>
        Open(path, mode, access, share, own: true);

    private static FileStream Open(string path, FileMode mode, FileAccess access, FileShare share, bool own)
    {
        var options = new FileStreamOptions { Mode = mode, Access = access, Share = share };
        if (own && mode is not FileMode.Open && !OperatingSystem.IsWindows())
            options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;

        return PlainFile.Open(path, options);
    }

    /// <summary>The system tells a file that may not become so long as a wrong argument.</summary>
    private static IOException TooLong(ArgumentOutOfRangeException e) =>
        new(T("The file may not become so long: the disk has a limit for one file, or the user has."), e);
}

/// <summary>A line is in the page or is not: the disk failed in the middle of it, and again when it was to be taken back.</summary>
internal sealed class HalfWrittenException(string message, Exception inner) : IOException(message, inner);
