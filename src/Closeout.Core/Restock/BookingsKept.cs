namespace Closeout.Restock;

/// <summary>How the bookings of a kind of visit were kept.</summary>
/// <param name="Booked">B, visits booked.</param>
/// <param name="Made">H, of them those that were made.</param>
/// <param name="Beyond">E, visits made beyond what was booked.</param>
/// <param name="VanDays">Z, days of vans that are known.</param>
public readonly record struct KindKept(long Booked, long Made, long Beyond, int VanDays)
{
    /// <summary>Kept bookings that are added to both sides, so that a few broken ones do not say much.</summary>
    private const int Prior = 10;

    /// <summary>a, the share of booked visits that are made; 1 where nothing is known.</summary>
    public double Share => (double)(Made + Prior) / (Booked + Prior);

    /// <summary>e, visits of the kind on a van's day that nobody booked.</summary>
    public double Added => VanDays == 0 ? 0 : (double)Beyond / VanDays;

    /// <summary>Whether it says anything else than that bookings are kept.</summary>
    public bool IsLearned => Made != Booked || Beyond > 0;

    /// <summary>n', the visits to be expected of so many booked.</summary>
    public double Expected(int booked) => booked * Share + Added;

    /// <summary>nu, the variance of how many come: each booked visit comes or not, and added ones come as they will (Poisson).</summary>
    public double Variance(int booked) => booked * Share * (1 - Share) + Added;
}

/// <summary>
/// How bookings were kept on the last 60 business dates, kind by kind: of vans that were closed out and have visit reports, the bookings as
/// they were when the date's page was opened.
/// </summary>
public sealed class BookingsKept
{
    /// <summary>Business dates that are looked back on.</summary>
    public const int Dates = 60;

    private readonly Dictionary<Code<VisitKind>, KindKept> kinds = [];
    private readonly int vanDays;

    private BookingsKept(IReadOnlyList<BookedVan> days)
    {
        vanDays = days.Count;
        foreach (var day in days)
        {
            foreach (var kind in day.Booked.Concat(day.Made!).Select(k => k.Kind).Distinct())
            {
                var (booked, made) = (Of(day.Booked, kind), Of(day.Made!, kind));
                var old = kinds.GetValueOrDefault(kind);
                kinds[kind] = new(
                    old.Booked + booked, old.Made + Math.Min(booked, made), old.Beyond + Math.Max(0, made - booked), vanDays);
            }
        }
    }

    public static BookingsKept Of(Depot depot) =>
        new([.. LastDates(depot.Planning.Booked).Where(d => d.Closed && d.Made is not null)]);

    /// <summary>The days of the last dates.</summary>
    public static IEnumerable<BookedVan> LastDates(IReadOnlyList<BookedVan> days)
    {
        var first = days.Select(d => d.Date).Distinct().OrderDescending().Take(Dates).LastOrDefault();
        return days.Where(d => d.Date >= first);
    }

    /// <summary>Kinds that were booked or made, in the order of their codes.</summary>
    public IEnumerable<Code<VisitKind>> Kinds => kinds.Keys.Order();

    public KindKept Of(Code<VisitKind> kind) => kinds.TryGetValue(kind, out var kept) ? kept : new(0, 0, 0, vanDays);

    private static int Of(IReadOnlyList<KindVisits> visits, Code<VisitKind> kind) => visits.Where(v => v.Kind == kind).Sum(v => v.Visits);
}
