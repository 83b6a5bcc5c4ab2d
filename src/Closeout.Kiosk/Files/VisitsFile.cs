namespace Closeout.Files;

/// <summary>visits.csv: planning rates by visit kind and item.</summary>
public static class VisitsFile
{
    /// <param name="replaced">Codes of items that others replaced: their rates count where the other has none.</param>
    public static (IReadOnlyList<PlanningRate> Rates, Known<VisitKind> Kinds) Read(
        string folder, Known<Item> items, IReadOnlyList<(Code<Item> Old, Code<Item> Now)> replaced, Findings findings)
    {
        var table =
            CsvTable.Read(folder, "visits.csv", required: true, ["visit_kind", "item", "units_per_visit", "weight_visits"], [], findings);
        var kinds = new Known<VisitKind>("visits.csv", null);
        var all = items.With(replaced.Select(r => (r.Old, r.Old)));
        var rates = new Dictionary<(Code<VisitKind>, Code<Item>), PlanningRate>();
        foreach (var row in table.Rows)
        {
            var kind = row.Code<VisitKind>("visit_kind");
            kinds.Add(kind);
            var rate = new PlanningRate(
                kinds.Find(kind) ?? kind,
                row.Known("item", all),
                (double)row.Number("units_per_visit", 0, 100_000),
                (double)row.Number("weight_visits", 0, 1_000_000));
            if (row.Are("visit_kind", "item") && !rates.TryAdd((rate.Kind, rate.Item), rate))
                row.Bad("item", T($"stands twice for visit kind {rate.Kind}"), T("once"));
        }

        foreach (var (old, now) in replaced)
        {
            foreach (var rate in rates.Values.Where(r => r.Item == old).ToList())
            {
                rates.Remove((rate.Kind, old));
                rates.TryAdd((rate.Kind, now), rate with { Item = now });
            }
        }

        return ([.. rates.Values], kinds);
    }
}
