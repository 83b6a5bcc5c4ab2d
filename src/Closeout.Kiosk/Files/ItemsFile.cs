using Closeout.Cardboard;

namespace Closeout.Files;

/// <summary>items.csv: the kinds of stock, in the order in which they lie in a van.</summary>
public static class ItemsFile
{
    private static readonly string[] Columns =
    [
        "item", "description", "priority", "units_per_carton", "unit_weight_lb", "carton_length_in", "carton_width_in", "carton_depth_in",
        "board", "low", "high", "lead_days", "review_days", "min_order_cartons",
    ];

    public static (IReadOnlyList<Item> Items, Known<Item> Codes) Read(string folder, IReadOnlyList<Board> boards, Findings findings)
    {
        var table = CsvTable.Read(folder, "items.csv", required: true, Columns, ["stow", "supplier", "replaces"], findings);
        var known = new Known<Item>("items.csv", table);
        var (items, replacing) = (new List<Item>(), new List<(Item Item, CsvRow Row)>());
        foreach (var row in table.Rows)
        {
            var item = new Item(
                row.Code<Item>("item"),
                row.Text("description"),
                row.Whole("priority", 1, 3),
                row.Whole("units_per_carton", 1, 100_000),
                (double)row.Number("unit_weight_lb", 0, 10_000),
                new CartonBox(
                    (double)row.Number("carton_length_in", 0, 1_000),
                    (double)row.Number("carton_width_in", 0, 1_000),
                    (double)row.Number("carton_depth_in", 0, 1_000),
                    row.Text("board")),
                row.Whole("low"),
                row.Whole("high"),
                row.Whole("lead_days", 0, 1_000),
                row.Whole("review_days", 0, 1_000),
                row.Whole("min_order_cartons"),
                row.Has("stow") ? row.Text("stow") : "",
                row.Has("supplier") ? row.Code<Supplier>("supplier") : null,
                row.Has("replaces") ? row.Code<Item>("replaces") : null);
            if (item.Code != default && !known.Add(item.Code))
                row.Bad("item", T("stands twice"), T("once, whatever the case of its letters"));

            Relations(row, item, boards);
            if (item.Replaces is not null && row.Are("item", "replaces"))
                replacing.Add((item, row.Keep()));

            if (row.IsGood)
                items.Add(item);
        }

        ReplacedItems.Check(replacing, known);

        return (items, known);
    }

    private static void Relations(CsvRow row, Item item, IReadOnlyList<Board> boards)
    {
        if (row.Are("carton_length_in", "carton_width_in") && item.Box.WidthIn > item.Box.LengthIn)
            row.Bad("carton_width_in", T("is above the length"), T($"at most carton_length_in, {row.Raw("carton_length_in")}"));

        if (row.Are("low", "high") && item.High < item.Low)
            row.Bad("high", T("is below low"), T($"at least low, {item.Low}"));

        if (row.Are("board") && Boards.Find(boards, item.Box.Board) is null)
        {
            row.Bad("board", T("is not known"),
                string.Join(", ",
                    boards.Concat(Boards.Typical).Select(b => b.Name)
                        .Distinct(StringComparer.OrdinalIgnoreCase)) + T(", or a row in boards.csv"));
        }
    }
}
