namespace Closeout.Files;

/// <summary>usage.csv: what past visits used, one row per visit and item.</summary>
/// <param name="ByVan">The business date's visits, van by van.</param>
/// <param name="Made">How many visits each van made on the dates before.</param>
public sealed record UsageFile(
    IReadOnlyList<DateOnly> Dates, IReadOnlyList<DailyUse> Use, IReadOnlyList<VanUse> ByVan, IReadOnlyList<VanDay> Reported,
    IReadOnlyList<VanVisits> Made)
{
    private readonly record struct Visit(DateOnly Date, Code<Van> Van, Code<VisitKind> Kind);

    public static UsageFile Read(
        string folder, Known<Van> vans, Known<Item> items, Known<VisitKind> kinds, DateOnly? today, Findings findings)
    {
        var table =
            CsvTable.Read(folder, "usage.csv", required: false, ["date", "van", "visit", "visit_kind", "item", "units"], [], findings);

        // A million rows: visits have numbers, and all that they used stands in one place, for an object each would weigh ten
        // times as much.
        var (visits, numbers, used) =
            (new List<Visit>(), new Dictionary<(DateOnly, Code<Van>, string), int>(), new Dictionary<(int Visit, Code<Item> Item), int>());
        foreach (var row in table.Rows)
        {
            var (date, van, kind) = (row.Date("date"), PastVan(row, vans), row.Code<VisitKind>("visit_kind"));
            var name = row.Text("visit");
            var item = row.Has("item") ? row.Known("item", items) : default;
            var units = row.Whole("units");
            if (row.IsGood && item == default && units != 0)
                row.Bad("units", T("are used of no item"), T("0, or an item"));

            if (!row.IsGood)
                continue;

            kinds.Add(kind);
            if (!numbers.TryGetValue((date, van, name), out var visit))
            {
                numbers[(date, van, name)] = visit = visits.Count;
                visits.Add(new(date, van, kinds.Find(kind)!.Value));
            }

            if (visits[visit].Kind != kind)
                row.Bad("visit_kind", T($"changes within visit {Findings.Quote(name)}"), visits[visit].Kind.Text);

            if (item != default)
            {
                var sum = used.GetValueOrDefault((visit, item)) + units;
                if (sum > CsvRow.MostUnits)
                {
                    row.Bad("units", T($"of the visit's rows add up to {sum}"), T($"0 to {CsvRow.MostUnits} in one visit"));
                    continue;
                }

                used[(visit, item)] = sum;
            }
        }

        return new(
            [.. visits.Select(v => v.Date).Distinct().Order()],
            Daily(visits, used),
            today is { } now ? ByVans(now, visits, used) : [],
            [.. visits.Select(v => new VanDay(v.Date, v.Van)).Distinct().OrderBy(d => d.Date).ThenBy(d => d.Van)],
            [.. visits.Where(v => v.Date < today).GroupBy(v => (v.Date, v.Van)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Van)
                .Select(g => new VanVisits(g.Key.Date, g.Key.Van, Kinds(g)))]);
    }

    /// <summary>History may name a van that is gone; only its code must be one.</summary>
    private static Code<Van> PastVan(CsvRow row, Known<Van> vans)
    {
        var code = row.Code<Van>("van");
        return vans.Find(code) ?? code;
    }

    private static IReadOnlyList<DailyUse> Daily(List<Visit> visits, Dictionary<(int Visit, Code<Item> Item), int> used)
    {
        var items = used.Where(u => u.Value > 0)
            .GroupBy(u => (visits[u.Key.Visit].Date, visits[u.Key.Visit].Kind), u => (u.Key.Item, Units: (long)u.Value)).ToDictionary(
            g => g.Key,
            g =>
                g.GroupBy(u => u.Item, u => u.Units).OrderBy(i => i.Key).Select(i => new ItemUse(i.Key, i.Sum(), i.Sum(x => x * x)))
                    .ToList());
        return [.. visits.GroupBy(v => (v.Date, v.Kind)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Kind)
            .Select(g => new DailyUse(g.Key.Date, g.Key.Kind, g.Count(), items.GetValueOrDefault(g.Key) ?? []))];
    }

    private static IReadOnlyList<VanUse> ByVans(DateOnly today, List<Visit> visits, Dictionary<(int Visit, Code<Item> Item), int> used)
    {
        var items = used.Where(u => visits[u.Key.Visit].Date == today)
            .GroupBy(u => visits[u.Key.Visit].Van, u => (u.Key.Item, Units: (long)u.Value)).ToDictionary(
            g => g.Key,
            g =>
                g.GroupBy(u => u.Item, u => u.Units).OrderBy(i => i.Key)
                    .Select(i => new ItemUnits(i.Key, (int)Math.Min(int.MaxValue, i.Sum()))).ToList());
        return [.. visits.Where(v => v.Date == today).GroupBy(v => v.Van).OrderBy(g => g.Key).Select(g => new VanUse(
            today, g.Key, items.GetValueOrDefault(g.Key) ?? [], Kinds(g)))];
    }

    private static IReadOnlyList<KindVisits> Kinds(IEnumerable<Visit> visits) =>
        [.. visits.GroupBy(v => v.Kind).OrderBy(k => k.Key).Select(k => new KindVisits(k.Key, k.Count()))];
}
