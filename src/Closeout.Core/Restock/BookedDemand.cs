namespace Closeout.Restock;

/// <summary>Visits of a kind booked for a van, and what one of them uses of an item.</summary>
/// <param name="Visits">n, booked; 0: none, but some come that nobody booked.</param>
/// <param name="Kept">How bookings of the kind are kept.</param>
public sealed record BookedVisits(Code<VisitKind> Kind, int Visits, VisitUse Use, KindKept Kept = default);

/// <summary>
/// Tomorrow's demand of a van for an item: what visits vary, what is not known of their mean, and how many of the visits will come.
/// </summary>
/// <param name="Visits">The bookings that drive it, by kind.</param>
public sealed record BookedDemand(IReadOnlyList<BookedVisits> Visits, double Mean, double Variance)
{
    public static BookedDemand Of(IReadOnlyList<BookedVisits> visits)
    {
        var (mean, variance) = (0.0, 0.0);
        foreach (var (_, booked, use, kept) in visits)
        {
            if (use.Weight > 0)
            {
                var n = kept.Expected(booked);
                mean += n * use.Mean;
                variance += n * use.Variance + kept.Variance(booked) * use.Mean * use.Mean + n * n * use.Variance / use.Weight;
            }
        }

        return new(visits, mean, variance);
    }

    /// <summary>Whether some booked kind has neither a planning rate nor a visit on record.</summary>
    public bool HasUnknownRate => Visits.Any(v => v.Visits > 0 && v.Use.Weight == 0);

    /// <summary>The demand if every booked visit came and no other: what <see cref="Mean"/> would be.</summary>
    public double MeanAsBooked => Visits.Where(v => v.Use.Weight > 0).Sum(v => v.Visits * v.Use.Mean);
}
