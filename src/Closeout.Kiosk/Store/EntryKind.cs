using System.Globalization;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;

namespace Closeout.Store;

/// <summary>
/// A kind of entry: its name and today's version. Both are promises to books already written: never reuse one, never change
/// its meaning. They stand above the bases of the entries, and nowhere else.
/// </summary>
public sealed record EntryKind(string Name, int Version, Type Type)
{
    /// <summary>Every kind that a book may hold.</summary>
    public static readonly IReadOnlyList<EntryKind> All =
        [.. BookJson.Bases.SelectMany(b => b.PolymorphismOptions!.DerivedTypes).Select(Told)];

    private static readonly Dictionary<string, EntryKind> ByName = All.ToDictionary(k => k.Name);
    private static readonly Dictionary<Type, EntryKind> ByType = All.ToDictionary(k => k.Type);

    /// <summary>The kind under which the entry is written.</summary>
    public static EntryKind Of(Entry entry) => ByType.TryGetValue(entry.GetType(), out var kind)
        ? kind
        : throw new InvalidOperationException($"{entry.GetType().Name} stands in no list of kinds");

    /// <summary>Null: none is called so.</summary>
    public static EntryKind? Named(string name) => ByName.GetValueOrDefault(name);

    private static EntryKind Told(JsonDerivedType kind)
    {
        var told = ((string)kind.TypeDiscriminator!).Split('/');
        return new(told[0], int.Parse(told[1], CultureInfo.InvariantCulture), kind.DerivedType);
    }
}

/// <summary>The JSON shapes of all entries, made at build time: no reflection over them at start-up. It lists their bases.</summary>
[JsonSourceGenerationOptions(UseStringEnumConverter = true)]
[JsonSerializable(typeof(PageEntry))]
[JsonSerializable(typeof(VanEntry))]
[JsonSerializable(typeof(StockEntry))]
[JsonSerializable(typeof(PlanEntry))]
[JsonSerializable(typeof(HoldEntry))]
[JsonSerializable(typeof(YardEntry))]
[JsonSerializable(typeof(PinEntry))]
public sealed partial class BookJson : JsonSerializerContext
{
    private static readonly Type[] Above =
    [
        typeof(PageEntry), typeof(VanEntry), typeof(StockEntry), typeof(PlanEntry), typeof(HoldEntry), typeof(YardEntry),
        typeof(PinEntry),
    ];

    /// <summary>The bases that stand above: that is for the compiler, and a program made ahead of time may not have it.</summary>
    public static IEnumerable<JsonTypeInfo> Bases => Above.Select(b => ((IJsonTypeInfoResolver)Default).GetTypeInfo(b, Default.Options)!);
}
