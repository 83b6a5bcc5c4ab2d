using Closeout.Cardboard;

namespace Closeout.Files;

/// <summary>cardboard.csv: boxes by van and item, and the depot's total.</summary>
public static class CardboardCsv
{
    public static byte[] Write(Depot depot)
    {
        var settings = depot.Setup.Depot;
        var rows = CardboardTotals.Rows(depot);
        using var csv = new CsvText("date", "van", "item", "expected", "flattened", "missing", "weight_lb", "volume_cu_yd");
        foreach (var row in rows)
        {
            Row(csv, depot.Date, row.Van.Text, row.Item.Text,
                new(row.Expected, row.Flattened, row.WeightLb, CardboardTotals.VolumeCuYd(settings, row.WeightLb)));
        }

        Row(csv, depot.Date, "", "", CardboardTotals.Sum(settings, rows));
        return csv.Bytes();
    }

    private static void Row(CsvText csv, DateOnly date, string van, string item, BoxSum sum) =>
        csv.Date(date).Text(van).Text(item).Number(sum.Expected).Number(sum.Flattened).Number(sum.Missing)
            .Number(sum.WeightLb, 3).Number(sum.VolumeCuYd, 4).EndRow();
}
