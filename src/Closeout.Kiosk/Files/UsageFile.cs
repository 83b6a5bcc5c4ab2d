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
        var (visits, numbers, used) = (new List<Visit>(), new Dictionary<(DateOnly, Code<Van>, string), int>(), new UsedUnits(items));
        (DateOnly, Code<Van>, string Name) last = default;
        var visit = 0;
        foreach (var row in table.Rows)
        {
            var (date, van, kind) = (row.Date("date"), PastVan(row, vans), Kind(row, kinds));
            var name = row.Text("visit");
            var item = row.Has("item") ? row.Known("item", items) : default;
            var units = row.Whole("units");
            if (row.IsGood && item == default && units != 0)
                row.Bad("units", T("are used of no item"), T("0, or an item"));

            if (!row.IsGood)
                continue;

            kinds.Add(kind);
            if (last != (date, van, name))
            {
                last = (date, van, name);
                if (!numbers.TryGetValue(last, out visit))
                {
                    numbers[last] = visit = visits.Count;
                    visits.Add(new(date, van, kinds.Find(kind)!.Value));
                }
            }

            if (visits[visit].Kind != kind)
                row.Bad("visit_kind", T($"changes within visit {Findings.Quote(name)}"), visits[visit].Kind.Text);

            if (item != default)
            {
                ref var sum = ref used.By(visit, items.NumberOf(item)!.Value);
                sum += units;
                if (sum > CsvRow.MostUnits)
                {
                    row.Bad("units", T($"of the visit's rows add up to {sum}"), T($"0 to {CsvRow.MostUnits} in one visit"));
                    sum -= units;
                }
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
    private static Code<Van> PastVan(CsvRow row, Known<Van> vans) => row.Listed("van", vans) ?? row.Code<Van>("van");

    private static Code<VisitKind> Kind(CsvRow row, Known<VisitKind> kinds) =>
        row.Listed("visit_kind", kinds) ?? row.Code<VisitKind>("visit_kind");

    private static IReadOnlyList<DailyUse> Daily(List<Visit> visits, UsedUnits used) =>
        [.. visits.Index().GroupBy(v => (v.Item.Date, v.Item.Kind), v => v.Index).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Kind)
            .Select(g => new DailyUse(g.Key.Date, g.Key.Kind, g.Count(), [.. used.Sums(g).Where(u => u.Sum > 0)]))];

    private static IReadOnlyList<VanUse> ByVans(DateOnly today, List<Visit> visits, UsedUnits used) =>
        [.. visits.Index().Where(v => v.Item.Date == today).GroupBy(v => v.Item.Van).OrderBy(g => g.Key).Select(g => new VanUse(
            today, g.Key, [.. used.Sums(g.Select(v => v.Index)).Select(u => new ItemUnits(u.Item, (int)Math.Min(int.MaxValue, u.Sum)))],
            Kinds(g.Select(v => v.Item))))];

    private static IReadOnlyList<KindVisits> Kinds(IEnumerable<Visit> visits) =>
        [.. visits.GroupBy(v => v.Kind).OrderBy(k => k.Key).Select(k => new KindVisits(k.Key, k.Count()))];
}
