using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.RegularExpressions;

namespace Closeout.Store;

/// <summary>One file of a backup, the bytes it has when unpacked, and their SHA-256 in lower-case hex.</summary>
public sealed record BackupPart(string Name, long Bytes, string Sha);

/// <summary>What a backup says it holds, in its <c>backup.json</c>.</summary>
/// <param name="Version">Raised when a program that knows only the number before could not restore what is in it.</param>
/// <param name="BookSha">The sha of the book's first line.</param>
/// <param name="Entries">The number of the last entry.</param>
public sealed partial record BackupManifest(
    int Version,
    DateTimeOffset Made,
    [property: JsonPropertyName("book")] string BookSha,
    int Entries,
    [property: JsonPropertyName("files")] IReadOnlyList<BackupPart> Parts)
{
    public const string Name = "backup.json";

    /// <summary>The version that this program writes, and the only one that it restores.</summary>
    public const int Known = 2;

    /// <summary>Bytes of all parts together.</summary>
    [JsonIgnore]
    public long Bytes => Parts.Sum(p => p.Bytes);

    /// <summary>Its business dates, the oldest first.</summary>
    [JsonIgnore]
    public IReadOnlyList<DateOnly> Pages => [.. Parts.Select(p => DateOf(p.Name)).OfType<DateOnly>().Order()];

    public byte[] ToJson() => JsonSerializer.SerializeToUtf8Bytes(this, BackupJson.Default.BackupManifest);

    /// <exception cref="FormatException">It is not such a text, or one of another version; the message says which.</exception>
    public static BackupManifest Parse(byte[] json)
    {
        try
        {
            using (var any = JsonDocument.Parse(json))
            {
                // Asked first: another version may say other things.
                if (any.RootElement.GetProperty("version").GetInt64() is not Known and var version)
                {
                    var then = T("restore it with the version that made it, or a newer one");
                    throw new FormatException($"it is of version {version}, and this program knows version {Known}: {then}");
                }
            }

            return JsonSerializer.Deserialize(json, BackupJson.Default.BackupManifest) is { } told && !told.Parts.Contains(null!)
                ? told
                : throw new FormatException($"{Name} is not as such a file is written");
        }
        catch (Exception e) when (e is JsonException or InvalidOperationException or KeyNotFoundException)
        {
            throw new FormatException($"{Name} is not that of a backup", e);
        }
    }

    /// <summary>The most bytes of a part, by its name, which <see cref="IsPart"/> allows.</summary>
    public static long MostBytes(string name) => name.Split('/') switch
    {
        ["files", _] => AttachedFiles.MostBytes,
        ["pages" or "torn", _] => PageFile.MostBytes,
        ["rehearsal.txt"] => BookFolder.MostText,
        _ => throw new InvalidOperationException($"{name} is no part of a backup"),
    };

    /// <summary>Whether a file of that name may be in a backup: only a book's own parts, and never a path out of its folder.</summary>
    public static bool IsPart(string name) => name == "rehearsal.txt" || DateOf(name) is not null || Torn().IsMatch(name)
        || (name.StartsWith("files/", StringComparison.Ordinal) && AttachedFiles.IsName(name["files/".Length..]));

    /// <summary>The business date of a page; null: it is none.</summary>
    private static DateOnly? DateOf(string name) => name == "pages/" + Path.GetFileName(name) ? BookFolder.DateOf(name) : null;

    [GeneratedRegex("\\Atorn/[0-9]{4}-[0-9]{2}-[0-9]{2}-after-[0-9]{1,10}(-[0-9]{1,9})?\\.txt\\z")]
    private static partial Regex Torn();
}

/// <summary>The JSON shape, made at build time. Strict: nothing more, nothing less, nothing twice.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Strict, PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, WriteIndented = true, NewLine = "\n")]
[JsonSerializable(typeof(BackupManifest))]
internal sealed partial class BackupJson : JsonSerializerContext;
