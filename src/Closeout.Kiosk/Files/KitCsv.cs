using Closeout.Vans;

namespace Closeout.Files;

/// <summary>
/// kit.csv out: the safety kit of every van as last confirmed, its dates, and what to buy; in bay order, then the order of the list.
/// </summary>
public static class KitCsv
{
    public static byte[] Write(Depot depot)
    {
        using var csv = new CsvText("date", "van", "bay", "kit_item", "description", "required", "there", "missing", "expires", "tested",
            "test_due", "buy", "note");
        foreach (var van in depot.Setup.Vans)
        {
            var buy = KitCheck.ToBuy(depot, van.Code).ToDictionary(b => b.Piece.Code, b => b.Pieces);
            var due = KitCheck.Due(depot, van.Code).ToLookup(d => d.Piece.Code, d => d.Words(depot.Date));
            var tests = KitCheck.Dates(depot, van.Code).Where(d => d.IsTest).ToDictionary(d => d.Piece.Code, d => d.On);
            foreach (var piece in depot.Setup.Kit)
            {
                var (required, there) = (depot.Setup.Required(van.Code, piece), KitCheck.ThereOf(depot, van.Code, piece));
                var dates = KitCheck.DatesOf(depot, van.Code, piece.Code);
                csv.Date(depot.Date).Text(van.Code.Text).Number(van.Bay).Text(piece.Code.Text).Text(piece.Description).Number(required)
                    .Number(there).Number(Math.Max(0, required - there))
                    .Date(dates.Expires).Date(dates.TestedOn).Date(tests.TryGetValue(piece.Code, out var on) ? on : null)
                    .Number(buy.GetValueOrDefault(piece.Code))
                    .Text(string.Join("; ", due[piece.Code])).EndRow();
            }
        }

        return csv.Bytes();
    }
}
