using System.Globalization;
using Closeout.Store;

namespace Closeout.Files;

/// <summary>audit.csv: every entry, who did what when; one business date, or the whole book.</summary>
public static class AuditCsv
{
    public static byte[] Write(IEnumerable<(DateOnly Date, IReadOnlyList<Recorded> Entries)> pages)
    {
        using var csv = new CsvText("entry", "business_date", "at", "kind", "van", "person", "item", "what");
        foreach (var (date, entries) in pages)
        {
            foreach (var (recorded, line) in DayBookWords.Of(entries))
            {
                csv.Number(recorded.Number).Date(date).Text(recorded.At.ToString("yyyy-MM-dd'T'HH:mm:sszzz", CultureInfo.InvariantCulture))
                    .Text(EntryKind.Of(recorded.Entry).Name)
                    .Text(line.Van).Text(line.Person).Text(line.Item).Text(line.What).EndRow();
            }
        }

        return csv.Bytes();
    }
}
