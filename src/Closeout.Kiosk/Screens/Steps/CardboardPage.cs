using Closeout.Cardboard;
using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;

namespace Closeout.Screens.Steps;

/// <summary>Boxes to flatten, one for each carton emptied, and what else came home.</summary>
public sealed class CardboardPage : ListPage
{
    /// <summary>Before the name of a waste stream in a field's name.</summary>
    private const string StreamField = "stream/";

    public override Step Step => Step.Cardboard;

    public override string Caution => T("Knife away from you, blade in when done. Lamps, batteries: not in cardboard.");

    public override string? Help => T("Cardboard: one box for each carton emptied.");

    protected override string TheRest => T("all the rest as expected");

    public override ICommand Unchanged(Code<Van> van) => new ConfirmCardboard(van);

    public override EveningStep Evening => new(
        Step,
        "cardboard",
        [
            new("flattened", EveningItem.Item, row => row.Whole("value", 0, Refusal.MostAtOnce)) { IsWholeWithoutItem = true },
            new("collected", EveningItem.Stream, row => row.Number("value", 0, Refusal.MostAtOnce)) { NeedsItem = true,
                IsOwnAnswer = true },
        ],
        a => a.Item.Length == 0 ? new ConfirmCardboard(a.Van)
            : a.Has("collected") ? new CountStream(a.Van, new(a.Item), a.Number("collected") ?? 0)
            : new CountBoxes(a.Van, new(a.Item), a.Whole("flattened") ?? 0));

    /// <summary>Where nothing else came home: one key, not one for each stream.</summary>
    protected override StepReply Enter(Depot depot, Shift shift, Question q) =>
        q.Form.Now is { Typed: null } now && IsStream(now) && q.Form.Fields.Skip(q.Form.Focus).All(f => f.Typed is null)
            ? Answer(depot, q)
            : base.Enter(depot, shift, q);

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        if (q.Form.Fields.Count == 0)
        {
            Say(sheet, 3, T("No carton was emptied: no box to flatten. Enter to go on."));
            return;
        }

        var below = Say(sheet, 3, depot.Setup.Depot.Streams.Count == 0
            ? T("Flatten these boxes and count them. Uncounted boxes stay listed as missing.")
            : T("Flatten and count the boxes, and what else came home. Press Enter if nothing else did."));
        List(sheet, below + 1, q.Form, 26);
    }

    public override string? FieldOf(ICommand command, Refusal refusal) => command switch
    {
        CountBoxes c => c.Item.Text,
        CountStream c => StreamField + c.Stream,
        _ => refusal.About,
    };

    public override object? Subject(VanEntry entry) => entry switch
    {
        BoxesCounted e => e.Item,
        StreamCounted e => e.Stream,
        _ => null,
    };

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry) => entry switch
    {
        BoxesCounted e => [(0, T($"{e.Item}: {e.Flattened} of {Spell.Count(shift.ExpectedOf(e.Item), T("box"), T("boxes"))}"))],
        StreamCounted e when WasteStream.Of(e.Stream) is var stream =>
            [(0, $"{stream.Description}: {Collecting.Amount(stream, e.Amount, depot.Setup.Units)}")],
        CardboardConfirmed => [(0, Flattened(depot, shift))],
        _ => null,
    };

    public override IEnumerable<string> Summary(Depot depot, Shift shift)
    {
        var rows = CardboardTotals.Rows(depot, shift.Van).ToList();
        var (expected, flattened) = (rows.Sum(r => r.Expected), rows.Sum(r => r.Flattened));
        var missing = flattened < expected ? T($", {expected - flattened} MISSING") : "";
        yield return T($"Cardboard   {flattened} of {Spell.Count(expected, T("box"), T("boxes"))} flattened{missing}");
        foreach (var stream in Collecting.On(depot.Setup.Depot).Where(w => shift.StreamOf(w.Code) > 0))
        {
            yield return T(
                $"Waste       {Collecting.Amount(stream, shift.StreamOf(stream.Code), depot.Setup.Units)} "
                    + $"{stream.Description.ToLowerInvariant()}");
        }
    }

    protected override Form Fields(Depot depot, Shift shift) => new([.. Boxes(depot, shift), .. Streams(depot, shift)]);

    protected override Answer One(Depot depot, Question q, Field field)
    {
        if (q.Form.Empty(field.Name) is not null)
            return Empty(field, field.Label);

        return !IsStream(field) ? Steps.Answer.Of(new CountBoxes(q.Van, new(field.Name), field.Whole ?? 0))
            : field.Number is not { } amount
                ? Steps.Answer.Lacks(field.Name, T($"\"{field.Text}\" is no number. Type how much, 0 where it is nothing."))
            : Steps.Answer.Of(new CountStream(
                q.Van, new(field.Name[StreamField.Length..]), field.Kind == FieldKind.Number ? depot.Setup.Units.Pounds(amount) : amount));
    }

    private static IEnumerable<Field> Boxes(Depot depot, Shift shift) =>
        from item in depot.Setup.Items
        let missing = depot.Van(shift.Van).MissingBoxes.Where(m => m.Item == item.Code).Sum(m => m.Boxes)
        let expected = shift.ExpectedOf(item.Code)
        let counted = shift.Boxes.GetValueOrDefault(item.Code)
        where expected > 0 || counted is not null || missing > 0
        select Field.Count(
            item.Code.Text, item.Description, counted?.Flattened ?? expected,
            T($"of {expected}{(missing > 0 ? T($", {missing} lost") : "")}"));

    private static IEnumerable<Field> Streams(Depot depot, Shift shift) => Collecting.On(depot.Setup.Depot).Select(s => s.IsWeighed
        ? new Field(StreamField + s.Code, s.Description, FieldKind.Number, depot.Setup.Units.Amount(shift.StreamOf(s.Code)),
            depot.Setup.Units.WeightUnit)
        : Field.Count(StreamField + s.Code, s.Description, (int)shift.StreamOf(s.Code), T("pieces")));

    private static bool IsStream(Field field) => field.Name.StartsWith(StreamField, StringComparison.Ordinal);

    private static string Flattened(Depot depot, Shift shift)
    {
        var (flattened, expected) = (depot.Setup.Items.Sum(i => shift.FlattenedOf(i.Code)), shift.Expected.Sum(e => e.Boxes));
        return flattened == expected ? T($"{Spell.Count(flattened, T("box"), T("boxes"))} flattened")
            : T($"{flattened} of {expected} boxes flattened, "
                + $"{(flattened < expected ? T($"{expected - flattened} MISSING") : T($"{flattened - expected} more than expected"))}");
    }
}
