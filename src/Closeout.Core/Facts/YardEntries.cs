using System.Text.Json.Serialization;

namespace Closeout.Facts;

/// <summary>An entry of the depot's yard: cardboard and other waste.</summary>
[JsonDerivedType(typeof(DepotBoxesCounted), "depot-boxes-counted/1")]
[JsonDerivedType(typeof(BoxesWrittenOff), "boxes-written-off/1")]
[JsonDerivedType(typeof(ContainerEmptied), "container-emptied/1")]
[JsonDerivedType(typeof(CollectingBoxShipped), "collecting-box-shipped/1")]
[JsonDerivedType(typeof(YardTakenBack), "yard-taken-back/1")]
public abstract record YardEntry : Entry;

/// <summary>The boxes of cartons opened at the depot were flattened and counted. A second count of the day replaces the first.</summary>
/// <param name="Expected">Boxes that must have existed by then.</param>
public sealed record DepotBoxesCounted(Code<Item> Item, int Expected, int Flattened, Code<Technician> By) : YardEntry
{
    public override Names Names => new(By: By) { Items = [Item] };
}

/// <summary>A lead wrote off boxes that nobody found.</summary>
/// <param name="Van">Whose boxes they were; null: opened at the depot.</param>
/// <param name="Boxes">Above 0.</param>
public sealed record BoxesWrittenOff(Code<Van>? Van, Code<Item> Item, int Boxes, string Why, Code<Technician> Lead) : YardEntry
{
    public override Names Names => new(Van, Lead) { Items = [Item] };
}

/// <summary>The hauler emptied the cardboard container.</summary>
/// <param name="BookLb">Pounds that the book had in it: what is loaded afterwards counts from there.</param>
/// <param name="FullPercent">How full it was by eye, above 0; null: not said.</param>
/// <param name="WeighedLb">Pounds on the hauler's slip; null: not weighed.</param>
public sealed record ContainerEmptied(double BookLb, double? FullPercent, double? WeighedLb, Code<Technician> By) : YardEntry
{
    public override Names Names => new(By: By);
}

/// <summary>A collecting box went to a recycler or handler.</summary>
/// <param name="StartedOn">Its earliest date.</param>
/// <param name="Amount">Pieces or pounds in it.</param>
/// <param name="To">Who took it, and the slip.</param>
public sealed record CollectingBoxShipped(
    Code<WasteStream> Stream, DateOnly StartedOn, decimal Amount, string To, Code<Technician> By) : YardEntry
{
    public override Names Names => new(By: By) { Stream = Stream };
}

/// <summary>A pickup, or a shipped box, was recorded by mistake and is taken back.</summary>
/// <param name="Entry">The number of the entry that is taken back.</param>
public sealed record YardTakenBack(int Entry, string Why, Code<Technician> By) : YardEntry
{
    public override Names Names => new(By: By);
}
