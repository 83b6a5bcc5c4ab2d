using System.Globalization;
using Closeout.Cardboard;
using Closeout.Restock;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Words;

/// <summary>The sentences of the bay wall, for the screen and for print.</summary>
public static class WallWords
{
    /// <summary>Where a van's close-out stands.</summary>
    /// <param name="now">The moment, to say how late a van is; null: do not say.</param>
    public static string Where(Depot depot, VanState state, DateTimeOffset? now) => state.Shift switch
    {
        null when state.Explained is { StayedIn: true } => T("stayed in"),
        null when state.With is null => T("nobody today"),
        null => Late(depot, now) is { } minutes
            ? T($"out, {minutes} min late")
            : T($"on the road, due {depot.Setup.Depot.ShiftEnd.ToString("HH:mm", CultureInfo.InvariantCulture)}"),
        { IsClosed: true } s =>
            T($"closed {Spell.Clock(s.SignedAt!.Value)}{(s.SignedBy == s.Technician ? "" : T($" by {s.SignedBy}"))}")
                + (s.Checked is null ? "" : T(", checked")),
        { Step: Step.Leftovers } s => Items(depot, s),
        var s => StepWords.Name(s.Step),
    };

    /// <summary>The same in 15 columns, for a screen: a mark and a word.</summary>
    public static string Evening(Depot depot, VanState state, DateTimeOffset now) => state.Shift switch
    {
        null when state.Explained is { StayedIn: true } => T("● stayed in"),
        null when state.With is null => T("○ nobody today"),
        null => Late(depot, now) is { } minutes
            ? T($"○ {minutes} min late")
            : T($"○ due {depot.Setup.Depot.ShiftEnd.ToString("HH:mm", CultureInfo.InvariantCulture)}"),
        { IsClosed: true } s => $"● {Spell.Clock(s.SignedAt!.Value)}{(s.SignedBy == s.Technician ? "" : $" {s.SignedBy}")}",
        { Step: Step.Leftovers } s when Leftovers.ToCount(depot, s) is var items =>
            T($"◐ items {items.Count(i => s.Counts.ContainsKey(i.Code))}/{items.Count}"),
        var s => "◐ " + StepWords.Name(s.Step),
    };

    /// <summary>How many vans have a status.</summary>
    public static string Count(Morning morning, int vans) => (morning, vans) switch
    {
        (_, 1) => $"1 {Status(morning)}",
        (Vans.Morning.Held, _) => T($"{vans} HELD"),
        (Vans.Morning.NotClosed, _) => T($"{vans} OPEN"),
        (Vans.Morning.Ready, _) => T($"{vans} READY"),
        _ => $"{vans} {Status(morning)}",
    };

    /// <summary>A status in a word, in capitals.</summary>
    public static string Status(Morning morning) => morning switch
    {
        Vans.Morning.Held => T("HELD"),
        Vans.Morning.NotClosed => T("OPEN"),
        Vans.Morning.Ready => T("READY"),
        Vans.Morning.ReadyWithNotes => T("NOTES"),
        _ => throw new InvalidOperationException($"no such readiness: {morning}"),
    };

    /// <summary>A van's status, with the number of its notes.</summary>
    public static string Status(VanState state) => state.Morning == Vans.Morning.ReadyWithNotes
        ? $"{Status(state.Morning)} {state.Notes.Count}"
        : Status(state.Morning);

    /// <summary>What explains the status.</summary>
    public static string Why(VanState state) => string.Join("; ", state.Morning switch
    {
        Vans.Morning.Held => state.Holds.Concat(state.Notes),
        Vans.Morning.Ready => [T("no hold, no note")],
        _ => state.Notes,
    });

    /// <summary>What the van is for the morning, with all there is to say of it.</summary>
    public static string Morning(VanState state) => state.Morning switch
    {
        Vans.Morning.Held => T("HELD: ") + string.Join("; ", state.Holds.Concat(state.Notes)),
        Vans.Morning.NotClosed => string.Join("; ", state.Notes.Prepend(T("not closed"))),
        Vans.Morning.Ready => T("ready"),
        Vans.Morning.ReadyWithNotes => T("ready, note: ") + string.Join("; ", state.Notes),
        _ => throw new InvalidOperationException($"no such readiness: {state.Morning}"),
    };

