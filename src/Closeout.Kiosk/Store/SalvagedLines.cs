using System.Text;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>A line that is as it was written.</summary>
/// <param name="Date">The business date of the page in whose file it stands; null: the file does not say.</param>
internal sealed record GoodLine(LineRead Read, string File, int Line, DateOnly? Date)
{
    public int Number => Read.Recorded.Number;

    public string At => $"{File}:{Line}";
}

/// <summary>Bytes that are no line.</summary>
/// <param name="Begins">Whether a line seems to begin there.</param>
/// <param name="Ends">Whether a line seems to end there.</param>
internal sealed record BadLine(string File, int Line, string What, bool Begins, bool Ends)
{
    public override string ToString() => $"{File}:{Line}: {What}";
}

/// <summary>Every line in the pages that can be verified on its own, wherever it stands, and what could not be read.</summary>
internal static class SalvagedLines
{
    private static readonly byte[] Begins = "{\"n\":"u8.ToArray();
    private static readonly byte[] Ends = "\"}"u8.ToArray();
    private static readonly Regex Number = new("^\\{\"n\":([0-9]{1,10}),");
    private static readonly Regex Kind = new("\"kind\":\"([a-z-]{1,40})\"");
    private static readonly Regex Van = new("\"van\":\"([A-Za-z0-9._-]{1,24})\"");

    /// <exception cref="BookException">A line is whole and of another version: that is no damage.</exception>
    public static (IReadOnlyList<GoodLine> Good, IReadOnlyList<BadLine> Bad) Gather(BookFolder folder)
    {
        var (good, bad) = (new List<GoodLine>(), new List<BadLine>());
        foreach (var file in Files(folder))
        {
            var lines = new List<(LineRead Read, int Line)>();
            foreach (var (piece, number, ended) in Pieces(Bytes(file, bad)))
            {
                var found = Within(file, number, piece, out var fault);
                lines.AddRange(found.Select(f => (f, number)));
                if (fault is not null)
                {
                    var what = ended || found.Count > 0 ? fault + Said(piece) : T("a line was begun and never ended");
                    var (begins, ends) = (piece.AsSpan().StartsWith(Begins), PageLine.ShaOf(piece) is not null);
                    bad.Add(new(file, number, what, ended && begins, ended && ends));
                }
            }

            // What the page says of itself goes before what its file is called.
            var opened = lines.Select(l => l.Read.Recorded.Entry).OfType<PageOpened>().Select(p => p.Date).Distinct().ToList();
            var date = opened is [var only] ? only : BookFolder.DateOf(file);
            good.AddRange(lines.Select(l => new GoodLine(l.Read, file, l.Line, date)));
        }

        return (good, bad);
    }

    private static IReadOnlyList<string> Files(BookFolder folder) => Directory.Exists(folder.Pages)
        ? [.. Directory.EnumerateFileSystemEntries(folder.Pages, "*.jsonl").Order(StringComparer.Ordinal)]
        : [];

    private static byte[] Bytes(string file, List<BadLine> bad)
    {
        try
        {
            return PlainFile.Read(file, PageFile.MostBytes);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            bad.Add(new(file, 1, T($"the page cannot be read: {e.Message}"), false, false));
            return [];
        }
    }

    /// <summary>The lines in a piece: mostly itself; more where a line feed was changed, or something was written around them.</summary>
    private static List<LineRead> Within(string file, int number, byte[] piece, out string? fault)
    {
        fault = null;
        try
        {
            return [PageLine.Read(piece, null)];
        }
        catch (OtherVersionException e)
        {
            throw new BookException(T($"{file}:{number}: {e.Message}. Nothing is damaged there: use the version that wrote this book."), e);
        }
        catch (FormatException e)
        {
            fault = e.Message;
        }

        var found = new List<LineRead>();
        var begins = Enumerable.Range(0, piece.Length).Where(i => piece.AsSpan(i).StartsWith(Begins)).ToList();
        for (var i = 0; i < begins.Count; i++)
        {
            var part = piece.AsSpan(begins[i], (i + 1 < begins.Count ? begins[i + 1] : piece.Length) - begins[i]);
            var end = part.LastIndexOf(Ends);
            try
            {
                found.Add(PageLine.Read(part[..(end < 0 ? part.Length : end + Ends.Length)], null));
            }
            catch (FormatException)
            {
                // The piece's own fault is told.
            }
        }

        fault = found.Count > 0 && found.Count == begins.Count ? null : fault;
        return found;
    }

    private static IEnumerable<(byte[] Piece, int Number, bool Ended)> Pieces(byte[] bytes)
    {
        for (var (start, number) = (0, 1); start < bytes.Length; number++)
        {
            var length = bytes.AsSpan(start).IndexOf((byte)'\n');
            yield return (length < 0 ? bytes[start..] : bytes[start..(start + length)], number, length >= 0);
            start = length < 0 ? bytes.Length : start + length + 1;
        }
    }

    /// <summary>What can still be read of a line that nobody can vouch for, so that people know what to do again.</summary>
    private static string Said(byte[] piece)
    {
        var text = Encoding.UTF8.GetString(piece);
        var (number, kind) = (Number.Match(text), Kind.Match(text));
        var van = kind.Groups[1].Value is "page-opened" or "day-folder-loaded" ? Match.Empty : Van.Match(text);
        string After(string word, Match found) => found.Success ? word + found.Groups[1].Value : "";
        return number.Success || kind.Success
            ? T("; it seems to be") + After(T(" entry "), number) + After(" ", kind) + After(T(" of van "), van)
            : "";
    }
}
