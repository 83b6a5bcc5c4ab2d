using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace Closeout.Store;

/// <summary>What a line says when it is read.</summary>
/// <param name="Prev">The sha of the line before, as this line names it.</param>
/// <param name="BookSha">In a line that opens a later page: the sha of the book's very first line, as it is named here; else null.</param>
public sealed record LineRead(Recorded Recorded, string Sha, string Prev, string? BookSha)
{
    /// <summary>The book that the line says it belongs to; null: it does not say.</summary>
    public string? BookNamed => BookSha ?? (Prev == PageLine.Nothing ? Sha : null);
}

/// <summary>
/// One line of a page: <c>{"n":12,"prev":"...","at":"...","kind":"...","v":1,"entry":{...},"sha":"..."}</c> and a line feed.
/// The sha is SHA-256, in lower-case hex, over all of this line up to <c>,"sha"</c>, so every byte counts and each line can
/// be verified on its own; <c>prev</c> is the sha of the line before, so that none can be added, taken out or moved.
/// A line that opens a page also names the sha of the book's very first line in <c>book</c>.
/// </summary>
public static class PageLine
{
    /// <summary>What stands before the first line of a book.</summary>
    public const string Nothing = "0000000000000000000000000000000000000000000000000000000000000000";

    /// <summary>Bytes of a checksum in hex.</summary>
    public const int ShaLength = 64;

    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fffzzz";
    private static readonly byte[] Before = ",\"sha\":\""u8.ToArray();
    private static readonly byte[] After = "\"}"u8.ToArray();
    // Relaxed: the book is read by people and by this program, never inside a web page. Control characters stay escaped.
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line's bytes, line feed included, and its sha.</summary>
    /// <param name="prev">The sha of the line before.</param>
    /// <param name="book">The sha of the book's first line, for a line that opens a later page.</param>
    public static (byte[] Bytes, string Sha) Write(Recorded recorded, string prev, string? book = null)
    {
        var kind = EntryKind.Of(recorded.Entry);
        var buffer = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(buffer, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("n", recorded.Number);
            json.WriteString("prev", prev);
            if (book is not null)
                json.WriteString("book", book);

            json.WriteString("at", recorded.At.ToString(TimeFormat, CultureInfo.InvariantCulture));
            json.WriteString("kind", kind.Name);
            json.WriteNumber("v", kind.Version);
            json.WritePropertyName("entry");
            EntryCodec.Write(json, recorded.Entry);
            json.WriteEndObject();
        }

        var body = buffer.WrittenSpan[..^1];
        var sha = Sha(body);
        return ([.. body, .. Before, .. Encoding.ASCII.GetBytes(sha), .. After, (byte)'\n'], sha);
    }

    /// <summary>Reads a line, its line feed taken off.</summary>
    /// <param name="prev">The sha of the line before; null: not known, and the line is verified on its own.</param>
    /// <param name="upcasts">Null: those of this program.</param>
    /// <exception cref="FormatException">The line is not what was written, or does not follow the line before.</exception>
    public static LineRead Read(ReadOnlySpan<byte> line, string? prev, IReadOnlyList<Upcast>? upcasts = null)
    {
        if (ShaOf(line) is not { } sha)
            throw new FormatException("the line does not end in its checksum");

        var body = line[..^Tail];
        try
        {
            if (Sha(body) != sha)
            {
                throw IsEarlier(body, sha)
                    ? new OtherVersionException(
                        T("the line was written by an earlier version of this program, whose books this one does not read"))
                    : new FormatException("the checksum does not fit: the line is not as it was written");
            }

            using var json = JsonDocument.Parse(Closed(body));
            var root = json.RootElement;
            var before = root.GetProperty("prev").GetString() ?? throw new FormatException("the line names no line before it");
            if (prev is not null && before != prev)
                throw new FormatException("it does not follow the line before: a line was changed, added, moved or taken out");

            var at = DateTimeOffset.ParseExact(root.GetProperty("at").GetString()!, TimeFormat, CultureInfo.InvariantCulture);
            var entry = EntryCodec.Read(
                root.GetProperty("kind").GetString()!, root.GetProperty("v").GetInt32(), root.GetProperty("entry"), upcasts);
            var book = root.TryGetProperty("book", out var named) ? named.GetString() : null;
            return new(new Recorded(root.GetProperty("n").GetInt32(), at, entry), sha, before, book);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentNullException)
        {
            throw new FormatException("the line is not an entry: it was cut or changed", e);
        }
    }

    /// <summary>The checksum at a line's end, as it stands there; null: the line does not end in one.</summary>
    public static string? ShaOf(ReadOnlySpan<byte> line) => line.Length > Tail && line[^Tail..].StartsWith(Before) && line.EndsWith(After)
        ? Encoding.ASCII.GetString(line[^(ShaLength + After.Length)..^After.Length])
        : null;

    private static int Tail => Before.Length + ShaLength + After.Length;

    private static byte[] Closed(ReadOnlySpan<byte> body) => [.. body, (byte)'}'];

    /// <summary>The first line of a page used to name the line before too, and its checksum went over that name once more.</summary>
    private static bool IsEarlier(ReadOnlySpan<byte> body, string sha)
    {
        try
        {
            using var json = JsonDocument.Parse(Closed(body));
            return json.RootElement.TryGetProperty("prev", out var prev) && prev.GetString() is { } named
                && Sha([.. Encoding.ASCII.GetBytes(named), .. body]) == sha;
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException)
        {
            return false;
        }
    }

    private static string Sha(ReadOnlySpan<byte> body) => Convert.ToHexStringLower(SHA256.HashData(body));
}