    /// <summary>The depot's totals, each a word and a sentence.</summary>
    public static IEnumerable<(string Word, string Sentence)> Totals(Tonight t)
    {
        var depot = t.Depot;
        yield return (T("Tomorrow"), Tomorrow(t.Plan));
        if (PlanWords.Unknown(t.Plan.Unknown) is { } unknown)
            yield return (T("Not known"), unknown);

        yield return (T("Cardboard"), Cardboard(depot));
        var kit = depot.Setup.Vans
            .SelectMany(v => KitCheck.MissingOf(depot, v.Code).Select(m => $"{v.Code} {m.Piece.Description} {m.Missing}"))
            .ToList();
        if (kit.Count > 0)
            yield return (T("Kit"), T("to bring or buy: ") + string.Join(", ", kit));

        foreach (var note in Collecting.Notes(depot))
            yield return (T("Waste"), note);

        if (LostBoxes.Words(depot, [.. LostBoxes.OfDepot(depot)]) is { } boxes)
            yield return (T("Boxes"), T($"{boxes} of cartons opened at the depot"));

        var gaps = depot.Setup.Vans.SelectMany(v => Readiness.Gaps(depot.Shift(v.Code)).Select(g => (v.Code, g.Item, g.Gap)))
            .ToLookup(g => g.Gap > 0, g => $"{g.Code} {g.Item} {Math.Abs(g.Gap)}");
        var told = new[] { (T("missing in count: "), gaps[true]), (T("more than on record: "), gaps[false]) }
            .Where(g => g.Item2.Any()).ToList();
        if (told.Count > 0)
            yield return (T("Gaps"), string.Join("; ", told.Select(g => g.Item1 + string.Join(", ", g.Item2))));
    }

    /// <summary>How many need nothing more tonight; one that stayed in is done, and not closed.</summary>
    public static string Closed(IReadOnlyList<VanState> vans)
    {
        var (closed, stayed) =
            (vans.Count(v => v.Shift is { IsClosed: true }), vans.Count(v => v is { Shift: null, Explained.StayedIn: true }));
        return T($"{closed + stayed} of {vans.Count} {(stayed == 0 ? T("closed") : T("done"))}");
    }

    private static string Items(Depot depot, Shift shift)
    {
        var items = Leftovers.ToCount(depot, shift);
        return T($"leftovers, {items.Count(i => shift.Counts.ContainsKey(i.Code))} of {items.Count} counted");
    }

    /// <summary>Minutes after the end of the shift; null: not late, or the moment is not of the business date's evening.</summary>
    private static int? Late(Depot depot, DateTimeOffset? now)
    {
        if (now is not { } moment)
            return null;

        var minutes = (int)(moment.DateTime - depot.Date.ToDateTime(depot.Setup.Depot.ShiftEnd)).TotalMinutes;
        return minutes is > 0 and < 24 * 60 ? minutes : null;
    }

    private static string Tomorrow(RestockPlan plan)
    {
        var parts =
            new List<string> { T(
                $"{Spell.Day(plan.Date)}: {Spell.Count(plan.Lines.Count(l => l.Units > 0), T("line"), T("lines"))} to load") };
        var shortItems = plan.Lines.Where(l => l.Short > 0).Select(l => l.Item.Code).Distinct().Order().ToList();
        parts.Add(shortItems.Count == 0
            ? T("nothing short")
            : T($"{Spell.Count(shortItems.Count, T("item"), T("items"))} short ({string.Join(", ", shortItems)})"));
        if (WeightWords.Short(plan) is { } weight)
            parts.Add(weight);

        var provisional = plan.Lines.Where(l => l.Provisional).ToList();
        if (provisional.Count > 0)
        {
            parts.Add(
                T($"{Spell.Count(provisional.Count, T("line"), T("lines"))} provisional "
                    + $"({string.Join(", ", provisional.Select(l => l.Van.Code).Distinct())} not closed)"));
        }

        return string.Join(", ", parts);
    }

    private static string Cardboard(Depot depot)
    {
        var sum = CardboardTotals.Sum(depot.Setup.Depot, CardboardTotals.Rows(depot));
        var missing = depot.Setup.Vans.SelectMany(v => LostBoxes.Of(depot, v.Code)).Concat(LostBoxes.OfDepot(depot)).Sum(m => m.Boxes);
        return T($"{sum.Flattened} of {Spell.Count(sum.Expected, T("box"), T("boxes"))} flattened, {missing} missing; "
                + $"{depot.Setup.Units.Weight(sum.WeightLb)}; container {Container.FullPercent(depot):0} % full, {Hauler(depot)}");
    }

    private static string Hauler(Depot depot) => Container.AsksForHauler(depot)
        ? T("CALL THE HAULER")
        : Container.Full(depot) is { } full
            ? T($"hauler about {Spell.ShortDay(full.On)}")
            : T("no date for the hauler yet");
}
