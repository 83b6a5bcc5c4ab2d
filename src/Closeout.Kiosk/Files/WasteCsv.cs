using Closeout.Cardboard;
using Closeout.Store;

namespace Closeout.Files;

/// <summary>
/// waste.csv: what came home of each waste stream, by date and van, then the collecting boxes with their label and limit.
/// </summary>
public static class WasteCsv
{
    public static byte[] Write(Depot depot, IReadOnlyList<StreamDay> days)
    {
        using var csv = new CsvText("date", "van", "stream", "description", "amount", "unit", "box_started_on", "ship_by", "label", "note");
        foreach (var day in days)
        {
            var stream = WasteStream.Of(day.Stream);
            csv.Date(day.Date).Text(day.Van.Text).Text(stream.Code.Text).Text(stream.Description).Number(day.Amount).Text(stream.Unit)
                .Text(null).Text(null).Text(null).Text(null).EndRow();
        }

        foreach (var box in depot.Yard.Collecting.Values.OrderBy(b => b.StartedOn).ThenBy(b => b.Stream))
        {
            var stream = WasteStream.Of(box.Stream);
            csv.Date(depot.Date).Text(null).Text(stream.Code.Text).Text(stream.Description).Number(box.Amount).Text(stream.Unit)
                .Date(box.StartedOn).Date(Collecting.ShipBy(box)).Text(stream.Label)
                .Text(Collecting.Note(box, depot.Date) ?? "in the accumulation box").EndRow();
        }

        return csv.Bytes();
    }
}
