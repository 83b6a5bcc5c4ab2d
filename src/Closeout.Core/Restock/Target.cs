namespace Closeout.Restock;

/// <summary>Which limit set a target.</summary>
public enum Basis
{
    /// <summary>The van's low: what is booked needs no more.</summary>
    Low,

    /// <summary>The visits booked need more than low and no more than high.</summary>
    Booked,

    /// <summary>The visits booked need more than the van may carry.</summary>
    High,

    /// <summary>A lead said so.</summary>
    Lead,

    /// <summary>More would be too heavy for the van.</summary>
    Payload,
}

/// <summary>How many units of an item a van should have aboard tomorrow morning.</summary>
/// <param name="Units">min(high, max(low, q)).</param>
public readonly record struct Target(int Units, Basis Basis)
{
    /// <param name="q">The booked demand's quantile at the promised service level, in units.</param>
    public static Target Of(int low, int high, int q) => new(
        Math.Min(high, Math.Max(low, q)),
        q > high ? Basis.High : q > low ? Basis.Booked : Basis.Low);

    /// <summary>The target within what the van's payload leaves for it; null: weight sets none.</summary>
    public Target Within(PayloadCut? cut) => cut is { } c && c.Most < Units ? new(c.Most, Basis.Payload) : this;

    /// <summary>What the van lacks for it: never below 0.</summary>
    public int Need(int aboard) => Math.Max(0, Units - aboard);

    public static string Words(Basis basis) => basis switch
    {
        Basis.Low => T("low"),
        Basis.Booked => T("booked"),
        Basis.High => T("high"),
        Basis.Lead => T("lead"),
        Basis.Payload => T("payload"),
        _ => throw new InvalidOperationException($"no such basis: {basis}"),
    };
}
