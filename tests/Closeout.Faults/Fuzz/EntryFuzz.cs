using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Store;

namespace Closeout.Faults.Fuzz;

/// <summary>An entry's JSON, spoiled, read by the codec; what it takes is applied to the depot that the true entry met.</summary>
internal sealed class EntryFuzz : IFuzzed
{
    private readonly List<(string Kind, int Version, string Json, Depot? Before)> entries = [];
    private int chosen;

    /// <param name="book">A book of an evening.</param>
    public EntryFuzz(BookFolder book)
    {
        Depot? depot = null;
        foreach (var recorded in book.Dates.SelectMany(d => PageReader.Read(book.Page(d), default).Entries))
        {
            var buffer = new System.Buffers.ArrayBufferWriter<byte>();
            using (var json = new Utf8JsonWriter(buffer))
            {
                EntryCodec.Write(json, recorded.Entry);
            }

            var kind = EntryKind.Of(recorded.Entry);
            entries.Add((kind.Name, kind.Version, Encoding.UTF8.GetString(buffer.WrittenSpan), depot));
            depot = recorded.Entry is PageOpened ? Depot.Open(recorded) : depot!.Apply(recorded);
        }
    }

    public string Name => "entry codec";

    public byte[] Make(Random random)
    {
        // The long ones, which open a page or load a folder, are chosen less often.
        chosen = random.Next(entries.Count);
        chosen = entries[chosen].Json.Length > 2000 && random.Next(3) > 0 ? random.Next(entries.Count) : chosen;
        var text = entries[chosen].Json;
        if (random.Next(5) == 0)
        {
            return Mutations.Bytes(Encoding.UTF8.GetBytes(text), random);
        }

        var json = JsonNode.Parse(text)!;
        for (var times = random.Next(1, 4); times > 0; times--)
        {
            Spoil(json, random);
        }

        return Encoding.UTF8.GetBytes(json.ToJsonString());
    }

    public string Give(byte[] input)
    {
        var (kind, version, _, before) = entries[chosen];
        Entry entry;
        try
        {
            using var json = JsonDocument.Parse(input);
            entry = EntryCodec.Read(kind, version, json.RootElement);
        }
        catch (Exception e) when (e is FormatException or JsonException)
        {
            return "told as no entry";
        }

        var recorded = new Recorded((before?.Number ?? 0) + 1, DateTimeOffset.UnixEpoch, entry);
        var line = PageLine.Write(recorded, PageLine.Nothing).Bytes;
        _ = PageLine.Read(line.AsSpan(0, line.Length - 1), PageLine.Nothing);
        try
        {
            _ = before is null ? Depot.Fold([recorded]) : before.Apply(recorded);
            return "taken";
        }
        catch (Exception e) when (e is InvalidOperationException or OverflowException or ArgumentException)
        {
            // What opening a book names as an entry that cannot stand in it.
            return "told as impossible";
        }
    }

    private static void Spoil(JsonNode node, Random random)
    {
        switch (node)
        {
            case JsonObject { Count: > 0 } o:
                var name = Mutations.Any(random, [.. o.Select(p => p.Key)]);
                if (o[name] is JsonObject or JsonArray && random.Next(4) > 0)
                {
                    Spoil(o[name]!, random);
                }
                else if (random.Next(8) == 0)
                {
                    o.Remove(name);
                }
                else if (random.Next(10) == 0)
                {
                    o[Mutations.Value(random)] = Other(random, null);
                }
                else
                {
                    o[name] = Other(random, o[name]);
                }

                break;
            case JsonArray { Count: > 0 } a:
                var at = random.Next(a.Count);
                if (a[at] is JsonObject or JsonArray && random.Next(4) > 0)
                {
                    Spoil(a[at]!, random);
                }
                else if (random.Next(6) == 0)
                {
                    a.RemoveAt(at);
                }
                else if (random.Next(6) == 0)
                {
                    a.Add(a[at]?.DeepClone());
                }
                else
                {
                    a[at] = Other(random, a[at]);
                }

                break;
        }
    }

    private static JsonNode? Other(Random random, JsonNode? was) => random.Next(20) switch
    {
        >= 12 when was is JsonValue v && v.TryGetValue<int>(out var n) => JsonValue.Create(Mutations.Any(random, [0, 1, -1, n ^ 1, n / 2, 12, 500, 10_000, int.MaxValue, int.MinValue])),
        >= 12 when was is JsonValue v && v.TryGetValue<bool>(out var b) => JsonValue.Create(!b),
        >= 12 when was is JsonValue v && v.TryGetValue<string>(out var s) => JsonValue.Create(Mutations.Any(random, ["B1", "B5", "B9", "LED-A19", "SHW-15H", "T07", "X", "shelf", "bin", "van:B1", "sealed:B3", "homes", "unexplained", "2026-11-19", "1999-01-01", s, s.ToLowerInvariant()])),
        0 => null,
        1 => new JsonArray(),
        2 => new JsonObject(),
        3 => JsonValue.Create(random.Next(2) == 0),
        4 => JsonNode.Parse(Mutations.Any(random, ["1e400", "-1", "0", "2147483647", "2147483648", "1.5", "-0.0", "99999999999999999999999999", "1E-30"])),
        5 => JsonNode.Parse(new string('[', 60) + new string(']', 60)),
        6 when was is JsonValue v && v.TryGetValue<int>(out var n) => JsonValue.Create(n ^ random.Next(16)),
        7 when was is JsonValue v && v.TryGetValue<string>(out var s) => JsonValue.Create(s + Mutations.Value(random)),
        8 => JsonValue.Create(random.Next()),
        _ => JsonValue.Create(Mutations.Value(random)),
    };
}
