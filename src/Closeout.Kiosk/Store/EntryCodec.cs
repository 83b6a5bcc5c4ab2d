using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Store;

/// <summary>How an entry is written in the day book. Kinds and versions are promises to books already written: never reuse one, never change its meaning.</summary>
public static class EntryCodec
{
    private static readonly BookJson Json = new(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        IgnoreReadOnlyProperties = true,
        Converters =
        {
            new CodeConverter<Item>(), new CodeConverter<Van>(), new CodeConverter<Technician>(), new CodeConverter<KitPiece>(),
            new CodeConverter<VisitKind>(), new PlaceConverter(), new MoveConverter(), new BalanceConverter(),
        },
    });

    /// <summary>Every kind that a book may hold.</summary>
    public static readonly IReadOnlyList<EntryKind> Kinds =
    [
        Kind("page-opened", j => j.PageOpened),
        Kind("day-folder-loaded", j => j.DayFolderLoaded),
        Kind("van-came-in", j => j.VanCameIn),
        Kind("leftover-counted", j => j.LeftoverCounted),
        Kind("leftovers-confirmed", j => j.LeftoversConfirmed),
        Kind("boxes-counted", j => j.BoxesCounted),
        Kind("cardboard-confirmed", j => j.CardboardConfirmed),
        Kind("mileage-logged", j => j.MileageLogged),
        Kind("damage-found", j => j.DamageFound),
        Kind("damage-confirmed", j => j.DamageConfirmed),
        Kind("kit-counted", j => j.KitCounted),
        Kind("kit-confirmed", j => j.KitConfirmed),
        Kind("weekly-checked", j => j.WeeklyChecked),
        Kind("signed", j => j.Signed),
    ];

    private static readonly Dictionary<string, EntryKind> ByName = Kinds.ToDictionary(k => k.Name);
    private static readonly Dictionary<Type, EntryKind> ByType = Kinds.ToDictionary(k => k.Type);

    /// <summary>The kind under which the entry is written.</summary>
    public static EntryKind KindOf(Entry entry) => ByType.TryGetValue(entry.GetType(), out var kind)
        ? kind
        : throw new InvalidOperationException($"{entry.GetType().Name} has no kind in the codec");

    /// <summary>The entry's own part of a line.</summary>
    public static void Write(Utf8JsonWriter to, Entry entry) => JsonSerializer.Serialize(to, entry, KindOf(entry).Contract(Json));

    /// <summary>Reads an entry's own part.</summary>
    /// <exception cref="FormatException">The kind or version is unknown here, or the text is not an entry of it.</exception>
    public static Entry Read(string kind, int version, JsonElement from)
    {
        if (!ByName.TryGetValue(kind, out var known) || version != known.Version)
        {
            throw new FormatException($"an entry of kind '{kind}' version {version}, which this program does not know; a newer one may");
        }

        try
        {
            return (Entry?)from.Deserialize(known.Contract(Json)) ?? throw new FormatException($"an empty entry of kind '{kind}'");
        }
        catch (Exception e) when (e is JsonException or ArgumentException or NotSupportedException or OverflowException)
        {
            throw new FormatException($"not an entry of kind '{kind}': {e.Message.ReplaceLineEndings(" ")}", e);
        }
    }

    private static EntryKind Kind<T>(string name, Func<BookJson, JsonTypeInfo<T>> contract)
        where T : Entry => new(name, 1, typeof(T), contract);
}

/// <summary>A kind of entry: its stable name and version.</summary>
public sealed record EntryKind(string Name, int Version, Type Type, Func<BookJson, JsonTypeInfo> Contract);

/// <summary>The JSON shapes of all entries, made at build time: no reflection at start-up.</summary>
[JsonSourceGenerationOptions(UseStringEnumConverter = true)]
[JsonSerializable(typeof(PageOpened))]
[JsonSerializable(typeof(DayFolderLoaded))]
[JsonSerializable(typeof(VanCameIn))]
[JsonSerializable(typeof(LeftoverCounted))]
[JsonSerializable(typeof(LeftoversConfirmed))]
[JsonSerializable(typeof(BoxesCounted))]
[JsonSerializable(typeof(CardboardConfirmed))]
[JsonSerializable(typeof(MileageLogged))]
[JsonSerializable(typeof(DamageFound))]
[JsonSerializable(typeof(DamageConfirmed))]
[JsonSerializable(typeof(KitCounted))]
[JsonSerializable(typeof(KitConfirmed))]
[JsonSerializable(typeof(WeeklyChecked))]
[JsonSerializable(typeof(Signed))]
public sealed partial class BookJson : JsonSerializerContext;
