using System.Collections.Immutable;

namespace Closeout.DayBook;

/// <summary>What stands against the vans, whatever their close-outs: what was carried, and what leads decided tonight.</summary>
/// <param name="Lifted">Holds lifted tonight, in order.</param>
/// <param name="Placed">Holds put on tonight, in order.</param>
/// <param name="Closed">Incidents closed tonight, in order.</param>
/// <param name="Explained">Why a van is not closed out.</param>
/// <param name="Incidents">Number of the last incident; 0: none yet.</param>
public sealed record VansState(
    ImmutableDictionary<Code<Van>, VanCarried> Carried,
    ImmutableList<HoldsLifted> Lifted,
    ImmutableList<HoldPlaced> Placed,
    ImmutableList<(DateTimeOffset At, IncidentClosed Entry)> Closed,
    ImmutableDictionary<Code<Van>, VanExplained> Explained,
    int Incidents)
{
    public static VansState Open(Carried carried) => new(
        carried.Vans.ToImmutableDictionary(v => v.Van), [], [], [], ImmutableDictionary<Code<Van>, VanExplained>.Empty, carried.Incidents);

    /// <summary>What a lead's entry of a van does.</summary>
    /// <exception cref="InvalidOperationException">The entry is impossible here.</exception>
    public VansState Evolve(HoldEntry entry, DateTimeOffset at) => entry switch
    {
        HoldsLifted e => this with { Lifted = Lifted.Add(e) },
        HoldPlaced e => this with
        {
            // A hold lifted tonight and put on again stands again.
            Placed = Placed.Add(e),
            Lifted = [.. Lifted.Select(l => l.Van == e.Van ? l with { Reasons = [.. l.Reasons.Where(r => r != e.Reason)] } : l)],
        },
        IncidentClosed e when Closed.All(c => c.Entry.Number != e.Number) => this with { Closed = Closed.Add((at, e)) },
        OdometerCorrected e => this with { Carried = Carried.SetItem(e.Van, Carried[e.Van] with { OdometerMi = e.Mi }) },
        VanExplained e => this with { Explained = Explained.SetItem(e.Van, e) },
        _ => throw new InvalidOperationException("it cannot stand here"),
    };

    /// <summary>After a van came in: what explained its absence no longer counts.</summary>
    public VansState CameIn(Code<Van> van) => this with { Explained = Explained.Remove(van) };

    /// <summary>After a damage: incidents are numbered upwards.</summary>
    /// <exception cref="InvalidOperationException">Its number was there already.</exception>
    public VansState Found(DamageFound found) => found.Number > Incidents
        ? this with { Incidents = found.Number }
        : throw new InvalidOperationException($"incident {found.Number} follows incident {Incidents}");
}
