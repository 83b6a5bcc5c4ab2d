using Closeout.Restock;

namespace Closeout.Files;

/// <summary>shelf.csv: what the plan leaves at the depot, every item. Cartons on the shelf, units in the bin and on order.</summary>
public static class ShelfCsv
{
    public static byte[] Write(RestockPlan plan)
    {
        using var csv = new CsvText(
            "item", "description", "shelf_before", "bin_before", "sealed_out", "opened", "loose_out", "shelf_after", "bin_after", "short",
            "on_order", "reorder_point", "order_up_to", "order_cartons");
        foreach (var line in plan.Shelf)
        {
            csv.Text(line.Item.Code.Text).Text(line.Item.Description)
                .Number(line.ShelfBefore).Number(line.BinBefore).Number(line.SealedOut).Number(line.Opened).Number(line.LooseOut)
                .Number(line.ShelfAfter).Number(line.BinAfter).Number(line.Short).Number(line.OnOrder)
                .Number(line.Order.ReorderPoint).Number(line.Order.UpTo).Number(line.Order.Cartons).EndRow();
        }

        return csv.Bytes();
    }
}
