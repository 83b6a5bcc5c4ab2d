using Closeout.Vans;

namespace Closeout.Files;

/// <summary>One row of evening.csv, its words already found to be allowed.</summary>
/// <param name="Item">Code of what the row is about, in the spelling of its file; empty: the step as a whole.</param>
public sealed record EveningRow(
    int Line, Code<Van> Van, Code<Technician> Technician, EveningStep Step, EveningField Field, string Item, string Value)
{
    /// <summary>Why the value is what it is; empty: not said.</summary>
    public string Why { get; init; } = "";
}

/// <summary>The codes that a row of evening.csv may name.</summary>
public sealed record EveningCodes(Known<Van> Vans, Known<Technician> Crew, Known<Item> Items, Known<KitPiece> Kit)
{
    /// <summary>The depot's own questions.</summary>
    public IReadOnlyList<EveningField> Handover { get; init; } = [];
}

/// <summary>evening.csv: the answers given at the kiosk, in order.</summary>
public static class EveningFile
{
    public const string File = "evening.csv";

    /// <param name="steps">The steps that there are, each with its fields.</param>
    public static IReadOnlyList<EveningRow> Read(string folder, IReadOnlyList<EveningStep> steps, EveningCodes codes, Findings findings)
    {
        var table =
            CsvTable.Read(folder, File, required: false, ["van", "technician", "step", "field", "item", "value"], ["why"], findings);
        var rows = new List<EveningRow>();
        foreach (var row in table.Rows)
        {
            var (van, technician) = (row.Known("van", codes.Vans), row.Known("technician", codes.Crew));
            var word = row.OneOf("step", [.. steps.Where(s => s.Step != Step.Handover || codes.Handover.Count > 0).Select(s => s.Word)]);
            if (!row.IsGood)
                continue;

            // An empty field answers the step as a whole: as booked, as expected, none, all there, signed.
            var step = steps.First(s => s.Word == word);
            var fields = step.Step == Step.Handover ? codes.Handover : step.Fields;
            var name = row.Has("field") || fields.Count == 0 || step.Step == Step.Handover
                ? row.OneOf("field", [.. fields.Select(f => f.Name)])
                : fields[0].Name;
            if (!row.IsGood)
                continue;

            var field = fields.First(f => f.Name == name);
            var item = row.Has("item") ? ItemOf(row, field, codes) : "";
            if (row.IsGood)
                Value(row, field, item);

            if (row.IsGood)
            {
                rows.Add(
                    new(row.Line, van, technician, step, field, item,
                        field.IsPhoto ? Path.Combine(folder, row.Raw("value")) : row.Raw("value"))
                        { Why = row.Has("why") ? row.Text("why") : "" });
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
                row.Bad("item", T($"has no place in step {row.Raw("step")}"), T("nothing"));
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
