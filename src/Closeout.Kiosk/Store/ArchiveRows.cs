using System.Globalization;
using Closeout.Cardboard;
using Closeout.Vans;
using LiteDB;

namespace Closeout.Store;

/// <summary>What came home of a waste stream with a van on a date.</summary>
/// <param name="Amount">Pieces or pounds.</param>
public sealed record StreamDay(DateOnly Date, Code<Van> Van, Code<WasteStream> Stream, decimal Amount);

/// <summary>How rows stand in the archive. Written by hand: the library's own mapper changes what it stores.</summary>
internal static class ArchiveRows
{
    public static int Day(DateOnly date) => date.Year * 10_000 + date.Month * 100 + date.Day;

    public static DateOnly Date(BsonValue day) => new(day.AsInt32 / 10_000, day.AsInt32 / 100 % 100, day.AsInt32 % 100);

    /// <summary>An entry: when, of what kind, of which van, by whom.</summary>
    public static BsonDocument Of(DateOnly date, Recorded recorded, Concerned concerned) => new()
    {
        ["_id"] = recorded.Number,
        ["date"] = Day(date),
        ["at"] = recorded.At.ToString("O", CultureInfo.InvariantCulture),
        ["kind"] = EntryKind.Of(recorded.Entry).Name,
        ["van"] = concerned.Van?.Text,
        ["person"] = concerned.Person?.Text,
    };

    public static BsonDocument Of(DatedBoxes b) => new()
    {
        ["_id"] = $"{Day(b.Date)} {b.Row.Van} {b.Row.Item}",
        ["date"] = Day(b.Date), ["van"] = b.Row.Van.ToString(), ["item"] = b.Row.Item.ToString(),
        ["expected"] = b.Row.Expected, ["flattened"] = b.Row.Flattened, ["weight_lb"] = b.Row.WeightLb,
    };

    public static DatedBoxes Boxes(BsonDocument d) => new(
        Date(d["date"]),
        new(Code<Van>(d["van"]), Code<Item>(d["item"]), d["expected"].AsInt32, d["flattened"].AsInt32, d["weight_lb"].AsDouble));

    public static BsonDocument Of(LoggedMiles m) => new()
    {
        ["_id"] = $"{Day(m.Date)} {m.Van}",
        ["date"] = Day(m.Date), ["van"] = m.Van.Text, ["technician"] = m.Technician.Text,
        ["start_mi"] = m.StartMi, ["end_mi"] = m.EndMi, ["fuel_gal"] = m.FuelGal is { } gal ? gal : BsonValue.Null,
        ["grade"] = m.FuelGrade, ["visits"] = m.Visits is { } visits ? visits : BsonValue.Null, ["purpose"] = m.Purpose,
    };

    public static LoggedMiles Miles(BsonDocument d) => new(
        Date(d["date"]), new(d["van"].AsString), new(d["technician"].AsString), d["start_mi"].AsDecimal, d["end_mi"].AsDecimal,
        d["fuel_gal"].IsNull ? null : d["fuel_gal"].AsDecimal, d["grade"].AsString,
        d["visits"].IsNull ? null : d["visits"].AsInt32, d["purpose"].AsString);

    public static BsonDocument Of(LoggedIncident l) => new()
    {
        ["_id"] = l.Incident.Number,
        ["date"] = Day(l.Incident.Since), ["van"] = l.Van.Text,
        ["at"] = l.Incident.At.ToString("O", CultureInfo.InvariantCulture),
        ["by"] = l.Incident.By is { } who ? who.Text : BsonValue.Null,
        ["zone"] = l.Incident.Zone, ["severity"] = (int)l.Incident.Severity, ["what"] = l.Incident.What,
        ["drivable"] = l.Incident.Drivable, ["told"] = l.Incident.Told,
        ["told_at"] = l.Incident.ToldAt is { } told ? told.ToString("HH:mm", CultureInfo.InvariantCulture) : BsonValue.Null,
        ["lifted"] = l.Incident.Lifted, ["state"] = (int)l.State,
        ["closed_on"] = l.ClosedOn is { } on ? Day(on) : BsonValue.Null,
        ["closed_by"] = l.ClosedBy is { } by ? by.Text : BsonValue.Null,
        ["why"] = l.Why,
    };

    public static LoggedIncident Incident(BsonDocument d) => new(
        new(d["van"].AsString),
        new(
            d["_id"].AsInt32, Date(d["date"]), DateTimeOffset.Parse(d["at"].AsString, CultureInfo.InvariantCulture),
            d["by"].IsNull ? null : new Code<Technician>(d["by"].AsString), d["zone"].AsString,
            (Severity)d["severity"].AsInt32, d["what"].AsString, d["drivable"].AsBoolean, d["told"].AsString,
            d["told_at"].IsNull ? null : TimeOnly.ParseExact(d["told_at"].AsString, "HH:mm", CultureInfo.InvariantCulture),
            d["lifted"].AsBoolean),
        (IncidentState)d["state"].AsInt32,
        d["closed_on"].IsNull ? null : Date(d["closed_on"]),
        d["closed_by"].IsNull ? null : new(d["closed_by"].AsString),
        d["why"].AsString);

    public static BsonDocument Of(StreamDay s) => new()
    {
        ["_id"] = $"{Day(s.Date)} {s.Van} {s.Stream}",
        ["date"] = Day(s.Date), ["van"] = s.Van.Text, ["stream"] = s.Stream.Text, ["amount"] = s.Amount,
    };

    public static StreamDay Stream(BsonDocument d) =>
        new(Date(d["date"]), new(d["van"].AsString), new(d["stream"].AsString), d["amount"].AsDecimal);

    /// <summary>A picture and where it was attached.</summary>
    public static BsonDocument Of(DateOnly date, int number, PhotoAttached p) => new()
    {
        ["_id"] = number,
        ["date"] = Day(date), ["van"] = p.Van.Text, ["sha"] = p.Sha256, ["name"] = p.Name, ["bytes"] = p.Bytes,
    };

    public static (int Number, DateOnly Date, PhotoAttached Photo) Photo(BsonDocument d) =>
        (d["_id"].AsInt32, Date(d["date"]), new(new(d["van"].AsString), d["sha"].AsString, d["name"].AsString, d["bytes"].AsInt64));

    private static Code<T> Code<T>(BsonValue text) => text.AsString.Length == 0 ? default : new(text.AsString);
}
