using System.Text;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>What stands at the two ends of a page's file, without reading all of it: enough to see whether two pages fit each other.</summary>
internal static partial class PageEnds
{
    private const int Piece = 64 * 1024;

    /// <summary>The sha at the end of the last whole line; null: there is none.</summary>
    public static string? LastSha(string path)
    {
        using var file = Read(path);
        for (var length = Math.Min(Piece, file.Length); ; length = Math.Min(length * 2, file.Length))
        {
            var tail = new byte[length];
            file.Position = file.Length - length;
            file.ReadExactly(tail);
            var end = tail.AsSpan().LastIndexOf((byte)'\n');
            if (end >= 2 * PageLine.ShaLength)
            {
                return PageLine.ShaOf(tail.AsSpan(0, end));
            }

            if (length == file.Length)
            {
                return null;
            }
        }
    }

    /// <summary>The sha at the end of the first line; null: there is none.</summary>
    public static string? FirstSha(string path) => PageLine.ShaOf(FirstLine(path));

    /// <summary>The line before, as the first line names it; null: it names none.</summary>
    public static string? FirstPrev(string path) =>
        Start().Match(Encoding.ASCII.GetString(FirstLine(path))) is { Success: true } match ? match.Groups["prev"].Value : null;

    private static byte[] FirstLine(string path)
    {
        using var file = Read(path);
        var line = new MemoryStream();
        var piece = new byte[Piece];
        while (file.Read(piece) is var count and > 0)
        {
            var end = piece.AsSpan(0, count).IndexOf((byte)'\n');
            line.Write(piece, 0, end < 0 ? count : end);
            if (end >= 0)
            {
                return line.ToArray();
            }
        }

        return [];
    }

    private static FileStream Read(string path)
    {
        try
        {
            return new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new BookException($"The page {path} cannot be read: {e.Message}", e);
        }
    }

    [GeneratedRegex("^\\{\"n\":[0-9]+,\"prev\":\"(?<prev>[0-9a-f]{64})\"")]
    private static partial Regex Start();
}
