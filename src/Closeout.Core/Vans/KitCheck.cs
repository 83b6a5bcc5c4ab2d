namespace Closeout.Vans;

/// <summary>A kit piece of which a van has fewer than it must.</summary>
public sealed record KitMissing(KitPiece Piece, int There, int Required)
{
    public int Missing => Required - There;
}

/// <summary>A date on a kit piece that has come or comes soon.</summary>
/// <param name="On">The date: good until, or the next test is due.</param>
/// <param name="IsTest">Whether a calibration or bump test is due, and not the piece itself used up.</param>
public sealed record KitDue(KitPiece Piece, DateOnly On, bool IsTest)
{
    /// <summary>The sentence of the wall, seen from a date. On its last day a piece is still good.</summary>
    public string Words(DateOnly today) => (IsTest, On < today) switch
    {
        (false, true) => T($"{Piece.Description} expired {On:yyyy-MM-dd}"),
        (false, false) => T($"{Piece.Description} expires {On:yyyy-MM-dd}"),
        (true, true) => T($"{Piece.Description} not tested, was due {On:yyyy-MM-dd}"),
        (true, false) => T($"{Piece.Description} to be tested by {On:yyyy-MM-dd}"),
    };
}

/// <summary>What the safety kit lacks, and what of it expires or must be tested.</summary>
public static class KitCheck
{
    /// <summary>
    /// The pieces short by the last count, in the order of the list: tonight's, or once tonight's kit is confirmed all that
    /// was not counted is there; before that, what an earlier evening found. Nothing counted, nothing known to be missing.
    /// </summary>
    public static IEnumerable<KitMissing> MissingOf(Depot depot, Code<Van> van) => depot.Setup.Kit
        .Select(piece => new KitMissing(piece, ThereOf(depot, van, piece), depot.Setup.Required(van, piece)))
        .Where(m => m.Missing > 0);

    /// <summary>How many of the piece are in the van, as far as anybody knows.</summary>
    public static int ThereOf(Depot depot, Code<Van> van, KitPiece piece)
    {
        var shift = depot.Shift(van);
        if (shift?.Kit.GetValueOrDefault(piece.Code) is { } counted)
            return counted.Count;

        var required = depot.Setup.Required(van, piece);
        return shift?.Answered.Contains(Step.Kit) ?? false
            ? required
            : depot.Van(van).KitShort.Where(k => k.Piece == piece.Code).Select(k => k.There).DefaultIfEmpty(required).First();
    }

    /// <summary>The dates on a piece of the van, as last read.</summary>
    public static KitDate DatesOf(Depot depot, Code<Van> van, Code<KitPiece> piece)
    {
        var tonight = depot.Shift(van)?.Kit.GetValueOrDefault(piece);
        var before = depot.Van(van).KitDates.FirstOrDefault(k => k.Piece == piece);
        return new(piece, tonight?.Expires ?? before.Expires, tonight?.TestedOn ?? before.TestedOn);
    }

    /// <summary>All dates of the van's kit that are known, in the order of the list: good until, and the next test.</summary>
    public static IEnumerable<KitDue> Dates(Depot depot, Code<Van> van)
    {
        foreach (var piece in depot.Setup.Kit.Where(k => k.HasDate))
        {
            var dates = DatesOf(depot, van, piece.Code);
            if (piece.Expires && dates.Expires is { } on)
                yield return new(piece, on, false);

            if (piece.TestEveryDays > 0 && dates.TestedOn is { } tested)
                yield return new(piece, tested.AddDays(piece.TestEveryDays), true);
        }
    }

    /// <summary>Dates that have come, or come within the piece's own days of warning.</summary>
    public static IEnumerable<KitDue> Due(Depot depot, Code<Van> van) =>
        Dates(depot, van).Where(d => d.On <= depot.Date.AddDays(d.Piece.WarnDays));

    /// <summary>
    /// What to buy for the van: what is short, and what is expired or expires soon. An instrument to be tested is not bought.
    /// </summary>
    public static IEnumerable<(KitPiece Piece, int Pieces)> ToBuy(Depot depot, Code<Van> van)
    {
        var expiring = Due(depot, van).Where(d => !d.IsTest).Select(d => d.Piece.Code).ToHashSet();
        return from piece in depot.Setup.Kit
               let required = depot.Setup.Required(van, piece)
               let there = ThereOf(depot, van, piece)
               let pieces = Math.Max(0, required - (expiring.Contains(piece.Code) ? 0 : there))
               where pieces > 0
               select (piece, pieces);
    }
}
