using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>The depot on a business date: the fold of a page. What an entry does is said by the part that it is of.</summary>
/// <param name="Number">Number of the last entry folded.</param>
/// <param name="Shifts">Tonight's close-outs.</param>
public sealed record Depot(
    DateOnly Date,
    bool Rehearsal,
    int Number,
    Setup Setup,
    StockState Stock,
    PlanningState Planning,
    VansState Vans,
    ImmutableDictionary<Code<Van>, Shift> Shifts,
    Yard Yard,
    PinState Pins)
{
    /// <summary>The van's close-out; null while it is on the road.</summary>
    public Shift? Shift(Code<Van> van) => Shifts.GetValueOrDefault(van);

    /// <summary>Whether the van is closed out, or never went out: nobody has to do anything with it tonight.</summary>
    public bool IsDone(Code<Van> van) => Shift(van)?.IsClosed ?? Vans.Explained.GetValueOrDefault(van) is { StayedIn: true };

    /// <summary>What was carried forward of the van.</summary>
    public VanCarried Van(Code<Van> van) => Vans.Carried.TryGetValue(van, out var carried) ? carried : VanCarried.New(Setup.Van(van));

    /// <summary>Units of the item that today's visits of the van report; null: no reports were loaded for it.</summary>
    public int? Reported(Code<Van> van, Code<Item> item) => Planning.ByVan.TryGetValue((Date, van), out var use)
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
    public static Depot Open(Recorded first) => first.Entry is PageOpened { Carried: var carried } page
        ? new(
            page.Date,
            page.Rehearsal,
            first.Number,
            carried.Setup,
            StockState.Open(carried),
            PlanningState.Open(carried, page.Date),
            VansState.Open(carried),
            ImmutableDictionary<Code<Van>, Shift>.Empty,
            Yard.Open(carried.Yard),
            PinState.Open(carried.People, carried.Kiosks))
        : throw new InvalidOperationException($"entry {first.Number} opens a page and is {first.Entry.GetType().Name}");

    /// <summary>The depot after one more entry.</summary>
    /// <exception cref="InvalidOperationException">The entry cannot follow: it is named, never skipped.</exception>
    public Depot Apply(Recorded recorded)
    {
        if (recorded.Number != Number + 1)
            throw new InvalidOperationException($"entry {recorded.Number} follows entry {Number}");

        if (Unknown(recorded.Entry.Names) is { } unknown)
        {
            throw new InvalidOperationException(
                $"entry {recorded.Number}, {recorded.Entry.GetType().Name}, names {unknown}, which the set-up does not have");
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

    /// <summary>What of it the set-up does not have, in words; null: it has all.</summary>
    private string? Unknown(Names names) =>
        new[] { names.Van, names.OtherVan }.FirstOrDefault(v => v is { } van && Setup.Find(van) is null) is { } noVan ? T($"van {noVan}")
        : names.Items.FirstOrDefault(i => Setup.Find(i) is null) is { Text: not null } noItem ? T($"item {noItem}")
        : names.Piece is { } piece && Setup.Find(piece) is null ? T($"kit piece {piece}")
        : names.Stream is { } stream && WasteStream.Find(stream) is null ? T($"waste stream {stream}")
        : new[] { names.By, names.About }.FirstOrDefault(p => p is { } person && !Knows(person)) is { } nobody ? T($"technician {nobody}")
        : null;

    /// <summary>Whoever brought a van in tonight stays known, also where crew.csv was loaded without that code since.</summary>
    private bool Knows(Code<Technician> person) => Setup.Find(person) is not null || Shifts.Values.Any(s => s.Technician == person);

    private Depot After(Recorded recorded)
    {
        var next = this with { Number = recorded.Number, Stock = Stock with { Ledger = Stock.Ledger.Post(recorded.Entry.Moves) } };
        return recorded.Entry switch
        {
            VanEntry e => next.After(e, recorded),
            StockEntry e => next with
            {
                Stock = next.Stock.Evolve(e, recorded.Number, Date, Setup),
                Shifts = Gifts.After(this, e),
            },
            PlanEntry e => next with { Planning = Planning.Evolve(e, recorded.Number) },
            HoldEntry e => next with { Vans = Vans.Evolve(e, recorded.At) },
            YardEntry e => next with { Yard = Yard.Evolve(e, recorded.Number) },
            PinEntry e when !Rehearsal => next with { Pins = Pins.Evolve(e, recorded.At) },
            BookSalvaged => next,
            DayFolderLoaded e => next with
            {
                Setup = e.Setup,
                Pins = Pins.Staying(Setup, e.Setup),
                Planning = Planning.Loaded(e),
                Stock = e.Orders is null ? next.Stock : next.Stock.Ordered(e.Orders),
            },
            _ => throw new InvalidOperationException("it cannot stand here"),
        };
    }

    private Depot After(VanEntry entry, Recorded recorded) => (entry, Shift(entry.Van)) switch
    {
        (VanCameIn e, null) => this with { Vans = Vans.CameIn(e.Van), Shifts = Shifts.Add(e.Van, Begin(e, recorded.At)) },
        (VanSentBack e, { IsUntouched: true }) => this with { Shifts = Shifts.Remove(e.Van) },
        (Signed { Proof: Proof.Rehearsal }, _) when !Rehearsal =>
            throw new InvalidOperationException("signed without a PIN, and this is no rehearsal"),
        (not (VanCameIn or VanSentBack), { } shift) => this with
        {
            Shifts = Shifts.SetItem(entry.Van, shift.Evolve(recorded)),
            Vans = entry is DamageFound found ? Vans.Found(found) : Vans,
            Yard = entry is StreamCounted stream ? Yard.Counted(stream, shift.StreamOf(stream.Stream), Date) : Yard,
            Stock = entry is LeftoverCounted count ? Stock.Counted(count, shift.SpotItems.Contains(count.Item), Date) : Stock,
        },
        _ => throw new InvalidOperationException("it cannot stand here"),
    };

    private Shift Begin(VanCameIn entry, DateTimeOffset at) => DayBook.Shift.Begin(entry, at, Setup.Items
        .Select(i => (i.Code, Held: Stock.Ledger.Aboard(entry.Van, i)))
        .Where(h => h.Held != default)
        .ToImmutableDictionary(h => h.Code, h => h.Held));
}
