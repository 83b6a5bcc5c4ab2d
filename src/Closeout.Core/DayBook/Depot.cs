using System.Collections.Immutable;
using Closeout.Facts;

namespace Closeout.DayBook;

/// <summary>The depot on a business date: the fold of a page. The one place that knows every kind of entry.</summary>
/// <param name="Number">Number of the last entry folded.</param>
public sealed record Depot(
    DateOnly Date,
    bool Rehearsal,
    int Number,
    Setup Setup,
    Ledger Ledger,
    ImmutableDictionary<Code<Van>, VanCarried> Carried,
    ImmutableDictionary<Code<Van>, Shift> Shifts,
    ImmutableList<Booking> Bookings,
    ImmutableList<Order> Orders,
    ImmutableList<DailyUse> Use,
    ImmutableDictionary<(DateOnly, Code<Van>), VanUse> ByVan,
    ImmutableList<CountedDay> Counted,
    ImmutableList<Standing> Overrides,
    ImmutableDictionary<(Code<Van>, Code<Item>), SpotCounted> SpotCounts,
    ImmutableList<Promise> Promises,
    ImmutableList<KeptPromises> Kept,
    ImmutableDictionary<(Code<Van>, Code<Item>), LoadedLine> Loaded,
    ImmutableList<HoldsLifted> Lifted,
    ImmutableList<HoldPlaced> Placed,
    ImmutableList<(DateTimeOffset At, IncidentClosed Entry)> Closed,
    int Incidents,
    Yard Yard,
    ImmutableDictionary<Code<Van>, VanExplained> Explained,
    PinState Pins)
{
    /// <summary>The van's close-out; null while it is on the road.</summary>
    public Shift? Shift(Code<Van> van) => Shifts.GetValueOrDefault(van);

    /// <summary>Whether the van is closed out, or never went out: nobody has to do anything with it tonight.</summary>
    public bool IsDone(Code<Van> van) => Shift(van)?.IsClosed ?? Explained.GetValueOrDefault(van) is { StayedIn: true };

    /// <summary>What was carried forward of the van.</summary>
    public VanCarried Van(Code<Van> van) => Carried.TryGetValue(van, out var carried)
        ? carried
        : VanCarried.New(Setup.Van(van));

    /// <summary>Units of the item that today's visits of the van report; null: no reports were loaded for it.</summary>
    public int? Reported(Code<Van> van, Code<Item> item) => ByVan.TryGetValue((Date, van), out var use)
        ? use.Items.Where(i => i.Item == item).Sum(i => i.Units)
        : null;

    /// <summary>The same depot with the units of files, whatever its screens show.</summary>
    public Depot InFileUnits => this with { Setup = Setup with { Depot = Setup.Depot with { Metric = false } } };

    /// <summary>Folds a page from its first entry on.</summary>
    public static Depot Fold(IEnumerable<Recorded> entries) =>
        entries.Aggregate((Depot?)null, (depot, e) => depot is null ? Open(e) : depot.Apply(e))
        ?? throw new InvalidOperationException("a page without entries");

    /// <summary>The depot that a page opens with.</summary>
    /// <exception cref="InvalidOperationException">A page begins with something else.</exception>
    public static Depot Open(Recorded first) => first.Entry is PageOpened page
        ? new Depot(
            page.Date,
            page.Rehearsal,
            first.Number,
            page.Carried.Setup,
            Ledger.Carried(page.Carried.Balances),
            page.Carried.Vans.ToImmutableDictionary(v => v.Van),
            ImmutableDictionary<Code<Van>, Shift>.Empty,
            [.. page.Carried.Bookings],
            [.. page.Carried.Orders],
            [.. page.Carried.Use],
            page.Carried.ByVan.ToImmutableDictionary(v => (v.Date, v.Van)),
            [.. page.Carried.Counted],
            [.. page.Carried.Overrides],
            page.Carried.SpotCounts.ToImmutableDictionary(s => (s.Van, s.Item)),
            [.. page.Carried.Promises],
            [.. page.Carried.Kept],
            ImmutableDictionary<(Code<Van>, Code<Item>), LoadedLine>.Empty,
            [],
            [],
            [],
            page.Carried.Incidents,
            Yard.Open(page.Carried.Yard),
            ImmutableDictionary<Code<Van>, VanExplained>.Empty,
            PinState.Open(page.Carried.People, page.Carried.Kiosks))
        : throw new InvalidOperationException($"entry {first.Number} opens a page and is {first.Entry.GetType().Name}");

    /// <summary>The depot after one more entry.</summary>
    /// <exception cref="InvalidOperationException">The entry cannot follow: it is named, never skipped.</exception>
    public Depot Apply(Recorded recorded)
    {
        if (recorded.Number != Number + 1)
        {
            throw new InvalidOperationException($"entry {recorded.Number} follows entry {Number}");
        }

        if (Unknown(recorded.Entry) is { } unknown)
        {
            throw new InvalidOperationException($"entry {recorded.Number}, {recorded.Entry.GetType().Name}, names {unknown}, which the set-up does not have");
        }

        try
        {
            return After(recorded);
        }
        catch (InvalidOperationException e)
        {
            throw new InvalidOperationException($"entry {recorded.Number}, {recorded.Entry.GetType().Name}: {e.Message}", e);
        }
    }

    private string? Unknown(Entry entry) => entry switch
    {
        VanEntry e when Setup.Find(e.Van) is null => $"van {e.Van}",
        VanCameIn e when Setup.Find(e.Technician) is null => $"technician {e.Technician}",
        Signed e when Setup.Find(e.Technician) is null => $"technician {e.Technician}",
        LeftoverCounted e when Setup.Find(e.Item) is null => $"item {e.Item}",
        BoxesCounted e when Setup.Find(e.Item) is null => $"item {e.Item}",
        HoldsLifted e when Setup.Find(e.Van) is null => $"van {e.Van}",
        HoldPlaced e when Setup.Find(e.Van) is null => $"van {e.Van}",
        VanExplained e when Setup.Find(e.Van) is null => $"van {e.Van}",
        BookingsMoved e when Setup.Find(e.From) is null || Setup.Find(e.To) is null => $"van {(Setup.Find(e.From) is null ? e.From : e.To)}",
        IncidentClosed e when Setup.Find(e.Van) is null => $"van {e.Van}",
        DepotBoxesCounted e when Setup.Find(e.Item) is null => $"item {e.Item}",
        BoxesWrittenOff { Van: { } van } when Setup.Find(van) is null => $"van {van}",
        BoxesWrittenOff e when Setup.Find(e.Item) is null => $"item {e.Item}",
        StreamCounted e when WasteStream.Find(e.Stream) is null => $"waste stream {e.Stream}",
        CollectingBoxShipped e when WasteStream.Find(e.Stream) is null => $"waste stream {e.Stream}",
        PlanOverridden e when Setup.Find(e.Van) is null => $"van {e.Van}",
        PlanOverridden { Item: { } item } when Setup.Find(item) is null => $"item {item}",
        VanLoaded e when Setup.Find(e.Van) is null => $"van {e.Van}",
        VanLoaded e when e.Lines.FirstOrDefault(l => Setup.Find(l.Item) is null) is { } line => $"item {line.Item}",
        DeliveryReceived e when Setup.Find(e.Item) is null => $"item {e.Item}",
        CountCorrected e when Setup.Find(e.Item) is null => $"item {e.Item}",
        PinSet e when Setup.Find(e.Person) is null => $"technician {e.Person}",
        PinReset e when Setup.Find(e.Person) is null => $"technician {e.Person}",
        PinFailed e when Setup.Find(e.Person) is null => $"technician {e.Person}",
        PinPassed e when Setup.Find(e.Person) is null => $"technician {e.Person}",
        KitCounted e when Setup.Find(e.Piece) is null => $"kit piece {e.Piece}",
        _ => null,
    };

    private Depot After(Recorded recorded)
    {
        var next = this with { Number = recorded.Number, Ledger = Ledger.Post(recorded.Entry.Moves) };
        return recorded.Entry switch
        {
            VanCameIn e when Shift(e.Van) is null => next with { Explained = Explained.Remove(e.Van), Shifts = Shifts.Add(e.Van, Closeout.DayBook.Shift.Begin(e, recorded.At, Aboard(e.Van))) },
            Signed { Proof: Proof.Rehearsal } when !Rehearsal => throw new InvalidOperationException("signed without a PIN, and this is no rehearsal"),
            VanEntry e when Shift(e.Van) is { } shift => next with
            {
                Incidents = e is DamageFound found ? After(found) : Incidents,
                Yard = e is StreamCounted counted ? Yard.Counted(counted, shift.StreamOf(counted.Stream), Date) : Yard,
                Shifts = Shifts.SetItem(e.Van, shift.Evolve(recorded)),
                SpotCounts = e is LeftoverCounted c && shift.SpotItems.Contains(c.Item)
                    ? SpotCounts.SetItem((c.Van, c.Item), new SpotCounted(c.Van, c.Item, Date, c.Gap))
                    : SpotCounts,
            },
            PlanOverridden e => next with { Overrides = [.. Overrides.Where(o => !Replaces(e, o.Change)), new Standing(recorded.Number, e)] },
            OverrideWithdrawn e when Overrides.Any(o => o.Number == e.Number) => next with { Overrides = Overrides.RemoveAll(o => o.Number == e.Number) },
            VanExplained e => next with { Explained = Explained.SetItem(e.Van, e) },
            BookingsMoved e => next with { Bookings = Moved(e) },
            VanLoaded e => next with { Loaded = Loaded.SetItems(e.Lines.Select(l => KeyValuePair.Create((e.Van, l.Item), l))) },
            DeliveryReceived e => next with { Orders = Received(e) },
            CountCorrected or BookSalvaged => next,
            HoldsLifted e => next with { Lifted = Lifted.Add(e) },
            HoldPlaced e => next with
            {
                // A hold lifted tonight and put on again stands again.
                Placed = Placed.Add(e),
                Lifted = [.. Lifted.Select(l => l.Van == e.Van ? l with { Reasons = [.. l.Reasons.Where(r => r != e.Reason)] } : l)],
            },
            IncidentClosed e when Closed.All(c => c.Entry.Number != e.Number) => next with { Closed = Closed.Add((recorded.At, e)) },
            PinSet or PinReset or PinFailed or PinPassed when !Rehearsal => next with { Pins = Pins.Evolve(recorded.Entry, recorded.At) },
            DepotBoxesCounted or BoxesWrittenOff or ContainerEmptied or CollectingBoxShipped => next with { Yard = Yard.Evolve(recorded.Entry) },
            DayFolderLoaded e => next with
            {
                Setup = e.Setup,
                Pins = Pins.Promoted(Setup, e.Setup),
                Bookings = [.. Bookings.Where(b => !e.BookingDates.Contains(b.Date)), .. e.Bookings],
                Use = [.. Use.Where(u => !e.UseDates.Contains(u.Date)), .. e.Use],
                ByVan = ByVan.RemoveRange(ByVan.Keys.Where(k => e.UseDates.Contains(k.Item1)))
                    .SetItems(e.ByVan.Select(v => KeyValuePair.Create((v.Date, v.Van), v))),
                Counted = Counted.RemoveAll(d => e.Reported.Contains(new VanDay(d.Date, d.Van))),
                Orders = e.Orders is null ? Orders : [.. e.Orders],
            },
            _ => throw new InvalidOperationException("it cannot stand here"),
        };
    }

    private int After(DamageFound found) => found.Number > Incidents
        ? found.Number
        : throw new InvalidOperationException($"incident {found.Number} follows incident {Incidents}");

    /// <summary>The bookings with visits of one van on another; booked visits of a kind stay one line.</summary>
    private ImmutableList<Booking> Moved(BookingsMoved moved)
    {
        var bookings = Bookings.ToBuilder();
        foreach (var (kind, visits) in moved.Visits)
        {
            foreach (var (van, change) in new[] { (moved.From, -visits), (moved.To, visits) })
            {
                var at = bookings.FindIndex(b => b.Date == moved.Date && b.Van == van && b.Kind == kind);
                var now = (at < 0 ? 0 : bookings[at].Visits) + change;
                if (now < 0)
                {
                    throw new InvalidOperationException($"{visits} visits {kind} of {van} were not booked");
                }

                var booking = new Booking(moved.Date, van, kind, now);
                if (at < 0)
                {
                    bookings.Add(booking);
                }
                else
                {
                    bookings[at] = booking;
                }
            }
        }

        bookings.RemoveAll(b => b.Visits == 0 && b.Date == moved.Date && b.Van == moved.From);
        return bookings.ToImmutable();
    }

    /// <summary>A second change of the same thing replaces the first.</summary>
    private static bool Replaces(PlanOverridden change, PlanOverridden old) =>
        (change.Kind, change.Van, change.Item, change.Date) == (old.Kind, old.Van, old.Item, old.Date);

    /// <summary>What is still on order: a delivery fills the orders due first.</summary>
    private ImmutableList<Order> Received(DeliveryReceived delivery)
    {
        var (left, orders) = (delivery.Ordered, Orders.ToBuilder());
        foreach (var order in Orders.Where(o => o.Item == delivery.Item).OrderBy(o => o.Due))
        {
            var filled = Math.Min(left, order.Cartons);
            left -= filled;
            orders[orders.IndexOf(order)] = order with { Cartons = order.Cartons - filled };
        }

        orders.RemoveAll(o => o.Cartons == 0);
        return left == 0 ? orders.ToImmutable() : throw new InvalidOperationException($"{delivery.Ordered} cartons of {delivery.Item} were not on order");
    }

    private ImmutableDictionary<Code<Item>, Holding> Aboard(Code<Van> van) => Setup.Items
        .Select(i => (i.Code, Held: Ledger.Aboard(van, i)))
        .Where(h => h.Held != default)
        .ToImmutableDictionary(h => h.Code, h => h.Held);
}
