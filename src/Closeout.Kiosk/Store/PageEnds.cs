using System.Text;
using System.Text.RegularExpressions;
using Microsoft.Win32.SafeHandles;

namespace Closeout.Store;

/// <summary>What stands at the two ends of a page's file, without reading all of it: enough to see whether two pages fit each other.</summary>
internal static partial class PageEnds
{
    private const long Piece = 64 * 1024;

    /// <summary>The sha at the end of the last whole line; null: there is none.</summary>
    public static string? LastSha(string path) => Within<string?>(path, (file, all) =>
    {
        for (var length = Math.Min(Piece, all); ; length = Math.Min(length * 2, all))
        {
            var tail = PageReader.Bytes(file, all - length, all);
            var end = tail.AsSpan().LastIndexOf((byte)'\n');
            if (end >= 2 * PageLine.ShaLength || length == all)
            {
                return end < 0 ? null : PageLine.ShaOf(tail.AsSpan(0, end));
            }
        }
    });

    /// <summary>The sha at the end of the first line; null: there is none.</summary>
    public static string? FirstSha(string path) => PageLine.ShaOf(FirstLine(path));

    /// <summary>The line before, as the first line names it; null: it names none.</summary>
    public static string? FirstPrev(string path) =>
        Start().Match(Encoding.ASCII.GetString(FirstLine(path))) is { Success: true } match ? match.Groups["prev"].Value : null;

    private static byte[] FirstLine(string path) => Within<byte[]>(path, (file, all) =>
    {
        for (var length = Math.Min(Piece, all); ; length = Math.Min(length * 2, all))
        {
            var head = PageReader.Bytes(file, 0, length);
            var end = head.AsSpan().IndexOf((byte)'\n');
            if (end >= 0 || length == all)
            {
                return head[..Math.Max(0, end)];
            }
        }
    });

    private static T Within<T>(string path, Func<SafeFileHandle, long, T> look)
    {
        try
        {
            using var file = PageReader.Open(path, FileAccess.Read);
            return look(file, RandomAccess.GetLength(file));
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The page {path} cannot be read: {e.Message}", e);
        }
    }

    [GeneratedRegex("^\\{\"n\":[0-9]+,\"prev\":\"(?<prev>[0-9a-f]{64})\"")]
    private static partial Regex Start();
}
