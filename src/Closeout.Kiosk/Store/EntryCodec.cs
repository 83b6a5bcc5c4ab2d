using System.Runtime.InteropServices;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Closeout.Facts;

namespace Closeout.Store;

/// <summary>How an entry is written in the day book. Kinds and versions are promises to books already written: never reuse one, never change its meaning.</summary>
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
            new CodeConverter<VisitKind>(), new CodeConverter<WasteStream>(), new PlaceConverter(), new MoveConverter(), new BalanceConverter(), new FiniteConverter(),
        },
    };

    /// <summary>Every kind that a book may hold.</summary>
    public static readonly IReadOnlyList<EntryKind> Kinds =
    [
        Kind<PageOpened>("page-opened", 3),
        Kind<DayFolderLoaded>("day-folder-loaded", 2),
        Kind<VanCameIn>("van-came-in"),
        Kind<LeftoverCounted>("leftover-counted"),
        Kind<LeftoversConfirmed>("leftovers-confirmed"),
        Kind<BoxesCounted>("boxes-counted"),
        Kind<CardboardConfirmed>("cardboard-confirmed"),
        Kind<MileageLogged>("mileage-logged"),
        Kind<DamageFound>("damage-found", 2),
        Kind<DamageConfirmed>("damage-confirmed"),
        Kind<KitCounted>("kit-counted", 2),
        Kind<KitConfirmed>("kit-confirmed"),
        Kind<WeeklyChecked>("weekly-checked", 2),
        Kind<Signed>("signed", 2),
        Kind<PlanOverridden>("plan-overridden"),
        Kind<OverrideWithdrawn>("override-withdrawn"),
        Kind<VanLoaded>("van-loaded"),
        Kind<DeliveryReceived>("delivery-received"),
        Kind<CountCorrected>("count-corrected"),
        Kind<HoldsLifted>("holds-lifted"),
        Kind<HoldPlaced>("hold-placed"),
        Kind<IncidentClosed>("incident-closed"),
        Kind<PhotoAttached>("photo-attached"),
        Kind<StreamCounted>("stream-counted"),
        Kind<DepotBoxesCounted>("depot-boxes-counted"),
        Kind<BoxesWrittenOff>("boxes-written-off"),
        Kind<ContainerEmptied>("container-emptied"),
        Kind<CollectingBoxShipped>("collecting-box-shipped"),
        Kind<CloseoutChecked>("closeout-checked"),
        Kind<CloseoutReopened>("closeout-reopened"),
        Kind<SignedFor>("signed-for"),
        Kind<VanExplained>("van-explained"),
        Kind<BookingsMoved>("bookings-moved"),
        Kind<BookSalvaged>("book-salvaged"),
        Kind<PinSet>("pin-set"),
        Kind<PinReset>("pin-reset"),
        Kind<PinFailed>("pin-failed"),
        Kind<PinPassed>("pin-passed"),
    ];

    private static readonly Dictionary<string, EntryKind> ByName = Kinds.ToDictionary(k => k.Name);
    private static readonly Dictionary<Type, EntryKind> ByType = Kinds.ToDictionary(k => k.Type);

    /// <summary>The kind under which the entry is written.</summary>
    public static EntryKind KindOf(Entry entry) => ByType.TryGetValue(entry.GetType(), out var kind)
        ? kind
        : throw new InvalidOperationException($"{entry.GetType().Name} has no kind in the codec");

    /// <summary>The entry's own part of a line.</summary>
    public static void Write(Utf8JsonWriter to, Entry entry) => JsonSerializer.Serialize(to, entry, Json.GetTypeInfo(KindOf(entry).Type));

    /// <summary>Reads an entry's own part.</summary>
    /// <exception cref="FormatException">The kind or version is unknown here, or the text is not an entry of it.</exception>
    public static Entry Read(string kind, int version, JsonElement from)
    {
        if (!ByName.TryGetValue(kind, out var known) || version != known.Version)
        {
            throw new OtherVersionException($"an entry of kind '{kind}' version {version}, which this program does not know; a newer one, or an older, may");
        }

        // The serializer refuses a null where one thing is wanted, and lets it pass among many.
        if (JsonMarshal.GetRawUtf8Value(from).IndexOf("null"u8) >= 0 && HasNothingInList(from))
        {
            throw new FormatException($"not an entry of kind '{kind}': a list holds nothing where something must stand");
        }

        try
        {
            return (Entry?)from.Deserialize(Json.GetTypeInfo(known.Type)) ?? throw new FormatException($"an empty entry of kind '{kind}'");
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

    private static EntryKind Kind<T>(string name, int version = 1)
        where T : Entry => new(name, version, typeof(T));

    /// <summary>What follows from the rest is not written: only what a constructor takes.</summary>
    private static void WrittenOnly(JsonTypeInfo type)
    {
        foreach (var derived in type.Properties.Where(p => p.AssociatedParameter is null && type.Kind == JsonTypeInfoKind.Object).ToList())
        {
            type.Properties.Remove(derived);
        }

        // Told once more: of a struct the serializer lets an empty object pass.
        foreach (var written in type.Properties.Where(p => p.AssociatedParameter is { HasDefaultValue: false }))
        {
            written.IsRequired = true;
        }
    }
}

/// <summary>A kind of entry: its stable name and version.</summary>
public sealed record EntryKind(string Name, int Version, Type Type);

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
[JsonSerializable(typeof(PlanOverridden))]
[JsonSerializable(typeof(OverrideWithdrawn))]
[JsonSerializable(typeof(VanLoaded))]
[JsonSerializable(typeof(DeliveryReceived))]
[JsonSerializable(typeof(CountCorrected))]
[JsonSerializable(typeof(HoldsLifted))]
[JsonSerializable(typeof(HoldPlaced))]
[JsonSerializable(typeof(IncidentClosed))]
[JsonSerializable(typeof(PhotoAttached))]
[JsonSerializable(typeof(StreamCounted))]
[JsonSerializable(typeof(DepotBoxesCounted))]
[JsonSerializable(typeof(BoxesWrittenOff))]
[JsonSerializable(typeof(ContainerEmptied))]
[JsonSerializable(typeof(CollectingBoxShipped))]
[JsonSerializable(typeof(CloseoutChecked))]
[JsonSerializable(typeof(CloseoutReopened))]
[JsonSerializable(typeof(SignedFor))]
[JsonSerializable(typeof(VanExplained))]
[JsonSerializable(typeof(BookingsMoved))]
[JsonSerializable(typeof(BookSalvaged))]
[JsonSerializable(typeof(PinSet))]
[JsonSerializable(typeof(PinReset))]
[JsonSerializable(typeof(PinFailed))]
[JsonSerializable(typeof(PinPassed))]
public sealed partial class BookJson : JsonSerializerContext;
