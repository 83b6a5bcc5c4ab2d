using Closeout.DayBook;
using Closeout.Facts;
using Closeout.Rules;
using Closeout.Vans;

namespace Closeout.Files;

/// <summary>One row of evening.csv, its words already found to be allowed.</summary>
/// <param name="Item">Code of an item or kit piece, in the spelling of its file; empty: the step as a whole.</param>
public sealed record EveningRow(int Line, Code<Van> Van, Code<Technician> Technician, Step Step, string Field, string Item, string Value);

/// <summary>evening.csv: the answers given at the kiosk, in order.</summary>
public static class EveningFile
{
    public const string File = "evening.csv";

    private static readonly Dictionary<string, (Step Step, string[] Fields)> Steps = new(StringComparer.OrdinalIgnoreCase)
    {
        ["leftovers"] = (Step.Leftovers, ["sealed", "bin", "kept", "installed"]),
        ["cardboard"] = (Step.Cardboard, ["flattened", "collected"]),
        ["mileage"] = (Step.Mileage, ["odometer", "fuel_gal", "fuel_grade"]),
        ["damage"] = (Step.Damage, ["none", "zone", "severity", "what", "drivable", "told", "told_at"]),
        ["kit"] = (Step.Kit, ["count", "expires", "tested"]),
        ["weekly"] = (Step.Weekly, ["oil_change_on", "photos", "clean", "part", "photo"]),
        ["sign"] = (Step.SignOff, ["sign"]),
    };

    public static IReadOnlyList<EveningRow> Read(
        string folder, Known<Van> vans, Known<Technician> crew, Known<Item> items, Known<KitPiece> kit, Findings findings)
    {
        var table = CsvTable.Read(folder, File, required: false, ["van", "technician", "step", "field", "item", "value"], [], findings);
        var rows = new List<EveningRow>();
        foreach (var row in table.Rows)
        {
            var (van, technician) = (row.Known("van", vans), row.Known("technician", crew));
            var (step, fields) = Steps[row.OneOf("step", [.. Steps.Keys])];
            if (!row.IsGood)
            {
                continue;
            }

            // An empty field answers the step as a whole: as booked, as expected, none, all there, signed.
            var field = row.Has("field") ? row.OneOf("field", fields) : fields[0];
            var item = ItemOf(row, step, field, items, kit);
            if (row.IsGood)
            {
                Value(row, step, field, item);
            }

            if (row.IsGood)
            {
                rows.Add(new(row.Line, van, technician, step, field, item, field == "photo" ? Path.Combine(folder, row.Raw("value")) : row.Raw("value")));
            }
        }

        return rows;
    }

    private static string ItemOf(CsvRow row, Step step, string field, Known<Item> items, Known<KitPiece> kit)
    {
        if (!row.Has("item"))
        {
            return "";
        }

        switch (step, field)
        {
            case (Step.Cardboard, "collected"):
                return row.OneOf("item", [.. WasteStream.All.Select(s => s.Code.Text)]);
            case (Step.Leftovers or Step.Cardboard, _):
                return row.Known("item", items).ToString();
            case (Step.Kit, _):
                return row.Known("item", kit).ToString();
            case (Step.Weekly, "part"):
                return row.OneOf("item", [.. WalkRound.Parts]);
            default:
                row.Bad("item", $"has no place in step {row.Raw("step")}", "nothing");
                return "";
        }
    }

    private static void Value(CsvRow row, Step step, string field, string item)
    {
        var whole = item.Length == 0 && step is Step.Leftovers or Step.Kit or Step.Cardboard;
        if (whole && item.Length == 0)
        {
            if (field is "bin" or "kept" or "installed" or "expires" or "tested" or "collected")
            {
                row.Bad("item", $"is needed for {field}", "a code");
            }

            return;
        }

        if (field == "part" && item.Length == 0)
        {
            row.Bad("item", "is needed for part", string.Join(", ", WalkRound.Parts));
        }

        _ = field switch
        {
            "sealed" or "bin" or "kept" or "installed" or "flattened" or "count" or "photos" => row.Whole("value", 0, Refusal.MostAtOnce),
            "odometer" => row.Number("value", 0, Refusal.MostMiles),
            "fuel_gal" => row.Number("value", 0, Refusal.MostGallons, openBelow: true),
            "fuel_grade" or "zone" or "what" or "told" or "part" => row.Text("value").Length,
            "collected" => row.Number("value", 0, Refusal.MostAtOnce),
            "photo" => Photo(row),
            "told_at" => row.Clock("value").Hour,
            "severity" => row.OneOf("value", [.. Enum.GetNames<Severity>().Select(s => s.ToLowerInvariant())]).Length,
            "expires" or "tested" or "oil_change_on" => row.Date("value").DayNumber,
            "clean" or "drivable" => row.YesNo("value") ? 1 : 0,
            _ => 0,
        };
    }

    /// <summary>The name of a file in the day folder or below it: a folder from elsewhere must not reach out of itself.</summary>
    private static int Photo(CsvRow row)
    {
        var name = row.Text("value");
        if (Path.IsPathRooted(name) || name.Split('/', '\\').Contains(".."))
        {
            row.Bad("value", "reaches out of the day folder", "the name of a file in it");
        }

        return name.Length;
    }
}
