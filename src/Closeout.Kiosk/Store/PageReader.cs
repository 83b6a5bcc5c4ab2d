using Closeout.DayBook;

namespace Closeout.Store;

/// <summary>How far a page has been read: bytes, lines, the last entry's number, and its sha.</summary>
public readonly record struct PageMark(long Offset, int Lines, int Number, string? Sha);

/// <summary>What a look at a page gave.</summary>
/// <param name="Prev">For a page read from its start: the sha of the page before.</param>
/// <param name="Torn">Bytes after the last line feed: begun and never confirmed, or just being written.</param>
public sealed record PageRead(IReadOnlyList<Recorded> Entries, PageMark Mark, string? Prev, byte[] Torn);

/// <summary>Reads pages, from the start or from where one stopped. Needs no lock.</summary>
public static class PageReader
{
    /// <exception cref="BookException">The page cannot be read, or a line is not as it was written; the line is named.</exception>
    public static PageRead Read(string path, PageMark from)
    {
        byte[] bytes;
        try
        {
            using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
            if (file.Length < from.Offset)
            {
                throw new BookException($"{path} was cut short: it had {from.Offset} bytes and has {file.Length}. Run: closeout check");
            }

            file.Position = from.Offset;
            bytes = new byte[file.Length - from.Offset];
            file.ReadExactly(bytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The page {path} cannot be read: {e.Message}", e);
        }

        return Lines(path, bytes, from);
    }

    private static PageRead Lines(string path, byte[] bytes, PageMark from)
    {
        var entries = new List<Recorded>();
        var (mark, first) = (from, (string?)null);
        for (var start = 0; ;)
        {
            var length = bytes.AsSpan(start).IndexOf((byte)'\n');
            if (length < 0)
            {
                return new(entries, mark, first, bytes[start..]);
            }

            try
            {
                var (recorded, sha, prev) = PageLine.Read(bytes.AsSpan(start, length), mark.Sha);
                if (mark.Sha is not null && recorded.Number != mark.Number + 1)
                {
                    throw new FormatException($"entry {recorded.Number} follows entry {mark.Number}");
                }

                first ??= mark.Sha is null ? prev : null;
                entries.Add(recorded);
                start += length + 1;
                mark = new(from.Offset + start, mark.Lines + 1, recorded.Number, sha);
            }
            catch (FormatException e)
            {
                throw new BookException($"{path}:{mark.Lines + 1}: {e.Message}. Entries up to {mark.Number} are good. Copy the book's folder away before anything else, then run: closeout check", e);
            }
        }
    }
}
