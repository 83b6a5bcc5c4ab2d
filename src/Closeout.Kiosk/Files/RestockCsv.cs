using Closeout.Restock;

namespace Closeout.Files;

/// <summary>restock.csv: what each van gets, lines with a need.</summary>
public static class RestockCsv
{
    public static byte[] Write(RestockPlan plan)
    {
        using var csv = new CsvText(
            "date", "van", "bay", "item", "description", "aboard", "low", "high", "booked_q", "target", "basis", "need",
            "sealed_cartons", "from_bin", "from_opened", "units", "short", "miss_chance", "provisional");
        foreach (var line in plan.Lines.Where(l => l.Need > 0))
        {
            csv.Date(plan.Date).Text(line.Van.Code.Text).Number(line.Van.Bay).Text(line.Item.Code.Text).Text(line.Item.Description)
                .Number(line.Aboard).Number(line.Low).Number(line.High).Number(line.Q).Number(line.Target.Units)
                .Text(Target.Words(line.Target.Basis))
                .Number(line.Need).Number(line.Sealed).Number(line.FromBin).Number(line.FromOpened).Number(line.Units).Number(line.Short)
                .Number(line.MissChance, 4).Text(line.Provisional ? "yes" : "no").EndRow();
        }

        return csv.Bytes();
    }
}
