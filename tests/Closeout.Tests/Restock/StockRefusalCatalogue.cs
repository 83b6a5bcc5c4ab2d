using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Restock;
using Closeout.Rules;
using Closeout.Shifts;
using Closeout.Tests.Shifts;
using static Closeout.Tests.Restock.TinyDesk;

namespace Closeout.Tests.Restock;

/// <summary>How each refusal of the stock desk is met.</summary>
public static class StockRefusalCatalogue
{
    private static readonly Code<Item> None = new("NONE");

    public static IReadOnlyList<Met> All { get; } =
    [
        new(nameof(Refusal.OnlyALead), "only-a-lead", Open, Target(10) with { Lead = Tiny.T1 }),
        new(nameof(Refusal.OnlyALead), "only-a-lead", Changed, new WithdrawChange(2, "called off", Tiny.T1)),
        new(nameof(StockRefusal.DateIsOver), "date-is-over", Open, Target(10) with { Date = Tiny.Wednesday }),
        new(nameof(StockRefusal.DateIsOver), "date-is-over", Open, Target(10) with { Date = Tiny.Monday }),
        new(nameof(StockRefusal.AboveHigh), "above-high", Open, Target(41)),
        new(nameof(StockRefusal.NoItemNamed), "no-item-named", Open, Target(10) with { Item = null }),
        new(nameof(StockRefusal.BeingClosedOut), "being-closed-out", () => Open().At(Tiny.B1, Step.Leftovers), new CorrectCount(Place.Loose(Tiny.B1), Lamp, 1, "counted", Tiny.T1)),
        new(nameof(StockRefusal.NoSuchChange), "no-such-change", Open, new WithdrawChange(2, "called off", Tiny.Lead)),
        new(nameof(StockRefusal.NoSuchChange), "no-such-change", Changed, new WithdrawChange(1, "called off", Tiny.Lead)),
        new(nameof(StockRefusal.NotClosedYet), "not-closed-yet", Open, Load(1, 0)),
        new(nameof(StockRefusal.NothingTaken), "nothing-taken", Closed, new LoadVan(Tiny.B1, [], null)),
        new(nameof(StockRefusal.SameVan), "same-van", Closed, new MoveStock(Tiny.B1, Tiny.B1, Lamp, 1, 0, "short", Tiny.T1)),
        new(nameof(StockRefusal.NothingMoved), "nothing-moved", Closed, new MoveStock(Tiny.B1, null, Lamp, 0, 0, "short", Tiny.T1)),
        new(nameof(StockRefusal.NotAboard), "not-aboard", Closed, new MoveStock(Tiny.B1, null, Lamp, 1, 0, "short", Tiny.T1)),
        new(nameof(StockRefusal.NotGiven), "not-given", Open, new AnswerGift(7, true, Tiny.T1)),
        new(nameof(StockRefusal.NotYourVan), "not-your-van", Given, new AnswerGift(Given().Number, true, Tiny.T1)),
        new(nameof(StockRefusal.LoadedAlready), "loaded-already", () => Closed().Did(Load(1, 0)), Load(1, 0)),
        new(nameof(StockRefusal.NotOnTheShelf), "not-on-the-shelf", Closed, Load(4, 0)),
        new(nameof(StockRefusal.NotOnTheShelf), "not-on-the-shelf", Closed, Load(0, 35)),
        new(nameof(Refusal.NoWords), "no-words", Open, Target(10) with { Reason = " " }),
        new(nameof(Refusal.NoWords), "no-words", Changed, new WithdrawChange(2, "", Tiny.Lead)),
        new(nameof(Refusal.NoWords), "no-words", Open, new CorrectCount(Place.Bin, Lamp, 3, "", Tiny.T1)),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", Open, Target(10) with { Reason = "4111 1111 1111 1111" }),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", Changed, new WithdrawChange(2, "4111 1111 1111 1111", Tiny.Lead)),
        new(nameof(Refusal.LooksLikeACard), "looks-like-a-card", Open, new CorrectCount(Place.Bin, Lamp, 3, "4111 1111 1111 1111", Tiny.T1)),
        new(nameof(Refusal.TooManyWords), "too-many-words", Open, Target(10) with { Reason = new('x', 81) }),
        new(nameof(Refusal.OutOfRange), "out-of-range", Open, Target(-1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Closed, Load(-1, 0)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Closed, Load(0, int.MaxValue)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Open, new ReceiveDelivery(Lamp, 0, Tiny.T1)),
        new(nameof(Refusal.OutOfRange), "out-of-range", Open, new CorrectCount(Place.Bin, Lamp, -1, "counted", Tiny.T1)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Open, Target(10) with { Van = new("B9") }),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Open, new LoadVan(new("B9"), [new(Lamp, 1, 0)], null)),
        new(nameof(Refusal.NoSuchVan), "no-such-van", Open, new CorrectCount(Place.Loose(new("B9")), Lamp, 1, "counted", Tiny.T1)),
        new(nameof(Refusal.NoSuchItem), "no-such-item", Open, Target(10) with { Item = None }),
        new(nameof(Refusal.NoSuchItem), "no-such-item", Closed, new LoadVan(Tiny.B1, [new(None, 1, 0)], null)),
        new(nameof(Refusal.NoSuchItem), "no-such-item", Open, new ReceiveDelivery(None, 1, Tiny.T1)),
        new(nameof(Refusal.NoSuchItem), "no-such-item", Open, new CorrectCount(Place.Bin, None, 1, "counted", Tiny.T1)),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Open, Target(10) with { Lead = new("T9") }),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Closed, Load(1, 0) with { By = new("T9") }),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Open, new ReceiveDelivery(Lamp, 1, new("T9"))),
        new(nameof(Refusal.NoSuchTechnician), "no-such-technician", Open, new CorrectCount(Place.Bin, Lamp, 1, "counted", new("T9"))),
    ];

    private static Depot Open() => Tiny.Opened("shelf: 3 LAMP; bin: 4 LAMP");

    private static Depot Closed() => Open().At(Tiny.B1, Step.Closed);

    private static Depot Given() =>
        Tiny.Opened("B1: 1+0 LAMP").At(Tiny.B1, Step.Leftovers).Did(new GiveStock(Tiny.B1, Tiny.B2, Lamp, 1, 0, Tiny.T1));

    private static Depot Changed() => Open().Did(Target(12));

    private static ChangePlan Target(int units) => Change(OverrideKind.Target, Tiny.B1, units);

    private static LoadVan Load(int cartons, int loose) => new(Tiny.B1, [new(Lamp, cartons, loose)], null);
}
