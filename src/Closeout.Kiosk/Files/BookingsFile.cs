namespace Closeout.Files;

/// <summary>bookings.csv: visits booked, by date, van and kind. Rows of the same three add up.</summary>
public static class BookingsFile
{
    public static IReadOnlyList<Booking> Read(string folder, Known<Van> vans, Known<VisitKind> kinds, Findings findings)
    {
        var table = CsvTable.Read(folder, "bookings.csv", required: false, ["date", "van", "visit_kind", "visits"], [], findings);
        var bookings = new List<Booking>();
        foreach (var row in table.Rows)
        {
            var (date, van, kind, visits) =
                (row.Date("date"), row.Known("van", vans), row.Code<VisitKind>("visit_kind"), row.Whole("visits", 0, 1_000));
            if (row.IsGood)
                bookings.Add(new(date, van, kinds.Find(kind) ?? kind, visits));
        }

        return [.. bookings
            .GroupBy(b => (b.Date, b.Van, b.Kind))
            .Select(g => new Booking(g.Key.Date, g.Key.Van, g.Key.Kind, g.Sum(b => b.Visits)))
            .OrderBy(b => b.Date).ThenBy(b => b.Van).ThenBy(b => b.Kind)];
    }
}
