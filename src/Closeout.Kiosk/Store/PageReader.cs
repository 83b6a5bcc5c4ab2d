using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>Reads pages, from the start or from where one stopped. Needs no lock.</summary>
public static class PageReader
{
    /// <summary>The least that a disk writes at once, in bytes; larger ones are multiples of it.</summary>
    private const int Sector = 512;

    /// <exception cref="BookException">The page cannot be read, or a line is not as it was written; the line is named.</exception>
    public static PageRead Read(string path, PageMark from) => PageFile.Read(path, (file, _) => Read(path, file, from));

    /// <summary>The same of a page that is open already.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    /// <exception cref="BookException">A line is not as it was written; the line is named.</exception>
    public static PageRead Read(string path, SafeFileHandle file, PageMark from)
    {
        var length = RandomAccess.GetLength(file);
        if (length < from.Offset)
            throw new BookException(T($"{path} was cut short: it had {from.Offset} bytes and has {length}. {BookException.Remedy}"));

        return Of(path, PageFile.Bytes(file, from.Offset, length), from);
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
                    ? throw new BookException(Damaged(path, mark, T("the line is whole, and its line feed was changed")))
                    : new(entries, shas, mark, first, torn);
            }

            try
            {
                var line = PageLine.Read(bytes.AsSpan(start, length), mark.Sha);
                if (mark.Sha is not null && line.Recorded.Number != mark.Number + 1)
                    throw new FormatException($"entry {line.Recorded.Number} follows entry {mark.Number}");

                if (mark.Sha is null && line.Recorded.Entry is not PageOpened)
                    throw new FormatException($"entry {line.Recorded.Number} does not open a page: lines before it are missing");

                first ??= mark.Sha is null ? line : null;
                entries.Add(line.Recorded);
                shas.Add(line.Sha);
                start += length + 1;
                mark = new(from.Offset + start, mark.Lines + 1, line.Recorded.Number, line.Sha);
            }
            catch (OtherVersionException e)
            {
                var then = T("Nothing is damaged: use the version that wrote this book.");
                throw new BookException($"{path}:{mark.Lines + 1}: {e.Message}. {then}", e);
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
                return true;
        }

        return false;
    }

    private static string Damaged(string path, PageMark mark, string what) =>
        $"{path}:{mark.Lines + 1}: {what}.{(mark.Number > 0 ? T($" Entries up to {mark.Number} are good.") : "")} {BookException.Remedy}";

    /// <summary>A line whose checksum fits and that ends in another byte than a line feed was confirmed, and changed afterwards.</summary>
    private static bool IsWholeLine(byte[] torn, string? prev)
    {
        try
        {
            return torn.Length > 1 && PageLine.Read(torn.AsSpan(0, torn.Length - 1), prev) is not null;
        }
        catch (FormatException)
        {
            return false;
        }
    }
}
