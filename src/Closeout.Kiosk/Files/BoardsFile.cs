namespace Closeout.Files;

/// <summary>boards.csv: a depot's own board weights.</summary>
public static class BoardsFile
{
    public static IReadOnlyList<Board> Read(string folder, Findings findings)
    {
        var table = CsvTable.Read(folder, "boards.csv", required: false, ["board", "weight_lb_per_msf"], [], findings);
        var boards = new Dictionary<string, Board>(StringComparer.OrdinalIgnoreCase);
        foreach (var row in table.Rows)
        {
            var board = new Board(row.Text("board"), (double)row.Number("weight_lb_per_msf", 0, 10_000, openBelow: true));
            if (row.Has("board") && !boards.TryAdd(board.Name, board))
                row.Bad("board", T("stands twice"), T("once"));
        }

        return [.. boards.Values];
    }
}
