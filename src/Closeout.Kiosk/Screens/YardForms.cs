using System.Globalization;
using Closeout.Cardboard;
using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Vans;

namespace Closeout.Screens;

/// <summary>The forms of the yard and of a lead's desk at one van, and the commands that they come to.</summary>
public static class YardForms
{
    public static Form Of(DeskTask task) => task switch
    {
        DeskTask.Lift => Lead("Why it may go out"),
        DeskTask.Hold => Lead("Why it must stay"),
        DeskTask.Close => Form.Of([new Field("number", "Incident number", FieldKind.Count, ""), .. Lead("Why it is closed").Fields]),
        DeskTask.WriteOff => Form.Of([new Field("item", "Item", FieldKind.Code, ""), new Field("boxes", "Boxes", FieldKind.Count, "", "empty: all"), .. Lead("Why").Fields]),
        DeskTask.DepotBoxes => Form.Of(
            new Field("item", "Item", FieldKind.Code, ""),
            new Field("boxes", "Boxes flattened", FieldKind.Count, ""),
            new Field("by", "Your code", FieldKind.Code, "")),
        DeskTask.Pickup => Form.Of(
            new Field("percent", "Full by eye, percent", FieldKind.Count, "", "empty: not looked"),
            new Field("weight", "Weighed by the hauler", FieldKind.Number, "", "empty: not weighed"),
            new Field("by", "Your code", FieldKind.Code, "")),
        DeskTask.Ship => Form.Of(
            new Field("stream", "Waste stream", FieldKind.Code, ""),
            new Field("to", "Who took it, and slip", FieldKind.Words, ""),
            new Field("by", "Your code", FieldKind.Code, "")),
        _ => throw new InvalidOperationException($"no form for {task}"),
    };

    /// <summary>The form with what is most likely right already in it.</summary>
    /// <param name="van">The van that it is of; null: the depot's own.</param>
    public static Form Of(DeskTask task, Depot depot, Code<Van>? van)
    {
        var form = Of(task);
        return task switch
        {
            DeskTask.Close when Incidents.Open(depot, van!.Value) is [var first, ..] => Shown(form, "number", first.Number.ToString(CultureInfo.InvariantCulture)),
            DeskTask.WriteOff when Missing(depot, van) is [var boxes, ..] => Shown(form, "item", boxes.Item.Text),
            DeskTask.DepotBoxes when ToFlatten(depot) is [var row, ..] => Shown(Shown(form, "item", row.Item.Text), "boxes", row.Expected.ToString(CultureInfo.InvariantCulture)),
            DeskTask.Ship when depot.Yard.Collecting.Values.OrderBy(b => b.StartedOn).FirstOrDefault() is { } box => Shown(form, "stream", box.Stream.Text),
            _ => form,
        };
    }

    /// <summary>Boxes missing of a van, or of the depot.</summary>
    public static IReadOnlyList<MissingBoxes> Missing(Depot depot, Code<Van>? van) => [.. van is { } code ? LostBoxes.Of(depot, code) : LostBoxes.OfDepot(depot)];

    /// <summary>The depot's own boxes that nobody counted yet.</summary>
    public static IReadOnlyList<BoxRow> ToFlatten(Depot depot) => [.. CardboardTotals.DepotRows(depot).Where(r => r.Missing > 0)];

    /// <summary>The command that a form comes to.</summary>
    public static DeskAnswer Answer(Depot depot, DeskScreen s)
    {
        var form = s.Form;
        if (DeskForms.By(form) is not { } by)
        {
            return ("by", s.Task is DeskTask.DepotBoxes or DeskTask.Pickup or DeskTask.Ship ? "Type your own code." : "That is a lead's: type the lead's code.");
        }

        return s.Task switch
        {
            DeskTask.Lift => new LiftHolds(s.Van!.Value, form["reason"].Text, by),
            DeskTask.Hold => new PlaceHold(s.Van!.Value, form["reason"].Text, by),
            DeskTask.Close => DeskForms.Whole(form["number"]) is { } number ? new CloseIncident(s.Van!.Value, number, form["reason"].Text, by) : ("number", "Type the incident's number."),
            DeskTask.WriteOff => DeskForms.CodeOf<Item>(form["item"]) is { } item ? new WriteOffBoxes(s.Van, item, DeskForms.Whole(form["boxes"]), form["reason"].Text, by) : ("item", "Type the code of the item."),
            DeskTask.DepotBoxes => (DeskForms.CodeOf<Item>(form["item"]), DeskForms.Whole(form["boxes"])) switch
            {
                (null, _) => ("item", "Type the code of the item."),
                (_, null) => ("boxes", "Type how many boxes were flattened."),
                ({ } code, { } boxes) => new CountDepotBoxes(code, boxes, by),
            },
            DeskTask.Pickup => new EmptyContainer(DeskForms.Whole(form["percent"]), Weight(depot, form["weight"]), by),
            DeskTask.Ship => DeskForms.CodeOf<WasteStream>(form["stream"]) is { } stream ? new ShipCollected(stream, form["to"].Text, by) : ("stream", "Type the name of the waste stream."),
            _ => throw new InvalidOperationException($"no command for {s.Task}"),
        };
    }

    private static double? Weight(Depot depot, Field field) =>
        decimal.TryParse(field.Text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var weight) ? (double)depot.Setup.Units.Pounds(weight) : null;

    private static Form Lead(string why) => Form.Of(new Field("reason", why, FieldKind.Words, ""), new Field("by", "Lead's code", FieldKind.Code, ""));

    private static Form Shown(Form form, string field, string text) => form.With(form[field] with { Shown = text });
}
