using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Leads;
using Closeout.Restock;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>What is asked at the stock desk.</summary>
public enum DeskTask
{
    /// <summary>A lead changes a line of the plan.</summary>
    Change,

    /// <summary>Cartons came from a supplier.</summary>
    Delivery,

    /// <summary>Somebody counted a place.</summary>
    Correction,

    /// <summary>A lead lifts the holds of a van.</summary>
    Lift,

    /// <summary>A lead puts a van on hold.</summary>
    Hold,

    /// <summary>A lead closes an incident.</summary>
    Close,

    /// <summary>A lead writes off boxes that nobody found.</summary>
    WriteOff,

    /// <summary>Boxes of cartons opened at the depot.</summary>
    DepotBoxes,

    /// <summary>The hauler emptied the container.</summary>
    Pickup,

    /// <summary>A collecting box goes to a recycler.</summary>
    Ship,

    /// <summary>A lead resets somebody's PIN.</summary>
    ResetPin,

    /// <summary>A lead issues a PIN to somebody.</summary>
    IssuePin,

    /// <summary>A lead looks over a signed close-out.</summary>
    Check,

    /// <summary>A lead opens a signed close-out again.</summary>
    Reopen,

    /// <summary>A lead closes a van out for somebody else.</summary>
    Behalf,

    /// <summary>A lead explains why a van is not closed out.</summary>
    Excuse,

    /// <summary>A lead moves bookings to another van.</summary>
    Move,

    /// <summary>A lead ends the business date.</summary>
    EndDay,
}

/// <summary>What a filled-in desk form asks to have done, or a sentence that says what is missing.</summary>
/// <param name="Field">The field that it is missing in.</param>
public readonly record struct DeskAnswer(Act? Act, string? Missing, string? Field = null)
{
    public static implicit operator DeskAnswer(StockCommand command) => new(new StockAct(command, "Recorded."), null);

    public static implicit operator DeskAnswer(YardCommand command) => new(new YardAct(command, "Recorded."), null);

    public static implicit operator DeskAnswer(VanCommand command) => new(new VanAct(command, $"{command.Van}: recorded, with your reason."), null);

    public static implicit operator DeskAnswer(LeadCommand command) => new(new LeadAct(command, "Recorded."), null);

    public static implicit operator DeskAnswer(Act act) => new(act, null);

    public static implicit operator DeskAnswer((string Field, string Missing) lacks) => new(null, lacks.Missing, lacks.Field);
}

/// <summary>The forms of the stock desk, and the commands that they come to.</summary>
public static class DeskForms
{
    /// <param name="van">Of the line that is changed, if one was chosen; so the item.</param>
    public static Form Of(DeskTask task, Code<Van>? van = null, Code<Item>? item = null) => task switch
    {
        DeskTask.Change => Form.Of(
            new Field("van", "Van", FieldKind.Code, van?.Text ?? ""),
            new Field("item", "Item", FieldKind.Code, item?.Text ?? ""),
            new Field("date", "Date", FieldKind.Date, ""),
            new Field("kind", "What", FieldKind.Letter, "T"),
            new Field("units", "Units", FieldKind.Count, ""),
            new Field("reason", "Why", FieldKind.Words, ""),
            new Field("by", "Lead's code", FieldKind.Code, "")),
        DeskTask.Delivery => Form.Of(
            new Field("item", "Item", FieldKind.Code, ""),
            new Field("cartons", "Cartons that came", FieldKind.Count, ""),
            new Field("by", "Your code", FieldKind.Code, "")),
        DeskTask.Correction => Form.Of(
            new Field("place", "Where", FieldKind.Code, "shelf"),
            new Field("item", "Item", FieldKind.Code, ""),
            new Field("sealed", "Sealed cartons there", FieldKind.Count, ""),
            new Field("loose", "Loose units there", FieldKind.Count, ""),
            new Field("reason", "Why", FieldKind.Words, ""),
            new Field("by", "Your code", FieldKind.Code, "")),
        DeskTask.ResetPin or DeskTask.IssuePin => Form.Of(new Field("by", "Lead's code", FieldKind.Code, "")),
        >= DeskTask.Check => LeadForms.Of(task),
        _ => YardForms.Of(task),
    };

