using Closeout.Restock;

namespace Closeout.Files;

/// <summary>
/// accuracy.csv: by date and priority how the plan's promises were kept, then a row for each priority with the date empty.
/// </summary>
public static class AccuracyCsv
{
    public static byte[] Write(Depot depot)
    {
        using var csv = new CsvText(
            "date", "priority", "promised", "lines", "within", "share_within", "emptied", "units_used", "units_missed", "units_aboard",
            "aboard_per_used", "units_without_promise");
        foreach (var kept in Accuracy.Of(depot))
            Row(csv, depot, kept, kept.Date);

        foreach (var sum in Accuracy.Sums(depot))
            Row(csv, depot, sum, null);

        return csv.Bytes();
    }

    private static void Row(CsvText csv, Depot depot, KeptPromises kept, DateOnly? date)
    {
        csv.Date(date).Number(kept.Priority).Number(depot.Setup.Depot.Service(kept.Priority), 4).Number(kept.Lines).Number(kept.Within)
            .Number(kept.Lines == 0 ? 0 : kept.Within / (double)kept.Lines, 4).Number(kept.Emptied).Number((decimal)kept.Used)
            .Number((decimal)kept.Missed)
            .Number((decimal)kept.Aboard);
        _ = kept.Used == 0 ? csv.Text(null) : csv.Number(kept.Aboard / (double)kept.Used, 3);
        csv.Number((decimal)kept.Unpromised).EndRow();
    }
}
