using Closeout.Vans;

namespace Closeout.Shifts.Steps;

/// <summary>Report a damage or a mishap.</summary>
/// <param name="Drivable">Null: as its severity says, unsafe is not.</param>
/// <param name="Told">Who was told; empty: nobody yet.</param>
public sealed record ReportDamage(
    Code<Van> Van, string Zone, Severity Severity, string What, bool? Drivable = null, string Told = "", TimeOnly? ToldAt = null)
    : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Damage;

    protected override Decision Decide(Depot depot, Shift shift) =>
        (Given.Words(T("where the damage is"), Zone, "zone") ?? Given.Words(T("what it is"), What, "what") ?? NotTold()) is { } refused
            ? refused
            : new DamageFound(
                shift.Van, depot.Vans.Incidents + 1, shift.Technician, Zone.Trim(), Severity, What.Trim(),
                Drivable ?? Severity != Severity.Unsafe, Told.Trim(), ToldAt);

    private Refusal? NotTold() => Told.Trim().Length > 0 ? Given.Words(T("who was told"), Told, "told") : null;
}

/// <summary>The walk round is done.</summary>
/// <param name="None">No new damage: what this close-out reported before is withdrawn.</param>
/// <param name="Known">Numbers of open incidents of the van that were seen to be still there; null or empty: none was pointed at.</param>
public sealed record ConfirmDamage(Code<Van> Van, bool None, IReadOnlyList<int>? Known = null) : CloseoutCommand(Van)
{
    public override Step? Step => DayBook.Step.Damage;

    protected override Decision Decide(Depot depot, Shift shift) => 
        new DamageConfirmed(shift.Van, None,
            Known is { Count: > 0 } known ? [.. Incidents.Open(depot, shift.Van).Select(i => i.Number).Intersect(known)] : null);
}
