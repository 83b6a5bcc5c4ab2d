namespace Closeout.Files;

/// <summary>kit.csv: what every van carries, in the order in which people check it.</summary>
public static class KitFile
{
    public static (IReadOnlyList<KitPiece> Kit, Known<KitPiece> Codes) Read(string folder, Findings findings)
    {
        var table = CsvTable.Read(folder, "kit.csv", required: true, ["kit_item", "description", "required", "critical", "expires"],
            ["test_every_days", "warn_days"], findings);
        var known = new Known<KitPiece>("kit.csv", table);
        var kit = new List<KitPiece>();
        foreach (var row in table.Rows)
        {
            var piece = new KitPiece(
                row.Code<KitPiece>("kit_item"), row.Text("description"), row.Whole("required"), row.YesNo("critical"), row.YesNo("expires"),
                row.Has("test_every_days") ? row.Whole("test_every_days", 0, 3_660) : 0,
                row.Has("warn_days") ? row.Whole("warn_days", 0, 366) : KitPiece.UsualWarnDays);
            if (piece.Code != default && !known.Add(piece.Code))
                row.Bad("kit_item", T("stands twice"), T("once, whatever the case of its letters"));

            if (row.IsGood)
                kit.Add(piece);
        }

        return (kit, known);
    }
}
