using Closeout.Cardboard;
using Closeout.Restock;

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
/// <param name="Explained">Why it is not closed out, where a lead said so.</param>
public sealed record VanState(
    Van Van, Shift? Shift, Code<Technician>? With, IReadOnlyList<string> Holds, IReadOnlyList<string> Notes, VanExplained? Explained)
{
    private bool IsDone => Shift?.IsClosed ?? Explained is { StayedIn: true };

    /// <summary>A hold speaks louder than an open close-out.</summary>
    public Morning Morning => (Holds.Count, IsDone, Notes.Count) switch
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
        return new(van, shift, with, [.. Standing(depot, van.Code).Select(h => h.Said)], [.. Notes(depot, van, shift)],
            depot.Vans.Explained.GetValueOrDefault(van.Code));
    }

    /// <summary>The words of the wall for it.</summary>
    public static string Words(Morning morning) => morning switch
    {
        Morning.Ready => T("ready"),
        Morning.ReadyWithNotes => T("ready with notes"),
        Morning.Held => T("held"),
        Morning.NotClosed => T("not closed"),
        _ => throw new InvalidOperationException($"no such readiness: {morning}"),
    };

    /// <summary>A severity in the words of the floor.</summary>
    public static string SeverityWords(Severity severity) => severity switch
    {
        Severity.Note => T("note"),
        Severity.Repair => T("to repair"),
        Severity.Unsafe => T("unsafe"),
        _ => throw new InvalidOperationException($"no such severity: {severity}"),
    };

    /// <summary>The van's odometer as last read.</summary>
    public static decimal OdometerMi(Depot depot, Code<Van> van) => depot.Shift(van)?.Mileage?.EndMi ?? depot.Van(van).OdometerMi;

    /// <summary>The van's last weekly check, tonight's included.</summary>
    public static DateOnly? WeeklyCheckedOn(Depot depot, Code<Van> van) =>
        depot.Shift(van)?.Weekly is not null ? depot.Date : depot.Van(van).WeeklyCheckedOn;

    /// <summary>Holds that nobody lifted, those of earlier days first; tonight's bear the business date.</summary>
    public static IReadOnlyList<Hold> Standing(Depot depot, Code<Van> van)
    {
        var lifted = Lifted(depot, van);
        var (bookVan, read) = (depot.Setup.Van(van), depot.Shift(van)?.Mileage);
        var others = depot.Van(van).Holds
            .Concat(depot.Vans.Placed.Where(p => p.Van == van).Select(p => new Hold(depot.Date, p.Reason)))
            .Concat(KitCheck.MissingOf(depot, van).Where(m => m.Piece.Critical).Select(m => Told(depot.Date, () => KitWords(m))))
            .Concat(OtherFuel(bookVan, read) is null ? [] : [Told(depot.Date, () => OtherFuel(bookVan, read)!)])
            .Where(h => !lifted.Contains(h.Reason));
        return [
            .. Incidents.Open(depot, van).Where(i => i.Holds).Select(i => Told(i.Since, () => Incidents.Words(i))).Concat(others)
            .DistinctBy(h => h.Reason).OrderBy(h => h.Since)];
    }

    /// <summary>The holds that a page carries on: those of open incidents say it themselves.</summary>
    public static IEnumerable<Hold> Carried(Depot depot, Code<Van> van)
    {
        var incidents = English(() => Incidents.Open(depot, van).Where(i => i.Holds).Select(Incidents.Words).ToHashSet());
        return Standing(depot, van).Where(h => !incidents.Contains(h.Reason));
    }

    /// <summary>A hold is known by its reason in English, whatever is spoken.</summary>
    private static Hold Told(DateOnly since, Func<string> reason) => new(since, English(reason)) { Said = reason() };

    /// <summary>Holds that a lead lifted tonight, in the words of the wall.</summary>
    public static IReadOnlySet<string> Lifted(Depot depot, Code<Van> van) =>
        depot.Vans.Lifted.Where(l => l.Van == van).SelectMany(l => l.Reasons).ToHashSet();

    /// <summary>A kit piece that is short, in the words of the wall.</summary>
    public static string KitWords(KitMissing lack) => T($"{lack.Piece.Description}: {lack.There} of {lack.Required}");

    private static IEnumerable<string> Notes(Depot depot, Van van, Shift? shift)
    {
        var units = depot.Setup.Units;
        if (depot.Vans.Explained.GetValueOrDefault(van.Code) is { } explained)
            yield return $"{(explained.StayedIn ? T("stayed in") : T("excused"))}, {explained.Lead}: {explained.Why}";

        if (Payload.AboveLb(depot, van) is > 0 and var aboveLb)
            yield return T($"TOO HEAVY by {units.Weight(aboveLb)} with the stock aboard: take some off");

        if (shift?.SignedFor is { } signed)
            yield return T($"signed for {signed.For} by {signed.Lead}: {signed.Why}; what was not answered is unchanged");

        foreach (var incident in Incidents.Open(depot, van.Code).Where(i => !i.Holds))
            yield return Incidents.Words(incident) + (incident.Since < depot.Date ? T($" since {incident.Since:yyyy-MM-dd}") : "");

        foreach (var lifted in depot.Vans.Lifted.Where(l => l.Van == van.Code && l.Reasons.Count > 0))
            yield return T($"hold lifted by {lifted.Lead}: {lifted.Why} ({string.Join(", ", lifted.Reasons)})");

        foreach (var (_, closed) in depot.Vans.Closed.Where(c => c.Entry.Van == van.Code))
            yield return T($"incident {closed.Number} closed by {closed.Lead}: {closed.Why}");

        foreach (var lack in KitCheck.MissingOf(depot, van.Code).Where(m => !m.Piece.Critical))
            yield return KitWords(lack);

        foreach (var due in KitCheck.Due(depot, van.Code))
            yield return due.Words(depot.Date);

        if (shift?.Mileage is { } read)
        {
            if (read.Sure)
                yield return T($"odometer {units.Distance(read.StartMi)} to {units.Distance(read.EndMi)}, confirmed as read");

            if (FuelGrade.Of(van.Fuel, read.FuelGrade) == FuelMatch.Doubtful)
                yield return T($"refueled with {read.FuelGrade}, takes {van.Fuel}");
        }

        if (Service.NoteOf(depot, van, units) is { } service)
            yield return service;

        if (WeeklyCheck.IsOverdue(depot.Date, WeeklyCheckedOn(depot, van.Code)))
            yield return T($"weekly check overdue, last {WeeklyCheckedOn(depot, van.Code):yyyy-MM-dd}");

        foreach (var gap in Gaps(shift))
            yield return T($"gap {gap.Gap} {gap.Item}");

        foreach (var (_, gift) in depot.Stock.Gifts.Where(g => g.Value.To == van.Code).OrderBy(g => g.Key))
            yield return T($"{gift.Item} from {gift.From} not confirmed: did it come?");

        if (LostBoxes.Words(depot, [.. LostBoxes.Of(depot, van.Code)]) is { } boxes)
            yield return boxes;

        if (shift is { HandoverDue: true, Handover.Answers.Count: 0 })
            yield return T("handover not answered");

        foreach (var answer in (shift?.Handover?.Answers ?? []).Where(a => !a.Yes))
            yield return T($"{answer.Question} No: {answer.Why}");

        if (shift?.Weekly is { Clean: false })
            yield return T("to be cleaned");
    }

    /// <summary>Another fuel than the van takes, in the words of the wall; null: none.</summary>
    public static string? OtherFuel(Van van, MileageLogged? read) => FuelGrade.Of(van.Fuel, read?.FuelGrade) == FuelMatch.OtherFuel
        ? T($"refueled with {read!.FuelGrade}, takes {van.Fuel}: do not start it, ask the shop")
        : null;

    /// <summary>Tonight's counts that differ from the book, in item order.</summary>
    public static IEnumerable<LeftoverCounted> Gaps(Shift? shift) =>
        shift?.Counts.Values.Where(c => c.Gap != 0).OrderBy(c => c.Item) ?? Enumerable.Empty<LeftoverCounted>();
}
