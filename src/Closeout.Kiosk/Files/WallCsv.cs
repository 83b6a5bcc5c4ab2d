using Closeout.Vans;

namespace Closeout.Files;

/// <summary>wall.csv: the bay wall as a table.</summary>
public static class WallCsv
{
    public static byte[] Write(Depot depot)
    {
        using var csv = new CsvText("van", "bay", "technician", "status", "step", "readiness", "notes");
        foreach (var state in Readiness.Of(depot.InFileUnits))
        {
            csv.Text(state.Van.Code.Text).Number(state.Van.Bay).Text(state.With?.Text)
                .Text(Status(state)).Text(StepWords.Name(state.Shift?.Step ?? Step.OnTheRoad)).Text(Readiness.Words(state.Morning))
                .Text(string.Join("; ", state.Holds.Concat(state.Notes))).EndRow();
        }

        return csv.Bytes();
    }

    private static string Status(VanState state) => state.Shift switch
    {
        null when state.Explained is { StayedIn: true } => "stayed in",
        null => "on the road",
        { IsClosed: true } => "closed",
        _ => "closing out",
    };
}
