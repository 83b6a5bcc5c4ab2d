using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

namespace Closeout.Vans;

/// <summary>What the wall says of a van for the morning. It repeats what people confirmed; it clears no van as safe.</summary>
public enum Morning
{
    Ready,
    ReadyWithNotes,
    Held,
    NotClosed,
}

/// <summary>One van on the bay wall.</summary>
/// <param name="Shift">Its close-out; null while it is on the road.</param>
/// <param name="With">Who closes it out, or who drives it by the roster; null: nobody is rostered.</param>
/// <param name="Holds">Why it may not go out; empty when nothing holds it.</param>
/// <param name="Notes">What whoever takes it must know.</param>
public sealed record VanState(Van Van, Shift? Shift, Code<Technician>? With, IReadOnlyList<string> Holds, IReadOnlyList<string> Notes)
{
    /// <summary>A hold speaks louder than an open close-out.</summary>
    public Morning Morning => (Holds.Count, Shift?.IsClosed ?? false, Notes.Count) switch
    {
        ( > 0, _, _) => Morning.Held,
        (_, false, _) => Morning.NotClosed,
        (_, true, > 0) => Morning.ReadyWithNotes,
        _ => Morning.Ready,
    };
}

/// <summary>Reads the state of the vans out of the book.</summary>
public static class Readiness
{
    /// <summary>All vans, in bay order.</summary>
    public static IReadOnlyList<VanState> Of(Depot depot) => [.. depot.Setup.Vans.Select(v => Of(depot, v))];

    public static VanState Of(Depot depot, Van van)
    {
        var shift = depot.Shift(van.Code);
        var with = shift?.Technician ?? depot.Setup.Rostered(van.Code, depot.Date)?.Code;
        return new(van, shift, with, [.. Holds(depot, van)], [.. Notes(depot, van, shift)]);
    }

    /// <summary>The words of the wall for it.</summary>
    public static string Words(Morning morning) => morning switch
    {
        Morning.Ready => "ready",
        Morning.ReadyWithNotes => "ready with notes",
        Morning.Held => "held",
        Morning.NotClosed => "not closed",
        _ => throw new InvalidOperationException($"no such readiness: {morning}"),
    };

    /// <summary>A severity in the words of the floor.</summary>
    public static string SeverityWords(Severity severity) => severity switch
    {
        Severity.Note => "note",
        Severity.Repair => "to repair",
        Severity.Unsafe => "unsafe",
        _ => throw new InvalidOperationException($"no such severity: {severity}"),
    };

    /// <summary>The van's odometer as last read.</summary>
    public static decimal OdometerMi(Depot depot, Code<Van> van) => depot.Shift(van)?.Mileage?.EndMi ?? depot.Van(van).OdometerMi;

    /// <summary>The van's last weekly check, tonight's included.</summary>
    public static DateOnly? WeeklyCheckedOn(Depot depot, Code<Van> van) =>
        depot.Shift(van)?.Weekly is not null ? depot.Date : depot.Van(van).WeeklyCheckedOn;

    /// <summary>Holds that stand, those of earlier days first.</summary>
    private static IEnumerable<string> Holds(Depot depot, Van van) => Standing(depot, van.Code).Select(h => h.Reason);

    /// <summary>Holds that nobody lifted, those of earlier days first; tonight's bear the business date.</summary>
    public static IEnumerable<Hold> Standing(Depot depot, Code<Van> van)
    {
        var old = depot.Van(van).Holds;
        var lifted = depot.Lifted.Where(l => l.Van == van).SelectMany(l => l.Reasons).ToHashSet();
        return old.Concat(Tonight(depot, van).Except(old.Select(h => h.Reason)).Select(r => new Hold(depot.Date, r))).Where(h => !lifted.Contains(h.Reason));
    }

    /// <summary>The holds that tonight's answers put on the van.</summary>
    public static IEnumerable<string> Tonight(Depot depot, Code<Van> van)
    {
        foreach (var damage in depot.Shift(van)?.Damages.Where(d => d.Severity == Severity.Unsafe) ?? [])
        {
            yield return $"{damage.Zone}, unsafe: {damage.What}";
        }

        foreach (var lack in KitCheck.MissingOf(depot, van).Where(m => m.Piece.Critical))
        {
            yield return $"{lack.Piece.Description}: {lack.There} of {lack.Piece.Required}";
        }
    }

    private static IEnumerable<string> Notes(Depot depot, Van van, Shift? shift)
    {
        var units = depot.Setup.Units;
        foreach (var damage in depot.Van(van.Code).Damages)
        {
            yield return $"{damage.Zone}, {SeverityWords(damage.Severity)} since {damage.Since:yyyy-MM-dd}: {damage.What}";
        }

        foreach (var damage in shift?.Damages.Where(d => d.Severity != Severity.Unsafe) ?? [])
        {
            yield return damage.Severity == Severity.Note ? $"{damage.Zone}: {damage.What}" : $"{damage.Zone}, {SeverityWords(damage.Severity)}: {damage.What}";
        }

        foreach (var lifted in depot.Lifted.Where(l => l.Van == van.Code))
        {
            yield return $"hold lifted by {lifted.Lead}: {lifted.Why} ({string.Join(", ", lifted.Reasons)})";
        }

        foreach (var lack in KitCheck.MissingOf(depot, van.Code).Where(m => !m.Piece.Critical))
        {
            yield return $"{lack.Piece.Description}: {lack.There} of {lack.Piece.Required}";
        }

        foreach (var (piece, on) in KitCheck.Expiring(depot, van.Code))
        {
            yield return on < depot.Date ? $"{piece.Description} expired {on:yyyy-MM-dd}" : $"{piece.Description} expires {on:yyyy-MM-dd}";
        }

        if (shift?.Mileage is { Sure: true } read)
        {
            yield return $"odometer {units.Distance(read.StartMi)} to {units.Distance(read.EndMi)}, confirmed as read";
        }

        if (Service.Of(van).Note(OdometerMi(depot, van.Code), depot.Date, units) is { } service)
        {
            yield return service;
        }

        if (WeeklyCheck.IsOverdue(depot.Date, WeeklyCheckedOn(depot, van.Code)))
        {
            yield return "weekly check overdue";
        }

        foreach (var gap in Gaps(shift))
        {
            yield return $"gap {gap.Gap} {gap.Item}";
        }

        var missing = CardboardTotals.MissingOf(depot, van.Code).Sum(m => m.Boxes);
        if (missing > 0)
        {
            yield return missing == 1 ? "1 box missing" : $"{missing} boxes missing";
        }

        if (shift?.Weekly is { Clean: false })
        {
            yield return "to be cleaned";
        }
    }

    /// <summary>Tonight's counts that differ from the book, in item order.</summary>
    public static IEnumerable<LeftoverCounted> Gaps(Shift? shift) =>
        shift?.Counts.Values.Where(c => c.Gap != 0).OrderBy(c => c.Item) ?? Enumerable.Empty<LeftoverCounted>();

}
