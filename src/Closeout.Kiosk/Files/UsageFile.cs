using Closeout.DayBook;
using Closeout.Stock;

namespace Closeout.Files;

/// <summary>usage.csv: what past visits used, one row per visit and item.</summary>
/// <param name="ByVan">The business date's visits, van by van.</param>
public sealed record UsageFile(IReadOnlyList<DateOnly> Dates, IReadOnlyList<DailyUse> Use, IReadOnlyList<VanUse> ByVan, IReadOnlyList<VanDay> Reported)
{
    private sealed record Visit(DateOnly Date, Code<Van> Van, Code<VisitKind> Kind, Dictionary<Code<Item>, int> Used);

    public static UsageFile Read(string folder, Known<Van> vans, Known<Item> items, Known<VisitKind> kinds, DateOnly? today, Findings findings)
    {
        var table = CsvTable.Read(folder, "usage.csv", required: false, ["date", "van", "visit", "visit_kind", "item", "units"], [], findings);
        var visits = new Dictionary<(DateOnly, Code<Van>, string), Visit>();
        foreach (var row in table.Rows)
        {
            var (date, van, kind) = (row.Date("date"), PastVan(row, vans), row.Code<VisitKind>("visit_kind"));
            var name = row.Text("visit");
            var item = row.Has("item") ? row.Known("item", items) : default;
            var units = row.Whole("units");
            if (row.IsGood && item == default && units != 0)
            {
                row.Bad("units", "are used of no item", "0, or an item");
            }

            if (!row.IsGood)
            {
                continue;
            }

            kinds.Add(kind);
            if (!visits.TryGetValue((date, van, name), out var visit))
            {
                visits[(date, van, name)] = visit = new(date, van, kinds.Find(kind)!.Value, []);
            }

            if (visit.Kind != kind)
            {
                row.Bad("visit_kind", $"changes within visit {Findings.Quote(name)}", visit.Kind.Text);
            }

            if (item != default)
            {
                var sum = visit.Used.GetValueOrDefault(item) + units;
                if (sum > CsvRow.MostUnits)
                {
                    row.Bad("units", $"of the visit's rows add up to {sum}", $"0 to {CsvRow.MostUnits} in one visit");
                    continue;
                }

                visit.Used[item] = sum;
            }
        }

        return new(
            [.. visits.Values.Select(v => v.Date).Distinct().Order()],
            [.. visits.Values.GroupBy(v => (v.Date, v.Kind)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Kind).Select(Sum)],
            [.. visits.Values.Where(v => v.Date == today).GroupBy(v => v.Van).OrderBy(g => g.Key).Select(g => new VanUse(today!.Value, g.Key, Total(g), Kinds(g)))],
            [.. visits.Values.Select(v => new VanDay(v.Date, v.Van)).Distinct().OrderBy(d => d.Date).ThenBy(d => d.Van)]);
    }

    /// <summary>History may name a van that is gone; only its code must be one.</summary>
    private static Code<Van> PastVan(CsvRow row, Known<Van> vans)
    {
        var code = row.Code<Van>("van");
        return vans.Find(code) ?? code;
    }

    private static DailyUse Sum(IGrouping<(DateOnly Date, Code<VisitKind> Kind), Visit> visits) => new(
        visits.Key.Date,
        visits.Key.Kind,
        visits.Count(),
        [.. visits.SelectMany(v => v.Used)
            .Where(u => u.Value > 0)
            .GroupBy(u => u.Key, u => u.Value)
            .OrderBy(g => g.Key)
            .Select(g => new ItemUse(g.Key, g.Sum(x => (long)x), g.Sum(x => (long)x * x)))]);

    private static IReadOnlyList<ItemUnits> Total(IEnumerable<Visit> visits) =>
        [.. visits.SelectMany(v => v.Used).GroupBy(u => u.Key, u => u.Value).OrderBy(g => g.Key).Select(g => new ItemUnits(g.Key, (int)Math.Min(int.MaxValue, g.Sum(x => (long)x))))];

    private static IReadOnlyList<KindVisits> Kinds(IEnumerable<Visit> visits) =>
        [.. visits.GroupBy(v => v.Kind).OrderBy(g => g.Key).Select(g => new KindVisits(g.Key, g.Count()))];
}
