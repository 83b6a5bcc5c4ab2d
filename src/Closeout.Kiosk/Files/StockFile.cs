namespace Closeout.Files;

/// <summary>stock.csv: opening stock of the shelf, the bin and the vans.</summary>
public static class StockFile
{
    /// <summary>The most units of an item in one place.</summary>
    private const int MostUnits = 1_000_000;

    /// <summary>The balances, the supplier standing against them.</summary>
    public static IReadOnlyList<Balance> Read(
        string folder, Known<Van> vans, IReadOnlyList<Item> items, Known<Item> codes, Findings findings)
    {
        var table = CsvTable.Read(folder, "stock.csv", required: true, ["place", "item", "cartons", "loose"], [], findings);
        var byCode = items.ToDictionary(i => i.Code);
        var seen = new HashSet<long>();
        var balances = new List<Balance>();
        foreach (var row in table.Rows)
        {
            var (boxed, single) = PlaceOf(row, vans);
            var item = row.Known("item", codes);
            var cartons = Amount(row, "cartons");
            var loose = Amount(row, "loose");
            if (row.Are("place", "loose") && boxed == Place.Shelf && loose > 0)
                row.Bad("loose", T("on the shelf are sealed cartons only"), T("0; loose units lie in the bin"));

            if (row.Are("place", "cartons") && single == Place.Bin && cartons > 0)
                row.Bad("cartons", T("in the bin are loose units only"), T("0; cartons stand on the shelf"));

            if (row.Are("place", "item")
                && !seen.Add((NumberOf(boxed, single, vans) * (long)codes.Codes.Count) + codes.NumberOf(item)!.Value))
            {
                row.Bad("item", T($"stands twice at {row.Raw("place")}"), T("once"));
            }

            if (row.IsGood && byCode.TryGetValue(item, out var known))
            {
                if ((long)cartons * known.UnitsPerCarton > MostUnits)
                {
                    row.Bad(
                        "cartons", T($"of {known.UnitsPerCarton} are more than any place holds"),
                        T($"0 to {MostUnits / known.UnitsPerCarton}"));
                    continue;
                }

                Add(balances, boxed, item, cartons * known.UnitsPerCarton);
                Add(balances, single, item, loose);
            }
        }

        var supplied = balances.AggregateBy(b => b.Item, 0, (sum, b) => sum + b.Units).ToList();
        balances.AddRange(supplied.Select(s => new Balance(Place.Supplier, s.Key, -s.Value)));
        return balances;
    }

    /// <summary>An empty field is none: the shelf has no loose, the bin no cartons.</summary>
    private static int Amount(CsvRow row, string column) => row.Has(column) ? row.Whole(column, 0, 10_000) : 0;

    private static (Place? Boxed, Place? Single) PlaceOf(CsvRow row, Known<Van> vans)
    {
        var text = row.Raw("place");
        if (string.Equals(text, "shelf", StringComparison.OrdinalIgnoreCase))
            return (Place.Shelf, null);

        if (string.Equals(text, "bin", StringComparison.OrdinalIgnoreCase))
            return (null, Place.Bin);

        var van = row.Known("place", vans);
        return (Place.Sealed(van), Place.Loose(van));
    }

    /// <summary>A number for each place that a row can name.</summary>
    private static int NumberOf(Place? boxed, Place? single, Known<Van> vans) =>
        boxed is null ? -2 : single is null ? -1 : vans.NumberOf(boxed.Value.Van)!.Value;

    private static void Add(List<Balance> balances, Place? place, Code<Item> item, int units)
    {
        if (place is { } there && units > 0)
            balances.Add(new(there, item, units));
    }
}
