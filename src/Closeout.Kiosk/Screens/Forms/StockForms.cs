using Closeout.Facts;
using Closeout.Restock;
using Closeout.Screens.Parts;
using Closeout.Words;

namespace Closeout.Screens.Forms;

/// <summary>The forms of the stock desk.</summary>
public static class StockForms
{
    /// <summary>Cartons came from a supplier.</summary>
    public static readonly DeskForm Delivery = new("A DELIVERY")
    {
        IsLeads = false,
        Stays = true,
        AsksNameLast = true,
        NoName = "Type your own code.",
        Other = ("correct a count", () => Correction!),
        Fields = _ => [new("item", "Item", FieldKind.Code, ""), new("cartons", "Cartons that came", FieldKind.Count, "")],
        About = f => Known(f, "What came from a supplier, item by item: its code as on the carton label."),
        Help =
        [
            "A delivery goes onto the shelf, in sealed cartons, and fills the oldest order of the item. Type or scan the code on the carton label, then how many came.",
            "F5 changes to a corrected count.",
        ],
        Answer = (f, by) => (f.Code<Item>("item"), f.Whole("cartons")) switch
        {
            (null, _) => ("item", "Type or scan the code on the carton label."),
            (_, null) => ("cartons", "Type how many cartons came."),
            ({ } item, { } cartons) => FormAnswer.Record(new ReceiveDelivery(item, cartons, by)),
        },
    };

    /// <summary>Somebody counted a place.</summary>
    public static readonly DeskForm Correction = new("CORRECT A COUNT")
    {
        IsLeads = false,
        Stays = true,
        NoName = "Type your own code.",
        AsksNameLast = true,
        Other = ("a delivery", () => Delivery),
        Fields = _ =>
        [
            new("place", "Where", FieldKind.Code, "shelf"),
            new("item", "Item", FieldKind.Code, ""),
            new("sealed", "Sealed cartons there", FieldKind.Count, ""),
            new("loose", "Loose units there", FieldKind.Count, ""),
            DeskForm.Why("Why"),
        ],
        About = f => Known(
            f,
            "Where: shelf (sealed cartons), bin (loose units), or a van's code (either). One count at a time, the other stays empty. The book follows your count, and the difference stays visible."),
        Help =
        [
            "A corrected count makes the book follow what somebody counted: on the shelf sealed cartons, in the bin loose units, in a van either. One count at a time.",
            "The difference goes to unexplained, with your reason, and stays visible. F5 changes to a delivery.",
        ],
        Answer = Corrected,
    };

    private static FormAnswer Corrected(Filled f, Code<Technician> by)
    {
        if (f.Code<Item>("item") is not { } item)
        {
            return ("item", "Type or scan the code of the item.");
        }

        if (by == default)
        {
            return ("by", "Type your own code.");
        }

        var (boxed, single) = (f.Whole("sealed"), f.Whole("loose"));
        return (f["place"].ToLowerInvariant(), boxed, single) switch
        {
            (_, null, null) => ("sealed", "Type what you counted: sealed cartons, or loose units."),
            (_, not null, not null) => ("loose", "Correct one count at a time: sealed cartons or loose units. Clear the other field."),
            ("shelf", { } cartons, _) => Count(Place.Shelf, cartons),
            ("bin", _, { } units) => Count(Place.Bin, units),
            ("shelf", _, _) => ("sealed", "On the shelf are sealed cartons: type those, and clear the loose units."),
            ("bin", _, _) => ("loose", "In the bin are loose units: type those, and clear the sealed cartons."),
            _ when f.Code<Van>("place") is { } van => boxed is { } sealedThere ? Count(Place.Sealed(van), sealedThere) : Count(Place.Loose(van), single!.Value),
            _ => ("place", "Say where: shelf, bin, or a van's code."),
        };

        FormAnswer Count(Place place, int counted) => FormAnswer.Record(new CorrectCount(place, item, counted, f["reason"], by));
    }

    /// <summary>What the depot has of the item that is typed; until it is one, what to type.</summary>
    private static IEnumerable<string> Known(Filled f, string otherwise)
    {
        if (f.Code<Item>("item") is not { } code || f.Depot.Setup.Find(code) is not { } item)
        {
            return [otherwise];
        }

        var stock = f.Depot.Stock;
        var shelf = stock.Ledger.Units(Place.Shelf, item.Code) / item.UnitsPerCarton;
        var order = stock.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons);
        return
        [
            item.Description,
            $"shelf {Spell.Count(shelf, "carton", "cartons")} of {item.UnitsPerCarton}, bin {stock.Ledger.Units(Place.Bin, item.Code)}, on order {Spell.Count(order, "carton", "cartons")}",
        ];
    }
}
