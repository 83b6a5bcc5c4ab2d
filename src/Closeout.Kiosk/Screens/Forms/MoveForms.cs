using System.Globalization;
using Closeout.Restock;
using Closeout.Screens.Parts;
using Closeout.Shifts;

namespace Closeout.Screens.Forms;

/// <summary>The forms of stock that goes from van to van: at the depot, on the road, and whether it came.</summary>
public static class MoveForms
{
    private const string Depot = "depot";

    /// <summary>Stock is moved at the depot out of a van. What is proposed for the item is filled in.</summary>
    public static DeskForm Move => new(T("MOVE STOCK"))
    {
        IsLeads = false,
        Fields = a =>
        {
            var proposed = Proposed(a);
            return
            [
                DeskFields.Van("from", T("Out of van"), proposed?.From.Van.Code.Text ?? "", T("Type the van that the stock leaves.")),
                DeskFields.Coded<Van>("to", T("Into"), proposed is null ? "" : proposed.To?.Van.Code.Text ?? Depot, NoTarget,
                    (d, c) => c.Text.Equals(Depot, StringComparison.OrdinalIgnoreCase) || d.Setup.Find(c) is not null
                        ? null
                        : Refusal.NoSuchVan(c)) with { Choices = Targets },
                DeskFields.Item(a.Item?.Text ?? ""),
                Amount("sealed", T("Sealed cartons"), proposed?.Cartons),
                Amount("loose", T("Loose units"), proposed?.Loose),
                DeskFields.Why(T("Why"), T("short tonight"), T("too much aboard"), T("another van needs it")),
            ];
        },
        About = f =>
        [
            .. f.On.Tonight.Plan.Moves.Where(m => m.Item.Code == f.Code<Item>("item")).Select(m => T($"proposed: {WhyLearned.Of(m)}"))
                .DefaultIfEmpty(T("Stock goes from one van to another, or back to shelf and bin. Nothing is proposed for this item.")),
            T("Record what you really moved, once it is done. Lift heavy cartons with two."),
        ],
        Help =
        [
            T(
                "Stock that is moved at the depot between vans that are closed out, or out of one of them back to shelf and bin. Where an "
                    + "item is short the plan proposes such moves; you decide. The plan is made anew once you recorded one."),
        ],
        Answer = (f, by) => f.Whole("sealed") is null && f.Whole("loose") is null
            ? ("sealed", T("Type how many sealed cartons or loose units go."))
            : FormAnswer.Record(new MoveStock(
                f.Known<Van>("from"), f["to"].Equals(Depot, StringComparison.OrdinalIgnoreCase) ? null : f.Known<Van>("to"),
                f.Known<Item>("item"), f.Whole("sealed") ?? 0, f.Whole("loose") ?? 0, f["reason"], by)),
    };

    /// <summary>A technician says in the close-out what another van got on the road.</summary>
    public static DeskForm Give => new(T("GIVEN TO ANOTHER VAN"))
    {
        IsLeads = false,
        Fields = a =>
        [
            DeskFields.Van("to", T("To van"), "", T("Type the van that got it.")),
            DeskFields.Item(a.Item?.Text ?? ""),
            Amount("sealed", T("Sealed cartons"), null),
            Amount("loose", T("Loose units"), null),
        ],
        About = f =>
        [
            T($"What {f.On.Name} handed to another van on the road. Both records follow; the other technician is asked whether it came."),
        ],
        Help =
        [
            T("Stock that you handed to another van today. What you count here is what is left; the other van's technician, or a lead, "
                + "confirms that it came."),
        ],
        Answer = (f, by) => f.Whole("sealed") is null && f.Whole("loose") is null
            ? ("sealed", T("Type how many sealed cartons or loose units went."))
            : FormAnswer.Record(new GiveStock(
                f.On.TheVan.Code, f.Known<Van>("to"), f.Known<Item>("item"), f.Whole("sealed") ?? 0, f.Whole("loose") ?? 0, by)),
    };

    /// <summary>Whether it came, what another van handed over.</summary>
    public static DeskForm Came => new(T("DID IT COME?"))
    {
        IsLeads = false,
        Fields = a =>
        [
            DeskFields.Whole("number", T("Number"), T("Type the number that stands above."), 1) with
            {
                Shown = Open(a).Select(g => g.Key.ToString(CultureInfo.InvariantCulture)).FirstOrDefault(""),
            },
            DeskFields.Letter("came", T("Did it come?"), "", T("YN"), T("Type Y or N: did it come?"), T("Y or N")),
        ],
        About = f => Open(f.On)
            .Select(g => T($"{g.Key}: {g.Value.From} says it handed {g.Value.To} {g.Value.Sealed} sealed and {g.Value.Loose} loose of "
                + $"{f.Depot.Setup.Item(g.Value.Item).Description}"))
            .DefaultIfEmpty(T("Nothing from another van waits for an answer.")),
        Help =
        [
            T(
                "Stock that another van says it handed over on the road. Y: it came. N: it did not, and what is missing goes to "
                    + "unexplained."),
        ],
        Answer = (f, by) => FormAnswer.Record(new AnswerGift(f.Whole("number") ?? 0, f.Letter("came") == T("Y"), by)),
    };

    /// <summary>What other vans say they handed to a van, and nobody confirmed yet.</summary>
    public static IEnumerable<KeyValuePair<int, StockGiven>> Open(Asked a) =>
        a.Depot.Stock.Gifts.Where(g => a.Van is null || g.Value.To == a.Van).OrderBy(g => g.Key);

    private static string NoTarget => T("Say where it goes: a van's code, or depot.");

    private static Field Amount(string name, string label, int? proposed) =>
        new(name, label, FieldKind.Count, proposed?.ToString(CultureInfo.InvariantCulture) ?? "");

    private static MoveProposal? Proposed(Asked a)
    {
        var moves = a.Tonight.Plan.Moves.Where(m => a.Item is null || m.Item.Code == a.Item).ToList();
        return moves.Find(m => m.To?.Van.Code == a.Van || m.From.Van.Code == a.Van) ?? moves.FirstOrDefault();
    }

    private static IEnumerable<Choice> Targets(Depot depot) =>
        [new(Depot, T("shelf and bin")), .. depot.Setup.Vans.Select(v => new Choice(v.Code.Text, v.Name))];
}
