namespace Closeout.Files;

/// <summary>van_limits.csv: a van's own low and high of an item.</summary>
public static class VanLimitsFile
{
    public static IReadOnlyList<VanLimit> Read(string folder, Known<Van> vans, Known<Item> items, Findings findings)
    {
        var table = CsvTable.Read(folder, "van_limits.csv", required: false, ["van", "item", "low", "high"], [], findings);
        var limits = new Dictionary<(Code<Van>, Code<Item>), VanLimit>();
        foreach (var row in table.Rows)
        {
            var limit = new VanLimit(row.Known("van", vans), row.Known("item", items), row.Whole("low"), row.Whole("high"));
            if (row.Are("low", "high") && limit.High < limit.Low)
                row.Bad("high", T("is below low"), T($"at least low, {limit.Low}"));

            if (row.Are("van", "item") && !limits.TryAdd((limit.Van, limit.Item), limit))
                row.Bad("item", T($"stands twice for van {limit.Van}"), T("once"));
        }

        return [.. limits.Values];
    }
}
