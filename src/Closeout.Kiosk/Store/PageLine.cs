using System.Buffers;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Closeout.DayBook;

namespace Closeout.Store;

/// <summary>
/// One line of a page: <c>{"n":12,"at":"...","kind":"...","v":1,"entry":{...},"sha":"..."}</c> and a line feed. The sha is
/// SHA-256, in lower-case hex, over the line before's sha and all of this line up to <c>,"sha"</c>, so every byte counts.
/// A page's first line also names the sha of the page before in <c>prev</c>.
/// </summary>
public static class PageLine
{
    /// <summary>What stands before the first line of a book.</summary>
    public const string Nothing = "0000000000000000000000000000000000000000000000000000000000000000";

    private const string TimeFormat = "yyyy-MM-dd'T'HH:mm:ss.fffzzz";
    private static readonly byte[] Before = ",\"sha\":\""u8.ToArray();
    private static readonly byte[] After = "\"}"u8.ToArray();
    // Relaxed: the book is read by people and by this program, never inside a web page. Control characters stay escaped.
    private static readonly JsonWriterOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>The line's bytes, line feed included, and its sha.</summary>
    /// <param name="prev">The sha of the line before.</param>
    public static (byte[] Bytes, string Sha) Write(Recorded recorded, string prev)
    {
        var kind = EntryCodec.KindOf(recorded.Entry);
        var buffer = new ArrayBufferWriter<byte>(512);
        using (var json = new Utf8JsonWriter(buffer, Plain))
        {
            json.WriteStartObject();
            json.WriteNumber("n", recorded.Number);
            json.WriteString("at", recorded.At.ToString(TimeFormat, CultureInfo.InvariantCulture));
            json.WriteString("kind", kind.Name);
            json.WriteNumber("v", kind.Version);
            if (recorded.Entry is PageOpened)
            {
                json.WriteString("prev", prev);
            }

            json.WritePropertyName("entry");
            EntryCodec.Write(json, recorded.Entry);
            json.WriteEndObject();
        }

        var body = buffer.WrittenSpan[..^1];
        var sha = Sha(prev, body);
        return ([.. body, .. Before, .. Encoding.ASCII.GetBytes(sha), .. After, (byte)'\n'], sha);
    }

    /// <summary>Reads a line, its line feed taken off.</summary>
    /// <param name="prev">The sha of the line before; null for a page's first line, which names its own.</param>
    /// <exception cref="FormatException">The line is not what was written.</exception>
    public static (Recorded Recorded, string Sha, string Prev) Read(ReadOnlySpan<byte> line, string? prev)
    {
        var tail = Before.Length + 64 + After.Length;
        if (line.Length <= tail || !line[^tail..].StartsWith(Before) || !line.EndsWith(After))
        {
            throw new FormatException("the line does not end in its checksum");
        }

        var body = line[..^tail];
        try
        {
            using var json = JsonDocument.Parse(Closed(body));
            var root = json.RootElement;
            var before = prev ?? root.GetProperty("prev").GetString()!;
            var sha = Encoding.ASCII.GetString(line[^(64 + After.Length)..^After.Length]);
            if (Sha(before, body) != sha)
            {
                throw new FormatException("the checksum does not fit: this line, or the one before it, is not as it was written");
            }

            var at = DateTimeOffset.ParseExact(root.GetProperty("at").GetString()!, TimeFormat, CultureInfo.InvariantCulture);
            var entry = EntryCodec.Read(root.GetProperty("kind").GetString()!, root.GetProperty("v").GetInt32(), root.GetProperty("entry"));
            return (new Recorded(root.GetProperty("n").GetInt32(), at, entry), sha, before);
        }
        catch (Exception e) when (e is JsonException or KeyNotFoundException or InvalidOperationException or ArgumentNullException)
        {
            throw new FormatException("the line is not an entry: it was cut or changed", e);
        }
    }

    private static byte[] Closed(ReadOnlySpan<byte> body) => [.. body, (byte)'}'];

    private static string Sha(string prev, ReadOnlySpan<byte> body)
    {
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        hash.AppendData(Encoding.ASCII.GetBytes(prev));
        hash.AppendData(body);
        return Convert.ToHexStringLower(hash.GetHashAndReset());
    }
}
