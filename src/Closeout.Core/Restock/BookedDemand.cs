namespace Closeout.Restock;

/// <summary>Visits of a kind booked for a van, and what one of them uses of an item.</summary>
public sealed record BookedVisits(Code<VisitKind> Kind, int Visits, VisitUse Use);

/// <summary>Tomorrow's demand of a van for an item: what visits vary, and what is not known of their mean.</summary>
/// <param name="Visits">The bookings that drive it, by kind.</param>
public sealed record BookedDemand(IReadOnlyList<BookedVisits> Visits, double Mean, double Variance)
{
    public static BookedDemand Of(IReadOnlyList<BookedVisits> visits)
    {
        var (mean, variance) = (0.0, 0.0);
        foreach (var (_, n, use) in visits)
        {
            if (use.Weight > 0)
            {
                mean += n * use.Mean;
                variance += n * use.Variance + (double)n * n * use.Variance / use.Weight;
            }
        }

        return new(visits, mean, variance);
    }

    /// <summary>Whether some booked kind has neither a planning rate nor a visit on record.</summary>
    public bool HasUnknownRate => Visits.Any(v => v.Visits > 0 && v.Use.Weight == 0);
}
