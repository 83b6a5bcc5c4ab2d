using System.Text.Json;
using System.Text.Json.Serialization;

namespace Closeout.Store;

/// <summary>A code is its text.</summary>
internal sealed class CodeConverter<T> : JsonConverter<Code<T>>
{
    public override Code<T> Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Code<T>.Of(reader.GetString() ?? "");

    public override void Write(Utf8JsonWriter writer, Code<T> value, JsonSerializerOptions options) => writer.WriteStringValue(value.Text);
}

/// <summary>A number that can be written again: 1e999 is read as infinity otherwise.</summary>
internal sealed class FiniteConverter : JsonConverter<double>
{
    public override double Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        reader.GetDouble() is var number && double.IsFinite(number) ? number : throw new JsonException("a number too large");

    public override void Write(Utf8JsonWriter writer, double value, JsonSerializerOptions options) => writer.WriteNumberValue(value);
}

/// <summary>A place is a word, and for a van <c>van:B3</c> (its extras box) or <c>sealed:B3</c>.</summary>
internal sealed class PlaceConverter : JsonConverter<Place>
{
    public override Place Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
        Parse(reader.GetString() ?? "");

    public override void Write(Utf8JsonWriter writer, Place value, JsonSerializerOptions options) => writer.WriteStringValue(Text(value));

    public static string Text(Place place) => place.Kind switch
    {
        PlaceKind.VanSealed => "sealed:" + place.Van.Text,
        PlaceKind.VanLoose => "van:" + place.Van.Text,
        _ => place.ToString(),
    };

    public static Place Of(JsonElement text) => Parse(text.GetString() ?? "");

    private static Place Parse(string text) => text.Split(':') switch
    {
        ["shelf"] => Place.Shelf,
        ["bin"] => Place.Bin,
        ["supplier"] => Place.Supplier,
        ["homes"] => Place.Homes,
        ["scrap"] => Place.Scrap,
        ["unexplained"] => Place.Unexplained,
        ["sealed", var van] => Place.Sealed(Code<Van>.Of(van)),
        ["van", var van] => Place.Loose(Code<Van>.Of(van)),
        _ => throw new JsonException($"no place '{text}'"),
    };
}

/// <summary>A move is <c>[item, units, from, to]</c>.</summary>
internal sealed class MoveConverter : JsonConverter<Move>
{
    public override Move Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var parts = JsonElement.ParseValue(ref reader);
        return parts.GetArrayLength() == 4
            ? new(Code<Item>.Of(parts[0].GetString() ?? ""), parts[1].GetInt32(), PlaceConverter.Of(parts[2]), PlaceConverter.Of(parts[3]))
            : throw new JsonException("a move has four parts");
    }

    public override void Write(Utf8JsonWriter writer, Move value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteStringValue(value.Item.Text);
        writer.WriteNumberValue(value.Units);
        writer.WriteStringValue(PlaceConverter.Text(value.From));
        writer.WriteStringValue(PlaceConverter.Text(value.To));
        writer.WriteEndArray();
    }
}

/// <summary>A balance is <c>[place, item, units]</c>.</summary>
internal sealed class BalanceConverter : JsonConverter<Balance>
{
    public override Balance Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options)
    {
        var parts = JsonElement.ParseValue(ref reader);
        return parts.GetArrayLength() == 3
            ? new Balance(PlaceConverter.Of(parts[0]), Code<Item>.Of(parts[1].GetString() ?? ""), parts[2].GetInt32())
            : throw new JsonException("a balance has three parts");
    }

    public override void Write(Utf8JsonWriter writer, Balance value, JsonSerializerOptions options)
    {
        writer.WriteStartArray();
        writer.WriteStringValue(PlaceConverter.Text(value.Place));
        writer.WriteStringValue(value.Item.Text);
        writer.WriteNumberValue(value.Units);
        writer.WriteEndArray();
    }
}
