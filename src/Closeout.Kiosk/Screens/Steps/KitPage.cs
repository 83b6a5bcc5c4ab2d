using Closeout.Files;
using Closeout.Screens.Parts;
using Closeout.Shifts.Steps;
using Closeout.Vans;

namespace Closeout.Screens.Steps;

/// <summary>The safety kit: how many of each piece, and the dates on it.</summary>
public sealed class KitPage : ListPage
{
    private const string DateField = "/date";
    private const string TestField = "/tested";

    public override Step Step => Step.Kit;

    public override string Caution => T("Gas smell or CO alarm: get out, call for help; licensed people work on it.");

    public override string? Help => T("Safety kit: count and dates.");

    protected override string TheRest => T("all the rest is there");

    public override ICommand Unchanged(Code<Van> van) => new ConfirmKit(van);

    public override EveningStep Evening => new(
        Step,
        "kit",
        [
            new("count", EveningItem.Piece, row => row.Whole("value", 0, Refusal.MostAtOnce)) { IsWholeWithoutItem = true },
            new("expires", EveningItem.Piece, row => row.Date("value")) { NeedsItem = true },
            new("tested", EveningItem.Piece, row => row.Date("value")) { NeedsItem = true },
        ],
        a => a.Item.Length == 0
            ? new ConfirmKit(a.Van)
            : new CountKit(a.Van, new(a.Item), a.Whole("count"), a.Date("expires"), a.Date("tested")));

    public override void Draw(Sheet sheet, Depot depot, Shift shift, Question q)
    {
        var below = Say(sheet, 3, T("Is the safety kit there, and in date? Needed pieces hold the van."));
        List(sheet, below + 1, q.Form, 24);
    }

    public override string? FieldOf(ICommand command, Refusal refusal) =>
        command is CountKit c ? c.Piece + (refusal.About is { } part ? "/" + part : "") : refusal.About;

    public override object? Subject(VanEntry entry) => entry is KitCounted e ? e.Piece : null;

    public override IEnumerable<(int Indent, string Text)>? Tally(Depot depot, Shift shift, VanEntry entry)
    {
        var setup = depot.Setup;
        return entry switch
        {
            KitCounted e =>
                [(0,
                    T($"{setup.Find(e.Piece)?.Description ?? e.Piece.Text}: {e.Count} of "
                        + $"{(setup.Find(e.Piece) is { } piece ? setup.Required(shift.Van, piece) : 0)}"))],
            KitConfirmed => [(0, KitCheck.MissingOf(depot, shift.Van).Any() ? T("KIT short, see above") : T("kit all there"))],
            _ => null,
        };
    }

    public override IEnumerable<string> Summary(Depot depot, Shift shift)
    {
        var lacking = KitCheck.MissingOf(depot, shift.Van).Select(m => T($"{m.Piece.Description} {m.There} of {m.Required}")).ToList();
        var due = KitCheck.Due(depot, shift.Van).Select(d => d.Words(depot.Date)).ToList();
        var undated = depot.Setup.Kit.Where(k => k.Expires && KitCheck.DatesOf(depot, shift.Van, k.Code).Expires is null)
            .Select(k => T($"{k.Description}: no date read")).ToList();
        yield return lacking.Count + due.Count + undated.Count == 0 ? T("Safety kit  all there, in date")
            : T($"Safety kit  {string.Join("; ", [.. lacking.Count == 0 ? [T("all there")] : lacking, .. due, .. undated])}");
    }

    protected override Form Fields(Depot depot, Shift shift) => new([.. depot.Setup.Kit.SelectMany(piece => Fields(depot, shift, piece))]);

    protected override Answer One(Depot depot, Question q, Field field)
    {
        var piece = field.Name.Split('/')[0];
        if (q.Form.Empty(piece, field.Name) is { } empty)
        {
            return empty.Kind == FieldKind.Date
                ? Steps.Answer.Lacks(
                    empty.Name, T("The date is empty: type it as YYYY-MM-DD. PgUp, then PgDn shows again what stood there."))
                : Empty(empty, empty.Label);
        }

        if (field.Kind != FieldKind.Date)
            return Steps.Answer.Of(new CountKit(q.Van, new(piece), field.Whole ?? 0));

        var isTest = field.Name.EndsWith(TestField, StringComparison.Ordinal);
        return field.Date is { } date
            ? Steps.Answer.Of(new CountKit(q.Van, new(piece), q.Form[piece].Whole ?? 0, isTest ? null : date, isTest ? date : null))
            : Steps.Answer.Lacks(field.Name, T($"\"{field.Text}\" is no date. Type it as YYYY-MM-DD."));
    }

    private static IEnumerable<Field> Fields(Depot depot, Shift shift, KitPiece piece)
    {
        var required = depot.Setup.Required(shift.Van, piece);
        var there = shift.Kit.GetValueOrDefault(piece.Code)?.Count ?? required;
        var dates = KitCheck.DatesOf(depot, shift.Van, piece.Code);
        yield return Field.Count(piece.Code.Text, piece.Description, there, T($"of {required}{(piece.Critical ? T(" needed") : "")}"));
        if (piece.Expires)
            yield return Field.OfDate(piece.Code.Text + DateField, T("  good until"), dates.Expires);

        if (piece.TestEveryDays > 0)
            yield return Field.OfDate(piece.Code.Text + TestField, T("  last tested"), dates.TestedOn);
    }
}
