namespace Closeout.Files;

/// <summary>orders.csv: cartons on order from suppliers.</summary>
public static class OrdersFile
{
    /// <summary>The open orders; null when there is no such file.</summary>
    public static IReadOnlyList<Order>? Read(string folder, Known<Item> items, Findings findings)
    {
        var table = CsvTable.Read(folder, "orders.csv", required: false, ["item", "cartons", "due"], [], findings);
        var orders = new List<Order>();
        foreach (var row in table.Rows)
        {
            var order = new Order(row.Known("item", items), row.Whole("cartons", 0, 10_000), row.Date("due"));
            if (row.IsGood)
                orders.Add(order);
        }

        return table.IsThere ? orders : null;
    }
}
