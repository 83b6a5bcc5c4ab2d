namespace Closeout.Files;

/// <summary>orders.csv: cartons on order from suppliers.</summary>
public static class OrdersFile
{
    /// <summary>The open orders; null when there is no such file.</summary>
    public static IReadOnlyList<Order>? Read(string folder, Known<Item> items, Findings findings)
    {
        var table = CsvTable.Read(folder, "orders.csv", required: false, ["item", "cartons", "due"], ["ordered_on", "supplier"], findings);
        var orders = new List<Order>();
        foreach (var row in table.Rows)
        {
            var order = new Order(
                row.Known("item", items), row.Whole("cartons", 0, 10_000), row.Date("due"),
                row.Has("ordered_on") ? row.Date("ordered_on") : null, row.Has("supplier") ? row.Code<Supplier>("supplier") : null);
            if (row.Are("due", "ordered_on") && order.OrderedOn > order.Due)
                row.Bad("ordered_on", T("is later than the day it is due"), T($"a day up to {order.Due:yyyy-MM-dd}"));

            if (row.IsGood)
                orders.Add(order);
        }

        return table.IsThere ? orders : null;
    }
}
