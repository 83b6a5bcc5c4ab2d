using Closeout.Restock;

namespace Closeout.Files;

/// <summary>moves.csv: proposals to move stock of what is short, from van to van or back to the shelf. The plan is without them.</summary>
public static class MovesCsv
{
    public static byte[] Write(RestockPlan plan)
    {
        using var csv = new CsvText("date", "item", "from", "to", "cartons", "units", "why");
        foreach (var move in plan.Moves)
        {
            csv.Date(plan.Date).Text(move.Item.Code.Text).Text(move.From.Van.Code.Text).Text(move.To?.Van.Code.Text ?? "shelf")
                .Number(move.Cartons).Number(move.Units).Text(WhyLearned.Of(move)).EndRow();
        }

        return csv.Bytes();
    }
}
