using Closeout.Cardboard;

namespace Closeout.Files;

/// <summary>recycling-weeks.csv: a row for each ISO week; and recycling.csv: the same boxes by day, week, month, van and item.</summary>
public static class RecyclingCsv
{
    /// <summary>The weeks, oldest first, with the greenhouse-gas figure where the depot gave a factor.</summary>
    public static byte[] Weeks(DepotSettings depot, IReadOnlyList<DatedBoxes> boxes)
    {
        using var csv = new CsvText(
            "week", "from", "to", "days", "expected", "flattened", "missing", "weight_lb", "volume_cu_yd", "mtco2e", "mtco2e_kind",
            "factor_mtco2e_per_short_ton", "factor_source");
        foreach (var total in RecyclingTotals.By(Period.Week, depot, boxes))
        {
            Sum(csv.Text(total.Name).Date(total.From).Date(total.To).Number(total.Days), total.Sum);
            _ = GreenhouseGas.Tons(depot, total.Sum.WeightLb) is { } tons
                ? csv.Number(tons, 4).Text(GreenhouseGas.Kind(depot)).Number(depot.GhgFactor!.Value, 4).Text(depot.GhgFactorSource)
                : csv.Text(null).Text(null).Text(null).Text(null);
            csv.EndRow();
        }

        return csv.Bytes();
    }

    /// <summary>All totals; every kind of them adds up to the same.</summary>
    public static byte[] Totals(DepotSettings depot, IReadOnlyList<DatedBoxes> boxes)
    {
        using var csv = new CsvText("by", "of", "from", "to", "days", "expected", "flattened", "missing", "weight_lb", "volume_cu_yd");
        foreach (var period in Enum.GetValues<Period>())
        {
            foreach (var total in RecyclingTotals.By(period, depot, boxes))
            {
                Sum(csv.Text(RecyclingTotals.Words(period)).Text(total.Name).Date(total.From).Date(total.To).Number(total.Days), total.Sum)
                    .EndRow();
            }
        }

        return csv.Bytes();
    }

    private static CsvText Sum(CsvText csv, BoxSum sum) =>
        csv.Number(sum.Expected).Number(sum.Flattened).Number(sum.Missing).Number(sum.WeightLb, 3).Number(sum.VolumeCuYd, 4);
}