    /// <summary>The command that a form comes to.</summary>
    /// <param name="line">The line of the plan that is changed.</param>
    public static DeskAnswer Answer(Depot depot, DeskScreen s, DateOnly date) => s.Task switch
    {
        DeskTask.Change => Change(depot, s, date),
        DeskTask.Delivery => Delivery(s.Form),
        DeskTask.Correction => Correction(depot, s.Form),
        DeskTask.ResetPin or DeskTask.IssuePin => PeopleKeys.Answer(s),
        >= DeskTask.Check => LeadForms.Answer(depot, s),
        _ => YardForms.Answer(depot, s),
    };

    private static DeskAnswer Change(Depot depot, DeskScreen s, DateOnly date)
    {
        var form = s.Form;
        if (CodeOf<Van>(form["van"]) is not { } van)
        {
            return ("van", "Type the van's code.");
        }

        var item = CodeOf<Item>(form["item"]);
        if (form["date"].Text.Length > 0
            && !DateOnly.TryParseExact(form["date"].Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out date))
        {
            return ("date", $"\"{form["date"].Text}\" is no date. Type it as YYYY-MM-DD, or clear the field for the plan's own date.");
        }

        if (By(form) is not { } lead)
        {
            return ("by", "A change of the plan is a lead's: type the lead's code.");
        }

        var reason = form["reason"].Text;
        var kind = form["kind"].Text.ToUpperInvariant();
        if (kind == "X")
        {
            return new ChangePlan(OverrideKind.Exclude, van, null, date, 0, reason, lead);
        }

        if (kind == "W")
        {
            return depot.Overrides.LastOrDefault(o => o.Change.Date == date && o.Change.Van == van && (o.Change.Item is null || o.Change.Item == item)) is { } standing
                ? new WithdrawChange(standing.Number, reason, lead)
                : ("kind", "Nothing was changed on this line, so nothing can be withdrawn.");
        }

        return (kind, Whole(form["units"])) switch
        {
            ("T" or "M", null) => ("units", "Type how many units."),
            (_, _) when item is null => ("item", "Type the item's code."),
            ("T", { } units) => new ChangePlan(OverrideKind.Target, van, item, date, units, reason, lead),
            ("M", { } units) => new ChangePlan(OverrideKind.Extra, van, item, date, units, reason, lead),
            _ => ("kind", "Say what to change: T, M, X or W."),
        };
    }

    private static DeskAnswer Delivery(Form form) => (CodeOf<Item>(form["item"]), Whole(form["cartons"]), By(form)) switch
    {
        (null, _, _) => ("item", "Type or scan the code on the carton label."),
        (_, null, _) => ("cartons", "Type how many cartons came."),
        (_, _, null) => ("by", "Type your own code."),
        ({ } item, { } cartons, { } by) => new ReceiveDelivery(item, cartons, by),
    };

    private static DeskAnswer Correction(Depot depot, Form form)
    {
        var place = form["place"].Text.ToLowerInvariant();
        var (boxed, single) = (Whole(form["sealed"]), Whole(form["loose"]));
        if (CodeOf<Item>(form["item"]) is not { } item)
        {
            return ("item", "Type or scan the code of the item.");
        }

        if (By(form) is not { } by)
        {
            return ("by", "Type your own code.");
        }

        if (boxed is null && single is null)
        {
            return ("sealed", "Type what you counted: sealed cartons, or loose units.");
        }

        if (boxed is not null && single is not null)
        {
            return ("loose", "Correct one count at a time: sealed cartons or loose units. Clear the other field.");
        }

        var reason = form["reason"].Text;
        if (place is "shelf" or "bin")
        {
            return (place, boxed, single) switch
            {
                ("shelf", { } cartons, _) => new CorrectCount(Place.Shelf, item, cartons, reason, by),
                ("bin", _, { } units) => new CorrectCount(Place.Bin, item, units, reason, by),
                ("shelf", _, _) => ("sealed", "On the shelf are sealed cartons: type those, and clear the loose units."),
                _ => ("loose", "In the bin are loose units: type those, and clear the sealed cartons."),
            };
        }

        if (CodeOf<Van>(form["place"]) is not { } van)
        {
            return ("place", "Say where: shelf, bin, or a van's code.");
        }

        return new CorrectCount(boxed is null ? Place.Loose(van) : Place.Sealed(van), item, boxed ?? single!.Value, reason, by);
    }

    public static Code<Technician>? By(Form form) => CodeOf<Technician>(form["by"]);

    public static Code<T>? CodeOf<T>(Field field) => Code<T>.IsValid(field.Text) ? new Code<T>(field.Text) : null;

    public static int? Whole(Field field) => int.TryParse(field.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var number) ? number : null;
}
