using Closeout.DayBook;
using Closeout.Shifts;
using Closeout.Stock;

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
        ["cardboard"] = (Step.Cardboard, ["flattened"]),
        ["mileage"] = (Step.Mileage, ["odometer", "fuel_gal", "fuel_grade"]),
        ["damage"] = (Step.Damage, ["none", "zone", "severity", "what"]),
        ["kit"] = (Step.Kit, ["count", "expires"]),
        ["weekly"] = (Step.Weekly, ["oil_change_on", "photos", "clean"]),
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
            var item = ItemOf(row, step, items, kit);
            if (row.IsGood)
            {
                Value(row, step, field, item);
            }

            if (row.IsGood)
            {
                rows.Add(new(row.Line, van, technician, step, field, item, row.Raw("value")));
            }
        }

        return rows;
    }

    private static string ItemOf(CsvRow row, Step step, Known<Item> items, Known<KitPiece> kit)
    {
        if (!row.Has("item"))
        {
            return "";
        }

        switch (step)
        {
            case Step.Leftovers or Step.Cardboard:
                return row.Known("item", items).ToString();
            case Step.Kit:
                return row.Known("item", kit).ToString();
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
            if (field is "bin" or "kept" or "installed" or "expires")
            {
                row.Bad("item", $"is needed for {field}", "a code");
            }

            return;
        }

        _ = field switch
        {
            "sealed" or "bin" or "kept" or "installed" or "flattened" or "count" or "photos" => row.Whole("value", 0, Refusal.MostAtOnce),
            "odometer" => row.Number("value", 0, Refusal.MostMiles),
            "fuel_gal" => row.Number("value", 0, Refusal.MostGallons, openBelow: true),
            "fuel_grade" or "zone" or "what" => row.Text("value").Length,
            "severity" => row.OneOf("value", [.. Enum.GetNames<Severity>().Select(s => s.ToLowerInvariant())]).Length,
            "expires" or "oil_change_on" => row.Date("value").DayNumber,
            "clean" => row.YesNo("value") ? 1 : 0,
            _ => 0,
        };
    }
}
