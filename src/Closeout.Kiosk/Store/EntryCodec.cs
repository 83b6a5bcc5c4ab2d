using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Closeout.Store;

/// <summary>How an entry is written in the day book.</summary>
public static class EntryCodec
{
    private static readonly JsonSerializerOptions Json = new()
    {
        TypeInfoResolver = BookJson.Default.WithAddedModifier(WrittenOnly),
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        RespectRequiredConstructorParameters = true,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        Converters =
        {
            new CodeConverter<Item>(), new CodeConverter<Van>(), new CodeConverter<Technician>(), new CodeConverter<KitPiece>(),
            new CodeConverter<VisitKind>(), new CodeConverter<WasteStream>(), new CodeConverter<Supplier>(), new PlaceConverter(),
            new MoveConverter(),
            new BalanceConverter(), new FiniteConverter(),
        },
    };

    /// <summary>The entry's own part of a line.</summary>
    public static void Write(Utf8JsonWriter to, Entry entry) =>
        JsonSerializer.Serialize(to, entry, Json.GetTypeInfo(EntryKind.Of(entry).Type));

    /// <summary>Reads an entry's own part. One of an older version is first brought up to today's.</summary>
    /// <param name="upcasts">Null: those of <see cref="Upcast.All"/>.</param>
    /// <exception cref="FormatException">The kind or version is unknown here, or the text is not an entry of it.</exception>
    public static Entry Read(string kind, int version, JsonElement from, IReadOnlyList<Upcast>? upcasts = null)
    {
        if (EntryKind.Named(kind) is not { } known || Upcast.Way(upcasts ?? Upcast.All, known, version) is not { } way)
        {
            throw new OtherVersionException(
                T($"an entry of kind '{kind}' version {version}, which this program does not know; a newer one, or an older, may"));
        }

        // The serializer refuses a null where one thing is wanted, and lets it pass among many.
        if (JsonMarshal.GetRawUtf8Value(from).IndexOf("null"u8) >= 0 && HasNothingInList(from))
            throw new FormatException($"not an entry of kind '{kind}': a list holds nothing where something must stand");

        try
        {
            var type = Json.GetTypeInfo(known.Type);
            var entry = way.Count == 0
                ? from.Deserialize(type)
                : way.Aggregate(JsonObject.Create(from), (old, step) => step.Change(old!)).Deserialize(type);
            return (Entry?)entry ?? throw new FormatException($"an empty entry of kind '{kind}'");
        }
        catch (Exception e) when (e is JsonException or ArgumentException or NotSupportedException or OverflowException)
        {
            throw new FormatException($"not an entry of kind '{kind}': {e.Message.ReplaceLineEndings(" ")}", e);
        }
    }

    private static bool HasNothingInList(JsonElement json) => json.ValueKind switch
    {
        JsonValueKind.Array => json.EnumerateArray().Any(e => e.ValueKind == JsonValueKind.Null || HasNothingInList(e)),
        JsonValueKind.Object => json.EnumerateObject().Any(p => HasNothingInList(p.Value)),
        _ => false,
    };

    /// <summary>What follows from the rest is not written: only what a constructor takes.</summary>
    private static void WrittenOnly(JsonTypeInfo type)
    {
        foreach (var derived in type.Properties.Where(p => p.AssociatedParameter is null && type.Kind == JsonTypeInfoKind.Object).ToList())
            type.Properties.Remove(derived);

        // Told once more: of a struct the serializer lets an empty object pass.
        foreach (var written in type.Properties.Where(p => p.AssociatedParameter is { HasDefaultValue: false }))
            written.IsRequired = true;
    }
}
