using Closeout.Leads;
using Closeout.Restock;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>The forms that change what tomorrow's plan is made from.</summary>
public static class PlanForms
{
    private const int MostBookings = 8;

    /// <summary>A lead changes a line of the plan, or any van and item. With both known the first question is what to change.</summary>
    public static DeskForm Change => new(T("CHANGE THE PLAN"))
    {
        Right = t => Spell.Day(t.Plan.Date),
        NoName = T("A change of the plan is a lead's: type the lead's code."),
        Focus = a => a.Van is null ? 0 : 3,
        Fields = a =>
        [
            DeskFields.Van("van", T("Van"), a.Van?.Text ?? "", T("Type the van's code.")),
            DeskFields.Item(a.Item?.Text ?? "", mayBeEmpty: true),
            DeskFields.Date("date", T("Date"), null, needed: null),
            DeskFields.Letter("kind", T("What"), "T", "TMXW", T("Say what to change: T, M, X or W.")),
            new("units", T("Units"), FieldKind.Count, ""),
            DeskFields.Why(T("Why")),
        ],
        About = Line,
        Help =
        [
            T(
                "A lead's change of one line of the plan, for one van and item, or of a whole van. T sets the target, M adds so many "
                    + "once, X leaves the van out, W withdraws what was changed."),
            T("It stands for its date until it is withdrawn, however often the plan is remade. An empty date is the plan's own."),
        ],
        Answer = Changed,
    };

    /// <summary>A lead moves bookings to another van.</summary>
    public static DeskForm Move => new(T("MOVE BOOKINGS"))
    {
        Fields = a =>
        [
            DeskFields.Date("date", T("Date"), RestockPlan.Tomorrow(a.Depot), T("Type the date as YYYY-MM-DD.")),
            DeskFields.Van("from", T("From van"), a.Van?.Text ?? "", T("Type the van whose visits are moved.")),
            DeskFields.Van("to", T("To van"), "", T("Type the van that takes them.")),
            new("kind", T("Visit kind"), FieldKind.Code, "", T("empty: all")),
            DeskFields.Why(T("Why")),
        ],
        About = f => f.Depot.Planning.Bookings.Where(b => b.Date > f.Depot.Date && b.Visits > 0)
            .GroupBy(b => (b.Date, b.Van)).OrderBy(g => g.Key.Date).ThenBy(g => g.Key.Van).Take(MostBookings)
            .Select(g => $"{IsoDate.Text(g.Key.Date)} {g.Key.Van}: {string.Join(", ", g.Select(b => $"{b.Visits} {b.Kind}"))}")
            .DefaultIfEmpty(T("No visits are booked.")),
        Help = [
            T(
                "Bookings of one date go from one van to another, all of them or those of one kind of visit. The plan follows at once, "
                    + "unless somebody changed it by hand.")],
        Answer = (f, lead) => FormAnswer.Record(new MoveBookings(
            f.Date("date")!.Value, f.Known<Van>("from"), f.Known<Van>("to"), f.Code<VisitKind>("kind"), f["reason"], lead)),
    };

    private static IEnumerable<string> Line(Filled f)
    {
        var (van, item) =
            (f.Code<Van>("van") is { } v ? f.Depot.Setup.Find(v) : null, f.Code<Item>("item") is { } i ? f.Depot.Setup.Find(i) : null);
        var line = f.On.Tonight.Plan.Lines.FirstOrDefault(l => l.Van == van && l.Item == item);
        return
        [
            $"{van?.Name ?? T("no such van yet")}, {item?.Description ?? T("no such item yet")}",
            line is null
                ? T("no line in the plan now")
                : T(
                    $"aboard {line.Aboard}, target {line.Target.Units} ({Target.Words(line.Target.Basis)}), carries {line.Low} to "
                        + $"{line.High}, need {line.Need}"),
            T("T set the target   M so many more, once   X exclude the van   W withdraw what was changed"),
            T("An empty date is the plan's own. A change stands until you withdraw it, however often the plan is remade."),
        ];
    }

    private static FormAnswer Changed(Filled f, Code<Technician> lead)
    {
        var (van, item, date, reason) = (f.Known<Van>("van"), f.Code<Item>("item"), f.Date("date") ?? f.On.Tonight.Plan.Date, f["reason"]);
        return (f.Letter("kind"), f.Whole("units")) switch
        {
            ("X", _) => FormAnswer.Record(new ChangePlan(OverrideKind.Exclude, van, null, date, 0, reason, lead)),
            ("W", _) => Standing(f.Depot, date, van, item) is { } standing
                ? FormAnswer.Record(new WithdrawChange(standing.Number, reason, lead))
                : ("kind", T("Nothing was changed on this line, so nothing can be withdrawn.")),
            ("T" or "M", null) => ("units", T("Type how many units.")),
            (_, _) when item is null => ("item", T("Type the item's code.")),
            ("T", { } units) => FormAnswer.Record(new ChangePlan(OverrideKind.Target, van, item, date, units, reason, lead)),
            ("M", { } units) => FormAnswer.Record(
                new ChangePlan(OverrideKind.Extra, van, item, date, units, reason, lead), Added(f, van, item.Value, date, units)),
            var (kind, _) => throw new InvalidOperationException($"no such change of the plan: {kind}"),
        };
    }

    /// <summary>What so many more come to: a van never gets more than its high.</summary>
    private static string Added(Filled f, Code<Van> van, Code<Item> item, DateOnly date, int units)
    {
        var plan = f.On.Tonight.Plan;
        var (low, high) = f.Depot.Setup.Limit(van, f.Depot.Setup.Item(item));
        var target = plan.Lines.FirstOrDefault(l => l.Van.Code == van && l.Item.Code == item)?.Target.Units ?? low;
        var more = Math.Max(0, Math.Min(units, high - target));
        return date != plan.Date || more == units ? T("Recorded.")
            : T($"Recorded, but {van} carries at most {high} of it: "
                    + $"{(more == 0 ? T("nothing is added") : T($"{more} of the {units} are added"))}.");
    }

    private static Standing? Standing(Depot depot, DateOnly date, Code<Van> van, Code<Item>? item) => depot.Planning.Overrides
        .LastOrDefault(o => o.Change.Date == date && o.Change.Van == van && (o.Change.Item is null || o.Change.Item == item));
}
