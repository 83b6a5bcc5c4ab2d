using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>Count a kit piece.</summary>
/// <param name="Count">Null: as required.</param>
/// <param name="Expires">The date after which it is no longer good; null: not read.</param>
/// <param name="TestedOn">When it was last calibrated or bump-tested; null: not read.</param>
public sealed record CountKit(Code<Van> Van, Code<KitPiece> Piece, int? Count, DateOnly? Expires = null, DateOnly? TestedOn = null)
    : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Kit;

    protected override Decision Decide(Depot depot, Shift shift)
    {
        if (depot.Setup.Find(Piece) is not { } piece)
            return Refusal.NoSuchPiece(Piece);

        if (TestedOn is { } tested && tested > depot.Date)
            return Refusal.DateAhead(T($"The last test of {piece.Description}"), tested, depot.Date) with { About = "tested" };

        var required = depot.Setup.Required(shift.Van, piece);
        var count = Count ?? required;
        var dates = KitCheck.DatesOf(depot, shift.Van, piece.Code);
        return Given.Range(piece.Description, count, 0, Math.Max(2, 2 * required)) is { } refused
            ? refused
            : new KitCounted(shift.Van, piece.Code, count, Expires ?? dates.Expires, TestedOn ?? dates.TestedOn);
    }
}

/// <summary>The kit is done; what was not counted is all there.</summary>
public sealed record ConfirmKit(Code<Van> Van) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Kit;

    protected override Decision Decide(Depot depot, Shift shift) => new KitConfirmed(shift.Van);
}
