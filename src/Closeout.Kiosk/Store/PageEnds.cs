using System.Text;

namespace Closeout.Store;

/// <summary>What stands at the two ends of a page's file, without reading all of it: enough to see whether two pages fit.</summary>
internal static class PageEnds
{
    private const long Piece = 64 * 1024;
    private static readonly byte[] Prev = ",\"prev\":\""u8.ToArray();

    /// <summary>The sha at the end of the last whole line; null: there is none.</summary>
    public static string? LastSha(string path) => PageFile.Read(path, (file, all) =>
    {
        for (var length = Math.Min(Piece, all); ; length = Math.Min(length * 2, all))
        {
            var tail = PageFile.Bytes(file, all - length, all);
            var end = tail.AsSpan().LastIndexOf((byte)'\n');
            if (end >= 2 * PageLine.ShaLength || length == all)
                return PageLine.ShaOf(tail.AsSpan(0, Math.Max(0, end)));
        }
    });

    /// <summary>The sha at the end of the first line; null: there is none.</summary>
    private static string? FirstSha(string path) => PageLine.ShaOf(FirstLine(path));

    /// <summary>The sha of a book's very first line, which makes it this book; null: it has no page.</summary>
    /// <exception cref="BookException">The line does not end in its checksum.</exception>
    public static string? BookSha(BookFolder folder) => folder.Dates is not [var first, ..]
        ? null
        : FirstSha(folder.Page(first)) ?? throw BookException.Damaged(T($"{folder.Page(first)}:1: the line does not end in its checksum."));

    /// <summary>The line before, as the first line names it; null: it names none.</summary>
    public static string? FirstPrev(string path) => FirstLine(path) is var line && line.AsSpan().IndexOf(Prev) is >= 0 and var at
        && line.Length >= at + Prev.Length + PageLine.ShaLength
            ? Encoding.ASCII.GetString(line, at + Prev.Length, PageLine.ShaLength)
            : null;

    private static byte[] FirstLine(string path) => PageFile.Read(path, (file, all) =>
    {
        for (var length = Math.Min(Piece, all); ; length = Math.Min(length * 2, all))
        {
            var head = PageFile.Bytes(file, 0, length);
            var end = head.AsSpan().IndexOf((byte)'\n');
            if (end >= 0 || length == all)
                return head[..Math.Max(0, end)];
        }
    });
}
