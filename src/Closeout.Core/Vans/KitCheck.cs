using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Vans;

/// <summary>A kit piece of which a van has fewer than required.</summary>
public sealed record KitMissing(KitPiece Piece, int There)
{
    public int Missing => Piece.Required - There;
}

/// <summary>What the safety kit lacks, and what of it expires.</summary>
public static class KitCheck
{
    /// <summary>A date within so many days is said in good time. Common practice.</summary>
    public const int WarnDays = 30;

    /// <summary>
    /// The pieces short by the last count, in the order of the list: tonight's, or once tonight's kit is confirmed all that
    /// was not counted is there; before that, what an earlier evening found. Nothing counted, nothing known to be missing.
    /// </summary>
    public static IEnumerable<KitMissing> MissingOf(Depot depot, Code<Van> van) => depot.Setup.Kit
        .Select(piece => new KitMissing(piece, ThereOf(depot, van, piece)))
        .Where(m => m.Missing > 0);

    private static int ThereOf(Depot depot, Code<Van> van, KitPiece piece)
    {
        var shift = depot.Shift(van);
        if (shift?.Kit.GetValueOrDefault(piece.Code) is { } counted)
        {
            return counted.Count;
        }

        return shift?.Answered.Contains(Step.Kit) ?? false
            ? piece.Required
            : depot.Van(van).KitShort.Where(k => k.Piece == piece.Code).Select(k => k.There).DefaultIfEmpty(piece.Required).First();
    }

    /// <summary>The date on a piece of the van, as last read.</summary>
    public static DateOnly? DateOf(Depot depot, Code<Van> van, Code<KitPiece> piece) =>
        depot.Shift(van)?.Kit.GetValueOrDefault(piece)?.Expires
        ?? depot.Van(van).KitDates.Where(k => k.Piece == piece).Select(k => (DateOnly?)k.Expires).FirstOrDefault();

    /// <summary>Pieces whose date has come or comes within <see cref="WarnDays"/>.</summary>
    public static IEnumerable<(KitPiece Piece, DateOnly On)> Expiring(Depot depot, Code<Van> van) =>
        from piece in depot.Setup.Kit
        where piece.Expires
        let date = DateOf(depot, van, piece.Code)
        where date is not null && date <= depot.Date.AddDays(WarnDays)
        select (piece, date.Value);
}
