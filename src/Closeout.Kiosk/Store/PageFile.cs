using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>The file of a page.</summary>
public static class PageFile
{
    /// <summary>The most bytes of a page, which is read whole: a hundred times those of a large depot on a usual day.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    /// <summary>Nothing may be written that is not read again.</summary>
    /// <exception cref="BookException">A page would have more than <see cref="MostBytes"/>.</exception>
    public static void MustFit(string path, long bytes)
    {
        if (bytes > MostBytes)
        {
            var then = T("End the day, or load a smaller day folder.");
            throw new BookException(T($"NOT recorded: {path} would have {bytes} bytes, and {MostBytes} are the most. {then}"));
        }
    }

    /// <exception cref="BookException">In its place is no plain file, or one that is too long.</exception>
    /// <exception cref="IOException">It cannot be opened.</exception>
    public static SafeFileHandle Open(string path, FileAccess access)
    {
        try
        {
            return PlainFile.OpenHandle(path, access, MostBytes);
        }
        catch (NoPlainFileException e)
        {
            throw BookException.Damaged(T($"The page {path} cannot be read: {e.Message}"), e);
        }
    }

    /// <summary>Reads in it; who reads is told how long it is.</summary>
    /// <exception cref="BookException">It cannot be read.</exception>
    public static TResult Read<TResult>(string path, Func<SafeFileHandle, long, TResult> read) => BookException.Telling(
        () =>
        {
            using var file = Open(path, FileAccess.Read);
            return read(file, RandomAccess.GetLength(file));
        },
        e => T($"The page {path} cannot be read: {e.Message}"));

    /// <summary>The bytes of an open file from one offset up to another.</summary>
    /// <exception cref="IOException">They cannot be read, or are not there.</exception>
    public static byte[] Bytes(SafeFileHandle file, long from, long to)
    {
        var bytes = new byte[to - from];
        var got = 0;
        while (got < bytes.Length)
        {
            var more = RandomAccess.Read(file, bytes.AsSpan(got), from + got);
            got += more > 0 ? more : throw new EndOfStreamException($"it ended after {from + got} of {to} bytes.");
        }

        return bytes;
    }
}
