using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;

namespace Closeout.Cardboard;

/// <summary>The rules of the yard.</summary>
public static class YardDecider
{
    /// <summary>The most pounds of one pickup: no truck takes more. Common practice.</summary>
    public const double MostPickupLb = 100_000;

    /// <summary>Decides a command on the book as it stands. Everything it accepts, the fold takes.</summary>
    public static Decision Decide(Depot depot, YardCommand command) => command switch
    {
        CountDepotBoxes c => Count(depot, c),
        WriteOffBoxes c => WriteOff(depot, c),
        EmptyContainer c => Empty(depot, c),
        ShipCollected c => Ship(depot, c),
        _ => throw new InvalidOperationException($"no rule for {command.GetType().Name}"),
    };

    private static Decision Count(Depot depot, CountDepotBoxes c)
    {
        if (depot.Setup.Find(c.Item) is not { } item)
        {
            return Refusal.NoSuchItem(c.Item) with { About = "item" };
        }

        if (depot.Setup.Find(c.By) is not { } by)
        {
            return Refusal.NoSuchTechnician(c.By) with { About = "by" };
        }

        return c.Flattened is < 0 or > Refusal.MostAtOnce
            ? Refusal.OutOfRange("Boxes flattened", c.Flattened, 0, Refusal.MostAtOnce) with { About = "boxes" }
            : new DepotBoxesCounted(item.Code, CardboardTotals.OpenedAtDepot(depot, item.Code), c.Flattened, by.Code);
    }

    private static Decision WriteOff(Depot depot, WriteOffBoxes c)
    {
        if (c.Van is { } code && depot.Setup.Find(code) is null)
        {
            return Refusal.NoSuchVan(code);
        }

        if (depot.Setup.Find(c.Item) is not { } item)
        {
            return Refusal.NoSuchItem(c.Item) with { About = "item" };
        }

        if (Given.Lead(depot.Setup, c.Lead, "writes boxes off") is { } refused)
        {
            return refused;
        }

        var van = c.Van is { } named ? depot.Setup.Van(named) : null;
        var missing = (van is null ? LostBoxes.OfDepot(depot) : LostBoxes.Of(depot, van.Code)).Where(m => m.Item == item.Code).Sum(m => m.Boxes);
        var boxes = c.Boxes ?? missing;
        if (boxes < 1 || boxes > missing)
        {
            return YardRefusal.NotSoManyMissing(van, item, boxes, missing) with { About = "boxes" };
        }

        return Given.Words("why they are written off", c.Why) is { } silent
            ? silent
            : new BoxesWrittenOff(van?.Code, item.Code, boxes, c.Why.Trim(), depot.Setup.Find(c.Lead)!.Code);
    }

    private static Decision Empty(Depot depot, EmptyContainer c)
    {
        if (depot.Setup.Find(c.By) is not { } by)
        {
            return Refusal.NoSuchTechnician(c.By) with { About = "by" };
        }

        if (c.FullPercent is { } percent && percent is <= 0 or > 150)
        {
            return Refusal.OutOfRange("Full, in percent", (decimal)c.FullPercent!.Value, 1, 150) with { About = "percent" };
        }

        return c.WeighedLb is { } lb && lb is <= 0 or > MostPickupLb
            ? Refusal.OutOfRange("Pounds weighed", (decimal)c.WeighedLb!.Value, 1, (decimal)MostPickupLb) with { About = "weight" }
            : new ContainerEmptied(Container.LoadedLb(depot), c.FullPercent, c.WeighedLb, by.Code);
    }

    private static Decision Ship(Depot depot, ShipCollected c)
    {
        if (WasteStream.Find(c.Stream) is not { } stream)
        {
            return YardRefusal.NoSuchStream(c.Stream) with { About = "stream" };
        }

        if (depot.Yard.Collecting.GetValueOrDefault(stream.Code) is not { } box)
        {
            return YardRefusal.NothingCollected(stream) with { About = "stream" };
        }

        if (depot.Setup.Find(c.By) is not { } by)
        {
            return Refusal.NoSuchTechnician(c.By) with { About = "by" };
        }

        return Given.Words("who took it, and the slip", c.To, "to") is { } silent
            ? silent
            : new CollectingBoxShipped(stream.Code, box.StartedOn, box.Amount, c.To.Trim(), by.Code);
    }
}
