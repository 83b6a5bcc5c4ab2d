using Closeout.Cardboard;
using Closeout.Vans;

namespace Closeout.Turning;

/// <summary>
/// What a new book takes from older records: so its first evening knows a van's habit, and the container is not empty on paper only.
/// </summary>
public static class Earlier
{
    /// <summary>What is carried into the first page of one van.</summary>
    public static VanCarried Of(Van van, IReadOnlyList<PastRecord> past)
    {
        var own = past.Where(p => p.Van == van.Code).OrderBy(p => p.Date).ToList();
        return VanCarried.New(van) with
        {
            WeeklyCheckedOn = Last(own, PastKind.Weekly),
            OilChangedOn = Last(own, PastKind.OilChange),
            MissingBoxes = Missing(own),
            KitDates = [.. own.Where(p => p.Kind is PastKind.Expires or PastKind.Tested)
                .GroupBy(p => new Code<KitPiece>(p.Code))
                .OrderBy(g => g.Key)
                .Select(g => new KitDate(g.Key, Read(g, PastKind.Expires), Read(g, PastKind.Tested)))],
            Incidents = [.. Damages(past).Where(d => d.Van == van.Code).Select(d => d.Incident)],
            Driven = Driven(own),
        };
    }

    /// <summary>What is carried into the first page of the depot's yard.</summary>
    public static YardCarried Yard(Setup setup, IReadOnlyList<PastRecord> past)
    {
        var days = past.Where(p => p.Kind == PastKind.Flattened)
            .GroupBy(p => p.Date)
            .OrderBy(g => g.Key)
            .Select(g => new BoxDay(
                g.Key, g.Sum(p => (int)p.Amount), g.Sum(p => (int)p.Amount),
                g.Sum(p => (int)p.Amount * BoxBlank.WeightLb(setup, setup.Item(new(p.Code))))))
            .ToList();
        var emptied = past.Where(p => p.Kind == PastKind.Emptied).Select(p => (DateOnly?)p.Date).Max();
        return new(
            days.Where(d => emptied is null || d.Date >= emptied).Sum(d => d.WeightLb),
            emptied,
            Missing(past.Where(p => p.Van is null)),
            [.. days.TakeLast(Container.ForecastDays)],
            [.. past.Where(p => p.Kind == PastKind.Collected && p.Amount > 0)
                .GroupBy(p => new Code<WasteStream>(p.Code))
                .OrderBy(g => g.Key)
                .Select(g => new CollectingBox(g.Key, g.Min(p => p.Date), g.Sum(p => p.Amount)))]);
    }

    private static DateOnly? Last(IEnumerable<PastRecord> own, PastKind kind) =>
        own.Where(p => p.Kind == kind).Select(p => (DateOnly?)p.Date).LastOrDefault();

    private static DateOnly? Read(IEnumerable<PastRecord> of, PastKind kind) =>
        of.Where(p => p.Kind == kind).Select(p => p.On).LastOrDefault();

    private static IReadOnlyList<MissingBoxes> Missing(IEnumerable<PastRecord> of) =>
    [
        .. of.Where(p => p.Kind == PastKind.Missing && p.Amount > 0)
            .GroupBy(p => new Code<Item>(p.Code))
            .OrderBy(g => g.Key)
            .Select(g => new MissingBoxes(g.Key, g.Sum(p => (int)p.Amount), g.Min(p => p.Date))),
    ];

    /// <summary>Damages numbered in the order of the records; nobody knows the hour.</summary>
    private static IEnumerable<(Code<Van> Van, Incident Incident)> Damages(IReadOnlyList<PastRecord> past) => past
        .Where(p => p.Kind == PastKind.Damage)
        .Select((p, n) =>
        {
            var severity = Enum.Parse<Severity>(p.Code, ignoreCase: true);
            var (zone, what) = p.Text.Split(':', 2, StringSplitOptions.TrimEntries) is [var where, var told]
                ? (where, told)
                : ("somewhere", p.Text);
            return (p.Van!.Value,
                new Incident(n + 1, p.Date, new DateTimeOffset(p.Date.ToDateTime(TimeOnly.MinValue), TimeSpan.Zero), null, zone, severity,
                    what, severity != Severity.Unsafe, "", null, false));
        });

    /// <summary>A day needs a reading before it; of two readings on a date the last counts.</summary>
    private static IReadOnlyList<DrivenDay> Driven(List<PastRecord> own)
    {
        var readings = own.Where(p => p.Kind == PastKind.Odometer).GroupBy(p => p.Date).Select(g => (Date: g.Key, Mi: g.Last().Amount))
            .ToList();
        var fuel = own.Where(p => p.Kind == PastKind.Fuel && p.Amount > 0).GroupBy(p => p.Date)
            .ToDictionary(g => g.Key, g => g.Sum(p => p.Amount));
        return [
            .. readings.Zip(readings.Skip(1),
                (a, b) => new DrivenDay(b.Date, a.Mi, b.Mi, fuel.TryGetValue(b.Date, out var gal) ? gal : null))
                    .TakeLast(DrivingHabit.DaysKept)];
    }
}
