using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>One van's one evening, as far as its entries tell it.</summary>
/// <param name="Step">The first step without a valid answer.</param>
/// <param name="WeeklyDue">Whether the weekly check is asked.</param>
/// <param name="SpotItems">Items counted blind.</param>
/// <param name="Before">What the book had aboard when the van came in.</param>
/// <param name="Answered">Steps that were confirmed and still hold.</param>
/// <param name="Story">The entries in order, for the tally card.</param>
public sealed record Shift(
    Code<Van> Van,
    Step Step,
    Code<Technician> Technician,
    DateTimeOffset CameInAt,
    bool WeeklyDue,
    IReadOnlyList<Code<Item>> SpotItems,
    ImmutableDictionary<Code<Item>, Holding> Before,
    ImmutableHashSet<Step> Answered,
    ImmutableDictionary<Code<Item>, LeftoverCounted> Counts,
    ImmutableDictionary<Code<Item>, BoxesCounted> Boxes,
    ImmutableDictionary<Code<WasteStream>, decimal> Streams,
    MileageLogged? Mileage,
    ImmutableList<DamageFound> Damages,
    ImmutableDictionary<Code<KitPiece>, KitCounted> Kit,
    WeeklyChecked? Weekly,
    ImmutableList<PhotoAttached> Photos,
    Signed? Signed,
    SignedFor? SignedFor,
    DateTimeOffset? SignedAt,
    CloseoutChecked? Checked,
    ImmutableList<Recorded> Story)
{
    public bool IsClosed => Step == Step.Closed;

    /// <summary>Whether the depot's own questions are asked.</summary>
    public bool HandoverDue { get; init; }

    /// <summary>The depot's own questions as answered; null: not yet.</summary>
    public HandoverAnswered? Handover { get; init; }

    /// <summary>Cartons opened on the road for another van, by item: their boxes come home too.</summary>
    public ImmutableDictionary<Code<Item>, int> OpenedForOthers { get; init; } = ImmutableDictionary<Code<Item>, int>.Empty;

    /// <summary>Whether nothing was recorded of it but that the van came in, or was not used.</summary>
    public bool IsUntouched => Story.Skip(1).All(
        e => e.Entry is LeftoversConfirmed or CardboardConfirmed or MileageLogged { DistanceMi: 0, FuelGal: null });

    /// <summary>Whose name stands under it; null: not signed.</summary>
    public Code<Technician>? SignedBy => SignedFor?.Lead ?? Signed?.Technician;

    /// <summary>The shift that begins when the van comes in.</summary>
    public static Shift Begin(VanCameIn entry, DateTimeOffset at, ImmutableDictionary<Code<Item>, Holding> before) => new(
        entry.Van,
        ShiftFlow.After(Step.OnTheRoad, Trigger.ComeIn),
        entry.Technician,
        at,
        entry.WeeklyDue,
        entry.SpotItems,
        before,
        [],
        ImmutableDictionary<Code<Item>, LeftoverCounted>.Empty,
        ImmutableDictionary<Code<Item>, BoxesCounted>.Empty,
        ImmutableDictionary<Code<WasteStream>, decimal>.Empty,
        null,
        [],
        ImmutableDictionary<Code<KitPiece>, KitCounted>.Empty,
        null,
        [],
        null,
        null,
        null,
        null,
        [new Recorded(0, at, entry)]) { HandoverDue = entry.HandoverDue };

    /// <summary>Boxes that must exist, by item: one for each carton emptied. Items without are not listed.</summary>
    public IEnumerable<(Code<Item> Item, int Boxes)> Expected => OpenedForOthers.Count == 0
        ? Counts.Values.Where(c => c.Emptied > 0).Select(c => (c.Item, c.Emptied))
        : Counts.Keys.Union(OpenedForOthers.Keys).Select(i => (i, ExpectedOf(i))).Where(e => e.Item2 > 0);

    /// <summary>The boxes of an item that must exist.</summary>
    public int ExpectedOf(Code<Item> item) =>
        (Counts.TryGetValue(item, out var count) ? count.Emptied : 0) + OpenedForOthers.GetValueOrDefault(item);

    /// <summary>Boxes flattened: as counted, or as expected once the cardboard was confirmed, else 0.</summary>
    public int FlattenedOf(Code<Item> item) => Boxes.TryGetValue(item, out var counted)
        ? counted.Flattened
        : Answered.Contains(Step.Cardboard) ? ExpectedOf(item) : 0;

    /// <summary>What came home of a waste stream: as counted, else 0.</summary>
    public decimal StreamOf(Code<WasteStream> stream) => Streams.GetValueOrDefault(stream);

    /// <summary>What an entry does to the shift.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here: the book or the rules are wrong.</exception>
    public Shift Evolve(Recorded recorded)
    {
        var told = this with { Story = Story.Add(recorded) };
        return recorded.Entry switch
        {
            LeftoverCounted e => told.Recounted(e),
            LeftoversConfirmed => told.Confirm(Step.Leftovers),
            BoxesCounted e => told.Open(Step.Cardboard) with { Boxes = Boxes.SetItem(e.Item, e) },
            StreamCounted e => told.Open(Step.Cardboard) with { Streams = Streams.SetItem(e.Stream, e.Amount) },
            CardboardConfirmed => told.Confirm(Step.Cardboard),
            MileageLogged e => (told with { Mileage = e }).Confirm(Step.Mileage),
            DamageFound e => told.Open(Step.Damage) with { Damages = Damages.Add(e) },
            DamageConfirmed e => (told with { Damages = e.None ? [] : Damages }).Confirm(Step.Damage),
            KitCounted e => told.Open(Step.Kit) with { Kit = Kit.SetItem(e.Piece, e) },
            KitConfirmed => told.Confirm(Step.Kit),
            PhotoAttached e when !IsClosed => told with { Photos = Photos.Add(e) },
            WeeklyChecked e => (told with { Weekly = e }).Confirm(Step.Weekly),
            HandoverAnswered e => (told with { Handover = e }).Confirm(Step.Handover),
            Signed e => told with { Signed = e, SignedAt = recorded.At, Step = ShiftFlow.After(Step, Trigger.Sign) },
            SignedFor e => told with { SignedFor = e, SignedAt = recorded.At, Step = ShiftFlow.After(Step, Trigger.Sign) },
            CloseoutReopened =>
                told with { Signed = null, SignedFor = null, SignedAt = null, Checked = null,
                    Step = ShiftFlow.After(Step, Trigger.Reopen) },
            CloseoutChecked e when IsClosed && Checked is null => told with { Checked = e },
            _ => throw new InvalidOperationException("it cannot stand in a close-out"),
        };
    }

    /// <summary>The flow must allow an answer to the step here; the answer alone moves nothing.</summary>
    private Shift Open(Step step)
    {
        ShiftFlow.After(Step, ShiftFlow.Answers(step)!.Value);
        return this;
    }

    private Shift Recounted(LeftoverCounted count)
    {
        var told = Open(Step.Leftovers) with { Counts = Counts.SetItem(count.Item, count) };
        return told.ExpectedOf(count.Item) == ExpectedOf(count.Item) ? told : told.AskBoxes(count.Item);
    }

    /// <summary>
    /// The shift with so much more of an item aboard when the van came in, or less: it came from another van, or went to one. What was
    /// counted of it stays, and means something else.
    /// </summary>
    /// <param name="boxed">Sealed cartons more.</param>
    /// <param name="opened">Cartons opened for it.</param>
    public Shift Given(Item item, int boxed, int loose, int opened)
    {
        var old = Before.GetValueOrDefault(item.Code);
        var before = new Holding(old.Sealed + boxed, old.Loose + loose);
        var told = this with
        {
            Before = before == default ? Before.Remove(item.Code) : Before.SetItem(item.Code, before),
            OpenedForOthers = opened == 0
                ? OpenedForOthers
                : OpenedForOthers.SetItem(item.Code, OpenedForOthers.GetValueOrDefault(item.Code) + opened),
            Counts = Counts.TryGetValue(item.Code, out var count)
                ? Counts.SetItem(item.Code, Counting.Against(before, count, item.UnitsPerCarton))
                : Counts,
        };
        return IsClosed || told.ExpectedOf(item.Code) == ExpectedOf(item.Code) ? told : told.AskBoxes(item.Code);
    }

    /// <summary>The boxes flattened of an item were counted against another number: ask cardboard again, keep the rest.</summary>
    private Shift AskBoxes(Code<Item> item) => this with
    {
        Boxes = Boxes.Remove(item),
        Answered = Answered.Remove(Step.Cardboard),
        Step = ShiftFlow.Allows(Step, Trigger.BoxesChanged) ? ShiftFlow.After(Step, Trigger.BoxesChanged) : Step,
    };

    private Shift Confirm(Step step)
    {
        var answered = Answered.Add(step);
        var next = ShiftFlow.After(Step, ShiftFlow.Answers(step)!.Value);

        // Past the answers that still hold, to the first question that is open.
        while (next != Step.SignOff && (answered.Contains(next) || Passes(next)))
            next = Passes(next) ? ShiftFlow.After(next, Trigger.NotDue) : ShiftFlow.After(next, ShiftFlow.Answers(next)!.Value);

        return this with { Answered = answered, Step = next };
    }

    private bool Passes(Step step) => (step == Step.Weekly && !WeeklyDue) || (step == Step.Handover && !HandoverDue);
}
