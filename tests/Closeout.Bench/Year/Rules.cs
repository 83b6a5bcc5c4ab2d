namespace Closeout.Bench.Year;

/// <summary>What happens in the evening to loose units that came back.</summary>
public enum Leftovers
{
    /// <summary>They stay aboard, also above tomorrow's target.</summary>
    Stay,

    /// <summary>What tomorrow does not need goes to the bin, where it is more than the band.</summary>
    SurplusToBin,

    /// <summary>All go to the bin.</summary>
    AllToBin,
}

/// <summary>How the depot is run in a year, whoever sets the targets.</summary>
/// <param name="Bookings">Whether it learns how bookings are kept (n', nu).</param>
/// <param name="Suppliers">Whether ordering learns how late and how short the supplier delivers.</param>
/// <param name="ChangeLimit">Above it a use counts as changed; 0: never looked for.</param>
/// <param name="OrderService">The promise of ordering; null: each item's own level.</param>
public sealed record Rules(bool Bookings, bool Suppliers, double ChangeLimit, double? OrderService = null)
{
    /// <summary>What is proposed to move between vans is carried out, in the evening before loading.</summary>
    public bool Moves { get; init; }

    /// <summary>h: loose units go back where the van has more than the target and so many standard deviations of tomorrow.</summary>
    public double Band { get; init; }

    public Leftovers Leftovers { get; init; } = Leftovers.SurplusToBin;

    /// <summary>Whether a van may be rounded up to a whole carton, up to the item's busiest van-day of the year.</summary>
    public bool RoundsUp { get; init; }

    /// <summary>Whether there are weeks in which deliveries come late and short.</summary>
    public bool Scarce { get; init; } = true;

    /// <summary>The depot always has enough.</summary>
    public bool Unlimited { get; init; }

    /// <summary>Nothing learned.</summary>
    public static readonly Rules Today = new(false, false, 0);

    /// <summary>As the product does by default, proposals carried out.</summary>
    public static readonly Rules Learned = new(true, true, 8) { Moves = true, Band = 1 };
}

/// <summary>What a year came to. Units and lines.</summary>
/// <param name="MissedPerThousand">Units missed per thousand units asked.</param>
/// <param name="Aboard">Average units aboard a van in the morning, all items.</param>
/// <param name="Total">The same with a van's part of what lies at the depot in the morning.</param>
/// <param name="Handled">What was carried in the evenings.</param>
/// <param name="Alarms">Changes of use noticed: all days, and those counted.</param>
/// <param name="ByDay">Units asked and missed on each day, the warm-up too.</param>
public sealed record Outcome(
    double MissedPerThousand, double Aboard, double Total, Handled Handled, (int All, int Counted) Alarms,
    IReadOnlyList<(long Asked, long Missed)> ByDay);
