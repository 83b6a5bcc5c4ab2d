using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Words;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>How far a page has been read: bytes, lines, the last entry's number, and its sha.</summary>
public readonly record struct PageMark(long Offset, int Lines, int Number, string? Sha);

/// <summary>What a look at a page gave.</summary>
/// <param name="Shas">The checksum of each entry's line.</param>
/// <param name="First">For a page read from its start: its first line.</param>
/// <param name="Torn">Bytes after the last line feed, or a last line with a hole: begun and never confirmed, or just being written.</param>
public sealed record PageRead(IReadOnlyList<Recorded> Entries, IReadOnlyList<string> Shas, PageMark Mark, LineRead? First, byte[] Torn)
{
    /// <summary>What the page folds to.</summary>
    /// <exception cref="BookException">An entry is whole and cannot stand there; it is named.</exception>
    public Depot Fold(string path)
    {
        try
        {
            return Depot.Fold(Entries);
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or ArgumentException)
        {
            throw new BookException($"{path}: {e.Message}. {BookException.Remedy}", e);
        }
    }
}

/// <summary>Reads pages, from the start or from where one stopped. Needs no lock.</summary>
public static class PageReader
{
    /// <summary>The least that a disk writes at once, in bytes; larger ones are multiples of it.</summary>
    private const int Sector = 512;

    /// <summary>The most bytes of a page, which is read whole: a hundred times a large depot's, and a day folder loaded every few minutes.</summary>
    public const long MostBytes = 256L * 1024 * 1024;

    /// <summary>Nothing may be written that is not read again.</summary>
    /// <exception cref="BookException">A page would have more than <see cref="MostBytes"/>.</exception>
    public static void MustFit(string path, long bytes)
    {
        if (bytes > MostBytes)
        {
            throw new BookException($"NOT recorded: {path} would have {bytes} bytes, and {MostBytes} are the most. End the day; the next page is a new file.");
        }
    }

    /// <summary>Opens a page.</summary>
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
            throw new BookException($"The page {path} cannot be read: {e.Message} {BookException.Remedy}", e);
        }
    }

    /// <exception cref="BookException">The page cannot be read, or a line is not as it was written; the line is named.</exception>
    public static PageRead Read(string path, PageMark from)
    {
        try
        {
            using var file = Open(path, FileAccess.Read);
            return Read(path, file, from);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The page {path} cannot be read: {e.Message}", e);
        }
    }

    /// <summary>The same of a page that is open already.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="BookException">A line is not as it was written; the line is named.</exception>
    public static PageRead Read(string path, SafeFileHandle file, PageMark from)
    {
        var length = RandomAccess.GetLength(file);
        if (length < from.Offset)
        {
            throw new BookException($"{path} was cut short: it had {from.Offset} bytes and has {length}. {BookException.Remedy}");
        }

        return Of(path, Bytes(file, from.Offset, length), from);
    }

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

    /// <summary>The same of bytes that were read already.</summary>
    /// <param name="path">What to call the page in messages.</param>
    /// <exception cref="BookException">A line is not as it was written; the line is named.</exception>
    public static PageRead Of(string path, byte[] bytes, PageMark from)
    {
        var (entries, shas) = (new List<Recorded>(), new List<string>());
        var (mark, first) = (from, (LineRead?)null);
        for (var start = 0; ;)
        {
            var length = bytes.AsSpan(start).IndexOf((byte)'\n');
            if (length < 0)
            {
                var torn = bytes[start..];
                return IsWholeLine(torn, mark.Sha)
                    ? throw new BookException(Damaged(path, mark, "the line is whole, and its line feed was changed"))
                    : new(entries, shas, mark, first, torn);
            }

            try
            {
                var line = PageLine.Read(bytes.AsSpan(start, length), mark.Sha);
                if (mark.Sha is not null && line.Recorded.Number != mark.Number + 1)
                {
                    throw new FormatException($"entry {line.Recorded.Number} follows entry {mark.Number}");
                }

                if (mark.Sha is null && line.Recorded.Entry is not PageOpened)
                {
                    throw new FormatException($"entry {line.Recorded.Number} does not open a page: lines before it are missing");
                }

                first ??= mark.Sha is null ? line : null;
                entries.Add(line.Recorded);
                shas.Add(line.Sha);
                start += length + 1;
                mark = new(from.Offset + start, mark.Lines + 1, line.Recorded.Number, line.Sha);
            }
            catch (OtherVersionException e)
            {
                throw new BookException($"{path}:{mark.Lines + 1}: {e.Message}. Nothing is damaged: use the version that wrote this book.", e);
            }
            catch (FormatException) when (start + length + 1 == bytes.Length && HasHole(bytes.AsSpan(start), from.Offset + start))
            {
                return new(entries, shas, mark, first, bytes[start..]);
            }
            catch (FormatException e)
            {
                throw new BookException(Damaged(path, mark, e.Message), e);
            }
        }
    }

    /// <summary>
    /// At power loss a disk may keep the end of a line that was being written, and its line feed, and not what stands before:
    /// that reads as zeros up to the end of a sector. A line never holds a zero; such a last one was never confirmed.
    /// </summary>
    /// <param name="offset">Of the line in the file.</param>
    private static bool HasHole(ReadOnlySpan<byte> line, long offset)
    {
        for (var last = (int)(Sector - 1 - offset % Sector); last < line.Length; last += Sector)
        {
            if (line[last] == 0)
            {
                return true;
            }
        }

        return false;
    }

    private static string Damaged(string path, PageMark mark, string what) =>
        $"{path}:{mark.Lines + 1}: {what}.{(mark.Number > 0 ? $" Entries up to {mark.Number} are good." : "")} {BookException.Remedy}";

    /// <summary>A line whose checksum fits and that ends in some other byte than a line feed was confirmed, and was changed afterwards.</summary>
    private static bool IsWholeLine(byte[] torn, string? prev)
    {
        if (torn.Length < 2)
        {
            return false;
        }

        try
        {
            PageLine.Read(torn.AsSpan(0, torn.Length - 1), prev);
            return true;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
