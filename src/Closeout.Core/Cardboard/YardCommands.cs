namespace Closeout.Cardboard;

/// <summary>Count the flattened boxes of an item that was opened at the depot.</summary>
public sealed record CountDepotBoxes(Code<Item> Item, int Flattened, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot) =>
        depot.Setup.Find(Item) is not { } item ? Refusal.NoSuchItem(Item) with { About = "item" }
        : depot.Setup.Find(By) is not { } by ? Refusal.NoSuchTechnician(By) with { About = "by" }
        : Given.Range(T("Boxes flattened"), Flattened, 0, Refusal.MostAtOnce, "boxes") is { } refused ? refused
        : new DepotBoxesCounted(item.Code, CardboardTotals.OpenedAtDepot(depot, item.Code), Flattened, by.Code);
}

/// <summary>A lead writes off boxes that nobody found.</summary>
/// <param name="Van">Null: opened at the depot.</param>
/// <param name="Boxes">Null: all that are missing.</param>
public sealed record WriteOffBoxes(Code<Van>? Van, Code<Item> Item, int? Boxes, string Why, Code<Technician> Lead) : ICommand
{
    public Decision Decide(Depot depot)
    {
        var van = Van is { } code ? depot.Setup.Find(code) : null;
        if (Van is { } asked && van is null)
            return Refusal.NoSuchVan(asked);

        if (depot.Setup.Find(Item) is not { } item)
            return Refusal.NoSuchItem(Item) with { About = "item" };

        if (Given.Lead(depot.Setup, Lead, T("writes boxes off")) is { } refused)
            return refused;

        var lost = van is null ? LostBoxes.OfDepot(depot) : LostBoxes.Of(depot, van.Code);
        var missing = lost.Where(m => m.Item == item.Code).Sum(m => m.Boxes);
        var boxes = Boxes ?? missing;
        return boxes < 1 || boxes > missing ? YardRefusal.NotSoManyMissing(van, item, boxes, missing) with { About = "boxes" }
            : Given.Words(T("why they are written off"), Why) is { } silent ? silent
            : new BoxesWrittenOff(van?.Code, item.Code, boxes, Why.Trim(), depot.Setup.Find(Lead)!.Code);
    }
}

/// <summary>The hauler emptied the container.</summary>
/// <param name="FullPercent">How full it was by eye, above 0 and at most 120; null: not said.</param>
/// <param name="WeighedLb">Pounds on the hauler's slip, above 0; null: not weighed.</param>
public sealed record EmptyContainer(double? FullPercent, double? WeighedLb, Code<Technician> By) : ICommand
{
    /// <summary>The most pounds of one pickup: no truck takes more. Common practice.</summary>
    public const double MostPickupLb = 100_000;

    /// <summary>A container heaped over its rim.</summary>
    public const double MostPercent = 120;

    public Decision Decide(Depot depot) =>
        depot.Setup.Find(By) is not { } by ? Refusal.NoSuchTechnician(By) with { About = "by" }
        : FullPercent is <= 0 or > MostPercent ? NotIn(T("Full, in percent"), FullPercent.Value, MostPercent) with { About = "percent" }
        : WeighedLb is <= 0 or > MostPickupLb ? NotIn(T("Pounds weighed"), WeighedLb.Value, MostPickupLb) with { About = "weight" }
        : new ContainerEmptied(Container.LoadedLb(depot), FullPercent, WeighedLb, by.Code);

    private static Refusal NotIn(string what, double found, double most) => Refusal.OutOfRange(what, (decimal)found, 1, (decimal)most);
}

/// <summary>An accumulation box goes to a recycler or handler.</summary>
public sealed record ShipCollected(Code<WasteStream> Stream, string To, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot) =>
        WasteStream.Find(Stream) is not { } stream ? YardRefusal.NoSuchStream(Stream) with { About = "stream" }
        : depot.Yard.Collecting.GetValueOrDefault(stream.Code) is not { } box
            ? YardRefusal.NothingCollected(stream) with { About = "stream" }
        : depot.Setup.Find(By) is not { } by ? Refusal.NoSuchTechnician(By) with { About = "by" }
        : Given.Words(T("who took it, and the slip"), To, "to") is { } silent ? silent
        : new CollectingBoxShipped(stream.Code, box.StartedOn, box.Amount, To.Trim(), by.Code);
}
