using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>The depot's yard on a business date: what a page carried into it, and what was recorded of it since.</summary>
/// <param name="DepotBoxes">Boxes of cartons opened at the depot, as counted tonight.</param>
/// <param name="WrittenOff">Tonight's, in order.</param>
/// <param name="Emptied">Tonight's pickups, in order.</param>
/// <param name="Collecting">Collecting boxes with something in them.</param>
/// <param name="Shipped">Collecting boxes shipped tonight, in order.</param>
/// <param name="MayGoBack">Tonight's pickups and shipments, by the number of their entry.</param>
public sealed record Yard(
    YardCarried Carried,
    ImmutableDictionary<Code<Item>, DepotBoxesCounted> DepotBoxes,
    ImmutableList<BoxesWrittenOff> WrittenOff,
    ImmutableList<ContainerEmptied> Emptied,
    ImmutableDictionary<Code<WasteStream>, CollectingBox> Collecting,
    ImmutableList<CollectingBoxShipped> Shipped,
    ImmutableDictionary<int, YardEntry> MayGoBack)
{
    public static Yard Open(YardCarried carried) => new(
        carried, ImmutableDictionary<Code<Item>, DepotBoxesCounted>.Empty, [], [], carried.Collecting.ToImmutableDictionary(b => b.Stream),
        [], ImmutableDictionary<int, YardEntry>.Empty);

    /// <summary>What is in a stream's collecting box; 0: there is none.</summary>
    public decimal AmountOf(Code<WasteStream> stream) => Collecting.GetValueOrDefault(stream)?.Amount ?? 0;

    /// <summary>After a van's count: the box holds so much more or less. The first thing in a box gives it its date.</summary>
    /// <param name="before">What the van's close-out said of the stream before.</param>
    /// <exception cref="InvalidOperationException">Less than nothing would be in the box.</exception>
    public Yard Counted(StreamCounted count, decimal before, DateOnly today)
    {
        var amount = AmountOf(count.Stream) + count.Amount - before;
        return amount switch
        {
            < 0 => throw new InvalidOperationException($"{-amount} of {count.Stream} fewer than nothing in the accumulation box"),
            0 => this with { Collecting = Collecting.Remove(count.Stream) },
            _ => this with
            {
                Collecting = Collecting.SetItem(
                    count.Stream, new(count.Stream, Collecting.GetValueOrDefault(count.Stream)?.StartedOn ?? today, amount)),
            },
        };
    }

    /// <summary>What an entry of the yard does.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    public Yard Evolve(YardEntry entry, int number) => entry switch
    {
        DepotBoxesCounted e => this with { DepotBoxes = DepotBoxes.SetItem(e.Item, e) },
        BoxesWrittenOff e => this with { WrittenOff = WrittenOff.Add(e) },
        ContainerEmptied e => this with { Emptied = Emptied.Add(e), MayGoBack = MayGoBack.Add(number, e) },
        CollectingBoxShipped e when Collecting.ContainsKey(e.Stream) =>
            this with { Collecting = Collecting.Remove(e.Stream), Shipped = Shipped.Add(e), MayGoBack = MayGoBack.Add(number, e) },
        YardTakenBack e when MayGoBack.TryGetValue(e.Entry, out var back) =>
            (this with { MayGoBack = MayGoBack.Remove(e.Entry) }).Without(back),
        _ => throw new InvalidOperationException("it cannot stand in the yard"),
    };

    private Yard Without(YardEntry entry) => entry switch
    {
        ContainerEmptied e => this with { Emptied = Emptied.Remove(e) },
        CollectingBoxShipped e when !Collecting.ContainsKey(e.Stream) => this with
        {
            Shipped = Shipped.Remove(e),
            Collecting = Collecting.Add(e.Stream, new(e.Stream, e.StartedOn, e.Amount)),
        },
        _ => throw new InvalidOperationException("it cannot be taken back"),
    };
}
