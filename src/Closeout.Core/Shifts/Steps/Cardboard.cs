namespace Closeout.Shifts.Steps;

/// <summary>Count the flattened boxes of one item.</summary>
public sealed record CountBoxes(Code<Van> Van, Code<Item> Item, int Flattened) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Cardboard;

    protected override Decision Decide(Depot depot, Shift shift) =>
        depot.Setup.Find(Item) is not { } item ? Refusal.NoSuchItem(Item)
        : Given.Range(T("Boxes flattened"), Flattened, 0, Math.Max(Refusal.MostPieces, shift.ExpectedOf(item.Code))) is { } refused
            ? refused
        : new BoxesCounted(shift.Van, item.Code, shift.ExpectedOf(item.Code), Flattened);
}

/// <summary>Count what came home of a waste stream, in its unit.</summary>
public sealed record CountStream(Code<Van> Van, Code<WasteStream> Stream, decimal Amount) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Cardboard;

    protected override Decision Decide(Depot depot, Shift shift)
    {
        if (WasteStream.Find(Stream) is not { } stream || !depot.Setup.Depot.Streams.Contains(stream.Code))
            return Refusal.StreamIsOff(Stream, depot.Setup.Depot.Streams);

        var most = stream.IsWeighed ? MostLb(depot.Setup.Van(shift.Van)) : Refusal.MostPieces;
        if (Amount < 0 || Amount > most || (!stream.IsWeighed && Amount != Math.Truncate(Amount)))
        {
            return Refusal.OutOfRange(
                stream.IsWeighed ? stream.Description : T($"{stream.Description}, in whole pieces,"), Amount, 0, most);
        }

        var less = shift.StreamOf(stream.Code) - Amount;
        var inBox = depot.Yard.AmountOf(stream.Code);
        return less > inBox ? Refusal.BoxTooLow(stream, inBox, less) : new StreamCounted(shift.Van, stream.Code, Amount);
    }

    /// <summary>No van brings home more pounds than its payload; where none is stated, than a heavy van's.</summary>
    private static decimal MostLb(Van van) => van.PayloadLb > 0 ? Math.Floor((decimal)van.PayloadLb) : 10_000;
}

/// <summary>The cardboard is done; what was not counted is as expected.</summary>
public sealed record ConfirmCardboard(Code<Van> Van) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Cardboard;

    protected override Decision Decide(Depot depot, Shift shift) => new CardboardConfirmed(shift.Van);
}
