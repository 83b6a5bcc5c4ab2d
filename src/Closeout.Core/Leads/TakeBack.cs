namespace Closeout.Leads;

/// <summary>
/// Take back what was recorded by mistake tonight: a load of one item, a delivery, a pickup, a shipped box. Whoever recorded it may, and a
/// lead, as long as nothing was built on it. The mistake stays in the day book; a new entry undoes it.
/// </summary>
/// <param name="Entry">The number of the entry.</param>
/// <param name="Item">Of a load of several items: which; null: the only one.</param>
public sealed record TakeBack(int Entry, Code<Item>? Item, string Why, Code<Technician> By) : ICommand
{
    public Decision Decide(Depot depot) =>
        depot.Setup.Find(By) is not { } by ? Refusal.NoSuchTechnician(By) with { About = "by" }
        : RecordedBy(depot) is not { } recorded ? LeadRefusal.NotToTakeBack(Entry) with { About = "number" }
        : recorded.By is { } person && person != by.Code && !by.IsLead ? LeadRefusal.NotWhoRecorded(Entry, person) with { About = "by" }
        : Given.Words(T("why it is taken back"), Why) is { } silent ? silent
        : depot.Stock.MayGoBack.GetValueOrDefault(Entry) is { } stock ? Stock(depot, stock.Entry, by)
        : Yard(depot, depot.Yard.MayGoBack[Entry], by);

    /// <summary>What may be taken back by that number; null: nothing.</summary>
    public static Entry? Of(Depot depot, int number) =>
        depot.Stock.MayGoBack.GetValueOrDefault(number)?.Entry ?? (Facts.Entry?)depot.Yard.MayGoBack.GetValueOrDefault(number);

    private Names? RecordedBy(Depot depot) => Of(depot, Entry)?.Names;

    private Decision Stock(Depot depot, StockEntry entry, Technician by)
    {
        var (item, moves) = entry switch
        {
            DeliveryReceived e => (e.Item, e.Moves.Select(m => m.Back())),
            VanLoaded { Lines: [var only] } e when Item is null || Item == only.Item => (only.Item, Moves(depot, e.Van, only)),
            VanLoaded e when e.Lines.FirstOrDefault(l => l.Item == Item) is { } line => (line.Item, Moves(depot, e.Van, line)),
            VanLoaded e => (default, []),
            _ => throw new InvalidOperationException($"no such entry to take back: {entry}"),
        };
        var change = moves.ToList();
        return item == default
                ? LeadRefusal.WhichItem(Entry, [.. ((VanLoaded)entry).Lines.Select(l => l.Item)]) with { About = "item" }
            : change.FirstOrDefault(m => depot.Stock.Ledger.Units(m.From, m.Item) < m.Units) is { Units: > 0 } gone
                ? LeadRefusal.NoLongerThere(Entry, gone, depot.Stock.Ledger.Units(gone.From, gone.Item)) with { About = "number" }
            : new StockTakenBack(Entry, item, change, Why.Trim(), by.Code);
    }

    private Decision Yard(Depot depot, YardEntry entry, Technician by) =>
        entry is CollectingBoxShipped box && depot.Yard.Collecting.ContainsKey(box.Stream)
            ? LeadRefusal.NextBoxBegun(Entry, WasteStream.Of(box.Stream)) with { About = "number" }
            : new YardTakenBack(Entry, Why.Trim(), by.Code);

    /// <summary>What is unloaded: loose units go into the bin, also those of a carton that was opened for them.</summary>
    private static IEnumerable<Move> Moves(Depot depot, Code<Van> van, LoadedLine line) =>
    [
        .. Move.Signed(line.Item, line.Sealed * depot.Setup.Item(line.Item).UnitsPerCarton, Place.Sealed(van), Place.Shelf),
        .. Move.Signed(line.Item, line.Loose, Place.Loose(van), Place.Bin),
    ];
}
