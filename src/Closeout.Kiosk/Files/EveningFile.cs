using Closeout.Vans;

namespace Closeout.Files;

/// <summary>One row of evening.csv, its words already found to be allowed.</summary>
/// <param name="Item">Code of what the row is about, in the spelling of its file; empty: the step as a whole.</param>
public sealed record EveningRow(
    int Line, Code<Van> Van, Code<Technician> Technician, EveningStep Step, EveningField Field, string Item, string Value);

/// <summary>The codes that a row of evening.csv may name.</summary>
public sealed record EveningCodes(Known<Van> Vans, Known<Technician> Crew, Known<Item> Items, Known<KitPiece> Kit);

/// <summary>evening.csv: the answers given at the kiosk, in order.</summary>
public static class EveningFile
{
    public const string File = "evening.csv";

    /// <param name="steps">The steps that there are, each with its fields.</param>
    public static IReadOnlyList<EveningRow> Read(string folder, IReadOnlyList<EveningStep> steps, EveningCodes codes, Findings findings)
    {
        var table = CsvTable.Read(folder, File, required: false, ["van", "technician", "step", "field", "item", "value"], [], findings);
        var rows = new List<EveningRow>();
        foreach (var row in table.Rows)
        {
            var (van, technician) = (row.Known("van", codes.Vans), row.Known("technician", codes.Crew));
            var word = row.OneOf("step", [.. steps.Select(s => s.Word)]);
            if (!row.IsGood)
                continue;

            // An empty field answers the step as a whole: as booked, as expected, none, all there, signed.
            var step = steps.First(s => s.Word == word);
            var name = row.Has("field") ? row.OneOf("field", [.. step.Fields.Select(f => f.Name)]) : step.Fields[0].Name;
            var field = step.Fields.First(f => f.Name == name);
            var item = row.Has("item") ? ItemOf(row, field, codes) : "";
            if (row.IsGood)
                Value(row, field, item);

            if (row.IsGood)
            {
                rows.Add(
                    new(row.Line, van, technician, step, field, item,
                        field.IsPhoto ? Path.Combine(folder, row.Raw("value")) : row.Raw("value")));
            }
        }

        return rows;
    }

    private static string ItemOf(CsvRow row, EveningField field, EveningCodes codes)
    {
        switch (field.Item)
        {
            case EveningItem.Stream:
                return row.OneOf("item", [.. WasteStream.All.Select(s => s.Code.Text)]);
            case EveningItem.Item:
                return row.Known("item", codes.Items).ToString();
            case EveningItem.Piece:
                return row.Known("item", codes.Kit).ToString();
            case EveningItem.Part:
                return WalkRound.Find(row.Raw("item")) ?? row.OneOf("item", [.. WalkRound.Parts]);
            case EveningItem.None:
                row.Bad("item", T($"has no place in step {row.Raw("step")}"), "nothing");
                return "";
            default:
                throw new InvalidOperationException($"no such item: {field.Item}");
        }
    }

    private static void Value(CsvRow row, EveningField field, string item)
    {
        if (item.Length == 0 && field.NeedsItem)
        {
            row.Bad("item", T($"is needed for {field.Name}"),
                field.Item == EveningItem.Part ? string.Join(", ", WalkRound.Parts) : T("a code"));
        }

        // A part is judged beside what it lacks; of the others nothing is known without their item.
        if (item.Length > 0 || field.Item is EveningItem.None or EveningItem.Part)
            field.Check(row);
    }
}
