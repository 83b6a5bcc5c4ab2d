using Closeout.Restock;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>The forms of the stock desk.</summary>
public static class StockForms
{
    /// <summary>Cartons came from a supplier.</summary>
    public static DeskForm Delivery => new(T("A DELIVERY"))
    {
        IsLeads = false,
        Stays = true,
        Other = (T("correct a count"), () => Correction!),
        Fields = _ =>
        [
            DeskFields.Item(needed: T("Type or scan the code on the carton label.")),
            DeskFields.Whole("cartons", T("Cartons that came"), T("Type how many cartons came."), 1, ReceiveDelivery.MostCartons),
            DeskFields.Letter("rest", T("Does the rest come?"), T("Y"), T("YN"), T("Type Y or N: does the rest of the order still come?"),
                T("where fewer came than were ordered"))
                with { Applies = (d, form) => Left(d, form) > 0 },
        ],
        About = f => [.. Known(f, T("What came from a supplier, item by item: its code as on the carton label.")), .. Rest(f)],
        Help =
        [
            T(
                "A delivery goes onto the shelf, in sealed cartons, and fills the oldest order of the item. Type or scan the code on the "
                    + "carton label, then how many came."),
            T("Where fewer came than were ordered, say whether the rest still comes: N takes it off the order, so it is ordered again."),
            T("F5 changes to a corrected count."),
        ],
        Answer = (f, by) => FormAnswer.Record(
            new ReceiveDelivery(f.Known<Item>("item"), f.Whole("cartons") ?? 0, by, f.Letter("rest") == T("Y"))),
    };

    /// <summary>What a delivery leaves open of an order.</summary>
    private static IEnumerable<string> Rest(Filled f) =>
        Left(f.Depot, f.Form) is > 0 and var rest ? [T($"{Spell.Count(rest, T("carton"), T("cartons"))} of the order did not come.")] : [];

    private static int Left(Depot depot, Form form) =>
        Code<Item>.IsValid(form["item"].Text) && depot.Setup.Find(new Code<Item>(form["item"].Text)) is { } item
            ? ReceiveDelivery.Rest(depot, item, form["cartons"].Whole ?? 0)
            : 0;

    /// <summary>Somebody counted a place.</summary>
    public static DeskForm Correction => new(T("CORRECT A COUNT"))
    {
        IsLeads = false,
        Stays = true,
        Other = (T("a delivery"), () => Delivery),
        Fields = _ =>
        [
            DeskFields.Coded<Van>("place", T("Where"), "shelf", NoPlace,
                (d, c) => c.Text.ToLowerInvariant() is "shelf" or "bin" || d.Setup.Find(c) is not null
                    ? null
                    : Refusal.NoSuchVan(c)) with { Choices = Places },
            DeskFields.Item(needed: T("Type or scan the code of the item.")),
            new("sealed", T("Sealed cartons there"), FieldKind.Count, ""),
            new("loose", T("Loose units there"), FieldKind.Count, ""),
            DeskFields.Why(T("Why"), T("counted again"), T("found elsewhere"), T("broken"), T("not brought back")),
        ],
        About = f => Known(
            f,
            T(
                "Where: shelf (sealed cartons), bin (loose units), or a van's code (either). One count at a time, the other stays empty. "
                    + "The book follows your count, and the difference stays visible.")),
        Help =
        [
            T(
                "A corrected count makes the record follow what somebody counted: on the shelf sealed cartons, in the bin loose units, "
                    + "in a van either. One count at a time."),
            T("The difference goes to unexplained, with your reason, and stays visible. F5 changes to a delivery."),
        ],
        Answer = Corrected,
    };

    private static string NoPlace => T("Say where: shelf, bin, or a van's code.");

    private static FormAnswer Corrected(Filled f, Code<Technician> by)
    {
        var (boxed, single) = (f.Whole("sealed"), f.Whole("loose"));
        return (f["place"].ToLowerInvariant(), boxed, single) switch
        {
            (_, null, null) => ("sealed", T("Type what you counted: sealed cartons, or loose units.")),
            (_, not null, not null) => ("loose", T("Correct one count at a time: sealed cartons or loose units. Clear the other field.")),
            ("shelf", { } cartons, _) => Count(Place.Shelf, cartons),
            ("bin", _, { } units) => Count(Place.Bin, units),
            ("shelf", _, _) => ("sealed", T("On the shelf are sealed cartons: type those, and clear the loose units.")),
            ("bin", _, _) => ("loose", T("In the bin are loose units: type those, and clear the sealed cartons.")),
            (_, { } cartons, _) => Count(Place.Sealed(f.Known<Van>("place")), cartons),
            (_, _, { } units) => Count(Place.Loose(f.Known<Van>("place")), units),
        };

        FormAnswer Count(Place place, int counted) =>
            FormAnswer.Record(new CorrectCount(place, f.Known<Item>("item"), counted, f["reason"], by));
    }

    /// <summary>What the depot has of the item that is typed; until it is one, what to type.</summary>
    private static IEnumerable<string> Known(Filled f, string otherwise)
    {
        if (f.Code<Item>("item") is not { } code || f.Depot.Setup.Find(code) is not { } item)
            return [otherwise];

        var stock = f.Depot.Stock;
        var shelf = stock.Ledger.Units(Place.Shelf, item.Code) / item.UnitsPerCarton;
        var order = stock.Orders.Where(o => o.Item == item.Code).Sum(o => o.Cartons);
        return
        [
            item.Description,
            T($"shelf {Spell.Count(shelf, T("carton"), T("cartons"))} of {item.UnitsPerCarton}, bin "
                    + $"{stock.Ledger.Units(Place.Bin, item.Code)}, "
                + $"on order {Spell.Count(order, T("carton"), T("cartons"))}"),
        ];
    }

    private static IEnumerable<Choice> Places(Depot depot) =>
        [new("shelf", T("the shelf")), new("bin", T("the leftovers bin")),
            .. depot.Setup.Vans.Select(v => new Choice(v.Code.Text, v.Name))];
}
