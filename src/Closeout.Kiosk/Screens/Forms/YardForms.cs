using System.Globalization;
using Closeout.Cardboard;
using Closeout.Screens.Parts;

namespace Closeout.Screens.Forms;

/// <summary>The forms of the yard.</summary>
public static class YardForms
{
    /// <summary>A lead writes off boxes that nobody found.</summary>
    public static DeskForm WriteOff => new(T("WRITE BOXES OFF"))
    {
        Fields = a =>
        [
            DeskFields.Item(Missing(a) is [var boxes, ..] ? boxes.Item.Text : ""),
            new("boxes", T("Boxes"), FieldKind.Count, "", T("empty: all")),
            DeskFields.Why(T("Why")),
        ],
        About = f =>
        [
            LostBoxes.Words(f.Depot, Missing(f.On)) is { } words
                ? $"{f.On.Name}: {words}: {string.Join(", ", Missing(f.On).Select(m => $"{m.Item} {m.Boxes}"))}"
                : T($"No box of {f.On.Name} is missing."),
            T("A box written off is no longer looked for. It counts as expected and not as flattened, so the totals stay true."),
        ],
        Help = [
            T(
                "Boxes that nobody found are no longer looked for. They count as expected and not as flattened, so that the totals stay "
                    + "true. With the field of boxes empty all of the item that are missing are written off.")],
        Answer = (f, lead) => FormAnswer.Record(new WriteOffBoxes(f.On.Van, f.Known<Item>("item"), f.Whole("boxes"), f["reason"], lead)),
    };

    /// <summary>Boxes of cartons opened at the depot.</summary>
    public static DeskForm DepotBoxes => new(T("BOXES OPENED HERE"))
    {
        IsLeads = false,
        Fields = a =>
        {
            var boxes = DeskFields.Whole("boxes", T("Boxes flattened"), T("Type how many boxes were flattened."));
            return CardboardTotals.DepotRows(a.Depot).FirstOrDefault(r => r.Missing > 0) is { Missing: > 0 } row
                ? [DeskFields.Item(row.Item.Text), boxes with { Shown = row.Expected.ToString(CultureInfo.InvariantCulture) }]
                : [DeskFields.Item(), boxes];
        },
        About = f =>
        [
            CardboardTotals.DepotRows(f.Depot).ToList() is { Count: > 0 } rows
                ? T("Opened here tonight: ") + string.Join(", ", rows.Select(r => T($"{r.Item} {r.Flattened} of {r.Expected} flattened")))
                : T("No carton was opened here tonight; boxes of earlier evenings that turn up can be counted all the same."),
            T("Knife away from you, blade in when done."),
        ],
        Help = [
            T(
                "Boxes of cartons that were opened here, at loading, one for each. What is typed replaces what was counted of the item "
                    + "tonight.")],
        Answer = (f, by) => FormAnswer.Record(new CountDepotBoxes(f.Known<Item>("item"), f.Whole("boxes") ?? 0, by)),
    };

    /// <summary>The hauler emptied the container.</summary>
    public static DeskForm Pickup => new(T("THE HAULER CAME"))
    {
        IsLeads = false,
        Fields = _ =>
        [
            DeskFields.Number(
                "percent", T("Full by eye, percent"), FieldKind.Count, T("empty: not looked"), (decimal)EmptyContainer.MostPercent),
            new("weight", T("Weighed by the hauler"), FieldKind.Number, "", T("empty: not weighed")),
        ],
        About = f =>
        [
            T($"The book has {f.Depot.Setup.Units.Weight(Container.LoadedLb(f.Depot))} in it, {Container.FullPercent(f.Depot):0} % ")
                + T("of the container. From now on it counts from empty."),
            T(
                $"With both numbers below, the weighed load says how dense your cardboard lies. Weights in "
                    + $"{f.Depot.Setup.Units.WeightUnit}."),
            T("Keep clear while the truck reverses and lifts."),
        ],
        Help = [
            T(
                "The hauler emptied the container: it begins empty again. How full it was by eye, and what it weighed on the hauler's "
                    + "slip, if either is known; the figure on record stands beside them.")],
        Answer = (f, by) => FormAnswer.Record(
            new EmptyContainer(
                f.Whole("percent"), f.Number("weight") is { } weight ? (double)f.Depot.Setup.Units.Pounds(weight) : null, by)),
    };

    /// <summary>An accumulation box goes to a recycler.</summary>
    public static DeskForm Ship => new(T("SHIP AN ACCUMULATION BOX"))
    {
        IsLeads = false,
        Fields = a =>
        [
            DeskFields.Coded<WasteStream>(
                "stream", T("Waste stream"), ByAge(a.Depot).FirstOrDefault()?.Stream.Text ?? "", T("Type the name of the waste stream."),
                (_, c) => WasteStream.Find(c) is null ? YardRefusal.NoSuchStream(c) : null) with { Choices = Streams },
            DeskFields.Words("to", T("Who took it, and slip")),
        ],
        About = f =>
        [
            .. ByAge(f.Depot)
            .Select(b =>
                T(
                    $"{b.Stream}: {Collecting.Amount(WasteStream.Of(b.Stream), b.Amount, f.Depot.Setup.Units)} since "
                        + $"{IsoDate.Text(b.StartedOn)}"))
                .DefaultIfEmpty(T("No accumulation box has anything in it.")),
            T("Universal waste goes only to a handler or recycler that may take it: 40 CFR 273.18, state rules, the site's own procedure."),
        ],
        Help = [
            T(
                "An accumulation box goes to a recycler: the next of its stream begins with the next piece. Who took it, and the number "
                    + "of the slip, stay on record.")],
        Answer = (f, by) => FormAnswer.Record(new ShipCollected(f.Known<WasteStream>("stream"), f["to"], by)),
    };

    private static IReadOnlyList<MissingBoxes> Missing(Asked on) =>
        [.. on.Van is { } van ? LostBoxes.Of(on.Depot, van) : LostBoxes.OfDepot(on.Depot)];

    private static IEnumerable<CollectingBox> ByAge(Depot depot) => depot.Yard.Collecting.Values.OrderBy(b => b.StartedOn);

    private static IEnumerable<Choice> Streams(Depot depot) =>
        Collecting.On(depot.Setup.Depot).Select(w => new Choice(w.Code.Text, w.Description));
}
