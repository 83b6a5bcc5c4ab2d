namespace Closeout.Files;

/// <summary>van_kit.csv: a van's own required number of a kit piece, before that of kit.csv.</summary>
public static class VanKitFile
{
    public static IReadOnlyList<VanKit> Read(string folder, Known<Van> vans, Known<KitPiece> kit, Findings findings)
    {
        var table = CsvTable.Read(folder, "van_kit.csv", required: false, ["van", "kit_item", "required"], [], findings);
        var own = new Dictionary<(Code<Van>, Code<KitPiece>), VanKit>();
        foreach (var row in table.Rows)
        {
            var piece = new VanKit(row.Known("van", vans), row.Known("kit_item", kit), row.Whole("required"));
            if (row.Are("van", "kit_item") && !own.TryAdd((piece.Van, piece.Piece), piece))
                row.Bad("kit_item", T($"stands twice for van {piece.Van}"), T("once"));
        }

        return [.. own.Values];
    }
}
